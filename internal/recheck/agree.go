package recheck

import (
	"fmt"
	"slices"

	"golang.org/x/net/html"
)

// fact is a whole and its parts.
type fact struct {
	whole int
	parts []int
}

// factOf reads a solved equation of one step. A chain of two steps is none.
func factOf(q equation) (fact, bool) {
	n := q.numbers()
	if len(q) != 2 || q.asked() > 0 || len(n) < 3 {
		return fact{}, false
	}
	slices.Sort(n)
	f := fact{n[len(n)-1], n[:len(n)-1]}
	sum := 0
	for _, part := range f.parts {
		sum += part
	}
	return f, sum == f.whole
}

// has reports whether n is the whole or a part.
func (w fact) has(n int) bool { return n == w.whole || slices.Contains(w.parts, n) }

// agrees wants a picture to show the whole and the parts of the equation that
// it stands with, each in its own place: dots in ten frames are as many as the
// whole, the topmost circle of a bond is the whole, and so on.
func (p *page) agrees(name string, svg *html.Node, q equation, solved bool) {
	w, ok := factOf(q)
	if !ok {
		return
	}
	if name != "" {
		name += ": "
	}
	for _, fault := range p.figure(svg).differs(w, solved) {
		p.add("%s#%s does not go with %s: %s", name, attr(svg, "id"), q, fault)
	}
}

// differs says what a picture shows that is not so in a fact.
func (f *figure) differs(w fact, solved bool) []string {
	switch {
	case len(f.circles) > 0:
		return f.bondDiffers(w)
	case f.hasRect("grid") && f.arrows > 0:
		return f.makingTenDiffers(w)
	case f.hasRect("grid"):
		counted, _, _ := f.split()
		return f.dotsDiffer(w, counted)
	case f.isLine():
		return f.lineDiffers(w)
	case f.columns, f.pairList():
		return nil // their rows are held against the equation number by number
	case len(f.blocks) > 0 || f.isRows():
		return f.bandsDiffer(w)
	case len(f.dots) > 0:
		if counted, _, _ := f.split(); solved {
			return f.dotsDiffer(w, counted)
		}
		return nil // a part that is asked for is an empty place
	}
	return f.barDiffers(w)
}

func (f *figure) bondDiffers(w fact) []string {
	whole, parts := f.bond()
	var out []string
	if whole.known && whole.n != w.whole {
		out = append(out, fmt.Sprintf("the whole is %d, and %d stands in its circle", w.whole, whole.n))
	}
	left := slices.Clone(w.parts)
	for _, a := range parts {
		i := slices.Index(left, a.n)
		switch {
		case !a.known:
		case i < 0:
			out = append(out, fmt.Sprintf("%d is no part", a.n))
		default:
			left = slices.Delete(left, i, i+1)
		}
	}
	if len(parts) != len(w.parts) {
		out = append(out, fmt.Sprintf("it has %d parts, not %d", len(parts), len(w.parts)))
	}
	return out
}

func (f *figure) makingTenDiffers(w fact) []string {
	for _, l := range f.labels {
		q, err := read(l.text)
		if err != nil {
			continue // told already
		}
		n := q.numbers()
		if slices.Sort(n); slices.Equal(n, w.parts) {
			return nil
		}
	}
	return []string{fmt.Sprintf("no sum under the frames is of %v", w.parts)}
}

// dotsDiffer counts all dots: those that are taken away and those that are not
// known yet are drawn, too.
func (f *figure) dotsDiffer(w fact, counted []dot) []string {
	var out []string
	if len(counted) != w.whole {
		out = append(out, fmt.Sprintf("it has %d dots in all, not %d", len(counted), w.whole))
	}
	gone := len(slices.DeleteFunc(slices.Clone(counted), func(d dot) bool { return !f.crossedOut(d) }))
	if gone > 0 && !slices.Contains(w.parts, gone) {
		out = append(out, fmt.Sprintf("%d dots are crossed out, and %d is no part", gone, gone))
	}
	return out
}

