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

	english map[string]*english
	blocks  map[string]bool
}

// english is a message of the English file, and what it asks of the others.
type english struct {
	*Message
	hash   string
	places []string // that every text of it must have
	plural bool     // whether it has plural forms
	gaps   int      // lines to write on in it
}

func newSource(f *File) *Source {
	s := &Source{File: f, english: make(map[string]*english, len(f.Messages)), blocks: map[string]bool{}}
	for _, m := range f.Messages {
		e := &english{Message: m, hash: hashOf(m)}
		s.english[m.ID] = e
		s.blocks[m.Block] = true
		for _, c := range Categories() {
			if m.Text(c) == "" {
				continue
			}
			t, _ := parseTemplate(nil, m.Text(c)) // a fault is reported when English itself is proved
			for _, part := range t {
				if part.place != "" && !slices.Contains(e.places, part.place) {
					e.places = append(e.places, part.place)
				}
			}
			e.plural = e.plural || c != Other
			e.gaps = t.count(gapPlace)
		}
	}
	delete(s.blocks, "")
	return s
}

// Hold finds the English of every message of a file.
func (s *Source) Hold(f *File) {
	for _, m := range f.Messages {
		m.english = s.of(m)
	}
}

// of is the English message that a message is, or is a form of: the sentence of
// a gender form, the counted form of a case.
func (s *Source) of(m *Message) *english {
	if e := s.english[m.ID]; e != nil {
		return e
	}
	if e := s.english[m.sentence()]; e != nil {
		return e
	}
	for id := m.ID; ; {
		cut := strings.LastIndexByte(id, '-')
		if cut < len(m.ID)-len(m.Key) {
			return nil
		}
		id = id[:cut]
		if e := s.english[id]; e != nil {
			return e
		}
	}
}

// about is the family of the people that a message speaks of: "person" for a
// story sentence, "character" for one with {{.Who}}; empty for none. Only such
// a message can agree with somebody's gender.
func (m *Message) about() string {
	switch {
	case m.Family == "story":
		return "person"
	case m.english != nil && slices.Contains(m.english.places, characterPlace):
		return "character"
	}
	return ""
}

// Needs reports whether every language that has the block of an English message
// must have it. Forms and genders are a language's own affair.
func (s *Source) Needs(m *Message) bool {
	switch {
	case m.Family == "language" || m.Family == "words":
		return false
	case People(m.Family):
		return m.Key == "name"
	case Counted(m.Family):
		_, form := formOf(m.Key)
		return form == "" && m.Key != "gender"
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
	return m.english != nil && m.english.ID != m.ID && m.Family != "story"
}

// English is the message that m, of a file that is held against English, was
// made from; nil for none.
func (m *Message) English() *Message {
	if m.english == nil {
		return nil
	}
	return m.english.Message
}

// Suggestion is what to write for a missing text of a message.
func (m *Message) Suggestion() string {
	if m.english == nil || m.english.Other == "" {
		return "write its text"
	}
	return fmt.Sprintf("write the sentence for the English %q", m.english.Other)
}

// Plural reports whether a message of the English file has plural forms.
func (m *Message) Plural() bool { return m.english.plural }

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
// from; empty where there is no English.
func (m *Message) EnglishHash() string {
	if m.english == nil {
		return ""
	}
	return m.english.hash
}

// Freshness tells whether a message was made from the English of today.
type Freshness uint8

const (
	Fresh   Freshness = iota
	Unknown           // no hash is kept
	Stale
)

// Freshness of a message. What is not translated is fresh.
func (m *Message) Freshness() Freshness {
	switch {
	case m.english == nil || m.english.Message == m || m.Family == "language" || m.Family == "words" || m.Key == "gender":
		return Fresh
	case m.Hash == "":
		return Unknown
	case m.Hash != m.english.hash:
		return Stale
	}
	return Fresh
}
