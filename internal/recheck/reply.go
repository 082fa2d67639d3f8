package recheck

import (
	"slices"
	"strings"

	"golang.org/x/net/html"
)

// replies rechecks what is said to every answer that a child can give.
func (p *page) replies(s *story, n *html.Node) {
	replies := all(n, ".reply")
	from := make([][]answer, len(replies))
	all := answers(n, replies)
	p.found.Choices += len(all)
	right := 0
	for _, a := range all {
		if len(a.reply) != 1 {
			p.add("%s: %v gets %d replies, want one", s.name, a.said(), len(a.reply))
			return
		}
		reply := replies[a.reply[0]]
		from[a.reply[0]] = append(from[a.reply[0]], a)
		isRight := is(reply, ".right")
		if isRight {
			right++
		}
		if want := solves(s, a); isRight != want {
			p.add("%s: %v is called right: %t; by the equation: %t", s.name, a.said(), isRight, want)
			return
		}
	}
	p.rightOnes(s, right)
	for i, reply := range replies {
		p.reply(s, reply, from[i])
	}
}

func (a answer) said() any {
	if a.pair != nil {
		return a.pair
	}
	return a.n
}

// solves reports whether an answer makes the story's own equation true. Of a
// whole that is taken apart one part alone may be asked for.
func solves(s *story, a answer) bool {
	switch {
	case s.pairs() && a.pair == nil:
		return a.n <= slices.Max(s.own.numbers())
	case s.pairs():
		return s.own.fill(a.pair...).holds()
	}
	return s.own.fill(a.n).holds()
}

// rightOnes wants one right answer, or every pair of the whole.
func (p *page) rightOnes(s *story, right int) {
	want := 1
	if s.pairs() {
		want = slices.Max(s.own.numbers()) + 1
	}
	if right != want {
		p.add("%s: %d answers are right, want %d", s.name, right, want)
	}
}

// reply rechecks one reply: it names the numbers that lead to it, and tells the
// answer only when they are right.
func (p *page) reply(s *story, reply *html.Node, from []answer) {
	head := find(reply, ".for")
	if named := runs(text(head)); len(named) > 0 {
		var linked []int
		for _, a := range from {
			linked = append(linked, a.n)
		}
		if !slices.Equal(named, linked) {
			p.add("%s: the reply headed %q is shown to %v", s.name, text(head), linked)
		}
	}
	if is(reply, ".right") {
		p.rightReply(s, reply)
	} else if !s.pairs() {
		p.wrongReply(s, reply, from)
	}
}

// runs reads a list of numbers, "3, 5…9", with the comma of the language's letters.
func runs(s string) []int {
	var out []int
	for part := range strings.FieldsFuncSeq(s, func(c rune) bool { return c == ',' || c == '،' || c == '、' }) {
		switch n := numbers(part); len(n) {
		case 1:
			out = append(out, n[0])
		case 2:
			for i := n[0]; i <= n[1]; i++ {
				out = append(out, i)
			}
		}
	}
	return out
}

// rightReply wants the equation of a right reply to be the story's, and its
// picture to show the answer.
func (p *page) rightReply(s *story, reply *html.Node) {
	for _, q := range closed(reply) {
		if v, _ := q[0].value(); !s.pairs() && !sameNumbers(q, s.whole()) && v != s.answers[0] {
			p.add("%s: the right reply says %q", s.name, text(reply))
		}
	}
	p.solvedPicture(s, reply)
	for _, x := range children(reply, "p.whole") {
		p.answerSentence(s, x)
	}
}

// wrongReply wants a reply that helps to keep the answer back, and what it says
// of other numbers to be on the way to them.
func (p *page) wrongReply(s *story, reply *html.Node, from []answer) {
	right := s.answers[0]
	for _, x := range children(reply, "") {
		if said, _ := told(x); !is(x, ".for") && slices.Contains(said, right) && !s.tells(right) {
			p.add("%s: a reply that is not right tells the answer: %q", s.name, text(x))
		}
	}
	for _, q := range closed(reply) {
		v, _ := q[0].value()
		if v == right && !s.tells(right) {
			p.add("%s: a reply that is not right tells the answer: %q", s.name, text(reply))
		}
		if len(from) > 0 && !leadsTo(v, right, from) {
			p.add("%s: the reply %q speaks of %d, which is neither a number that leads there nor a bound of one", s.name, text(reply), v)
		}
	}
}

// leadsTo reports whether v is one of the answers, or lies on the same side of
// the right one as all of them.
func leadsTo(v, right int, from []answer) bool {
	beside := true
	for _, a := range from {
		if a.n == v {
			return true
		}
		beside = beside && (a.n < right) == (v < right)
	}
	return beside && v != right
}

// sameNumbers reports whether two equations have the same numbers in any order.
func sameNumbers(a, b equation) bool {
	x, y := a.numbers(), b.numbers()
	slices.Sort(x)
	slices.Sort(y)
	return slices.Equal(x, y)
}
