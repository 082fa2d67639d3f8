package page

import (
	"homebuild/internal/phrase"
	"homebuild/internal/story"
)

// walkStep is a step of the walk; its id is also in the theme's learn.css.
type walkStep struct{ id string }

var walkSteps = []walkStep{{"read"}, {"see"}, {"frame"}, {"draw"}, {"write"}, {"work"}, {"say"}, {"sense"}}

func (w walkStep) title() string { return "learn." + w.id + ".title" }

// enter is where the step begins: reading begins with the first sentence.
func (w walkStep) enter() string {
	if w.id == "read" {
		return "read-1"
	}
	return w.id
}

func walkBack(i int, back string) string {
	if back != "" {
		return back
	}
	return "#" + walkSteps[i-1].id
}

func walkNext(i int) string {
	if i+1 < len(walkSteps) {
		return "#" + walkSteps[i+1].id
	}
	return "#rest"
}

func stepCount(i int) phrase.Line {
	return phrase.Say("learn.step", phrase.Number("Step", i+1), phrase.Number("Steps", len(walkSteps)))
}

func minutes(n int) phrase.Line { return phrase.Say("learn.minutes", phrase.Number("Minutes", n)) }

// roleNames give a sentence's role its class in the CSS and its messages.
var roleNames = map[story.Role]string{
	story.Scene: "scene", story.Known: "known", story.Extra: "extra", story.Question: "ask",
}

func roleClass(r story.Role) string { return roleNames[r] }

func roleWord(r story.Role) string { return "learn.role." + roleNames[r] }

func askWord(r story.Role) string { return "learn.hint." + roleNames[r] }
