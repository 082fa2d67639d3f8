package translate

import (
	"cmp"
	"strings"

	"homebuild/internal/i18n"
)

// Wanted is a text that a page waits for.
type Wanted struct {
	ID      string `json:"id"`
	Line    int    `json:"line"` // of its empty text, or where it belongs
	English string `json:"english"`
	Note    string `json:"note"`
	Words   int    `json:"words"` // of the English
}

// Wanted tells all about a text that the language lacks, by what it was asked for:
// the id of a message, of a form or of a sentence.
func (d *Draft) Wanted(id string) Wanted {
	w := Wanted{ID: id}
	if event, key := cutLast(id); strings.HasPrefix(id, "event.") {
		w.Note = d.EventNote(event)
		w.English = textOf(d.source.File.Event(event), key)
		w.Line = d.sentenceLine(event, key)
	} else {
		w.Note = d.Note(id)
		w.English, w.Line = d.message(id)
	}
	w.Words = len(strings.Fields(i18n.WithoutPlaces(w.English)))
	return w
}

func cutLast(id string) (head, key string) {
	dot := strings.LastIndexByte(id, '.')
	return id[:dot], id[dot+1:]
}

// textOf is the sentence of an event, as most stories say it.
func textOf(e *i18n.Event, key string) string {
	if e == nil {
		return ""
	}
	text := ""
	for _, s := range e.Sentences {
		if s.Key == key && (text == "" || s.Group == "") {
			text = s.Text
		}
	}
	return text
}

// sentenceLine is the line of an empty sentence, or of its event.
func (d *Draft) sentenceLine(event, key string) int {
	e := d.file.Event(event)
	if e == nil {
		return 0
	}
	for _, s := range e.Sentences {
		if s.Key == key && s.Text == "" {
			return s.Line
		}
	}
	return e.Line
}

// message is the English of a message, or of the one that it is a form of, and the
// line where its text is to be written.
func (d *Draft) message(id string) (english string, line int) {
	for at := id; ; {
		own, source := d.file.Message(at), d.source.File.Message(at)
		if own != nil {
			line = cmp.Or(line, own.Line)
		}
		if source != nil {
			return cmp.Or(source.Other, source.One), line
		}
		cut := max(strings.LastIndexByte(at, '-'), strings.LastIndexByte(at, '.'))
		if cut <= 0 {
			return "", line
		}
		at = at[:cut]
	}
}
