package translate

import (
	"strings"

	"homebuild/internal/i18n"
)

// Place is where a message stands in its file.
type Place struct {
	ID   string
	Line int    // 0 where the file does not have it
	Text string // with its places: "{{.A}} found {{.Change}}."
}

// Places are all texts of the file.
func (d *Draft) Places() []Place {
	var out []Place
	for _, m := range d.file.Messages {
		for _, c := range i18n.Categories() {
			if text := m.Text(c); text != "" {
				out = append(out, Place{m.ID, m.LineOf(c.String()), text})
			}
		}
	}
	for _, e := range d.file.Events {
		for _, s := range e.Sentences {
			out = append(out, Place{e.ID + "." + s.Name(), s.Line, s.Text})
		}
	}
	return out
}

// Place finds a message, a form or a sentence of an event in the file.
func (d *Draft) Place(id string) Place {
	p := Place{ID: id}
	if m := d.file.Message(id); m != nil {
		p.Line = m.Line
		if p.Text = m.Other; p.Text == "" {
			p.Text = m.Many
		}
		return p
	}
	for _, m := range d.file.All(id) { // those of genders
		return Place{ID: id, Line: m.Line, Text: m.Other}
	}
	if event, key := cutLast(id); strings.HasPrefix(id, "event.") && d.file.Event(event) != nil {
		for _, s := range d.file.Event(event).Sentences {
			if s.Key == key && (p.Line == 0 || s.Group == "") {
				p.Line, p.Text = s.Line, s.Text
			}
		}
	}
	return p
}
