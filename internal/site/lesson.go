package site

import (
	"slices"

	"homebuild/internal/activity"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/story"
)

// lesson is a week worked out: the same in every language.
type lesson struct {
	date    string
	target  activity.Target
	picture picture.Kind // the class's picture for stories
	worked  exercise
	stories []exercise // to try
	ladder  []exercise // beside them, the easier ones first
	all     []exercise // the worked one and those to try
	numbers []int      // that the week's check page knows; none where the check pages know all
	sum     string

	walked  cached[page.Worked]
	tried   cached[[]*page.TryStory]
	checked cached[page.WeekPairs]
	named   cached[[]namedLine]
	notes   cached[page.Notes]
}

// Sum names all that the lesson tells, asks and draws.
func (l *lesson) Sum() string { return l.sum }

// exercise is an activity with its story.
type exercise struct {
	activity.Activity
	Story story.Story
}

// exercises are all of the lesson, the worked one first. They are not to be changed.
func (l *lesson) exercises() []exercise { return l.all }

// pictureOf draws the story's problem the class's way where that fits, else as
// a bar model, which always does. What is compared is written to its bars.
func (l *lesson) pictureOf(e exercise, stage picture.Stage) picture.Picture {
	return named(picture.OrBars(e.Problem, l.picture, stage), e.Story)
}

// answerOf draws the answer; where every pair of parts is one, all of them as a
// pattern.
func (l *lesson) answerOf(e exercise) picture.Picture {
	if all, ok := picture.AllPairs(e.Problem); ok {
		return all
	}
	return l.pictureOf(e, picture.Solved)
}

// named writes to a comparison's bars what is more and what is less.
func named(p picture.Picture, s story.Story) picture.Picture {
	bigger, smaller, ok := s.Compared()
	if !ok {
		return p
	}
	return picture.WithNames(p, bigger, smaller)
}

// namedLine is a way or a picture, and the line that says its name.
type namedLine struct {
	id   string
	line phrase.Line
}

// words are the week's words: the names of the strategy and the picture, and what the
// class calls them.
func (l *lesson) words(own map[string]string) []page.ClassWord {
	names := *l.named.get(func() *[]namedLine {
		var out []namedLine
		if ways := l.worked.Ways(); len(ways) > 0 {
			out = append(out, namedLine{ways[0].Name.String(), ways[0].Title()})
		}
		kind := l.picture.String()
		out = append(out, namedLine{kind, phrase.Say("picture." + kind + ".name" + l.hundreds())})
		return &out
	})
	var out []page.ClassWord
	for _, n := range names {
		out = append(out, page.ClassWord{Name: n.line, Own: own[n.id]})
	}
	return out
}

// hundreds ends the message of a picture's name where it has hundreds to show.
func (l *lesson) hundreds() string {
	places := l.picture == picture.BaseTen || l.picture == picture.Columns
	if places && slices.ContainsFunc(l.exercises(), func(e exercise) bool { return largest(e) >= 100 }) {
		return "-hundreds"
	}
	return ""
}
