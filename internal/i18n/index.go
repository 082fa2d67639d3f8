package i18n

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/diag"
)

// index puts things, people and number words where saying finds them.
func (b *builder) index() {
	for _, m := range b.file.Messages {
		switch {
		case People(m.Family):
			b.indexPerson(m)
		case Counted(m.Family):
			b.indexThing(m)
		case m.Family == "words" && checkWordID(m.ID) == nil && !b.full():
			b.indexWord(m)
		}
	}
	for _, t := range b.lang.things {
		for form, c := range t.counts {
			c.words = b.wordTables(t.gender, form)
		}
	}
}

func (b *builder) indexPerson(m *Message) {
	p := b.lang.people[m.Block]
	if p == nil {
		p = &person{forms: map[string]string{}}
		b.lang.people[m.Block] = p
	}
	switch {
	case m.Key == "gender":
		p.gender = b.gender(m)
	case m.Other == "": // not written yet; told where it is read
	case m.Key == "name":
		p.forms[""] = m.Other
	default:
		p.forms[m.Key] = m.Other
	}
}

// gender reads a gender, which may be left empty.
func (b *builder) gender(m *Message) string {
	if m.Other != "" && !slices.Contains(Genders, m.Other) {
		b.problem(m.Line, fmt.Sprintf("gender is %q", m.Other), diag.Choice(m.Other, Genders))
		return ""
	}
	return m.Other
}

func (b *builder) indexThing(m *Message) {
	t := b.lang.things[m.Block]
	if t == nil {
		t = &thing{counts: map[string]*counted{}, asks: map[string]string{}, blanks: map[string]around{}}
		b.lang.things[m.Block] = t
	}
	kind, form := formOf(m.Key)
	r := b.lang.messages[m.ID]
	switch {
	case m.Key == "gender":
		t.gender = b.gender(m)
	case kind == "ask" && r.word() != "":
		t.asks[form] = r.word()
	case kind == "blank" && r.text != nil:
		t.blanks[form] = b.around(m, r.text)
	case kind == "count" && r.plural != nil:
		c := &counted{}
		for i, text := range r.plural {
			c.forms[i] = b.around(m, text)
		}
		t.counts[form] = c
	}
}

// around cuts a text at its number.
func (b *builder) around(m *Message, t template) around {
	var a around
	for _, s := range t {
		switch {
		case s.place != "" && a.number:
			b.problem(m.Line, m.ID+" has its number twice", "keep one {{.N}}")
			return a
		case s.place != "":
			a.number = true
		case a.number:
			a.after += s.text
		default:
			a.before += s.text
		}
	}
	return a
}

func (b *builder) indexWord(m *Message) {
	table := ""
	if parts := strings.Split(m.ID, "."); len(parts) == 3 {
		table = parts[1]
	}
	if b.lang.words[table] == nil {
		b.checkWordTable(m, table)
		b.lang.words[table] = numberWords{}
	}
	n, _ := strconv.Atoi(m.Key)
	b.lang.words[table][n] = m.Other
}

// checkWordTable makes sure that something can ask for a table: its name is a
// gender, a form that a sentence asks for, or both.
func (b *builder) checkWordTable(m *Message, table string) {
	gender, form := formOf(table)
	if !slices.Contains(Genders, gender) {
		gender, form = "", table
	}
	if form == "" || slices.ContainsFunc(b.asked, func(a askedForm) bool { return a.form == form }) {
		return
	}
	b.problem(m.Line, fmt.Sprintf("number words for %q: no sentence asks for that form", table),
		"name the table by a gender, a form, or both: "+strings.Join(Genders, ", ")+", feminine-accusative")
}

// wordTables lists the tables of number words for a gender and a form, the
// closest first.
func (b *builder) wordTables(gender, form string) []numberWords {
	names := []string{gender, ""}
	if form != "" {
		names = []string{gender + "-" + form, form, gender, ""}
	}
	var tables []numberWords
	for _, name := range slices.Compact(names) {
		if words := b.lang.words[name]; words != nil {
			tables = append(tables, words)
		}
	}
	return tables
}
