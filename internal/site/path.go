package site

import (
	"strconv"
	"strings"

	"homebuild/internal/i18n"
	"homebuild/internal/page"
)

// Flat names and relative links: the site works from a web host, a memory
// stick, a chat attachment or a folder on a phone.

func homePath(tag string) string        { return tag + "/index.html" }
func learnPath(tag, date string) string { return tag + "/" + date + ".html" }
func tryPath(tag, date string) string   { return tryPagePath(tag, date, 0) }
func ownPath(tag, date string) string   { return tag + "/" + date + "-story.html" }
func printPath(tag, date string) string { return tag + "/" + date + "-print.html" }
func weeklyPath(date string) string     { return date + ".html" }
func checkPath(tag string) string       { return tag + "/check/index.html" }

func checkFirstPath(tag string, first int) string {
	return tag + "/check/" + strconv.Itoa(first) + ".html"
}

// tryPagePath is a page of stories to try; only long weeks have more than one.
func tryPagePath(tag, date string, place int) string {
	if place == 0 {
		return tag + "/" + date + "-try.html"
	}
	return tag + "/" + date + "-try-" + strconv.Itoa(place+1) + ".html"
}

// link is the relative link from one page of the site to another.
func link(from, to string) string {
	for {
		head, fromRest, inFolder := strings.Cut(from, "/")
		same, toRest, ok := strings.Cut(to, "/")
		if !inFolder || !ok || head != same {
			return strings.Repeat("../", strings.Count(from, "/")) + to
		}
		from, to = fromRest, toRest
	}
}

// frame is what every page of a language has; versions says where the same
// page stands in another language, or is nil where it stands in one only.
func (b *builder) frame(lang *i18n.Language, own string, versions func(tag string) string, pick string) page.Frame {
	f := page.Frame{
		Language: lang, Theme: b.Theme, Path: own,
		School:  b.schoolName(lang),
		Address: b.Site.Address, Indexed: b.Site.Index,
	}
	if home := homePath(lang.Tag()); own != home {
		f.Home = link(own, home)
	}
	if pick != "" && pick != own {
		f.Default = link(own, pick)
	}
	if versions != nil {
		f.Versions = b.versions(own, versions)
	}
	return f
}

func (b *builder) versions(own string, to func(tag string) string) []page.Version {
	var out []page.Version
	for _, l := range b.languages {
		out = append(out, page.Version{Language: l, Href: link(own, to(l.Tag())), Class: l == b.school})
	}
	return out
}
