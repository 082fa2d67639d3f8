package preview

import (
	"cmp"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"homebuild/internal/diag"
)

// group is a part of the list of pages: a week, or what stays all year.
type group struct {
	Title string   `json:"title"`
	Pages []listed `json:"pages"`
	Open  bool     `json:"open"` // the others are folded
}

type listed struct {
	Path  string `json:"path"`
	Title string `json:"title"`
}

// weekPage is the name of a page that belongs to a week: es/2026-09-14-try.html.
var weekPage = regexp.MustCompile(`^(?:([^/]+)/)?(\d{4}-\d{2}-\d{2})(?:-([a-z]+))?\.html$`)

// names are what the list calls the pages of a week.
var names = map[string]string{"": "learn", "try": "try", "story": "own story", "print": "paper"}

// list groups the pages by week, the newest first; what belongs to no week
// comes last. Of pages in deeper folders only the first one of each is listed:
// the others are reached from there.
func list(pages []Page) []group {
	weeks := map[string][]listed{}
	var rest []listed
	for _, p := range pages {
		if m := weekPage.FindStringSubmatch(p.Path); m != nil {
			weeks[m[2]] = append(weeks[m[2]], listed{p.Path, weekTitle(m[1], m[3])})
			continue
		}
		if strings.HasSuffix(p.Path, ".html") && (!deep(p.Path) || strings.HasSuffix(p.Path, "/index.html")) {
			rest = append(rest, listed{p.Path, yearTitle(p.Path)})
		}
	}
	var out []group
	for date, pages := range weeks {
		out = append(out, group{Title: "week of " + date, Pages: pages})
	}
	slices.SortFunc(out, func(a, b group) int { return cmp.Compare(b.Title, a.Title) })
	if len(out) > 0 {
		out[0].Open = true
	}
	if len(rest) > 0 {
		out = append(out, group{Title: "all year", Pages: rest, Open: true})
	}
	return out
}

func weekTitle(language, kind string) string {
	if language == "" {
		return "the link to share"
	}
	name, known := names[kind]
	if !known {
		name = kind
	}
	return language + " " + name
}

// yearTitle names a page that belongs to no week.
func yearTitle(path string) string {
	switch path {
	case "index.html":
		return "front page"
	case "404.html":
		return "no such page"
	}
	name := strings.TrimSuffix(strings.TrimSuffix(path, ".html"), "/index")
	return strings.ReplaceAll(name, "/", " ")
}

func deep(path string) bool { return strings.Count(path, "/") > 1 }

// place says where a problem is.
func place(p diag.Diagnostic) string {
	if p.File == "" || p.Line == 0 {
		return p.File
	}
	return fmt.Sprintf("%s, line %d", p.File, p.Line)
}
