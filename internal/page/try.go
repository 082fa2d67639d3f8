package page

import (
	"homebuild/internal/phrase"
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
