package i18n

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/tomlfile"
)

// Event is the words of an event of the stories in a file: a table with a text
// for each sentence, and tables in it for sentences that stories of some kinds
// say in a way of their own.
type Event struct {
	ID         string // "event.harbour.board"
	Line       int
	Note       string // for translators: what happens, and who is in it; the English file has it
	Source     string // names the English that it was told from, and what was read; empty for none
	SourceLine int
	Sentences  []Sentence

	English *Event // that it is held against; an empty one for none

	hash string // of the English sentences
}

// Sentence is a sentence of an event.
type Sentence struct {
	Group string // of kinds of stories that say it so; empty for all
	Key   string // what it tells: "start"
	Text  string
	Line  int
}

// Name is the sentence within its event: "start", "add-to.start".
func (s Sentence) Name() string {
	if s.Group == "" {
		return s.Key
	}
	return s.Group + "." + s.Key
}

// The keys of an event that are no sentences.
const (
	eventFamily = "event"
	noteKey     = "note"
	sourceKey   = "source"
)

// Event is the event with an id; nil for none.
func (f *File) Event(id string) *Event { return f.events[id] }

// Sentence is the sentence of an event in a group; nil for none.
func (e *Event) Sentence(group, key string) *Sentence {
	for i := range e.Sentences {
		if s := &e.Sentences[i]; s.Key == key && s.Group == group {
			return s
		}
	}
	return nil
}

// Keys lists what the event's sentences tell, each once.
func (e *Event) Keys() []string {
	var keys []string
	for _, s := range e.Sentences {
		if !slices.Contains(keys, s.Key) {
			keys = append(keys, s.Key)
		}
	}
	return keys
}

// Tells reports whether something is written for a key.
func (e *Event) Tells(key string) bool {
	return slices.ContainsFunc(e.Sentences, func(s Sentence) bool { return s.Key == key && s.Text != "" })
}

// SourceHash is what a telling keeps of the English sentences that it was made
// from.
func (e *Event) SourceHash() string { return e.English.hash }

// translated reports whether the event was told from an English one.
func (e *Event) translated() bool { return e.English.ID != "" && e.English != e }

// Stale reports whether the English sentences have changed since the event was
// told from them.
func (e *Event) Stale() bool {
	return e.translated() && e.Source != "" && parseMark(e.Source).english != e.English.hash
}

// Unheld reports whether the event does not say which English it was told from.
func (e *Event) Unheld() bool { return e.translated() && e.Source == "" }

// hashSentences names the sentences of an event, in whatever order they stand.
func hashSentences(e *Event) string {
	lines := make([]string, len(e.Sentences))
	for i, s := range e.Sentences {
		lines[i] = s.Name() + "\x00" + s.Text
	}
	slices.Sort(lines)
	sum := sha256.Sum256([]byte(strings.Join(lines, "\x00")))
	return hex.EncodeToString(sum[:5])
}

// readEvents reads [event.harbour.board] and all the others.
func (r *fileReader) readEvents(root *tomlfile.Value) {
	for family := range root.Children() {
		if family.Key != eventFamily || family.Kind != tomlfile.Table {
			continue
		}
		for place := range family.Children() {
			if !r.table(place) {
				continue
			}
			for event := range place.Children() {
				if r.table(event) {
					r.readEvent(event)
				}
			}
		}
	}
}

// table reports whether a value is a table, and tells when it is not.
func (r *fileReader) table(v *tomlfile.Value) bool {
	if v.Kind != tomlfile.Table {
		r.problem(v, "events stand in tables: [event.harbour.board], and their sentences below", "%s is not an event", v.Name())
	}
	return v.Kind == tomlfile.Table
}

func (r *fileReader) readEvent(v *tomlfile.Value) {
	e := &Event{ID: v.Name(), Line: v.Line, Sentences: make([]Sentence, 0, 64)}
	for child := range v.Children() {
		switch {
		case child.Kind == tomlfile.Table:
			for text := range child.Children() {
				r.sentence(e, child.Key, text)
			}
		case child.Key == noteKey:
			e.Note = child.Text
		case child.Key == sourceKey:
			e.Source, e.SourceLine = child.Text, child.Line
		default:
			r.sentence(e, "", child)
		}
	}
	e.Sentences = slices.Clip(e.Sentences)
	r.file.Events = append(r.file.Events, e)
}

func (r *fileReader) sentence(e *Event, group string, v *tomlfile.Value) {
	switch v.Kind {
	case tomlfile.Text:
		e.Sentences = append(e.Sentences, Sentence{group, v.Key, v.Text, v.Line})
	case tomlfile.Table: // anything else was told
		r.problem(v, `write it in double quotes: `+v.Key+` = "..."`, "%s is not a sentence", v.Name())
	}
}

// inEvent reports whether a value stands in the table of events.
func inEvent(v *tomlfile.Value) bool {
	for v.Parent != nil && v.Parent.Parent != nil {
		v = v.Parent
	}
	return v.Key == eventFamily && v.Kind == tomlfile.Table
}

// noEvent is the English of an event that has none.
var noEvent = &Event{}

// notAnEvent tells of an event that the program does not have.
func (b *builder) notAnEvent(e *Event) {
	b.unused(e.Line, fmt.Sprintf("[%s] is not an event and is left out", e.ID), func() string {
		var ids []string
		for _, x := range b.source.File.Events {
			ids = append(ids, x.ID)
		}
		return diag.Suggest(e.ID, ids, "take it out, or look the name up in en.toml")
	})
}
