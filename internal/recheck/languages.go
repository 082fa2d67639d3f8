package recheck

import (
	"fmt"
	"hash/fnv"
	"slices"

	"golang.org/x/net/html"
)

// alike wants a page to have the same numbers in every language, so that child,
// family and class talk about the same story.
func (c *checker) alike() {
	first := map[string]*page{}
	for _, name := range c.paths {
		p := c.pages[name]
		if p.folder() == "" {
			continue
		}
		for _, lang := range c.languages {
			if !c.files[lang+"/"+p.name()] {
				p.add("there is no such page in %s", lang)
			}
		}
		if with := first[p.name()]; with != nil {
			p.same(with)
		} else {
			first[p.name()] = p
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
	id string
	// What is the same in every language: equations, which it may name in another
	// order, choices, and what is drawn, words apart.
	facts    [2][]string
	pictures []uint64
	told     []int
	hidden   int
	dual     bool // whether the language says one and two by the noun itself
}

// cut cuts a page into its sections, and the numbers to tap that stand in none.
func (p *page) cut() []part {
	var out []part
	for _, n := range all(p.root, "") {
		if is(n, "section") || is(n, ".nums") && !inside(n, "section") {
			out = append(out, p.part(n))
		}
	}
	return out
}

func (p *page) part(n *html.Node) part {
	var equations, choices []string
	var pictures []uint64
	for _, x := range all(n, "bdi.eq") {
		equations = append(equations, european(text(x)))
	}
	slices.Sort(equations)
	for _, x := range all(n, "a.num") {
		said, _ := told(x)
		ch := numbers(text(x))
		if len(said) > 0 { // words around numbers, in the order of the language
			ch = unique(ch)
		}
		choices = append(choices, fmt.Sprint(ch, attr(x, "href")))
	}
	for _, x := range all(n, "label.num") { // a tile, and the replies that it is for
		choices = append(choices, fmt.Sprint(unique(numbers(text(x))), attr(find(x, "input"), "class")))
	}
	for _, x := range all(n, "svg.picture") {
		h := fnv.New64a()
		fmt.Fprint(h, p.figure(x).group)
		pictures = append(pictures, h.Sum64())
	}
	out := part{id: attr(n, "id"), dual: p.lang == "ar", facts: [2][]string{equations, choices}, pictures: pictures}
	out.told, out.hidden = told(n)
	return out
}

// differs says in what two parts are not the same.
func (p part) differs(q part) string {
	for i := range p.facts {
		if here, there := p.facts[i], q.facts[i]; !slices.Equal(here, there) {
			return fmt.Sprintf("%q, there %q", here, there)
		}
	}
	if !slices.Equal(p.pictures, q.pictures) {
		return "its pictures show something else"
	}
	here, there := q.untold(less(p.told, q.told)), p.untold(less(q.told, p.told))
	if len(here) > q.hidden || len(there) > p.hidden {
		return fmt.Sprintf("it tells %v, there %v", here, there)
	}
	return ""
}

// untold are the numbers that a part should have told and has not. Arabic says
// one and two by the noun itself: a singular, a dual.
func (p part) untold(numbers []int) []int {
	if !p.dual {
		return numbers
	}
	return slices.DeleteFunc(numbers, func(n int) bool { return n == 1 || n == 2 })
}

// less lists the numbers of a that b never tells; a language may name one of
// them once more than another does.
func less(a, b []int) []int {
	return slices.DeleteFunc(unique(a), func(n int) bool { return slices.Contains(b, n) })
}
