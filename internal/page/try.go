package page

import (
	"reflect"

	"homebuild/internal/phrase"
	"homebuild/internal/picture"
)

// wide reports whether a choice needs the room of two.
func (c Choice) wide() bool { return !isZero(c.Other) || !c.Pair.IsZero() }

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
