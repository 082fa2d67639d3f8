package page

import (
	"github.com/a-h/templ"

	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// Worked is a story with everything the walk shows.
type Worked struct {
	Story   story.Story
	Scene   Scene
	Amounts []Amount // what each sentence of the story counts
	// Growing is the picture as the story goes on: first part, second part,
	// then the "?".
	Growing []Panel
	Solved  picture.Picture
	Solution
	Another *Working // another way; nil for none

	path, walk, model, tasks, code outlines
}

// pairs reports whether the story takes a whole apart: its answer is two numbers.
func (w *Worked) pairs() bool { return w.Story.Problem.Kind() == problem.TogetherBoth }

// one is the message for an answer of one number, or that for two.
func (w *Worked) one(id, pairs string) string {
	if w.pairs() {
		return pairs
	}
	return id
}

// Amount is what a sentence counts, drawn by itself.
type Amount struct {
	Picture picture.Picture // nil where it counts nothing
	// Outline says that nothing lies there: the amount goes away, or tells how many
	// more or fewer there are. Crossing out is left to the child's own drawing.
	Outline bool
}

// Panel is a picture with what to do or see in it.
type Panel struct {
	Picture picture.Picture
	Caption []phrase.Line // the sentences that made it grow; empty for none
}

// walkParts are the five parts of the walk, in the order in which the class
// works. Each has one to three screens.
var walkParts = []string{"tell", "gap", "show", "number", "back"}

// mostScreens is how many screens the style knows.
const mostScreens = 16

// screen is one of the walk: what is seen at a time.
type screen struct {
	part int  // place in walkParts
	told bool // the story stands above it once more
	body templ.Component
}

// screens are those of the walk in their order.
func (s *state) screens(v *Learn) (all []screen) {
	w := v.Worked
	add := func(part int, told bool, body templ.Component) { all = append(all, screen{part, told, body}) }
	opening, known, asked := acts(w.Story)
	if len(opening) > 0 {
		add(0, false, s.tellPlace(w, opening))
	}
	add(0, false, s.tellAmounts(w, known))
	add(0, false, s.tellQuestion(w, asked))
	add(1, true, s.leaveGap(w))
	for i := range w.Growing {
		add(2, true, s.showPart(w, i))
	}
	add(3, true, s.numberIt(w))
	switch {
	case w.pairs():
		add(3, true, s.findPairs(w))
	case w.First != nil:
		add(3, true, s.workIt(*w.First, "learn.number.work"))
		add(3, true, s.workIt(w.Way, "learn.number.then"))
	default:
		add(3, true, s.workIt(w.Way, "learn.number.work"))
		if w.Another != nil {
			add(3, true, s.workIt(*w.Another, "learn.number.another"))
		}
	}
	add(4, true, s.sayAnswer(w))
	add(4, true, s.makeSense(w))
	add(4, false, s.arrive(v))
	return all
}

// acts are the places of a story's sentences: before the first amount, from there
// to the question, and the question.
func acts(t story.Story) (opening, known, asked []int) {
	for i, x := range t.Sentences {
		switch {
		case x.Role == story.Question:
			asked = append(asked, i)
		case x.Role == story.Scene && len(known) == 0:
			opening = append(opening, i)
		default:
			known = append(known, i)
		}
	}
	return opening, known, asked
}

// within tells where a screen is among those of its part, counted from 1.
func within(all []screen, i int) (n, of int) {
	for j, x := range all {
		if x.part == all[i].part {
			of++
			if j <= i {
				n++
			}
		}
	}
	return n, of
}

// lit is the class of a sentence of the story, told once more, that the screen is
// about.
func (x screen) lit(role story.Role) string {
	part := walkParts[x.part]
	if role == story.Question && part != "show" && part != "number" || role == story.Known && part == "number" {
		return ` class="lit"`
	}
	return ""
}

func stepCount(n, of int) phrase.Line {
	return phrase.Say("learn.count", phrase.Number("Step", n), phrase.Number("Steps", of))
}

func stepNumber(n int) phrase.Line { return phrase.Say("learn.look.step", phrase.Number("Step", n)) }

// roleNames give a sentence's role its class.
var roleNames = map[story.Role]string{
	story.Scene: "scene", story.Known: "known", story.Extra: "extra", story.Question: "ask",
}
