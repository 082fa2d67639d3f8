package recheck

import (
	"slices"

	"golang.org/x/net/html"
)

// estimate is what an answer must be near.
type estimate struct {
	sum, easy side
	exact     int // what the sum really comes to
	near      int // the friendly number
	low, high int
	given     []int // the numbers that the rest of the estimate speaks of
}

// senses rechecks every estimate of a page: the friendly equation is true, the
// answer lies within the bounds that are said and is not itself called close, no
// bound is one that part and whole do not allow, it is easier than the calculation,
// and none is about numbers to ten.
func (p *page) senses() {
	for _, h := range append(all(p.root, "h3"), all(p.root, "summary")...) {
		e, isEstimate, fault := estimateAfter(h)
		if !isEstimate {
			continue
		}
		p.found.Estimates++
		switch {
		case fault != "":
			p.add("%q: %s", text(h), fault)
		case e.near < e.low || e.near > e.high || e.low > 0 && e.near-e.low != e.high-e.near:
			p.add("%q: %d is not in the middle of %d and %d", text(h), e.near, e.low, e.high)
		case e.exact < e.low || e.exact > e.high:
			p.add("%q: the answer %d is not from %d to %d", text(h), e.exact, e.low, e.high)
		case e.near == e.exact:
			p.add("%q: the answer %d is called close to itself", text(h), e.exact)
		case !e.possible():
			p.add("%q: from %d to %d is more than %v allows", text(h), e.low, e.high, e.sum)
		case !e.eases():
			p.add("%q: %v takes away as much as %v, and is no easier", text(h), e.easy, e.sum)
		case max(e.exact, slices.Max(e.sum.numbers())) <= 10:
			p.add("%q: numbers to ten need no estimate", text(h))
		}
		for i, n := range e.given {
			if want := []int{e.exact, e.near}; i < 2 && n != want[i] && !slices.Contains(want, n) {
				p.add("%q: speaks of %d, not of %d near %d", text(h), n, e.exact, e.near)
			}
		}
	}
}

// possible reports whether the bounds are what part and whole allow: no sum is below
// its parts, and no difference above its whole.
func (e estimate) possible() bool {
	most := slices.Max(e.sum.numbers())
	if e.exact < e.sum[0].n {
		return e.high <= most
	}
	return e.low >= most
}

// eases reports whether a difference becomes easier: what is taken away changes, or is
// a five or ten already. Nothing is easier to take from a friendly number (800 - 544).
func (e estimate) eases() bool {
	isDifference := len(e.sum) == 2 && len(e.easy) == 2 && e.exact < e.sum[0].n
	return !isDifference || e.easy[1] != e.sum[1] || e.sum[1].n%5 == 0
}

// estimateAfter reads the estimate under a heading. It is one when it closes
// with a single equation and works nothing out step by step.
func estimateAfter(h *html.Node) (e estimate, isEstimate bool, fault string) {
	_, next := beside(h)
	if is(h, "summary") && len(next) == 1 { // what is uncovered by a tap has a box of its own
		next = children(next[0], "")
	}
	end := slices.IndexFunc(next, func(n *html.Node) bool { return !is(n, "p") || is(n, ".chain") })
	if end < 2 || !is(next[end], "p") {
		return e, false, ""
	}
	paragraphs, chain := next[:end], next[end]
	friendly, err := read(text(chain))
	if err != nil || len(friendly) != 2 {
		return e, true, "the friendly equation cannot be read"
	}
	e.easy = friendly[0]
	e.near, _ = friendly[1].value()
	if fault := e.readSums(paragraphs[0], friendly); fault != "" {
		return e, true, fault
	}
	fault = e.readBounds(paragraphs[1])
	if len(paragraphs) > 2 {
		e.given, _ = told(paragraphs[2])
	}
	return e, true, fault
}

// readSums reads "9 + 5 is close to 10 + 5": the friendly sum must be that of
// the friendly equation, the other one is the true one.
func (e *estimate) readSums(p *html.Node, friendly equation) string {
	sums := all(p, ".eq")
	found := false
	for _, n := range sums {
		q, err := read(text(n))
		if err != nil || len(q) != 1 {
			return "the sum " + text(n) + " cannot be read"
		}
		if slices.Equal(q[0], friendly[0]) && !found {
			found = true
			continue
		}
		e.sum = q[0]
		e.exact, _ = q[0].value()
	}
	if len(sums) != 2 || !found {
		return "the friendly sum is not that of the equation below it"
	}
	if said, _ := told(p); len(said) > 0 && !slices.Contains(said, e.near) {
		return "another friendly number is said than the equation gives"
	}
	return ""
}

// readBounds reads "close to 15: from 10 to 20", whatever the order; a language
// may also say how far away it may be.
func (e *estimate) readBounds(p *html.Node) string {
	said, hidden := told(p)
	at := slices.Index(said, e.near)
	if at < 0 || hidden > 0 {
		return "what the answer should be near is not the friendly number"
	}
	rest := slices.Delete(slices.Clone(said), at, at+1)
	switch len(rest) {
	case 1:
		e.low, e.high = max(0, e.near-rest[0]), e.near+rest[0]
	case 2:
		e.low, e.high = min(rest[0], rest[1]), max(rest[0], rest[1])
	default:
		return "it does not say from where to where the answer can be"
	}
	return ""
}
