package recheck

import (
	"cmp"
	"fmt"
	"slices"

	"golang.org/x/net/html"
)

// fact is a whole and its parts.
type fact struct {
	whole int
	parts []int
}

// factsOf reads a solved equation of one step. A chain of two steps is none.
func factsOf(q equation) []fact {
	n := q.numbers()
	if len(q) != 2 || q.asked() > 0 || len(n) < 3 {
		return nil
	}
	slices.Sort(n)
	f := fact{n[len(n)-1], n[:len(n)-1]}
	sum := 0
	for _, part := range f.parts {
		sum += part
	}
	if sum != f.whole {
		return nil
	}
	return []fact{f}
}

// agrees wants a picture to show the whole and the parts of one of the facts
// that it stands with, each in its own place: dots in ten frames are as many as
// the whole, a bond has it in its own circle, and so on.
func (p *page) agrees(where string, svg *html.Node, of []fact) {
	first := ""
	for _, w := range of {
		fault := p.figure(svg).differs(w)
		if fault == "" {
			return
		}
		first = cmp.Or(first, fault)
	}
	if first != "" {
		p.add("%s#%s does not go with its calculation: %s", where, attr(svg, "id"), first)
	}
}

// differs says what a picture shows that is not so in a fact.
func (f *figure) differs(w fact) string {
	sort, known := sorts[f.name]
	if !known {
		return "nobody knows what it shows"
	}
	s := sort.shows(f)
	if len(s.wholes) > 0 && !slices.Contains(s.wholes, w.whole) {
		return fmt.Sprintf("the whole is %d, and it shows %v", w.whole, s.wholes)
	}
	for _, some := range s.parts {
		if !slices.ContainsFunc(some, func(n int) bool { return slices.Contains(w.parts, n) }) {
			return fmt.Sprintf("it shows %v, which is no part", some)
		}
	}
	for _, n := range s.either {
		if n != w.whole && !slices.Contains(w.parts, n) {
			return fmt.Sprintf("it shows %d, which is neither the whole nor a part", n)
		}
	}
	return ""
}

// steps holds the pictures of each way of working against the calculation that
// it works out.
func (p *page) steps() {
	for _, list := range all(p.root, "ol.steps") {
		of := worksOut(list)
		for _, svg := range all(list, "svg.picture") {
			if p.figure(svg).name == "splits" {
				continue // every pair is right
			}
			if len(of) == 0 {
				p.add("#%s stands with no calculation", attr(svg, "id"))
			}
			p.agrees("", svg, of)
			p.showsStep(svg, of)
		}
	}
}

// showsStep wants a picture to show what the step beside it comes to, where that
// is not the calculation's own whole or part, which the picture goes with.
func (p *page) showsStep(svg *html.Node, of []fact) {
	f := p.figure(svg)
	drawn := append(f.numbers(), numbers(f.title)...)
	for _, w := range of {
		drawn = append(append(drawn, w.whole), w.parts...)
	}
	for _, q := range closed(svg.Parent) {
		if v, _ := q[0].value(); !slices.Contains(drawn, v) {
			p.add("#%s stands beside a step that comes to %d, and does not show it", attr(svg, "id"), v)
		}
	}
}

// worksOut gives the facts that steps can be about: the equations above them,
// and the chain that closes them.
func worksOut(list *html.Node) []fact {
	before, after := beside(list)
	slices.Reverse(before) // the nearest says best what is worked out
	near := slices.DeleteFunc(before, func(n *html.Node) bool { return !is(n, ".big") })
	near = append(near, after[:min(1, len(after))]...)
	var out []fact
	for _, n := range near {
		if is(n, "details") {
			n = find(n, ".chain")
		}
		q, err := read(text(n))
		if err != nil || len(q) < 2 {
			continue
		}
		if x, ok := q.solve(); ok {
			q = q.fill(x)
		}
		out = append(out, factsOf(equation{q[0], q[len(q)-1]})...)
	}
	return out
}
