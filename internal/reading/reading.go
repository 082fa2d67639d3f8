package reading

import (
	"maps"

	"homebuild/internal/problem"
)

// Certainty is how sure a reader is of a proposal.
type Certainty uint8

const (
	CannotTell Certainty = iota // there is no proposal
	Unsure                      // there is one, and a reason to look twice
	Sure
)

// String says it to a teacher.
func (c Certainty) String() string {
	return [...]string{CannotTell: "cannot tell", Unsure: "unsure", Sure: "sure"}[c]
}

// Reading is what a reader makes of a story.
type Reading struct {
	Problem   problem.Problem // without meaning where the reader cannot tell
	Certainty Certainty
	Why       string    // why the reader is not sure; lower case, for the teacher
	Extra     []Numeral // numbers that are told and not needed
}

// Reader reads stories in a language.
type Reader struct {
	cues *cues // nil for a language without any
	says counting
}

// NewReader makes a reader for a language, given that language's number words in
// small letters.
func NewReader(tag string, words map[string]int) *Reader {
	r := &Reader{says: counting{words: maps.Clone(words)}}
	if r.says.words == nil {
		r.says.words = map[string]int{}
	}
	if c, ok := loadCues(tag); ok {
		r.cues, r.says.joined = c, c.Joined
		maps.Copy(r.says.words, c.Numbers)
	}
	return r
}

// Reads reports whether the reader knows the language well enough to propose
// anything.
func (r *Reader) Reads() bool { return r.cues != nil }

// Mark takes the marks out of a text in the reader's language.
func (r *Reader) Mark(text string) (Text, error) { return r.says.mark(text) }

// Read proposes what a story tells.
func (r *Reader) Read(t Text) Reading {
	if r.cues == nil {
		return Reading{Why: "stories in this language are not read yet"}
	}
	s := &scene{r: r, names: map[string]bool{}}
	d := decider{r: r, text: t, ask: asks{goal: -1}}
	for _, tokens := range r.sentences(t) {
		d.sentence(s, tokens)
	}
	return d.decide(s)
}
