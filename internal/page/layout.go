package page

import (
	"path"
	"strings"

	"github.com/a-h/templ"

	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
)

// Layout is what every page has around its own content.
type Layout struct {
	Language *i18n.Language
	Theme    *Theme
	School   string    // the school's or class's name, in the teacher's words
	Path     string    // of this page in the site: "es/2026-09-14.html"
	Address  string    // where the site lives, ending in "/"; empty when not known
	Home     string    // link to the index of the language; empty on that page
	Feed     string    // link to the language's feed; empty for none
	Versions []Version // this page in every language, itself included: the class's, then the site's order
	Default  string    // link to the page where a language is picked; empty for none
	Indexed  bool      // search engines are welcome
}

// Version is a page in one of the site's languages.
type Version struct {
	Language *i18n.Language
	Href     string
	Path     string // of this version in the site
	Class    bool   // the language the class is taught in
}

func (l *Layout) layout() *Layout { return l }

// absolute is a relative link as a full address, where the site's is known:
// search engines want alternates written out.
func (l *Layout) absolute(href string) string {
	if l.Address == "" {
		return href
	}
	return l.Address + path.Join(path.Dir(l.Path), href)
}

// name names the page for those who tell somebody else of a mistake on it:
// "es/2026-09-14-try".
func (l *Layout) name() string { return strings.TrimSuffix(l.Path, ".html") }

func (l *Layout) here(v Version) bool { return v.Language.Tag() == l.Language.Tag() }

// alternates are the links by which search engines find the versions.
func (l *Layout) alternates() templ.Component {
	return raw(func(m *markup) {
		for _, v := range l.Versions {
			m.write("<link rel=\"alternate\" hreflang=\"", v.Language.Tag(), "\" href=\"")
			if l.Address == "" {
				m.escape(v.Href)
			} else {
				m.escape(l.Address)
				m.escape(v.Path)
			}
			m.write("\">")
		}
	})
}

// version is a link to a place in a version.
func version(v Version, place string) templ.Component {
	return raw(func(m *markup) { m.version(v, place) })
}

// otherVersions are links to those that are neither this one nor the class's.
func (l *Layout) otherVersions(place string) templ.Component {
	return raw(func(m *markup) {
		for _, v := range l.Versions {
			if !v.Class && !l.here(v) {
				m.write("<li>")
				m.version(v, place)
				m.write("</li>")
			}
		}
	})
}

func (m *markup) version(v Version, place string) {
	m.write("<a lang=\"", v.Language.Tag(), "\" dir=\"", dir(v.Language.RightToLeft()), "\" href=\"")
	m.escape(v.Href)
	m.element(place+"\">", v.Language.Name(), "</a>")
}

// others counts the versions that are neither this one nor the class's.
func (l *Layout) others() int {
	n := 0
	for _, v := range l.Versions {
		if !v.Class && !l.here(v) {
			n++
		}
	}
	return n
}

// title is what the browser's tab says.
func (l *Layout) title(about phrase.Line) string { return l.Language.Plain(about) + " · " + l.School }

// heading is a page's title: its own name, then what the week is about.
func (l *Layout) heading(word string, about phrase.Line) string {
	return l.Language.Word(word) + " · " + l.title(about)
}
