package recheck

import (
	"slices"
	"strings"

	"golang.org/x/net/html"

	"homebuild/internal/pattern"
)

// sort is a sort of picture, as its class names it.
type sort struct {
	groups  string // that it may have
	recheck func(*figure)
	shows   func(*figure) shown
	exact   bool // its text alternative has the very numbers that are written in it
}

// shown is what a picture shows of a whole and its parts.
type shown struct {
	wholes []int   // one of them is the whole; none where it is not known
	parts  [][]int // of each, one is a part
	either []int   // each is the whole or a part
}

var sorts = map[string]sort{
	"bar":      {"whole part", (*figure).barFaults, (*figure).barShows, true},
	"compare":  {"longer shorter difference both", (*figure).bothFaults, (*figure).barShows, true},
	"steps":    {"whole part under", (*figure).stepFaults, (*figure).stepShows, true},
	"stacked":  {"bar", (*figure).barFaults, (*figure).barShows, true},
	"bond":     {"whole part", (*figure).bondFaults, (*figure).bondShows, true},
	"dots":     {"whole part heap legend", (*figure).dotFaults, (*figure).dotShows, true},
	"frames":   {"whole legend", (*figure).frameFaults, (*figure).dotShows, true},
	"rows":     {"longer shorter difference", (*figure).counted, (*figure).countShows, false},
	"blocks":   {"whole part total legend", (*figure).blockFaults, (*figure).countShows, false},
	"line":     {"hop", (*figure).lineFaults, (*figure).lineShows, false},
	"make-ten": {"was now", (*figure).makingTenFaults, (*figure).makingTenShows, false},
	// Their rows are held against the equation number by number.
	"splits":  {"split", (*figure).sumFaults, (*figure).nothing, false},
	"columns": {"number total traded", (*figure).columnFaults, (*figure).nothing, false},
}

func (f *figure) nothing() (s shown) { return s }

func (f *figure) exact() bool { return sorts[f.name].exact }

// pictures takes every picture apart and counts it again.
func (p *page) pictures() {
	for _, svg := range all(p.root, "svg.picture") {
		p.found.Pictures++
		f := p.figure(svg)
		p.found.Dots += len(f.everyDot())
		f.recheck()
		for _, fault := range f.faults {
			p.add("#%s: %s", attr(svg, "id"), fault)
		}
	}
}

// recheck notes what does not add up, and compares the picture with its text
// alternative.
func (f *figure) recheck() {
	sort, known := sorts[f.name]
	if !known {
		f.fault("%q is no sort of picture", f.name)
		return
	}
	f.known(f.group)
	sort.recheck(f)
	said, drawn := numbers(f.title), f.numbers()
	for _, q := range sums(f.title) {
		if q.asked() == 0 && !q.holds() {
			f.fault("its description says %q, which is not true", f.title)
		}
	}
	if missing := without(said, append(drawn, f.silent()...)); len(missing) > 0 {
		f.fault("its description says %v, which is not drawn", missing)
	}
	if missing := without(drawn, said); sort.exact && len(missing) > 0 {
		f.fault("%v is drawn, and its description does not say so", missing)
	}
	if f.title == "" {
		f.fault("it has no description")
	}
}

// known wants each group to say something that its picture can have: another
// one would not be read.
func (f *figure) known(g group) {
	for _, x := range g.groups {
		if !slices.Contains(strings.Fields(sorts[g.name].groups), x.name) {
			f.fault("a group says that it is %q, which no %s has", x.name, g.name)
		}
		f.known(x)
	}
}

// silent are the numbers that a picture shows without writing them: the dots
// that move, the whole of all its sums, the dots without a partner, what is
// struck out.
func (f *figure) silent() []int {
	switch f.name {
	case "make-ten":
		return []int{f.moves()}
	case "splits":
		v, _ := f.one("split").sum().value()
		return []int{v}
	case "rows":
		return []int{len(f.one("longer").those("dot", "ring"))}
	case "blocks":
		_, gone := f.one("whole").count()
		return append(f.one("whole").byPlace(), gone)
	}
	return nil
}

var sumLike = pattern.Of(`[0-9+\x{2212}=? ]+`)

// sums finds the equations in a sentence.
func sums(s string) []equation {
	var out []equation
	for _, run := range sumLike().FindAllString(european(s), -1) {
		if q, err := read(run); err == nil && len(q) > 1 {
			out = append(out, q)
		}
	}
	return out
}

// storyPictures compares the pictures of a story to try with its equation.
func (p *page) storyPictures(s *story, n *html.Node) {
	for _, details := range all(n, "details") {
		if is(details, ".whole") {
			p.solvedPicture(s, details)
		} else {
			p.openPicture(s, details)
		}
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
	for _, l := range f.everyLabel("") {
		if l.text == "?" {
			p.add("%s: #%s still asks, and should show the answer", s.name, attr(svg, "id"))
		}
	}
	if missing := without(s.whole().numbers(), drawn); len(missing) > 0 {
		p.add("%s: #%s does not show %v", s.name, attr(svg, "id"), missing)
	}
	found := slices.DeleteFunc(f.everyLabel(""), func(l label) bool { return !l.found })
	if len(found) > 0 && !slices.ContainsFunc(found, func(l label) bool { return slices.Contains(s.answers, l.amount().n) }) {
		p.add("%s: #%s marks another answer than %v", s.name, attr(svg, "id"), s.answers)
	}
	p.agrees(s.name+": ", svg, factsOf(s.whole()))
}

// openPicture wants the first picture to keep the answer back, and to show
// nothing but what the story tells.
func (p *page) openPicture(s *story, n *html.Node) {
	svg := firstPicture(n)
	if svg == nil || s.pairs() {
		return
	}
	f := p.figure(svg)
	for _, l := range f.everyLabel("number") { // whose places the story tells
		if a := l.amount(); l.found || a.known && slices.Contains(s.answers, a.n) && !s.tells(a.n) {
			p.add("%s: #%s should still ask, and shows %s", s.name, attr(svg, "id"), l.text)
		}
	}
	if other := without(f.numbers(), s.own.numbers()); f.exact() && len(other) > 0 {
		p.add("%s: #%s shows %v, which the equation does not have", s.name, attr(svg, "id"), other)
	}
	p.agrees(s.name+": ", svg, factsOf(s.whole()))
}

// pictureOf wants the picture of a bare calculation to show it.
func (p *page) pictureOf(q equation, n *html.Node) {
	if svg := firstPicture(n); svg != nil {
		if missing := without(q.numbers(), p.figure(svg).numbers()); len(missing) > 0 {
			p.add("#%s does not show %v", attr(svg, "id"), missing)
		}
		p.agrees("", svg, factsOf(q))
	}
}

// firstPicture is the first picture below n that is not part of a step.
func firstPicture(n *html.Node) *html.Node {
	for _, svg := range all(n, "svg.picture") {
		if !inside(svg, ".steps") {
			return svg
		}
	}
	return nil
}
