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
	b.indexWords()
	for _, id := range b.file.order {
		in, key := block(id), lastKey(id)
		switch {
		case slices.Contains(peopleFamilies, family(id)):
			b.indexPerson(in, key, b.file.messages[id])
		case slices.Contains(countedFamilies, family(id)):
			b.indexThing(in, key, id)
		}
	}
	for _, t := range b.lang.things {
		for form, c := range t.counts {
			c.words = b.wordTables(t.gender, form)
		}
	}
}

func (b *builder) indexPerson(id, key string, m *message) {
	p := b.lang.people[id]
	if p == nil {
		p = &person{forms: map[string]string{}}
		b.lang.people[id] = p
	}
	switch {
	case key == "gender":
		p.gender = b.gender(m)
	case m.Other == "": // not written yet; told where it is read
	case key == "name":
		p.forms[""] = m.Other
	default:
		p.forms[key] = m.Other
	}
}

// gender reads a gender, which may be left empty.
func (b *builder) gender(m *message) string {
	if m.Other != "" && !slices.Contains(genders, m.Other) {
		b.problem(m.line, fmt.Sprintf("gender is %q", m.Other), "write "+oneOf(m.Other, genders))
		return ""
	}
	return m.Other
}

func (b *builder) indexThing(id, key, message string) {
	t := b.lang.things[id]
	if t == nil {
		t = &thing{counts: map[string]*counted{}, asks: map[string]string{}, blanks: map[string]around{}}
		b.lang.things[id] = t
	}
	kind, form := formOf(key)
	r := b.lang.messages[message]
	switch {
	case key == "gender":
		t.gender = b.gender(b.file.messages[message])
	case kind == "ask" && r.word != "":
		t.asks[form] = r.word
	case kind == "blank" && r.text != nil:
		t.blanks[form] = b.around(message, r.text)
	case kind == "count" && r.plural != nil:
		c := &counted{}
		for i, text := range r.plural {
			c.forms[i] = b.around(message, text)
		}
		t.counts[form] = c
	}
}

// around cuts a text at its number.
func (b *builder) around(id string, t template) around {
	var a around
	for _, s := range t {
		switch {
		case s.place != "" && a.number:
			b.problem(b.file.messages[id].line, fmt.Sprintf("%s has its number twice", id), "keep one {{.N}}")
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

// checkWordID checks an id of the tables of number words: "words.7",
// "words.feminine.1".
func checkWordID(id string) *fault {
	parts := strings.Split(id, ".")
	n, err := strconv.Atoi(lastKey(id))
	switch {
	case err != nil || n < 0 || n > most || strconv.Itoa(n) != lastKey(id):
		return &fault{fmt.Sprintf("%q is not a number from 0 to %d", lastKey(id), most), `write the number in digits: 7 = "seven"`}
	case len(parts) > 3:
		return &fault{fmt.Sprintf("%s is nested too deeply", id), "write [words.feminine] or [words.feminine-accusative]"}
	}
	return nil
}

func (b *builder) indexWords() {
	for _, id := range b.file.order {
		if family(id) != "words" || checkWordID(id) != nil || b.full() {
			continue
		}
		table := ""
		if parts := strings.Split(id, "."); len(parts) == 3 {
			table = parts[1]
		}
		n, _ := strconv.Atoi(lastKey(id))
		if b.lang.words[table] == nil {
			b.checkWordTable(id, table)
			b.lang.words[table] = numberWords{}
		}
		b.lang.words[table][n] = b.file.messages[id].Other
	}
}

// checkWordTable makes sure that something can ask for a table: its name is a
// gender, a form that a sentence asks for, or both.
func (b *builder) checkWordTable(id, table string) {
	gender, form := formOf(table)
	if !slices.Contains(genders, gender) {
		gender, form = "", table
	}
	if form == "" || slices.ContainsFunc(b.asked, func(a askedForm) bool { return a.form == form }) {
		return
	}
	b.problem(b.file.messages[id].line, fmt.Sprintf("number words for %q: no sentence asks for that form", table),
		"name the table by a gender, a form, or both: "+strings.Join(genders, ", ")+", feminine-accusative")
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

// nearForm suggests a form that exists, or to write the first of those that are
// missing.
func nearForm(form, first string, missing int, have []string) string {
	if near := diag.Nearest(form, have); near != "" {
		return "write " + near + ", or add the form"
	}
	return fmt.Sprintf("add %s and the like, %d in all, or ask for a form that is there", first, missing)
}
