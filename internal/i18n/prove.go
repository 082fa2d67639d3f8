package i18n

import (
	"fmt"
	"slices"
	"strings"

	"golang.org/x/text/language"

	"homebuild/internal/diag"
)

// Limits of a file from a stranger.
const (
	maxMessage  = 600 // characters
	maxProblems = 200 // of one file; the rest waits until these are mended
)

// Proof is what came of holding a file against English.
type Proof struct {
	Language *Language        // to be used by families only when nothing is wrong; nil when nothing can be said
	Wrong    diag.Diagnostics // to mend
	Missing  diag.Diagnostics // texts still to be written: pages that need them are not made
	Lacks    []string         // ids of the messages, forms and sentences that Missing is about, each once
	Stale    diag.Diagnostics // made from another English text: to be held against it again
	Unread   diag.Diagnostics // in a signed file: not what was read
	Unused   diag.Diagnostics // left out: no page asks for it, as its name is of another version or misspelt
}

// Problems are all that keeps some page from being made.
func (p *Proof) Problems() diag.Diagnostics {
	all := slices.Concat(p.Wrong, p.Missing)
	all.Sort()
	return all
}

// Prove makes a file a language and gathers up to so many problems.
func (s *Source) Prove(f *File, upTo int) *Proof {
	s.Hold(f)
	b := &builder{
		file: f, source: s, most: upTo, wanted: map[wanted]int{}, broken: map[string]bool{}, lacks: map[string]bool{},
		lang: &Language{
			messages: make(map[string]*ready, len(f.Messages)),
			order:    make([]string, 0, len(f.Messages)),
			blocks:   map[string]bool{},
			sum:      fmt.Sprintf("%x.%x", f.sum, s.File.sum),
		},
	}
	if !b.build() {
		b.proof.Language = nil
	}
	return &b.proof
}

// builder makes one file a language, and gathers what is wrong with it.
type builder struct {
	file   *File
	source *Source
	lang   *Language
	asked  []askedForm
	wanted map[wanted]int // forms of things, each with its last asker in askers
	askers []asker
	broken map[string]bool // blocks with something missing
	lacks  map[string]bool // ids with something missing
	most   int             // problems to gather
	proof  Proof

	slips    slips
	segments template // room for the segments of the next messages
	readies  []ready  // room for the next messages
}

func (b *builder) problem(line int, text, hint string) {
	b.proof.Wrong = append(b.proof.Wrong, diag.Diagnostic{File: b.file.Path, Line: line, Text: text, Hint: hint})
}

// missing tells of a text of a message that is still to be written; the optional block
// that it belongs to, if it does, is not to be used until it is.
func (b *builder) missing(id, block string, line int, text, hint string) {
	if !b.lacks[id] {
		b.lacks[id] = true
		b.proof.Lacks = append(b.proof.Lacks, id)
	}
	b.proof.Missing = append(b.proof.Missing, diag.Diagnostic{File: b.file.Path, Line: line, Text: text, Hint: hint})
	if block != "" {
		b.broken[block] = true
	}
}

// unused tells of something that no page asks for, and that is left out.
func (b *builder) unused(line int, text string, hint func() string) {
	if len(b.proof.Unused) < b.most {
		b.proof.Unused = append(b.proof.Unused, diag.Diagnostic{File: b.file.Path, Line: line, Text: text, Hint: hint()})
	}
}

// full reports that more problems would not help anybody. It also bounds the
// work that a hostile file can cause.
func (b *builder) full() bool { return len(b.proof.Wrong) >= b.most }

// build makes the language, and reports whether something can be said in it.
func (b *builder) build() bool {
	tag, wrong := ParseTag(b.file.Tag)
	if wrong != nil {
		b.problem(0, wrong.Text, wrong.Hint)
		return false
	}
	b.proof.Language = b.lang
	b.header(tag)
	b.slips = newSlips(b.file, b.lang, tag)
	if !b.rule(tag) {
		return false
	}
	b.checkIDs()
	for _, m := range b.file.Messages {
		if m.Family != "language" && !m.gone && !b.full() {
			b.message(m)
		}
	}
	b.events()
	if b.full() {
		return false
	}
	b.checkWords()
	b.checkNumberWords()
	b.checkFewMany()
	b.checkOpposites()
	b.checkComparisons()
	b.checkTwoPeople()
	b.checkThings()
	b.checkForms()
	b.checkGenders()
	for block := range b.broken {
		delete(b.lang.blocks, block)
	}
	b.proof.Missing.Sort()
	b.proof.Unused.Sort()
	b.lang.missing, b.lang.unused = b.proof.Missing, b.proof.Unused
	b.staleness()
	if b.lang.reviewed != nil {
		b.unread()
	}
	b.lang.open = len(b.proof.Stale)+len(b.proof.Unread) > 0
	return true
}

// rule finds the plural rule: the language's own, or the one that the file
// names for a language that CLDR does not know.
func (b *builder) rule(tag language.Tag) bool {
	stated := b.file.Message("language.plurals")
	if stated != nil && stated.Other == Other.String() {
		b.lang.plural = OnlyOther()
		return true
	}
	if stated != nil {
		like, wrong := ParseTag(stated.Other)
		if wrong != nil {
			b.problem(stated.Line, "plurals: "+wrong.Text, `write the tag of a language with the same plural rule, or "other" where nouns never change`)
			return false
		}
		tag = like
	}
	var err error
	if b.lang.plural, err = NewPlurals(tag); err != nil {
		b.problem(b.headerLine("plurals"), fmt.Sprintf("no plural rule is known for %q", tag),
			`write plurals = "other" under [language] where nouns never change after a number, or the tag of a language with the same rule`)
		return false
	}
	return true
}

