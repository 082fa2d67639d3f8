package page

import (
	"context"
	"io"

	"github.com/a-h/templ"
)

// Whole is everything of a week on one page, to be sent as one file: what is
// learned, the stories to try, the child's own story and the sheet of paper.
// Its parts lead to each other, and to nothing else; see [Parts].
type Whole struct {
	WeekPage
	Learn  *Learn
	Try    *Try
	Invent *Invent
	Print  *Print
	Steps  *Steps // nil for none
}

// Parts are the links to the parts of a Whole.
func Parts() Links {
	return Links{Learn: "#" + learnPart, Try: "#" + tryPart, Invent: "#" + inventPart, Print: "#" + printPart}
}

// The ids of the parts.
const (
	learnPart  = "learn"
	tryPart    = "try"
	stepsPart  = "steps"
	inventPart = "own"
	printPart  = "paper"
)

var wholeKind = &kind{class: "whole", css: []string{"base.css", "work.css", "tiles.css", "radio.css", "signs.css", pictureCSS, "cards.css", "learn.css", walkCSS, "try.css", "steps.css", answerCSS(mostBoxes), "own.css", picksCSS, "print.css", "whole.css"}}

// scoped are the styles that a whole page keeps to the part of their class.
var scoped = map[string]string{
	"learn.css": learnKind.class, walkCSS: learnKind.class, "try.css": tryKinds[0].class, "steps.css": tryKinds[0].class, answerCSS(mostBoxes): tryKinds[0].class, "own.css": inventKind.class, picksCSS: inventKind.class, "print.css": printKind.class,
}

// part is a page that stands within another, in an element with an id.
type part struct {
	id   string
	view View
}

func (v *Whole) parts() []part {
	all := []part{{learnPart, v.Learn}, {tryPart, v.Try}}
	if v.Steps != nil {
		all = append(all, part{stepsPart, v.Steps})
	}
	return append(all, part{inventPart, v.Invent}, part{printPart, v.Print})
}

// within writes what stands on a page, without what stands around it.
func (s *state) within(p part) templ.Component {
	return templ.ComponentFunc(func(ctx context.Context, w io.Writer) error {
		inner := newState(p.view.layout())
		inner.part, inner.counted = p.id, s.counted
		err := p.view.component(inner).Render(templ.ClearChildren(ctx), w)
		s.counted = inner.counted
		return err
	})
}
