package page

import (
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/story"
)

// Worked is a story with everything the walk shows.
type Worked struct {
	Story story.Story
	// Growing is the picture as the story goes on: first part, second part,
	// then the "?".
	Growing []Panel
	Solved  picture.Picture
	Solution
	Another *Working // another way; nil for none
}

// Panel is a picture with what to do or see in it.
type Panel struct {
	Picture picture.Picture
	Caption []phrase.Line // the sentences that made it grow; empty for none
}

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

// roleNames give a sentence's role its class in the CSS and its messages.
var roleNames = map[story.Role]string{
	story.Scene: "scene", story.Known: "known", story.Extra: "extra", story.Question: "ask",
}
