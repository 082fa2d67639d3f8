package page

import (
	"sync"

	"github.com/a-h/templ"

	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/story"
)

// Try is the page of stories to try at home, with help for any answer.
type Try struct {
	WeekPage
	First   int // number of the first story; a long week has more than one page
	Scene   Scene
	Stories []*TryStory
	Next    string     // link to the page with the stories after these; empty for none
	Ladder  []RungLink // links to the stories beside these
}

// RungLink leads to the stories on a rung of the week's ladder.
type RungLink struct {
	Words RungWords
	Href  string
}

// TryStory is a story with its answers and a reply to each.
type TryStory struct {
	Story   story.Story
	Scene   Scene
	Answers Answers
	Open    picture.Picture // for who would like to look; nil for none
	Solved  picture.Picture
	Solution

	once     sync.Once
	pad      keypad
	outlines outlines
}

// tryKinds differ in how many boxes of answers their style can tell apart;
// stepsKinds have stories of two sorts.
var (
	tryKinds   = newTryKinds()
	stepsKinds = newTryKinds("steps.css")
)

func newTryKinds(more ...string) (all []*kind) {
	for _, n := range boxCounts {
		css := []string{"base.css", "work.css", "tiles.css", "radio.css", "signs.css", pictureCSS, "cards.css", "try.css", answerCSS(n)}
		all = append(all, &kind{class: "try", css: append(css, more...)})
	}
	return all
}

// enough is the kind with the least style that is enough for the stories.
func enough(of []*kind, stories []*TryStory) *kind {
	most := 0
	for _, t := range stories {
		most = max(most, t.keypad().boxes)
	}
	for i, n := range boxCounts {
		if most <= n {
			return of[i]
		}
	}
	panic(id("page: the replies to a story need ", most, " boxes")) // a test of internal/site counts them
}

func storyNumber(n int) phrase.Line { return phrase.Say("try.story", phrase.Number("Number", n)) }

func replyNumber(n int) phrase.Line { return phrase.Say("try.reply", phrase.Number("Number", n)) }

func moreThan(n int) phrase.Line { return phrase.Say("try.more", phrase.Number("Number", n)) }

// question is the sentence that asks; of a story in a teacher's words, the answer
// with its gap.
func (s *state) question(t story.Story) templ.Component {
	for _, x := range t.Sentences {
		if x.Role == story.Question {
			return s.say(x.Line)
		}
	}
	return s.answerFrame(t)
}

// scenes are all that the page draws.
func (v *Try) scenes() []Scene {
	all := []Scene{v.Scene}
	for _, t := range v.Stories {
		all = append(all, t.Scene)
	}
	return all
}

// keypad is that of the story's answers, laid out once.
func (t *TryStory) keypad() keypad {
	t.once.Do(func() { t.pad = t.Answers.keypad() })
	return t.pad
}

// tryStory is story n.
func (s *state) tryStory(t *TryStory, n int) templ.Component {
	return s.ofStory(t.Story, &t.outlines, n, func(s *state) templ.Component { return s.storyToTry(t, t.keypad(), n) })
}
