package i18n

import (
	"strings"
	"testing"
)

// What was read is these very words: a letter more, and it was not.
func TestIsRead(t *testing.T) {
	english := &Message{source: source{hash: "0123456789"}}
	m := &Message{Family: "page", Key: "language", English: english}
	m.Other = "Idioma"
	if m.IsRead() {
		t.Error("nobody has signed, and it is read")
	}
	if m.Hash = m.Signed(1); !m.IsRead() {
		t.Errorf("signed as %q, and it is not read", m.Hash)
	}
	if m.Other = "Idiomas"; m.IsRead() {
		t.Error("a letter more, and it is still read")
	}
	if m.English = noEnglish; !m.IsRead() {
		t.Error("it has no English, so nothing is to be read")
	}
	told := &Event{English: &Event{ID: "event.kitchen.soup", hash: "0123456789"}, Sentences: []Sentence{{Key: "open", Text: "¡Sopa!"}}}
	if told.IsRead() {
		t.Error("nobody has signed the event, and it is read")
	}
	if told.Source = told.Signed(2); !told.IsRead() {
		t.Errorf("signed as %q, and the event is not read", told.Source)
	}
	if told.Sentences[0].Text = "¡Sopas!"; told.IsRead() {
		t.Error("a letter more, and the event is still read")
	}
	if told.English = noEvent; !told.IsRead() {
		t.Error("the event has no English, so nothing is to be read")
	}
}

// signed is Spanish as a fluent reader has signed it, all of it.
func signed(t *testing.T, source *Source) *File {
	t.Helper()
	text := strings.Replace(string(fixture(t, "es", "", "")), `review = "draft"`, "reviewed = \"M. G., 2026-10-01\"\nread = \"x\"", 1)
	f, problems := Parse("es", text)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	source.Hold(f)
	for _, m := range f.Messages {
		if m.translated() {
			m.Hash = m.Signed(1)
		}
	}
	for _, e := range f.Events {
		e.Source = e.Signed(1)
	}
	f.Message("language.read").Other = f.Unmarked()
	return f
}

// A language is a draft until a fluent reader has signed it; then what was changed is
// told, and that some of it is newer.
func TestUnread(t *testing.T) {
	source, problems := smallSource()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, row := range []struct {
		name   string
		change func(f *File)
		unread string // what is told; empty for nothing
		stale  bool
	}{
		{"as it was read", func(*File) {}, "", false},
		{"a message", func(f *File) { f.Message("page.language").Other = "Lengua" }, "page.language is not what was read", false},
		{"a sentence", func(f *File) { f.Events[0].Sentences[0].Text += " Y pan." }, "event.kitchen.soup is not what was read", false},
		{"a number word", func(f *File) { f.Message("words.2").Other = "Dos" }, "the head of the file, a number word or a gender is not", false},
		{"a gender", func(f *File) { f.Message("thing.floor.gender").Other = "feminine" }, "the head of the file, a number word or a gender is not", false},
		{"the name of the language", func(f *File) { f.Message("language.name").Other = "castellano" }, "the head of the file, a number word or a gender is not", false},
		{"another reader", func(f *File) { f.Message("language.reviewed").Other = "M. G., 2026-10-01; A. B., 2026-11-01" }, "", false},
		{"its English", func(f *File) { m := f.Message("page.language"); m.Hash = "9876543210" + m.Hash[10:] }, "", true},
	} {
		f := signed(t, source)
		row.change(f)
		p := source.Prove(f, maxProblems)
		if len(p.Wrong) > 0 {
			t.Fatal(p.Wrong)
		}
		unread := p.Unread.Error()
		if row.unread == "" && unread != "" || !strings.Contains(unread, row.unread) || len(p.Unread) > 1 || len(p.Stale) > 0 != row.stale {
			t.Errorf("%s: unread %q, stale %v; want %q, %v", row.name, unread, p.Stale, row.unread, row.stale)
		}
		if l := p.Language; l.Draft() || l.PartlyRead() != (row.unread != "" || row.stale) {
			t.Errorf("%s: a draft %v, partly read %v", row.name, l.Draft(), l.PartlyRead())
		}
	}
	for tag, want := range map[string]bool{"es": true, "en": false} {
		if l := in(t, fixtures(t), tag); l.Draft() != want || l.PartlyRead() {
			t.Errorf("%s: a draft %v, want %v; partly read %v", tag, l.Draft(), want, l.PartlyRead())
		}
	}
}
