package site

import (
	"bytes"
	"path"
	"slices"
	"strings"
	"testing"

	"golang.org/x/net/html"

	"homebuild/internal/i18n"
	"homebuild/internal/translate"
	"homebuild/locales"
)

// allTags are all languages that come with the program, the class's first.
func allTags() []string {
	tags := slices.DeleteFunc(i18n.Tags(locales.Files), func(tag string) bool { return tag == "en" })
	return append([]string{"en"}, tags...)
}

// parsed is a page as its reader's browser sees it.
func parsed(t *testing.T, f File) *html.Node {
	t.Helper()
	data, err := f.Render()
	if err != nil {
		t.Fatal(err)
	}
	doc, err := html.Parse(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// elements lists the elements of a page with the given name.
func elements(n *html.Node, name string) []*html.Node {
	var out []*html.Node
	for d := range n.Descendants() {
		if d.Type == html.ElementNode && d.Data == name {
			out = append(out, d)
		}
	}
	return out
}

func attribute(n *html.Node, key string) string {
	for _, a := range n.Attr {
		if a.Key == key {
			return a.Val
		}
	}
	return ""
}

// words is the text of an element, its white space made one space.
func words(n *html.Node) string {
	var b strings.Builder
	for d := range n.Descendants() {
		if d.Type == html.TextNode {
			b.WriteString(d.Data)
		}
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

// In each language the learn page shows the class's own words beside the
// family's, each marked with its language.
func TestClassWordsStandBesideTheFamilys(t *testing.T) {
	in := exampleInput(t, allTags()...)
	files, _, problems := Assemble(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	english := saidBy(in.Catalog.Source())
	for _, lang := range in.Catalog.Languages()[1:] {
		family, rows := saidBy(lang), 0
		for _, f := range files {
			if !isLearn(f.Path, lang.Tag()) {
				continue
			}
			for _, row := range elements(parsed(t, f), "tr") {
				cells := append(elements(row, "td"), elements(row, "th")...)
				if len(cells) != 2 || attribute(cells[1], "lang") != "en" || attribute(cells[1], "dir") != "ltr" {
					t.Errorf("%s: a row of words is not the family's beside the class's: %q", f.Path, words(row))
					continue
				}
				rows++
				own, class := words(cells[0]), words(cells[1])
				if own == class || !english[class] || !family[own] {
					t.Errorf("%s: %q beside %q are not words of %s and of English", f.Path, own, class, lang.Name())
				}
			}
		}
		if rows < 20 {
			t.Errorf("%s: only %d rows of words in the whole year", lang.Tag(), rows)
		}
	}
}

func isLearn(file, tag string) bool {
	dir, name := path.Split(file)
	return dir == tag+"/" && len(name) == len("2026-09-14.html")
}

// saidBy are the texts of a language: its own name and its messages.
func saidBy(l *i18n.Language) map[string]bool {
	texts := map[string]bool{l.Name(): true}
	for _, s := range translate.Samples(l) {
		texts[s.Text.String()] = true
	}
	return texts
}

// From each page of each kind, one tap leads to the same page in the language
// of the class and in every other, and back.
func TestSamePageInEveryLanguage(t *testing.T) {
	tags := allTags()
	files, _, problems := Assemble(exampleInput(t, tags...))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	have := map[string]bool{}
	for _, f := range files {
		have[f.Path] = true
	}
	kinds := map[string]int{}
	for _, f := range files {
		tag, rest, inFolder := strings.Cut(f.Path, "/")
		if !inFolder || path.Ext(f.Path) != ".html" || !slices.Contains(tags, tag) {
			continue
		}
		kind := kindOf(rest)
		if kinds[tag+kind]++; kinds[tag+kind] > 1 {
			continue // one page of each kind and language
		}
		got := map[string]string{}
		for _, nav := range elements(parsed(t, f), "nav") {
			if !strings.Contains(attribute(nav, "class"), "tabs") {
				continue
			}
			for _, a := range elements(nav, "a") {
				if other := attribute(a, "lang"); other != "" {
					href, _, _ := strings.Cut(attribute(a, "href"), "#") // the part of the walk is kept
					got[other] = path.Join(path.Dir(f.Path), href)
				}
			}
		}
		for _, other := range tags {
			want := other + "/" + rest
			if other != tag && (got[other] != want || !have[want]) {
				t.Errorf("%s: the tab of %s leads to %q, want %q, which exists: %v", f.Path, other, got[other], want, have[want])
			}
		}
	}
	if want := 7 * len(tags); len(kinds) < want { // learn, try, story, print, home, check, a check page
		t.Errorf("only %d kinds of pages and languages were seen, want %d: %v", len(kinds), want, kinds)
	}
}

// kindOf is a page's path without what differs between pages of a kind.
func kindOf(rest string) string {
	return strings.Map(func(c rune) rune {
		if c >= '0' && c <= '9' {
			return -1
		}
		return c
	}, rest)
}
