package page

import (
	"cmp"
	"slices"

	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
)

// Learn is the week's main page: what the class learns, and one story worked
// in a short walk, step by step.
type Learn struct {
	WeekPage
	About   []phrase.Line // what the week is about, one or two sentences
	Minutes int           // how long it takes; 0 to say nothing
	// Counters says that small things help: no number is too large to lay it out.
	Counters bool
	// Class is the language of the class: its words stand beside the
	// family's, unless it is the page's own language.
	Class  *i18n.Language
	Words  []ClassWord // the week's words (strategy, picture), said in both languages
	WarmUp *WarmUp     // nil for none
	Note   *Note       // nil for none
	Notes  *Notes      // of the week
	Worked *Worked
}

// WarmUp is a minute of moving before sitting down. The usual caution is
// added by the page.
type WarmUp struct {
	Symbol string // its drawings in draw/cards: "warm-up.reach"
	Name   phrase.Line
	Steps  []phrase.Line
	Seated phrase.Line // the same for someone who sits
}

var learnKind = &kind{class: "learn", css: []string{"base.css", "work.css", "tiles.css", "radio.css", "signs.css", pictureCSS, "cards.css", "learn.css", walkCSS}, parts: walkParts}

// AboutMinutes tells how long something takes.
func AboutMinutes(n int) phrase.Line { return phrase.Say("learn.about-minutes", phrase.Number("N", n)) }

func noteLanguage(n *Note) phrase.Line {
	return phrase.Say("learn.note.language", phrase.Text("Language", n.Name))
}

// ClassWord is a word of the week: the name of a way or a picture.
type ClassWord struct {
	Name phrase.Line
	Own  string // what the class calls it, in its own language; empty for the name
}

// distinct leaves out a word that reads like one before it: a way and its picture may
// have one name.
func (s *state) distinct(words []ClassWord, class *i18n.Language) []ClassWord {
	seen := map[string]bool{}
	return slices.DeleteFunc(slices.Clone(words), func(w ClassWord) bool {
		reads := s.Language.Plain(w.Name) + "\n" + cmp.Or(w.Own, class.Plain(w.Name))
		twice := seen[reads]
		seen[reads] = true
		return twice
	})
}

// beside are the words that the family's language and the class say otherwise.
func (s *state) beside(words []ClassWord, class *i18n.Language) []ClassWord {
	words = s.distinct(words, class)
	if class.Tag() != s.Language.Tag() {
		return words
	}
	return slices.DeleteFunc(slices.Clone(words), func(w ClassWord) bool { return w.Own == "" })
}
