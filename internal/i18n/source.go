package i18n

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"slices"
	"strings"
)

// source is the English file, as the truth that other files are held against.
type source struct {
	file    *file
	blocks  map[string]bool
	placed  map[string][]string // places of a message
	counted map[string]bool     // messages with plural forms
	gapped  map[string]int      // lines to write on in a message
	hashes  map[string]string   // of each message; made once, asked by every language
}

func newSource(f *file) *source {
	s := &source{file: f, blocks: map[string]bool{}, placed: map[string][]string{}, counted: map[string]bool{}, gapped: map[string]int{}, hashes: map[string]string{}}
	for id, m := range f.messages {
		s.hashes[id] = hashOf(m)
		if in := block(id); in != "" {
			s.blocks[in] = true
		}
		for c := zero; c <= other; c++ {
			if m.text(c) == "" {
				continue
			}
			t, _ := parseTemplate(m.text(c)) // a fault is reported when English itself is built
			for _, name := range t.places() {
				if !slices.Contains(s.placed[id], name) {
					s.placed[id] = append(s.placed[id], name)
				}
			}
			if c != other {
				s.counted[id] = true
			}
			s.gapped[id] = t.count(gapPlace)
		}
	}
	return s
}

// base is the English message that an id is a form of: the sentence of a
// gender form, the counted form of a case.
func (s *source) base(id string) string {
	if s.file.messages[id] != nil {
		return id
	}
	if base, gender := cutGender(id); gender != "" && s.file.messages[base] != nil {
		return base
	}
	stem := strings.TrimSuffix(id, lastKey(id))
	for key := lastKey(id); ; {
		cut := strings.LastIndexByte(key, '-')
		if cut < 0 {
			return ""
		}
		key = key[:cut]
		if s.file.messages[stem+key] != nil {
			return stem + key
		}
	}
}

// places are the places that a message, or any form of it, must have.
func (s *source) places(id string) []string { return s.placed[s.base(id)] }

// gaps is how many lines to write on a message has.
func (s *source) gaps(id string) int { return s.gapped[s.base(id)] }

// plural reports whether English has plural forms of a message.
func (s *source) plural(id string) bool { return s.counted[s.base(id)] }

// required reports whether every language that has the message's block must
// have this id. Forms and genders are a language's own affair.
func (s *source) required(id string) bool {
	in := family(id)
	switch {
	case in == "language" || in == "words":
		return false
	case slices.Contains(peopleFamilies, in):
		return lastKey(id) == "name"
	case slices.Contains(countedFamilies, in):
		_, form := formOf(lastKey(id))
		return form == "" && lastKey(id) != "gender"
	}
	return true
}

// formID reports whether a language may have an id that English lacks, as a
// form of a message that English has.
func (s *source) formID(id string) bool {
	in := family(id)
	if !s.blocks[block(id)] && optional[in] > 0 {
		return false
	}
	switch {
	case slices.Contains(peopleFamilies, in), in == "setting":
		return strings.Count(id, ".") == 2
	case slices.Contains(countedFamilies, in) && lastKey(id) == "gender":
		return true
	}
	base := s.base(id)
	return base != "" && base != id && family(base) != "story"
}

// suggestion is what to write for a missing text.
func (s *source) suggestion(id string) string {
	m := s.file.messages[s.base(id)]
	if m == nil || m.Other == "" {
		return "write its text"
	}
	return fmt.Sprintf("write the sentence for the English %q", m.Other)
}

// hash is what a translation keeps of the English text that it was made from.
func (s *source) hash(id string) string { return s.hashes[s.base(id)] }

// hashOf names the texts of a message. A new note for the translator does not
// change it.
func hashOf(m *message) string {
	var texts []byte
	for c := zero; c <= other; c++ {
		texts = append(append(texts, m.text(c)...), 0)
	}
	sum := sha256.Sum256(texts)
	return hex.EncodeToString(sum[:5])
}

// staleness of one message.
type staleness uint8

const (
	fresh   staleness = iota
	unknown           // no hash is kept
	stale
)

func (s *source) staleness(id string, m *message) staleness {
	switch {
	case family(id) == "language" || family(id) == "words" || lastKey(id) == "gender" || s.base(id) == "" || s.file.messages[id] == m:
		return fresh
	case m.Hash == "":
		return unknown
	case m.Hash != s.hash(id):
		return stale
	}
	return fresh
}
