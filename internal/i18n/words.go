package i18n

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/diag"
)

// checkGender reads the gender of a person or a thing, which may be left empty.
func (b *builder) checkGender(m *Message) {
	if m.Other != "" && !slices.Contains(Genders, m.Other) {
		b.problem(m.Line, fmt.Sprintf("gender is %q", m.Other), diag.Choice(m.Other, Genders))
	}
}

// checkWords makes sure that something can ask for each table of number words.
func (b *builder) checkWords() {
	checked := map[string]bool{}
	for _, m := range b.file.Messages {
		table, inTable := strings.CutSuffix(strings.TrimPrefix(m.ID, "words."), "."+m.Key)
		if m.Family == "words" && inTable && !checked[table] && checkWordID(m.ID) == nil && !b.full() {
			checked[table] = true
			b.checkWordTable(m, table)
		}
	}
}

// checkWordTable makes sure that something can ask for a table: its name is a
// gender, a form that a sentence asks for, or both. While the file tells no event,
// nobody knows which forms its stories will want.
func (b *builder) checkWordTable(m *Message, table string) {
	gender, form := formOf(table)
	if !slices.Contains(Genders, gender) {
		gender, form = "", table
	}
	if form == "" || len(b.file.Events) == 0 || len(b.proof.Missing) > 0 || b.asksFor(form) {
		return
	}
	b.unused(m.Line, fmt.Sprintf("number words for %q: no sentence asks for that form", table), func() string {
		return "name the table by a gender, a form, or both: " + strings.Join(Genders, ", ") + ", feminine-accusative"
	})
}

// asksFor reports whether some sentence asks for a form.
func (b *builder) asksFor(form string) bool {
	for w := range b.wanted {
		if w.form == form {
			return true
		}
	}
	return slices.ContainsFunc(b.asked, func(a askedForm) bool { return a.form == form })
}

// checkWordID checks an id of the tables of number words: "words.7",
// "words.feminine.1".
func checkWordID(id string) *diag.Diagnostic {
	parts := strings.Split(id, ".")
	last := parts[len(parts)-1]
	n, err := strconv.Atoi(last)
	switch {
	case err != nil || n < 0 || n > most || strconv.Itoa(n) != last:
		return &diag.Diagnostic{Text: fmt.Sprintf("%q is not a number from 0 to %d", last, most), Hint: `write the number in digits: 7 = "seven"`}
	case len(parts) > 3:
		return &diag.Diagnostic{Text: id + " is nested too deeply", Hint: "write [words.feminine] or [words.feminine-accusative]"}
	}
	return nil
}