// lineDiffers wants the walk along a line to end or start at the whole, and to
// be as long as a part or several.
func (f *figure) lineDiffers(w fact) []string {
	if len(f.hops) == 0 {
		return nil
	}
	at, _ := f.lineNumbers()
	start, isStart := at[f.hops[0].from]
	end, isEnd := at[f.hops[len(f.hops)-1].to]
	if !isStart || !isEnd {
		return nil
	}
	low, high := min(start, end), max(start, end)
	if high != w.whole {
		return []string{fmt.Sprintf("the farthest number is %d, not %d", high, w.whole)}
	}
	if !slices.Contains(w.parts, low) && !slices.Contains(w.parts, high-low) {
		return []string{fmt.Sprintf("it goes from %d to %d", start, end)}
	}
	return nil
}

// bandsDiffer wants each row of dots or of tens and ones to be the whole or a
// part.
func (f *figure) bandsDiffer(w fact) []string {
	var out []string
	for _, b := range f.bands() {
		if b.value > 0 && !w.has(b.value) {
			out = append(out, fmt.Sprintf("%d is drawn, and is neither its whole nor a part", b.value))
		}
		if b.crossed > 0 && !slices.Contains(w.parts, b.crossed) {
			out = append(out, fmt.Sprintf("%d is crossed out, and is no part", b.crossed))
		}
	}
	return out
}

// barDiffers wants the whole to be that of a bar, or the longer bar of two.
func (f *figure) barDiffers(w fact) []string {
	known := false
	for i, row := range f.rows() {
		whole := row.whole
		if row.brace == nil && i == 0 && len(row.parts) == 1 {
			whole = row.values[0]
		}
		if whole.known && whole.n == w.whole {
			return nil
		}
		known = known || whole.known
	}
	if known {
		return []string{fmt.Sprintf("no bar stands for the whole %d", w.whole)}
	}
	return nil
}

// steps holds the pictures of each way of working against the calculation that
// it works out.
func (p *page) steps() {
	for _, list := range all(p.root, both(tag("ol"), class("steps"))) {
		of := worksOut(list)
		for _, svg := range all(list, both(tag("svg"), class("picture"))) {
			if p.figure(svg).pairList() {
				continue // every pair is right
			}
			p.agreesWithOne(svg, of)
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
			p.add("#%s stands beside %s, and does not show %d", attr(svg, "id"), q, v)
		}
	}
}

// worksOut gives the facts that steps can be about: the equations above them,
// and the chain that closes them.
func worksOut(list *html.Node) []fact {
	var near []*html.Node
	for n := list.PrevSibling; n != nil; n = n.PrevSibling {
		if n.Type == html.ElementNode && class("big")(n) {
			near = append(near, n)
		}
	}
	for n := list.NextSibling; n != nil; n = n.NextSibling {
		if n.Type == html.ElementNode {
			near = append(near, n)
			break
		}
	}
	var out []fact
	for _, n := range near {
		q, err := read(text(n))
		if err != nil || len(q) < 2 {
			continue
		}
		if x, ok := q.solve(); ok {
			q = q.fill(x)
		}
		if w, ok := factOf(equation{q[0], q[len(q)-1]}); ok {
			out = append(out, w)
		}
	}
	return out
}

// agreesWithOne wants a picture to go with one of the facts: that of the
// calculation, or of the sum that finds it.
func (p *page) agreesWithOne(svg *html.Node, of []fact) {
	var first []string
	for i, w := range of {
		faults := p.figure(svg).differs(w, true)
		if len(faults) == 0 {
			return
		}
		if i == 0 {
			first = faults
		}
	}
	if len(first) > 0 {
		p.add("#%s does not go with its calculation: %s", attr(svg, "id"), first[0])
	} else if len(of) == 0 {
		p.add("#%s stands with no calculation", attr(svg, "id"))
	}
}
