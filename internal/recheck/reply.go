package recheck

import (
	"slices"

	"golang.org/x/net/html"
)

// replies rechecks what is said to every answer that a child can tap.
func (p *page) replies(s *story, n *html.Node) {
	boxes := map[string]*html.Node{}
	for _, x := range all(n, ".reply") {
		boxes[attr(x, "id")] = x
	}
	used := map[string][]choice{}
	right := 0
	all := choices(n)
	p.found.Choices += len(all)
	for _, ch := range all {
		box := boxes[ch.reply]
		if box == nil {
			p.add("%s: the choice %q leads to no reply of its story", s.name, ch.label)
			continue
		}
		used[ch.reply] = append(used[ch.reply], ch)
		isRight := is(box, ".right")
		if isRight {
			right++
		}
		if s.pairs() && ch.pair == nil {
			p.add("%s: the choice %q is no pair, and any number up to the whole has one", s.name, ch.label)
		}
		if want := solves(s, ch); isRight != want {
			p.add("%s: the choice %q is called right: %t; by the equation: %t", s.name, ch.label, isRight, want)
		}
	}
	p.rightOnes(s, right)
	for id, box := range boxes {
		p.reply(s, box, used[id])
	}
}

// solves reports whether a choice makes the story's own equation true.
func solves(s *story, ch choice) bool {
	switch {
	case s.pairs():
		return len(ch.pair) == 2 && s.own.fill(ch.pair...).holds()
	case ch.n >= 0:
		return s.own.fill(ch.n).holds()
	}
	return false // words stand for the numbers that are not listed
}

// manyPairs is the largest whole of which every pair is listed; of a larger one
// there are too many to tap, and some are.
const manyPairs = 100

// rightOnes wants one right choice, or every pair of the whole.
func (p *page) rightOnes(s *story, right int) {
	want := 1
	if s.pairs() {
		want = slices.Max(s.own.numbers()) + 1
	}
	if few := want > manyPairs+1 && right > 1; right != want && !few {
		p.add("%s: %d choices are right, want %d", s.name, right, want)
	}
}

// reply rechecks one reply: it names the choices that lead to it, and tells
// the answer only when they are right.
func (p *page) reply(s *story, box *html.Node, from []choice) {
	id := attr(box, "id")
	var named, linked []string
	if head := find(box, ".for"); head != nil {
		named = texts(children(head, "b"))
	}
	for _, ch := range from {
		linked = append(linked, ch.label)
	}
	if !slices.Equal(named, linked) {
		p.add("%s: #%s is headed %q, and %q lead to it", s.name, id, named, linked)
	}
	if is(box, ".right") {
		p.rightReply(s, box)
	} else if !s.pairs() {
		p.wrongReply(s, box, from)
	}
}

// rightReply wants the equation of a right reply to be the story's.
func (p *page) rightReply(s *story, box *html.Node) {
	for _, q := range closed(box) {
		if v, _ := q[0].value(); !s.pairs() && !sameNumbers(q, s.whole()) && v != s.answers[0] {
			p.add("%s: the right reply says %q", s.name, text(box))
		}
	}
}

// wrongReply wants a reply that helps to keep the answer back, and what it says
// of other numbers to be on the way to them.
func (p *page) wrongReply(s *story, box *html.Node, from []choice) {
	answer := s.answers[0]
	for _, x := range children(box, "") {
		if said, _ := told(x); !is(x, ".for") && slices.Contains(said, answer) && !s.tells(answer) {
			p.add("%s: #%s is not right, and tells the answer: %q", s.name, attr(box, "id"), text(x))
		}
	}
	for _, q := range closed(box) {
		v, _ := q[0].value()
		if v == answer && !s.tells(answer) {
			p.add("%s: #%s is not right, and tells the answer: %d", s.name, attr(box, "id"), v)
		}
		if !leadsTo(v, answer, from) {
			p.add("%s: #%s speaks of %d, which is neither a choice that leads there nor a bound of one", s.name, attr(box, "id"), v)
		}
	}
}

// leadsTo reports whether v is one of the choices, or lies on the same side of
// the answer as all of them.
func leadsTo(v, answer int, from []choice) bool {
	beside := len(from) > 0
	for _, ch := range from {
		if ch.n == v {
			return true
		}
		beside = beside && (ch.n < 0 || (ch.n < answer) == (v < answer))
	}
	return beside && v != answer
}

// sameNumbers reports whether two equations have the same numbers in any order.
func sameNumbers(a, b equation) bool {
	x, y := a.numbers(), b.numbers()
	slices.Sort(x)
	slices.Sort(y)
	return slices.Equal(x, y)
}
