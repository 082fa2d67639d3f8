package page

import (
	"github.com/a-h/templ"
	"golang.org/x/text/width"

	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/internal/story"
)

// Print is one sheet of paper, both sides.
type Print struct {
	WeekPage
	Scene   Scene
	Words   []ClassWord
	Class   *i18n.Language
	Worked  *Worked       // front: a story worked out, the model
	Stories []story.Story // front: the first, to draw and solve together; back: the others
	Blank   []phrase.Line // back: the story to invent, with blanks; none for none
	Ladder  []PrintRung   // a page more, for who wants smaller or bigger steps
	Answers bool          // answers of the stories upside down at the foot; else only on the learn and try pages
	// WeekURL is the full address of the weekly link, for the code to
	// photograph; empty when the site's address is not known.
	WeekURL string
}

// PrintRung is the stories of a rung of the week's ladder on paper.
type PrintRung struct {
	Words   RungWords
	Stories []story.Story
}

var printKind = &kind{class: "print", css: []string{"base.css", "work.css", pictureCSS, "cards.css", "print.css"}}

// A sheet has two sides and never a third: when the stories of the back are
// many or long, they stand two by two, and then in smaller letters; the story to
// invent counts as one. The bounds were measured on A4 and Letter, with eight
// stories in every language and in one whose words are 40 % longer than English.
const (
	fullStories = 3   // the most that fit in full size
	fullSize    = 700 // letters, the most in full size
	manySize    = 2000
)

// others are the stories of the back.
func (v *Print) others() []story.Story { return v.Stories[min(1, len(v.Stories)):] }

// task is a story to draw and write; the first is solved together.
func (s *state) task(w *Worked, t story.Story, place int) templ.Component {
	return s.ofStory(t, &w.tasks, place, func(s *state) templ.Component { return s.printStory(t, place == 0) })
}

// ofLadder are the stories of all rungs.
func (v *Print) ofLadder() (all []story.Story) {
	for _, r := range v.Ladder {
		all = append(all, r.Stories...)
	}
	return all
}

// sideClass is the class of a side of stories, with one to invent where there is
// one, by how much it has to hold.
func (s *state) sideClass(stories []story.Story, blank []phrase.Line) string {
	size := 0
	for _, t := range stories {
		size += s.length(t)
	}
	for _, l := range blank {
		size += s.letters(l)
	}
	switch {
	case len(stories)+min(1, len(blank)) <= fullStories && size <= fullSize:
		return "side"
	case size <= manySize:
		return "side many"
	}
	return "side many tight"
}

// length is how many letters a story and its answer frame have; one of a
// script with square letters counts for two.
func (s *state) length(t story.Story) int {
	n := s.letters(t.AnswerFrame)
	if t.Own != nil {
		for _, r := range t.Own.In(s.Language.Tag()).Runs {
			n += letters(r.Text)
		}
	}
	for _, x := range t.Sentences {
		n += s.letters(x.Line)
	}
	return n
}

func (s *state) letters(l phrase.Line) int { return letters(s.Language.Plain(l)) }

func letters(text string) int {
	n := 0
	for _, r := range text {
		if k := width.LookupRune(r).Kind(); k == width.EastAsianWide || k == width.EastAsianFullwidth {
			n++
		}
		n++
	}
	return n
}
