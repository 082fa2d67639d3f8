package page

import (
	"slices"

	"github.com/a-h/templ"

	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// Try is the page of stories to try at home, with help for any answer.
type Try struct {
	WeekPage
	First   int // number of the first story; a long week has more than one page
	Stories []*TryStory
	Next    string // link to the page with the stories after these; empty for none
}

// TryStory is a story with its number choices and a reply to each.
type TryStory struct {
	Story   story.Story
	Choices []Choice
	Replies []Reply
	Open    picture.Picture // stands below the replies that help; nil where every answer is right
	Solved  picture.Picture // stands below the right one, and in the whole way
	Solution
}

// Choice is something to tap as an answer: a number, a pair, or words such as
// "another number".
type Choice struct {
	Number int
	Pair   problem.Equation // shown instead of Number when not zero: 3 + 5
	Other  phrase.Line      // shown instead of Number when not zero
	Reply  int              // place in Replies
}

// Reply answers one choice or several that share it.
type Reply struct {
	Right bool
	Lines []phrase.Line // kind and short; the page opens the right one with a calm word
}

var tryKind = &kind{"try", []string{"base.css", pictureCSS, "try.css"}}

// choice writes what stands on a choice.
func (s *state) choice(c Choice) templ.Component {
	switch {
	case !isZero(c.Other):
		return s.say(c.Other)
	case !c.Pair.IsZero():
		return s.equation(c.Pair)
	}
	return raw(func(m *markup) { m.write(templ.EscapeString(s.Language.Number(c.Number))) })
}

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

func (r Reply) class() string {
	if r.Right {
		return "reply right uses"
	}
	return "reply help uses"
}
