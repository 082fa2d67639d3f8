package i18n

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/language"

	"homebuild/internal/diag"
)

// builder makes one file a language, and gathers what is wrong with it.
type builder struct {
	file     *file
	source   *source
	lang     *Language
	asked    []askedForm
	most     int // problems to gather
	problems diag.Problems
	empty    diag.Problems // texts that are there and still to be written
}

// askedForm is a place that asks a form: {{.Start.accusative}}.
type askedForm struct {
	id, place, form string
	line            int
}

func (b *builder) problem(line int, text, hint string) {
	b.problems = append(b.problems, diag.Problem{File: b.file.path, Line: line, Text: text, Hint: hint})
}

// full reports that more problems would not help anybody. It also bounds the
// work that a hostile file can cause.
func (b *builder) full() bool { return len(b.problems)+len(b.empty) >= b.most }

// build makes a file a language. The language is only to be used when there
// are no problems.
func build(f *file, src *source) (*Language, diag.Problems) {
	b := newBuilder(f, src, maxProblems)
	b.build()
	problems := append(b.problems, b.empty...)
	problems.Sort()
	return b.lang, problems
}

// newBuilder makes a builder that stops when there are so many problems, and
// then gives no language.
func newBuilder(f *file, src *source, most int) *builder {
	return &builder{file: f, source: src, most: most, lang: &Language{
		messages: make(map[string]*ready, len(f.messages)),
		things:   map[string]*thing{},
		people:   map[string]*person{},
		blocks:   map[string]bool{},
		words:    map[string]numberWords{},
	}}
}

func (b *builder) build() {
	f := b.file
	tag, wrong := parseTag(f.tag)
	if wrong != nil {
		b.problem(0, wrong.text, wrong.hint)
		b.lang = nil
		return
	}
	b.header(tag)
	if !b.rule(tag) {
		b.lang = nil
		return
	}
	b.checkIDs()
	for _, id := range f.order {
		if family(id) != "language" && !b.full() {
			b.message(id, f.messages[id])
		}
	}
	if b.full() {
		b.lang = nil
		return
	}
	b.index()
	b.checkForms()
	b.lang.stale = b.anyStale()
}

// rule finds the plural rule: the language's own, or the one that the file
// names for a language that CLDR does not know.
func (b *builder) rule(tag language.Tag) bool {
	stated := b.file.messages["language.plurals"]
	if stated != nil && stated.Other == "other" {
		b.lang.plural = onlyOther()
		return true
	}
	if stated != nil {
		like, wrong := parseTag(stated.Other)
		if wrong != nil {
			b.problem(stated.line, "plurals: "+wrong.text, `write the tag of a language with the same plural rule, or "other" where nouns never change`)
			return false
		}
		tag = like
	}
	var err error
	if b.lang.plural, err = newPlurals(tag); err != nil {
		b.problem(b.headerLine("plurals"), fmt.Sprintf("no plural rule is known for %q", tag),
			`write plurals = "other" under [language] where nouns never change after a number, or the tag of a language with the same rule`)
		return false
	}
	return true
}

// message makes one message ready.
func (b *builder) message(id string, m *message) {
	l := b.lang
	for c := zero; c <= other; c++ {
		if m.has(c) && !l.plural.knows(c) {
			b.problem(m.lineOf(c.String()), fmt.Sprintf("%s: %s never uses the plural category %s", id, l.tag, c), "write "+strings.Join(b.categories(), ", "))
		}
	}
	base, gender := cutGender(id)
	r := &ready{}
	switch {
	case b.isPlural(id, m):
		r.plural = b.pluralForms(id, m)
	default:
		r.text = b.text(id, m, other, false)
		r.word, _ = r.text.word()
	}
	if gender == "" {
		l.messages[id] = r
		l.order = append(l.order, id)
		return
	}
	if l.messages[base] == nil {
		l.order = append(l.order, base)
		l.messages[base] = &ready{byGender: map[string]*ready{}}
	}
	l.messages[base].byGender[gender] = r
}

// categories lists the plural categories that the language needs.
func (b *builder) categories() []string {
	var names []string
	for c := zero; c <= other; c++ {
		if b.lang.plural.needs(c) {
			names = append(names, c.String())
		}
	}
	return names
}

// isPlural reports whether a message has forms by its place N: a counted form,
// or one that has them in English or in this file.
func (b *builder) isPlural(id string, m *message) bool {
	if kind, _ := formOf(lastKey(id)); kind == "count" && slices.Contains(countedFamilies, family(id)) {
		return true
	}
	for c := zero; c < other; c++ {
		if m.has(c) {
			return true
		}
	}
	return b.source.plural(id)
}

// pluralForms makes every form that some number from 0 to 1000 needs; nil when
// one of them is missing or cannot be read.
func (b *builder) pluralForms(id string, m *message) *[other + 1]template {
	var forms [other + 1]template
	p, whole := b.lang.plural, true
	for c := zero; c <= other; c++ {
		switch {
		case m.text(c) != "":
			forms[c] = b.text(id, m, c, p.single(c))
			whole = whole && forms[c] != nil
		case p.needs(c):
			whole = false
			b.lacksText(m, c, fmt.Sprintf("%s has no form for the plural category %s, as in %d", id, c, p.example(c)), fmt.Sprintf("write %s = %q", c, "{{.N}} ..."))
		}
	}
	if !whole {
		return nil
	}
	if forms[other] == nil { // numbers beyond 1000 that no file is proved for
		forms[other] = forms[p.of(most)]
	}
	for c := range forms {
		if forms[c] == nil {
			forms[c] = forms[other]
		}
	}
	return &forms
}

// lacksText tells of a text that is not there: still to be written where the
// file has its place ready, and forgotten otherwise.
func (b *builder) lacksText(m *message, c category, text, hint string) {
	p := diag.Problem{File: b.file.path, Line: m.lineOf(c.String()), Text: text, Hint: hint}
	if m.has(c) {
		b.empty = append(b.empty, p)
	} else {
		b.problems = append(b.problems, p)
	}
}

// text makes one text ready and holds its places against English.
func (b *builder) text(id string, m *message, c category, mayDropN bool) template {
	text, line := m.text(c), m.lineOf(c.String())
	if text == "" {
		if lastKey(id) != "gender" {
			b.lacksText(m, c, id+" has no text", b.source.suggestion(id))
		}
		return nil
	}
	if n := utf8.RuneCountInString(text); n > maxMessage {
		b.problem(line, fmt.Sprintf("%s has %d characters; a message has at most %d", id, n, maxMessage), "say it shorter")
		return nil
	}
	if wrong := checkCharacters(text, b.lang.script); wrong != nil {
		b.problem(line, id+": "+wrong.text, wrong.hint)
		return nil
	}
	t, wrong := parseTemplate(text)
	if wrong != nil {
		b.problem(line, id+": "+wrong.text, wrong.hint)
		return nil
	}
	b.checkPlaces(id, line, t, mayDropN)
	for _, s := range t {
		if s.form != "" {
			b.asked = append(b.asked, askedForm{id: id, place: s.place, form: s.form, line: line})
		}
	}
	return t
}

// anyStale reports whether the English of any message has changed since it was
// translated. In a reviewed file a message that keeps no hash counts as
// changed, as nobody can tell.
func (b *builder) anyStale() bool {
	for id, m := range b.file.messages {
		switch b.source.staleness(id, m) {
		case stale:
			return true
		case unknown:
			if b.lang.reviewed != "" {
				return true
			}
		}
	}
	return false
}