// message makes one message ready.
func (b *builder) message(m *Message) {
	l := b.lang
	for _, c := range Categories() {
		if m.Wrote(c) && !l.plural.knows(c) {
			b.problem(m.LineOf(c.String()), fmt.Sprintf("%s: %s never uses the plural category %s", m.ID, l.tag, c), "write "+strings.Join(b.categories(), ", "))
		}
	}
	if m.Key == "gender" {
		b.checkGender(m)
	}
	b.checkNumberless(m)
	if len(b.readies) == cap(b.readies) {
		b.readies = make([]ready, 0, 64)
	}
	b.readies = append(b.readies, ready{})
	r := &b.readies[len(b.readies)-1]
	if m.isPlural() {
		r.plural = b.pluralForms(m)
	} else {
		r.text = b.text(m, Other, false)
	}
	if m.Gender == "" {
		l.messages[m.ID] = r
		l.order = append(l.order, m.ID)
		return
	}
	id := m.sentence()
	if l.messages[id] == nil {
		l.order = append(l.order, id)
		l.messages[id] = &ready{byGender: map[string]*ready{}}
	}
	l.messages[id].byGender[m.Gender] = r
}

// checkNumberless refuses plural forms of a message that has no number to choose
// among them: pages ask for its one text.
func (b *builder) checkNumberless(m *Message) {
	if m.numbered() {
		return
	}
	for _, c := range Categories()[:Other] {
		if m.Wrote(c) && b.lang.plural.knows(c) {
			b.problem(m.LineOf(c.String()), fmt.Sprintf("%s has no number, so it has one text and no form %q", m.ID, c), `write its text as other = "..."`)
			return
		}
	}
}

// categories lists the plural categories that the language needs.
func (b *builder) categories() []string {
	var names []string
	for _, c := range Categories() {
		if b.lang.plural.Needs(c) {
			names = append(names, c.String())
		}
	}
	return names
}

// isPlural reports whether a message has forms by its place N: a counted form,
// or one that has them in English or in this file.
func (m *Message) isPlural() bool {
	kind, _ := formOf(m.Key)
	return kind == "count" && Counted(m.Family) || m.English.plural ||
		m.numbered() && m.lines[Zero]+m.lines[One]+m.lines[Two]+m.lines[Few]+m.lines[Many] > 0
}

// numbered reports whether a message has a number that its form can follow.
func (m *Message) numbered() bool {
	return m.English.plural || Counted(m.Family) && m.Key != "gender" || slices.Contains(m.English.places, "N")
}

// pluralForms makes every form that some number from 0 to 1000 needs; nil when
// one of them is missing or cannot be read.
func (b *builder) pluralForms(m *Message) *[Other + 1]template {
	var forms [Other + 1]template
	p, whole := b.lang.plural, true
	for _, c := range Categories() {
		switch {
		case m.Text(c) != "":
			forms[c] = b.text(m, c, p.single(c))
			whole = whole && forms[c] != nil
		case p.Needs(c):
			whole = false
			b.missing(m.ID, m.Block, m.LineOf(c.String()), fmt.Sprintf("%s has no form for the plural category %s, as in %d", m.ID, c, p.Examples(c, 1)[0]), fmt.Sprintf("write %s = %q", c, "{{.N}} ..."))
		}
	}
	if !whole {
		return nil
	}
	if forms[Other] == nil { // numbers beyond 1000 that no file is proved for
		forms[Other] = forms[p.Of(most)]
	}
	for c := range forms {
		if forms[c] == nil {
			forms[c] = forms[Other]
		}
	}
	return &forms
}

// text makes one text ready and holds its places against English; nil when it
// is empty or cannot be read.
func (b *builder) text(m *Message, c Category, mayDropN bool) template {
	text, line := m.Text(c), m.LineOf(c.String())
	if text == "" {
		if m.Key != "gender" {
			b.missing(m.ID, m.Block, line, m.ID+" has no text", m.Suggestion())
		}
		return nil
	}
	t, wrong := b.template(text)
	if wrong != nil {
		b.problem(line, m.ID+wrong.Text, wrong.Hint)
		return nil
	}
	b.checkPlaces(m, line, t, mayDropN)
	b.messageSlips(m, line, text, t)
	for _, s := range t {
		if s.form != "" {
			b.asked = append(b.asked, askedForm{by: m, place: s.place, form: s.form, line: line})
		}
	}
	return t
}

// room is an empty template that the segments of a text fit into. Many share one
// piece of memory, since a language has thousands.
func (b *builder) room(text string) template {
	need := 1 + 2*strings.Count(text, "{{")
	if cap(b.segments)-len(b.segments) < need {
		b.segments = make(template, 0, max(need, 512))
	}
	from := len(b.segments)
	b.segments = b.segments[:from+need]
	return b.segments[from : from : from+need]
}

// staleness lists what was made from an English text that has changed.
func (b *builder) staleness() {
	stale := func(line int, text, hint string, args ...any) {
		b.proof.Stale = append(b.proof.Stale, diag.Diagnostic{File: b.file.Path, Line: line, Text: text, Hint: fmt.Sprintf(hint, args...)})
	}
	for _, m := range b.file.Messages {
		if m.Stale() {
			stale(m.LineOf("hash"), m.ID+": the English has changed since this was translated",
				"the English is %q; where the text fits it, write hash = %q in its table", m.English.Other, m.EnglishHash())
		}
	}
	for _, e := range b.file.Events {
		if e.Stale() {
			stale(e.Line, e.ID+": the English has changed since this was told",
				"read the English again; where the telling fits it, write source = %q below [%s]", e.SourceHash(), e.ID)
		}
	}
}
