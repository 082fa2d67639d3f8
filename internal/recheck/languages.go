package recheck

import (
	"fmt"
	"hash/fnv"
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
		p.same(with)
	}
	for _, name := range c.paths {
		p := c.pages[name]
		for _, lang := range c.tags() {
			if path := lang + "/" + p.name(); p.folder() != "" && !c.files[path] {
				p.add("there is no such page in %s", lang)
			}
		}
	}
}

// same compares a page with the one in another language, part by part.
func (p *page) same(with *page) {
	if len(p.parts) != len(with.parts) {
		p.add("it has %d parts, and %s has %d", len(p.parts), with.path, len(with.parts))
		return
	}
	for i := range p.parts {
		if fault := p.parts[i].differs(with.parts[i]); fault != "" {
			p.add("#%s is not as in %s: %s", p.parts[i].id, with.path, fault)
		}
	}
}

// part is a piece of a page whose numbers belong together.
type part struct {
	id        string
	equations []string // sorted: a language may name them in another order
	choices   []string
	pictures  []uint64 // what is drawn, words apart
	told      []int
	hidden    int
}

// cut cuts a page into its sections, and the numbers to tap that stand in none.
func (p *page) cut() []part {
	section := tag("section")
	var out []part
	for _, n := range all(p.root, func(n *html.Node) bool { return section(n) || class("nums")(n) && !inside(n, section) }) {
		out = append(out, p.part(n))
	}
	return out
}

func (p *page) part(n *html.Node) part {
	out := part{id: attr(n, "id")}
	for _, x := range all(n, both(tag("bdi"), class("eq"))) {
		out.equations = append(out.equations, european(text(x)))
	}
	slices.Sort(out.equations)
	for _, x := range all(n, both(tag("a"), class("num"))) {
		said, _ := told(x)
		ch := numbers(text(x))
		if len(said) > 0 { // words around numbers, in the order of the language
			ch = unique(ch)
		}
		out.choices = append(out.choices, fmt.Sprint(ch, attr(x, "href")))
	}
	for _, x := range all(n, both(tag("svg"), class("picture"))) {
		out.pictures = append(out.pictures, p.figure(x).sum())
	}
	out.told, out.hidden = told(n)
	return out
}

// sum stands for everything that is drawn, words apart.
func (f *figure) sum() uint64 {
	labels := slices.Clone(f.labels)
	for i := range labels {
		labels[i].text = european(labels[i].text)
		if labels[i].class == "name" {
			labels[i].text = ""
		}
	}
	h := fnv.New64a()
	fmt.Fprint(h, labels, f.rects, f.plates, f.circles, f.dots, f.blocks, f.crosses, f.hops, f.arrows, f.braces, f.rules)
	return h.Sum64()
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
