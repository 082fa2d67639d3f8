package recheck

import (
	"path"
	"slices"
	"strings"

	"golang.org/x/net/html"
)

// walk rechecks the story that is worked step by step.
func (p *page) walk() {
	n := find(p.root, ".walk")
	if n == nil {
		return
	}
	// written: the story's own equation and the one that finds the answer.
	s := p.storyOf("the worked story", all(n, ".known"), written(find(n, ".in-number")), true)
	if s == nil {
		return
	}
	p.solvedBy(s, n)
	p.signs(s, n)
	p.grows(s, n)
	p.crossings(s, n)
	for _, x := range all(n, ".in-back") {
		p.solvedPicture(s, x)
	}
	var tell []string
	for _, x := range all(n, ".said") {
		tell = append(tell, sentences(x, ".say")...)
	}
	for _, again := range all(n, ".again") {
		if !slices.Equal(sentences(again, "span"), tell) {
			p.add("%s: it is not told again as it was told step by step", s.name)
		}
	}
}

// written are the equations below n that stand there whole, uncovered by a tap or
// by the right sign: not the one whose sign is still to be chosen.
func written(n *html.Node) (out []*html.Node) {
	for _, x := range all(n, "p.big") {
		if !is(x.Parent, ".signs") {
			out = append(out, x)
		}
	}
	return out
}

// grows wants the picture that grows with the story to show what is told so
// far and no more, and at its end all but the answer.
func (p *page) grows(s *story, walk *html.Node) {
	if s.pairs() {
		return
	}
	stages := all(walk, ".in-show")
	var so []int
	hidden := 0
	for i, stage := range stages {
		for _, x := range children(stage, "p.say") {
			said, words := told(x)
			so, hidden = append(so, said...), hidden+words
		}
		cover := find(stage, "details")
		if cover == nil {
			p.add("%s: a stage of its picture is not there", s.name)
			continue
		}
		for _, svg := range all(stage, "svg.picture") {
			if early := without(p.figure(svg).numbers(), so); hidden == 0 && p.figure(svg).exact() && len(early) > 0 {
				p.add("%s: #%s shows %v before it is told", s.name, attr(svg, "id"), early)
			}
		}
		if i+1 == len(stages) {
			p.openPicture(s, cover)
		}
	}
}

// sentences are the texts of what matches below n.
func sentences(n *html.Node, want string) []string {
	return texts(slices.DeleteFunc(all(n, want), func(x *html.Node) bool { return is(x, ".hide") || is(x, ".gap") }))
}

// pairs rechecks the pages that know any two numbers: the equations are of the
// two numbers in the heading, and the answers are found.
func (p *page) pairs() {
	for _, n := range all(p.root, "section.reply") {
		h := find(n, "h2")
		if h == nil {
			p.add("#%s has no heading", attr(n, "id"))
			continue
		}
		two, _ := told(h)
		for _, r := range all(n, ".result") {
			p.result(two, r)
		}
	}
	for _, a := range all(p.root, "a.num") {
		if two, ok := strings.CutPrefix(attr(a, "href"), "#pair-"); ok {
			p.leadsToPair(a, two)
			continue
		}
		to, ok := strings.CutPrefix(attr(a, "href"), "#with-")
		if !ok {
			to, ok = strings.CutSuffix(path.Base(attr(a, "href")), ".html")
		}
		if ok && !slices.Equal(numbers(text(a)), numbers(to)) {
			p.add("the number %q leads to %q", text(a), attr(a, "href"))
		}
	}
}

// leadsToPair wants a number under another one to lead to these two.
func (p *page) leadsToPair(a *html.Node, two string) {
	var first []int
	for _, fold := range filter(a.Ancestors(), "details") {
		first = numbers(text(find(fold, "summary")))
	}
	if of := unique(append(first, numbers(text(a))...)); len(of) != 2 || !slices.Equal(of, unique(numbers(two))) {
		p.add("the numbers %v lead to %q", of, two)
	}
}

// result rechecks one calculation of two numbers.
func (p *page) result(two []int, n *html.Node) {
	big := find(n, "p.big")
	if big == nil {
		p.add("%v: there is no equation", two)
		return
	}
	q, err := read(text(big))
	if err != nil || len(q) != 2 || q.asked() > 0 {
		p.add("%v: %q is not a solved equation", two, text(big))
		return
	}
	if of := unique(side(q[0]).numbers()); !slices.Equal(of, unique(two)) {
		p.add("%v: %q is not about these numbers", two, text(big))
	}
	answer, _ := q[1].value()
	for _, chain := range workings(n) {
		if v, _ := chain[len(chain)-1].value(); v != answer && !slices.Contains(q.numbers(), v) {
			p.add("%v: it is worked out to %d, not to %d", two, v, answer)
		}
	}
	p.pictureOf(q, n)
}

func (s side) numbers() []int { return equation{s}.numbers() }
