package recheck

import (
	"fmt"
	"slices"
	"strings"

	"golang.org/x/net/html"
)

// story is a story as it was read from a page.
type story struct {
	name   string   // for problems
	told   []int    // numbers that the sentences tell, in order
	hidden int      // numbers that they tell in a word or a dual
	own    equation // the story's own, with "?"
	// answers are the numbers for the question marks of own; none when they
	// cannot be known, since any pair is right.
	answers []int
}

// pairs reports whether the story asks for two parts of a whole.
func (s *story) pairs() bool { return s.own.asked() == 2 }

// whole is the story's own equation with the answer filled in.
func (s *story) whole() equation { return s.own.fill(s.answers...) }

// tells reports whether the story tells n. A number word or a dual tells it
// without a digit; the equation then has it.
func (s *story) tells(n int) bool {
	return slices.Contains(s.told, n) || slices.Contains(s.own.numbers(), n)
}

// storyOf reads a story from the sentences that tell it and its equations; nil where
// there is none to hold the rest against. Of a strict one every number is needed.
func (p *page) storyOf(name string, say, equations []*html.Node, strict bool) *story {
	p.found.Stories++
	s := &story{name: name}
	for _, x := range say {
		said, hidden := told(x)
		s.told, s.hidden = append(s.told, said...), s.hidden+hidden
	}
	if !p.ownEquation(s, equations) {
		p.add("%s: there is no equation with a question mark and an answer", name)
		return nil
	}
	p.toldNumbers(s, strict)
	return s
}

// stories rechecks the stories to try.
func (p *page) stories() {
	for i, n := range all(p.root, "section.story") {
		name, say, details := fmt.Sprintf("story %d", i+1), children(n, "p.say"), find(n, "details.whole")
		if len(say) == 0 {
			p.add("%s: there is no story", name)
			continue
		}
		s := p.storyOf(name, say[:1], children(find(details, ".way"), "p.big"), false)
		if s == nil {
			continue
		}
		p.replies(s, n)
		p.solvedBy(s, details)
		p.signs(s, details)
		p.storyPictures(s, n)
		p.crossings(s, n)
	}
}

// ownEquation reads the story's own equation, and those that find its answer
// where they are others: the last of them must have the same answer.
func (p *page) ownEquation(s *story, all []*html.Node) bool {
	for i, x := range all {
		q, err := read(text(x))
		if err != nil {
			return false
		}
		answer, solved := q.solve()
		switch {
		case i == 0:
			s.own = q
			if solved {
				s.answers = []int{answer}
			}
		case i+1 == len(all) && (!solved || !slices.Equal(s.answers, []int{answer})):
			p.add("%s: %q has another answer than the story's own equation", s.name, text(x))
		}
	}
	return s.pairs() || len(s.answers) == 1
}

// signs wants the equation whose signs are chosen to have the story's answer, and
// the right one of each pair of signs to be the equation's.
func (p *page) signs(s *story, n *html.Node) {
	for _, sign := range all(n, "fieldset.signs") {
		said := text(find(find(sign, ".on-yes"), ".big"))
		q, err := read(said)
		answer, solved := q.solve()
		if err != nil || !solved || !slices.Equal(s.answers, []int{answer}) {
			p.add("%s: the signs are chosen for %q, which has another answer", s.name, said)
		}
		var right []string
		for _, tile := range all(sign, "label.num") {
			if is(find(tile, "input"), ".yes") {
				right = append(right, text(tile))
			}
		}
		if !slices.Equal(right, signsOf(said)) {
			p.add("%s: the signs of %q are %q, and %q are called right", s.name, said, signsOf(said), right)
		}
	}
}

func signsOf(s string) (out []string) {
	for _, r := range s {
		if r == '+' || r == '−' {
			out = append(out, string(r))
		}
	}
	return out
}

// toldNumbers compares the sentences with the equation: every number of the
// equation is told, and at most one number that is told is not in it.
func (p *page) toldNumbers(s *story, strict bool) {
	missing := without(unique(s.own.numbers()), s.told)
	if len(missing) > s.hidden {
		p.add("%s: the equation has %v, which the sentences do not tell", s.name, missing)
	}
	extra := without(s.told, s.own.numbers())
	if len(extra) > 1 || strict && len(extra) > 0 {
		p.add("%s: the sentences tell %v, which the equation does not have", s.name, extra)
	}
}

// solvedBy checks how the answer is found and said in full.
func (p *page) solvedBy(s *story, n *html.Node) {
	for _, x := range all(n, "p.slip.say") {
		p.answerSentence(s, x)
	}
	chains := workings(n)
	ends := func(q equation) bool {
		v, _ := q[len(q)-1].value()
		return slices.Contains(s.whole().numbers(), v)
	}
	if len(chains) > 0 && !slices.ContainsFunc(chains, ends) {
		p.add("%s: it is worked out, but not to the answer", s.name)
	}
}

// workings are the chains that close a calculation worked out step by step.
func workings(n *html.Node) []equation {
	var out []equation
	for _, x := range all(n, "p.chain") {
		at := x
		if inside(x, "details.look") { // it is uncovered by a tap
			at = x.Parent.Parent
		}
		if before, _ := beside(at); len(before) > 0 && is(before[len(before)-1], "ol") {
			if q, err := read(text(x)); err == nil {
				out = append(out, q)
			}
		}
	}
	return out
}

// answerSentence checks the number in the answer said in full.
func (p *page) answerSentence(s *story, n *html.Node) {
	said, hidden := told(n)
	switch {
	case s.pairs():
		if hidden == 0 && find(n, ".gap") == nil && !onlySettles(n) && (len(said) != 2 || !s.own.fill(said...).holds()) {
			p.add("%s: %q is not a pair for the equation", s.name, text(n))
		}
	case len(said) > 0 && !slices.Equal(said, s.answers):
		p.add("%s: %q says another answer than %v", s.name, text(n), s.answers)
	case len(said) == 0 && hidden == 0 && find(n, ".gap") == nil:
		p.add("%s: %q says no number", s.name, text(n))
	}
}

// onlySettles reports whether n tells what the answer settles and leaves the answer
// itself out.
func onlySettles(n *html.Node) bool {
	so := find(n, ".so")
	return so != nil && strings.TrimSpace(text(n)) == strings.TrimSpace(text(so))
}

// without lists what is in a and not in b.
func without(a, b []int) []int {
	return slices.DeleteFunc(slices.Clone(a), func(n int) bool { return slices.Contains(b, n) })
}

func unique(a []int) []int {
	a = slices.Clone(a)
	slices.Sort(a)
	return slices.Compact(a)
}
