package site

import (
	"homebuild/internal/activity"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/week"
)

// lesson is a week worked out: the same in every language.
type lesson struct {
	week    week.Week
	target  activity.Target
	picture picture.Kind // the class's picture for stories; 0 for the bar model
	worked  told
	stories []told
	sum     string // names all that is told, asked and drawn
}

// told is an activity with its story.
type told struct {
	activity.Activity
	Story story.Story
}

// pictureOf draws the story's problem the class's way where that fits, else as
// a bar model, which always does. The names of a comparison are written to its
// bars.
func (l lesson) pictureOf(t told, stage picture.Stage) picture.Picture {
	kind := l.picture
	if kind == 0 || !picture.Fits(kind, t.Problem) {
		kind = picture.BarModel
	}
	p, err := picture.OfProblem(t.Problem, kind, stage)
	if err != nil {
		panic("site: " + err.Error()) // Fits said that it can be drawn
	}
	return named(p, t.Story)
}

// answerOf draws the answer; where every pair of parts is one, all of them as a
// pattern.
func (l lesson) answerOf(t told) picture.Picture {
	if all, ok := picture.AllPairs(t.Problem); ok {
		return all
	}
	return l.pictureOf(t, picture.Solved)
}

// named writes to a comparison's bars who has more and who has fewer.
func named(p picture.Picture, s story.Story) picture.Picture {
	bigger, smaller, ok := s.Compared()
	if !ok {
		return p
	}
	return picture.WithNames(p, bigger, smaller)
}

// equations are the story's own and, where it differs, the one that finds the
// answer. A chain shows its whole only; its steps stand where it is worked out,
// since the second tells the first one's answer.
func equations(p problem.Problem) []problem.Equation {
	out := []problem.Equation{p.Equation()}
	if p.SolvingDiffers() {
		out = append(out, p.Solving())
	}
	return out
}

// words are the week's words: the names of the strategy and the picture.
func (l lesson) words() []phrase.Line {
	kind := l.picture
	if kind == 0 {
		kind = picture.BarModel
	}
	out := []phrase.Line{}
	if ways := l.worked.Ways(); len(ways) > 0 {
		out = append(out, ways[0].Name.Title())
	}
	return append(out, phrase.Say("picture."+kind.String()+".name"))
}
