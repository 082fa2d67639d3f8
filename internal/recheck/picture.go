package recheck

import (
	"fmt"
	"slices"

	"golang.org/x/net/html"
)

// amount is a number that a picture shows, or its "?" or empty place.
type amount struct {
	n     int
	known bool
}

func (l label) amount() amount {
	if n := numbers(l.text); len(n) == 1 {
		return amount{n[0], true}
	}
	return amount{}
}

// pictures takes every picture apart and counts it again.
func (p *page) pictures() {
	for _, svg := range all(p.root, both(tag("svg"), class("picture"))) {
		p.found.Pictures++
		f := p.figure(svg)
		p.found.Dots += len(f.dots)
		for _, fault := range append(f.faults(), f.titleFaults()...) {
			p.add("#%s: %s", attr(svg, "id"), fault)
		}
	}
}

// faults says what does not add up, by the sort of picture.
func (f *figure) faults() []string {
	switch {
	case len(f.circles) > 0:
		return f.bondFaults()
	case f.hasRect("grid") && f.arrows > 0:
		return f.makingTenFaults()
	case f.hasRect("grid"):
		return f.frameFaults()
	case f.isLine():
		return f.lineFaults()
	case f.columns:
		return f.columnFaults()
	case len(f.blocks) > 0 || len(f.dots) > 0:
		return f.dotFaults()
	}
	return f.barFaults()
}

// exact are the pictures whose text alternative has the very numbers that are
// written in them.
func (f *figure) exact() bool {
	return !f.columns && len(f.blocks) == 0 && !f.isLine() && f.arrows == 0 && !f.pairList() && !f.isRows()
}

// titleFaults compares a picture with its text alternative.
func (f *figure) titleFaults() []string {
	var out []string
	said, drawn := numbers(f.title), f.numbers()
	for _, q := range sums(f.title) {
		if len(q) > 1 && q.asked() == 0 && !q.holds() {
			out = append(out, fmt.Sprintf("its description says %q, which is not true", f.title))
		}
	}
	if f.arrows > 0 && f.hasRect("grid") {
		drawn = append(drawn, f.arrows/2)
	}
	if f.pairList() {
		drawn = append(drawn, f.pairWhole())
	}
	if f.isRows() {
		drawn = append(drawn, f.ofClass("ring")) // the dots without a partner
	}
	if missing := without(said, drawn); len(missing) > 0 && !f.takesAway() {
		out = append(out, fmt.Sprintf("its description says %v, which is not drawn", missing))
	}
	if missing := without(drawn, said); f.exact() && len(missing) > 0 {
		out = append(out, fmt.Sprintf("%v is drawn, and its description does not say so", missing))
	}
	if f.title == "" {
		out = append(out, "it has no description")
	}
	return out
}

// sums finds the equations in a sentence.
func sums(s string) []equation {
	var out []equation
	var run []rune
	flush := func() {
		if q, err := read(string(run)); err == nil && len(q[0])+len(q) > 2 {
			out = append(out, q)
		}
		run = nil
	}
	for _, r := range clean(s) {
		_, isDigit := digit(r)
		if isDigit || r == '+' || r == minus || r == '=' || r == '?' || r == ' ' {
			run = append(run, r)
		} else {
			flush()
		}
	}
	flush()
	return out
}

// makes says why parts and whole do not fit; one of them may be unknown.
func makes(what string, whole amount, parts ...amount) []string {
	sum, open := 0, 0
	for _, a := range parts {
		if a.known {
			sum += a.n
		} else {
			open++
		}
	}
	switch {
	case !whole.known:
	case open == 0 && sum != whole.n:
		return []string{fmt.Sprintf("%s: the parts make %d, not %d", what, sum, whole.n)}
	case open > 0 && sum > whole.n:
		return []string{fmt.Sprintf("%s: a part is more than the whole %d", what, whole.n)}
	}
	return nil
}

// storyPictures compares the pictures of a story to try with its equation.
func (p *page) storyPictures(s *story, n *html.Node) {
	for _, after := range all(n, class("after")) {
		switch {
		case class("found")(after):
			p.solvedPicture(s, after)
			for _, x := range children(after, both(tag("p"), class("say"))) {
				p.answerSentence(s, x)
			}
		case class("again")(after):
			p.openPicture(s, after)
		}
	}
	for _, reply := range all(n, class("reply")) {
		if class("right")(reply) {
			p.solvedPicture(s, reply)
		} else {
			p.openPicture(s, reply)
		}
	}
	if details := find(n, tag("details")); details != nil {
		p.solvedPicture(s, details)
	}
}

// solvedPicture wants the first picture, if there is one, to show the answer
// and what the story tells.
func (p *page) solvedPicture(s *story, n *html.Node) {
	svg := firstPicture(n)
	if svg == nil || s.pairs() {
		return
	}
	f := p.figure(svg)
	drawn := f.numbers()
	for _, l := range f.labels {
		if l.text == "?" {
			p.add("%s: #%s still asks, and should show the answer", s.name, attr(svg, "id"))
		}
	}
	if missing := without(s.whole().numbers(), drawn); len(missing) > 0 {
		p.add("%s: #%s does not show %v", s.name, attr(svg, "id"), missing)
	}
	found := slices.DeleteFunc(slices.Clone(f.labels), func(l label) bool { return !l.found })
	if len(found) > 0 && !slices.ContainsFunc(found, func(l label) bool { return slices.Contains(s.answers, l.amount().n) }) {
		p.add("%s: #%s marks another answer than %v", s.name, attr(svg, "id"), s.answers)
	}
	p.agrees(s.name, svg, s.whole(), true)
}

// openPicture wants the first picture to keep the answer back, and to show
// nothing but what the story tells.
func (p *page) openPicture(s *story, n *html.Node) {
	svg := firstPicture(n)
	if svg == nil || s.pairs() {
		return
	}
	f := p.figure(svg)
	for _, l := range f.labels {
		if f.columns && len(f.rules) > 0 && l.y < f.rules[0] {
			continue // the places of a number that the story tells
		}
		if a := l.amount(); l.found || a.known && slices.Contains(s.answers, a.n) && !s.tells(a.n) {
			p.add("%s: #%s should still ask, and shows %s", s.name, attr(svg, "id"), l.text)
		}
	}
	if other := without(f.numbers(), s.own.numbers()); f.exact() && len(other) > 0 {
		p.add("%s: #%s shows %v, which the equation does not have", s.name, attr(svg, "id"), other)
	}
	p.agrees(s.name, svg, s.whole(), false)
}

// pictureOf wants the picture of a bare calculation to show it.
func (p *page) pictureOf(q equation, n *html.Node) {
	if svg := firstPicture(n); svg != nil {
		if missing := without(q.numbers(), p.figure(svg).numbers()); len(missing) > 0 {
			p.add("#%s does not show %v", attr(svg, "id"), missing)
		}
		p.agrees("", svg, q, true)
	}
}

// firstPicture is the first picture below n that is not part of a step.
func firstPicture(n *html.Node) *html.Node {
	for _, svg := range all(n, both(tag("svg"), class("picture"))) {
		if !inside(svg, class("steps")) {
			return svg
		}
	}
	return nil
}
