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
	Page    string `json:"page"`  // the first that waits for it; empty where that is not known
}

// Wanted tells all about a text that the language lacks, by what it was asked for:
// the id of a message, of a form or of a sentence.
func (d *Draft) Wanted(id string) Wanted {
	w := Wanted{ID: id}
	if event, group, key, ok := cutSentence(id); ok {
		w.Note = d.EventNote(event)
		w.English = textOf(d.source.File.Event(event), group, key)
		w.Line = d.sentenceLine(event, group, key)
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

// cutSentence parts the id of a sentence from that of its event, and from the kinds
// of stories that say it so.
func cutSentence(id string) (event, group, key string, ok bool) {
	parts := strings.Split(id, ".")
	switch {
	case parts[0] != "event":
	case len(parts) == 4:
		return strings.Join(parts[:3], "."), "", parts[3], true
	case len(parts) == 5:
		return strings.Join(parts[:3], "."), parts[3], parts[4], true
	}
	return "", "", "", false
}

// textOf is the sentence of an event that stories of a group say, or else as most
// stories say it.
func textOf(e *i18n.Event, group, key string) string {
	if e == nil {
		return ""
	}
	text := ""
	for _, s := range e.Sentences {
		if s.Key == key && (text == "" || s.Group == "") {
			text = s.Text
		}
	}
	if s := e.Sentence(group, key); s != nil {
		text = s.Text
	}
	return text
}

// sentenceLine is the line of a sentence, or of its event.
func (d *Draft) sentenceLine(event, group, key string) int {
	e := d.file.Event(event)
	if e == nil {
		return 0
	}
	if s := e.Sentence(group, key); s != nil {
		return s.Line
	}
	return e.Line
}

// message is the English of a message, or of the one that it is a form of, and the
// line where its text is to be written.
func (d *Draft) message(id string) (english string, line int) {
	for at := id; line == 0 && at != ""; at = at[:max(0, strings.LastIndexAny(at, "-."))] {
		if own := d.file.Message(at); own != nil {
			line = own.Line
		}
	}
	if m := d.englishOf(id); m != nil {
		return cmp.Or(m.Other, m.One), line
	}
	return "", line
}
