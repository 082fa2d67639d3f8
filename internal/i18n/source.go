package i18n

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/story"
)

// Source is the English file, as the truth that other files are held against.
type Source struct {
	File     *File
	Language *Language // English itself

	blocks map[string]bool
	events map[string]*needs // by message id
}

// source is what an English message asks of the others.
type source struct {
	hash   string
	places []string // that every text of it must have
	plural bool     // whether it has plural forms
	gaps   int      // lines to write on in it
}

func newSource(f *File, places story.Places) *Source {
	s := &Source{File: f, blocks: map[string]bool{}, events: map[string]*needs{}}
	for _, e := range places.Events() {
		s.events[e.Message("")] = &needs{e, e.Always(), e.Tellings()}
	}
	for _, e := range f.Events {
		e.hash = hashSentences(e)
	}
	for _, m := range f.Messages {
		m.hash = hashOf(m)
		if m.Block != "" {
			s.blocks[m.Block] = true
		}
		for _, c := range Categories() {
			t, _ := parseTemplate(nil, m.Text(c)) // a fault is reported when English itself is proved
			for _, part := range t {
				if part.place != "" && !slices.Contains(m.places, part.place) {
					m.places = append(m.places, part.place)
				}
			}
			m.plural = m.plural || c != Other && m.Text(c) != ""
			m.gaps = max(m.gaps, t.count(gapPlace))
		}
	}
	return s
}

// Hold finds the English of every message and event of a file.
func (s *Source) Hold(f *File) {
	for _, m := range f.Messages {
		m.English = s.of(m)
	}
	for _, e := range f.Events {
		e.English = cmp.Or(s.File.events[e.ID], noEvent)
	}
}

// Things are what the stories of an event count, also where nobody needs the
// number.
func (s *Source) Things(event string) []string {
	e := s.events[event]
	if e == nil {
		return nil
	}
	return []string{e.Thing, e.Extra.Thing}
}

// noEnglish is the English of what has none.
var noEnglish = &Message{}

// of is the English message that a message is, or is a form of: the sentence of
// a gender form, the counted form of a case.
func (s *Source) of(m *Message) *Message {
	if e := s.File.byID[m.ID]; e != nil {
		return e
	}
	id := m.sentence()
	for s.File.byID[id] == nil {
		dash := strings.LastIndexByte(id, '-')
		if m.Gender != "" || dash < len(m.ID)-len(m.Key) {
			return noEnglish
		}
		id = id[:dash]
	}
	return s.File.byID[id]
}

// blankStories are the sentences in which people are lines to write on.
const blankStories = "own.frame."

// about is the family of the people that a message speaks of: "character" for one
// with {{.Who}}, empty for none. Only such a message can agree with somebody's
// gender; nobody knows that of a line.
func (m *Message) about() string {
	if !strings.HasPrefix(m.English.ID, blankStories) && slices.Contains(m.English.places, characterPlace) {
		return "character"
	}
	return ""
}

// Needed reports whether every language that has the block of an English message
// must have it. Forms and genders are a language's own affair.
func (m *Message) Needed() bool {
	switch {
	case m.Family == "language" || m.Family == "words":
		return false
	case People(m.Family):
		return m.Key == "name"
	case Counted(m.Family):
		return m.Key != "gender" && !strings.Contains(m.Key, "-")
	}
	return true
}

// mayForm reports whether a language may have a message that English lacks, as a
// form of one that English has.
func (s *Source) mayForm(m *Message) bool {
	switch {
	case m.Block != "" && !s.blocks[m.Block]:
		return false
	case People(m.Family), m.Family == "setting":
		return strings.Count(m.ID, ".") == 2
	case Counted(m.Family) && m.Key == "gender":
		return true
	}
	return m.English != noEnglish && m.English.ID != m.ID
}

// Suggestion is what to write for a missing text of a message.
func (m *Message) Suggestion() string {
	if m.English.Other == "" {
		return "write its text"
	}
	return fmt.Sprintf("write the sentence for the English %q", m.English.Other)
}

// hashOf names the texts of a message. A new note for the translator does not
// change it.
func hashOf(m *Message) string {
	var texts []byte
	for _, c := range Categories() {
		texts = append(append(texts, m.Text(c)...), 0)
	}
	sum := sha256.Sum256(texts)
	return hex.EncodeToString(sum[:5])
}

// HashOfEnglish names English texts as somebody saw them: one text, or that for 1 and
// that for other numbers.
func HashOfEnglish(text, others string) string {
	m := &Message{}
	if m.Other = text; others != "" {
		m.One, m.Other = text, others
	}
	return hashOf(m)
}

// EnglishHash is what a translation keeps of the English text that it was made
// from.
func (m *Message) EnglishHash() string { return m.English.hash }

// Plural reports whether the English has plural forms.
func (m *Message) Plural() bool { return m.English.plural }

// translated reports whether a message was made from an English one.
func (m *Message) translated() bool {
	return m.English != noEnglish && m.English != m && m.Family != "language" && m.Family != "words" && m.Key != "gender"
}

// Stale reports whether the English has changed since a message was made from
// it.
func (m *Message) Stale() bool {
	return m.translated() && m.Hash != "" && parseMark(m.Hash).english != m.English.hash
}

// Unheld reports whether a message does not say which English it was made from.
func (m *Message) Unheld() bool { return m.translated() && m.Hash == "" }
