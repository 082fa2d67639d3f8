package translate

import (
	"slices"
	"strings"

	"homebuild/internal/i18n"
)

// Entry is a message, a form or a sentence as other programs for translators know it:
// one English text, or one for 1 and one for other numbers, and its texts.
type Entry struct {
	ID         string // "learn.next", "thing.shell.count-accusative", "event.harbour.board.start"
	Line       int    // in the language's file; 0 where it is not there
	Note       string
	English    string          // for 1, where it has forms
	Others     string          // for other numbers; empty where it has one text
	Categories []i18n.Category // of its texts; Other alone where it has one
	Texts      []string        // beside them; empty for those that are still to be written
	Stale      bool            // the English has changed since
}

// Forms reports whether the entry has a text for each plural category.
func (e Entry) Forms() bool { return e.Others != "" }

// Categories are the plural categories that texts of the file have: those of whole
// numbers, and others that some text of the file is written for.
func (d *Draft) Categories() []i18n.Category {
	return slices.DeleteFunc(i18n.Categories(), func(c i18n.Category) bool {
		return !d.Language.Plurals().Needs(c) && !slices.ContainsFunc(d.file.Messages, func(m *i18n.Message) bool { return m.HasForms() && m.Wrote(c) })
	})
}

// Entries are all texts of the file in its order, then what it lacks: messages, forms
// that its sentences ask for, sentences. The head and genders are not among them, and
// nothing that is left out.
func (d *Draft) Entries() []Entry {
	categories := d.Categories()
	var out []Entry
	for _, m := range d.file.Messages {
		if m.Family == "language" || m.Key == "gender" || m.Gone() {
			continue
		}
		if e := d.entry(m, categories); e.English != "" {
			out = append(out, e)
		}
	}
	for _, e := range d.file.Events {
		for _, s := range e.Sentences {
			english := textOf(e.English, s.Group, s.Key)
			if english != "" {
				out = append(out, Entry{ID: e.ID + "." + s.Name(), Line: s.Line, Note: d.EventNote(e.ID), English: english,
					Categories: oneText, Texts: []string{s.Text}, Stale: e.Stale()})
			}
		}
	}
	for _, id := range d.lacks {
		if !slices.ContainsFunc(out, func(e Entry) bool { return e.ID == id }) {
			if e, ok := d.lacking(id, categories); ok {
				out = append(out, e)
			}
		}
	}
	return out
}

var oneText = []i18n.Category{i18n.Other}

func (d *Draft) entry(m *i18n.Message, categories []i18n.Category) Entry {
	english := m.English
	switch base := d.englishOf(m.ID); {
	case m.Family == "words":
		english = d.englishNumber(m.Key)
	case english.Other == "" && base != nil: // a form of a name
		english = base
	}
	e := Entry{ID: m.ID, Line: m.Line, Note: d.Note(m.ID), English: english.Other, Categories: oneText, Stale: m.Stale()}
	if m.HasForms() {
		e.English, e.Others, e.Categories = english.Other, english.Other, categories
		if english.One != "" {
			e.English = english.One
		}
	}
	for _, c := range e.Categories {
		e.Texts = append(e.Texts, m.Text(c))
	}
	return e
}

// englishNumber is the English word of a number, or its digits.
func (d *Draft) englishNumber(number string) *i18n.Message {
	if m := d.source.File.Message("words." + number); m != nil {
		return m
	}
	m := &i18n.Message{}
	m.Other = number
	return m
}

// lacking is the entry of something that the file does not have.
func (d *Draft) lacking(id string, categories []i18n.Category) (Entry, bool) {
	if event, group, key, ok := cutSentence(id); ok {
		e := Entry{ID: id, Note: d.EventNote(event), English: textOf(d.source.File.Event(event), group, key), Categories: oneText, Texts: []string{""}}
		return e, e.English != ""
	}
	english := d.englishOf(id)
	if english == nil || strings.HasSuffix(id, ".gender") {
		return Entry{}, false
	}
	e := Entry{ID: id, Note: oneLine(english.Description), English: english.Other, Categories: oneText}
	if english.Plural() {
		e.English, e.Others, e.Categories = english.One, english.Other, categories
	}
	e.Texts = make([]string, len(e.Categories))
	return e, true
}
