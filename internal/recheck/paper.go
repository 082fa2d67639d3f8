package recheck

import (
	"fmt"
	"slices"
	"strings"

	"golang.org/x/net/html"
)

const printEnd = "-print.html"

// model rechecks the story that is worked out on the sheet of paper.
func (p *page) model() {
	n := find(p.root, ".model")
	if n == nil {
		return
	}
	say := all(n, "p.say")
	s := p.storyOf("the model", say[:min(1, len(say))], children(n, "p.big"), false)
	if s == nil {
		return
	}
	p.solvedBy(s, n)
	p.solvedPicture(s, n)
	p.crossings(s, n)
	if !s.pairs() && len(workings(n)) == 0 {
		p.add("%s: it is not worked out", s.name)
	}
}

// papers wants a week's sheet of paper to have the same stories as its other
// pages, and the right answers: below the model and at its foot.
func (c *checker) papers() {
	for _, name := range c.paths {
		start, ok := strings.CutSuffix(name, printEnd)
		if !ok {
			continue
		}
		p, learn, try := c.pages[name], c.pages[start+".html"], c.tryPages(start)
		if learn == nil || len(try) == 0 {
			p.add("the other pages of its week are missing")
			continue
		}
		var want, shapes, answers []string
		for _, other := range append([]*page{learn}, try...) {
			want, shapes, answers = append(want, other.told...), append(shapes, other.shapes...), append(answers, other.answers...)
		}
		if len(p.told) != len(want) {
			p.add("it has %d stories, the other pages of the week %d", len(p.told), len(want))
			continue
		}
		if !slices.Equal(p.shapes, shapes) {
			p.add("the equations to write are %q, on the other pages %q", p.shapes, shapes)
		}
		for i := range want {
			if p.told[i] != want[i] {
				p.add("story %d on paper is not that of the other pages: %s", i+1, short(want[i]))
			}
		}
		of := len(learn.answers) // those of the model
		if !slices.EqualFunc(p.answers, answers[:of], sameAnswer) {
			p.add("the model's answer is %q, want %q", p.answers, answers[:of])
		}
		if p.foot != nil && !slices.EqualFunc(p.foot, answers[of:], sameAnswer) {
			p.add("the answers on paper are %q, want %q", p.foot, answers[of:])
		}
	}
}

// tryPages are the pages of stories to try: the first, and for a long week
// those that follow it; then those of the stories beside them.
func (c *checker) tryPages(start string) (out []*page) {
	for _, name := range []string{"-try", "-steps"} {
		end := ".html"
		for n := 2; c.pages[start+name+end] != nil; n++ {
			out = append(out, c.pages[start+name+end])
			end = fmt.Sprintf("-%d.html", n)
		}
	}
	return out
}

// keep keeps what a page is compared with others by: the texts of its stories,
// their answers said in full, and its numbers.
func (p *page) keep() {
	p.parts = p.cut()
	keep := func(story, answer, way *html.Node) {
		said := text(answer)
		if answer != nil && onlySettles(answer) {
			said = ""
		}
		p.told, p.answers = append(p.told, text(story)), append(p.answers, said)
		for _, equation := range written(way)[:min(1, len(written(way)))] {
			if q, err := read(text(equation)); err == nil {
				p.shapes = append(p.shapes, q.shape())
			}
		}
	}
	if walk := find(p.root, ".walk"); walk != nil {
		keep(find(walk, ".again"), find(find(walk, ".in-back"), ".slip.say"), find(walk, ".in-number"))
	}
	for _, n := range all(p.root, "section.story") {
		keep(find(n, "p.say"), find(find(n, ".right"), "p.whole"), find(n, "details.whole"))
	}
	if model := find(p.root, ".model"); model != nil {
		keep(find(model, "p.say"), find(model, ".slip.say"), model)
	}
	for _, n := range all(p.root, ".task") {
		p.told = append(p.told, text(find(n, "p.say")))
		p.shapes = append(p.shapes, boxes(find(n, ".big")))
	}
	for _, foot := range all(p.root, ".turned") {
		p.foot = append(p.foot, texts(children(foot, "span"))...)
	}
}

// sameAnswer compares an answer on paper with the one on another page, which a
// story with many right answers leaves out.
func sameAnswer(paper, other string) bool { return other == "" || paper == other }

// Marks of an equation that is still to be written.
const (
	numberBox = "□"
	signBox   = "○"
)

// shape is the equation with a box for each number and for each sign.
func (q equation) shape() string {
	var sides []string
	for _, s := range q {
		sides = append(sides, strings.TrimSuffix(strings.Repeat(numberBox+signBox, len(s)), signBox))
	}
	return strings.Join(sides, "=")
}

// boxes reads the shape of an equation to write: boxes, and what is printed
// between them.
func boxes(n *html.Node) string {
	out := ""
	for c := range n.ChildNodes() {
		switch {
		case is(c, ".sign"):
			out += signBox
		case is(c, ".box"):
			out += numberBox
		default:
			out += strings.TrimSpace(text(c))
		}
	}
	return out
}
