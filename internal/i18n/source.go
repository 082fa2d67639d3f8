package i18n

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"slices"
	"strings"
)

// Source is the English file, as the truth that other files are held against.
type Source struct {
	File     *File
	Language *Language // English itself

	blocks map[string]bool
}

// source is what an English message asks of the others.
type source struct {
	hash   string
	places []string // that every text of it must have
	plural bool     // whether it has plural forms
	gaps   int      // lines to write on in it
}

func newSource(f *File) *Source {
	s := &Source{File: f, blocks: map[string]bool{}}
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

// Hold finds the English of every message of a file.
func (s *Source) Hold(f *File) {
	for _, m := range f.Messages {
		m.English = s.of(m)
	}
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

// about is the family of the people that a message speaks of: "person" for a
// story sentence, "character" for one with {{.Who}}; empty for none. Only such
// a message can agree with somebody's gender.
func (m *Message) about() string {
	switch {
	case m.Family == "story":
		return "person"
	case slices.Contains(m.English.places, characterPlace):
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
	return m.English != noEnglish && m.English.ID != m.ID && m.Family != "story"
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
func (m *Message) Stale() bool { return m.translated() && m.Hash != "" && m.Hash != m.English.hash }

// Unheld reports whether a message does not say which English it was made from.
func (m *Message) Unheld() bool { return m.translated() && m.Hash == "" }
