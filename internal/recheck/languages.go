package recheck

import (
	"fmt"
	"slices"
	"strings"

	"golang.org/x/net/html"
)

// languages wants a page to have the same numbers in every language, so that
// child, family and class talk about the same story.
func (c *checker) languages() {
	first := map[string]*page{}
	for _, name := range c.paths {
		p := c.pages[name]
		if p.folder() == "" {
			continue
		}
		with := first[p.name()]
		if with == nil {
			first[p.name()] = p
			continue
		}
		c.same(p, with)
	}
	for _, name := range c.paths {
		p := c.pages[name]
		for _, lang := range c.tags() {
			if path := lang + "/" + p.name(); p.folder() != "" && c.pages[path] == nil && c.files[path] == nil {
				c.add(p, "there is no such page in %s", lang)
			}
		}
	}
}

// same compares a page with the one in another language, part by part.
func (c *checker) same(p, with *page) {
	a, b := parts(p.root), parts(with.root)
	if len(a) != len(b) {
		c.add(p, "it has %d parts, and %s has %d", len(a), with.path, len(b))
		return
	}
	for i := range a {
		if fault := a[i].differs(b[i]); fault != "" {
			c.add(p, "#%s is not as in %s: %s", a[i].id, with.path, fault)
		}
	}
}

// part is a piece of a page whose numbers belong together.
type part struct {
	id        string
	equations []string // sorted: a language may name them in another order
	choices   []string
	pictures  []string
	told      []int
	hidden    int
}

// parts cuts a page at its sections and replies.
func parts(root *html.Node) []part {
	var out []part
	for _, n := range all(root, func(n *html.Node) bool {
		return n.Data == "section" || n.Data == "main" || class("reply")(n) || class("task")(n) || class("turned")(n)
	}) {
		out = append(out, partOf(n))
	}
	return out
}

func partOf(n *html.Node) part {
	p := part{id: attr(n, "id")}
	for _, x := range all(n, both(tag("bdi"), class("eq"))) {
		p.equations = append(p.equations, european(text(x)))
	}
	slices.Sort(p.equations)
	for _, x := range all(n, both(tag("a"), class("num"))) {
		said, _ := told(x)
		if ch := numbers(text(x)); len(said) == 0 {
			p.choices = append(p.choices, fmt.Sprint(ch, attr(x, "href")))
		} else { // words around numbers, in the order of the language
			p.choices = append(p.choices, fmt.Sprint(unique(ch), attr(x, "href")))
		}
	}
	for _, x := range all(n, both(tag("svg"), class("picture"))) {
		f := figureOf(x)
		f.title = ""
		for i := range f.labels {
			f.labels[i].text = european(f.labels[i].text)
			if f.labels[i].class == "name" {
				f.labels[i].text = ""
			}
		}
		p.pictures = append(p.pictures, fmt.Sprint(*f))
	}
	p.told, p.hidden = told(n)
	return p
}

// differs says in what two parts are not the same.
func (p part) differs(q part) string {
	switch {
	case !slices.Equal(p.equations, q.equations):
		return fmt.Sprintf("equations %q, there %q", p.equations, q.equations)
	case !slices.Equal(p.choices, q.choices):
		return fmt.Sprintf("choices %q, there %q", p.choices, q.choices)
	case len(p.pictures) != len(q.pictures):
		return fmt.Sprintf("%d pictures, there %d", len(p.pictures), len(q.pictures))
	}
	for i := range p.pictures {
		if p.pictures[i] != q.pictures[i] {
			return fmt.Sprintf("picture %d shows something else", i+1)
		}
	}
	here, there := less(p.told, q.told), less(q.told, p.told)
	if len(here) > q.hidden || len(there) > p.hidden {
		return fmt.Sprintf("it tells %v, there %v", here, there)
	}
	return ""
}

// less lists the numbers of a that b never tells; a language may name one of
// them once more than another does.
func less(a, b []int) []int {
	return slices.DeleteFunc(unique(a), func(n int) bool { return slices.Contains(b, n) })
}

// european writes the digits of any script as European ones.
func european(s string) string {
	return strings.Map(func(r rune) rune {
		if d, ok := digit(r); ok {
			return rune('0' + d)
		}
		return r
	}, clean(s))
}
