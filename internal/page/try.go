package page

import (
	"reflect"
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/picture"
)

// grid is choices of one shape, laid out together.
type grid struct {
	class   string
	choices []Choice
}

const (
	// manyNumbers is the most that are shown large; more stand ten in a row, as
	// on a number chart.
	manyNumbers = 30
	// chartEnd is the first number that has no place on the chart.
	chartEnd = 100
	// manyAnswers is the most that a reply names at its head in full size.
	manyAnswers = 12
)

// grids sorts the choices by the room they need: numbers from 0 on, single
// numbers, pairs, and words.
func (t *TryStory) grids() []grid {
	sorted := []grid{{class: "nums"}, {class: "nums single"}, {class: "nums pairs"}, {class: "nums words"}}
	if len(t.Choices) > manyNumbers {
		sorted[0].class = "nums chart"
	}
	for _, c := range t.Choices {
		g := 0
		switch {
		case !isZero(c.Other):
			g = 3
		case !c.Pair.IsZero():
			g = 2
		case !t.fromZero() || c.Number >= chartEnd:
			g = 1
		}
		sorted[g].choices = append(sorted[g].choices, c)
	}
	return slices.DeleteFunc(sorted, func(g grid) bool { return len(g.choices) == 0 })
}

// fromZero reports whether the numbers of a range are all there, rather than
// single ones of a large range.
func (t *TryStory) fromZero() bool {
	return len(t.Choices) > 1 && t.Choices[0].Number == 0 && t.Choices[1].Number == 1
}

// forClass makes a long list of answers small.
func (t *TryStory) forClass(reply int) string {
	n := 0
	for _, c := range t.Choices {
		if c.Reply == reply {
			n++
		}
	}
	if n > manyAnswers {
		return "for long"
	}
	return "for"
}

func storyNumber(n int) phrase.Line { return phrase.Say("try.story", phrase.Number("Number", n)) }

// heading is a page's title: its own name, then what the week is about.
func (s *sheet) heading(word string, about phrase.Line) string {
	return s.word(word) + " · " + s.title(about)
}

func pair(first, second int) phrase.Line {
	return phrase.Say("check.pair", phrase.Number("First", first), phrase.Number("Second", second))
}

func firstNumber(n int) phrase.Line {
	return phrase.Say("check.with", phrase.Number("First", n))
}

// after is the link from a story to the one after it, which may be the first of
// the next page; empty after the last.
func (v *Try) after(i int) string {
	switch {
	case i+1 < len(v.Stories):
		return id("#story-", v.First+i+1)
	case v.Next != "":
		return id(v.Next, "#story-", v.First+i+1)
	}
	return ""
}

// shared is the picture of the first reply that is right, or of the first that
// helps. Most replies of a story have the same one; drawing it once keeps the
// page light.
func (t *TryStory) shared(right bool) picture.Picture {
	for _, r := range t.Replies {
		if r.Right == right && r.Picture != nil {
			return r.Picture
		}
	}
	return nil
}

// sharing reports whether reply i shows the shared picture.
func (t *TryStory) sharing(i int) bool {
	r := t.Replies[i]
	return r.Picture != nil && reflect.DeepEqual(r.Picture, t.shared(r.Right))
}

func (t *TryStory) replyClass(i int) string {
	class := "reply help"
	if t.Replies[i].Right {
		class = "reply right"
	}
	if t.sharing(i) {
		class += " uses"
	}
	return class
}
