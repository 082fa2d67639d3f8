package translate

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/i18n"
	"homebuild/internal/pattern"
	"homebuild/internal/phrase"
)

// Question is what a translator is asked about a message, a form or a sentence: one
// text, or one for each form that its number or person asks for.
type Question struct {
	Wanted
	Asks   []Ask
	Places []Placeholder // that may stand in the texts
	Before []string      // what the file says elsewhere for the same English
}

// Ask is one text of a question.
type Ask struct {
	Name    string // of the text in the file: "learn.next.other"
	Numbers []int  // the first numbers that it is for; none where there is no choice among forms
	Gender  string // of the person that it is about; empty for none
	English string // said with the first of these numbers that is not 0
	Hint    string // of a setting: what may be written
	Text    string // as it stands in the file
}

// Placeholder is what may stand in a text for something that the page fills in.
type Placeholder struct {
	Write string // "{{.Start.accusative}}"
	Means string // such as "5 shells"; empty where the note says it
}

// Head is the id of the question about the head of the file.
const Head = "language"

// guessed marks what a new file guesses about its language.
const guessed = "# please confirm"

// Guesses reports whether nobody has confirmed the head of the file yet.
func (d *Draft) Guesses() bool { return strings.Contains(d.file.Text, guessed) }

// Ask finds out all about a message, a form or a sentence, by the id that a page asks
// for; false where neither the file nor the English one knows it.
func (d *Draft) Ask(id string) (Question, bool) {
	if id == Head {
		return d.askHead(), true
	}
	q := Question{Wanted: d.Wanted(id)}
	if event, group, key, ok := cutSentence(id); ok {
		d.askSentence(&q, event, group, key)
	} else {
		d.askMessage(&q)
	}
	return q, q.English != "" || len(q.Asks) > 0 && q.Asks[0].Hint != ""
}

func (d *Draft) askHead() Question {
	q := Question{Wanted: Wanted{ID: Head, Note: "What was guessed about the language. Look whether it is right. The pages speak to parent and child together, warm and plain: choose the form of address that you would use for both, and keep it."}}
	lines := strings.Split(d.file.Text, "\n")
	for _, m := range d.file.Messages {
		_, hint, ok := strings.Cut(lines[m.Line-1], guessed)
		if m.Family == Head && ok {
			q.Line = cmp.Or(q.Line, m.Line)
			q.Asks = append(q.Asks, Ask{Name: m.ID, English: m.Key, Hint: strings.TrimLeft(hint, ": "), Text: m.Other})
		}
	}
	return q
}

func (d *Draft) askSentence(q *Question, event, group, key string) {
	ask := Ask{Name: q.ID, English: q.English}
	if e := d.file.Event(event); e != nil {
		if s := e.Sentence(group, key); s != nil {
			ask.Text = s.Text
		}
	}
	q.Asks = []Ask{ask}
	things := d.source.Things(event)
	for _, place := range placesIn(q.English) {
		thing := ""
		switch {
		case len(things) == 0:
		case place == "Extra":
			thing = things[len(things)-1]
		default:
			thing = things[0]
		}
		q.Places = append(q.Places, d.formsOf(place, thing)...)
	}
	q.Before = d.before(q)
}

// formsOf are a place and the forms in which the file can say what stands there.
func (d *Draft) formsOf(place, thing string) []Placeholder {
	write := func(form string) string { return "{{." + place + form + "}}" }
	const few = 5
	said := func(m *i18n.Message) string {
		if m == nil {
			return ""
		}
		text := m.Text(d.Language.Plurals().Of(few))
		return strings.ReplaceAll(text, "{{.N}}", fmt.Sprint(few))
	}
	out := []Placeholder{{write(""), cmp.Or(said(d.file.Message(thing+".count")), d.sample(d.source.File.Message(thing+".count"), few))}}
	if thing == "" {
		return out
	}
	out = append(out, Placeholder{write(".number"), fmt.Sprint(few)}) // without the thing
	for _, m := range d.file.Messages {
		if form, ok := strings.CutPrefix(m.Key, "count-"); ok && m.Block == thing {
			out = append(out, Placeholder{write("." + form), said(m)})
		}
	}
	return out
}

func (d *Draft) askMessage(q *Question) {
	english := d.englishOf(q.ID)
	if english == nil {
		return
	}
	if strings.HasSuffix(q.ID, ".gender") {
		q.Asks = []Ask{{Name: q.ID, Hint: strings.Join(i18n.Genders, ", "), Text: d.textAt(q.ID)}}
		q.Note = "The gender of this word, which other words agree with."
		return
	}
	if q.ID != english.ID && i18n.Counted(english.Family) {
		q.Note = d.formNote(q.ID, english)
	}
	if kind, _, _ := strings.Cut(q.ID[strings.LastIndexByte(q.ID, '.')+1:], "-"); kind == "blank" && i18n.Counted(english.Family) {
		q.Note = strings.TrimSpace(q.Note + " A line to write on stands in the place of the number: " + strings.ReplaceAll(english.Other, "{{.N}}", "____") + ".")
	}
	for _, place := range placesIn(english.Other) {
		means := ""
		if place == "N" && i18n.Counted(english.Family) {
			means = "the number"
		}
		q.Places = append(q.Places, Placeholder{"{{." + place + "}}", means})
	}
	for _, m := range d.file.All(q.ID) {
		q.Asks = append(q.Asks, d.asksOf(m, english)...)
	}
	if len(q.Asks) == 0 {
		q.Asks = d.asksOf(&i18n.Message{}, english)
		for i := range q.Asks {
			q.Asks[i].Name = q.ID + q.Asks[i].Name
		}
	}
	q.Before = d.before(q)
}

// formNote says what a form is for, and what its plain form is.
func (d *Draft) formNote(id string, english *i18n.Message) string {
	parts := []string{oneLine(english.English.Description), fmt.Sprintf("The form %q that your sentences ask for.", strings.TrimPrefix(id, english.ID+"-"))}
	var plain []string
	if m := d.file.Message(english.ID); m != nil {
		for _, ask := range d.asksOf(m, english) {
			if ask.Text != "" {
				plain = append(plain, ask.Text)
			}
		}
	}
	if len(plain) > 0 {
		parts = append(parts, "Without a form you wrote: "+strings.Join(plain, " · ")+".")
	}
	return strings.TrimSpace(strings.Join(parts, " "))
}

// asksOf are the texts of a message of the file; an empty one for what it lacks.
func (d *Draft) asksOf(m, english *i18n.Message) []Ask {
	rule := d.Language.Plurals()
	plural := english.Plural()
	for _, c := range i18n.Categories()[:i18n.Other] {
		plural = plural || m.Wrote(c)
	}
	if !plural {
		name := m.ID + ".other"
		if m.Alone {
			name = m.ID
		}
		return []Ask{{Name: name, Gender: m.Gender, English: english.Other, Text: m.Other}}
	}
	var out []Ask
	for _, c := range i18n.Categories() {
		if rule.Needs(c) {
			numbers := rule.Examples(c, 7)
			out = append(out, Ask{Name: m.ID + "." + c.String(), Numbers: numbers, Gender: m.Gender, English: d.sample(english, Ask{Numbers: numbers}.Shown()), Text: m.Text(c)})
		}
	}
	return out
}

// Shown is the number that stands for the others.
func (a Ask) Shown() int {
	if a.Numbers[0] == 0 && len(a.Numbers) > 1 {
		return a.Numbers[1]
	}
	return a.Numbers[0]
}

// sample says an English message with a number, and with the names of its other
// places.
func (d *Draft) sample(m *i18n.Message, n int) string {
	if m == nil {
		return ""
	}
	line := phrase.Line{ID: m.ID}
	for _, place := range placesIn(m.Other + m.One) {
		if place == "N" {
			line.Values = append(line.Values, phrase.Number(place, n))
		} else {
			line.Values = append(line.Values, phrase.Text(place, "{{."+place+"}}"))
		}
	}
	return d.English(line)
}

// before are other texts of the file for the same English.
func (d *Draft) before(q *Question) []string {
	var out []string
	add := func(id, english, text string) {
		if english == q.English && text != "" && id != q.ID && !slices.Contains(out, text) && len(out) < 3 {
			out = append(out, text)
		}
	}
	if len(q.Asks) != 1 {
		return nil
	}
	for _, m := range d.file.Messages {
		if m.English != nil && m.English.ID == m.ID && !m.English.Plural() {
			add(m.ID, m.English.Other, m.Other)
		}
	}
	for _, e := range d.file.Events {
		for _, s := range e.Sentences {
			add(e.ID+"."+s.Name(), textOf(e.English, s.Group, s.Key), s.Text)
		}
	}
	return slices.DeleteFunc(out, func(text string) bool { return text == q.Asks[0].Text })
}

// englishOf is the English message that an id is of, or is a form of; nil for none.
func (d *Draft) englishOf(id string) *i18n.Message {
	for {
		if m := d.source.File.Message(id); m != nil {
			return m
		}
		cut := max(strings.LastIndexByte(id, '-'), strings.LastIndexByte(id, '.'))
		if cut <= 0 {
			return nil
		}
		if m := d.source.File.Message(id[:cut] + ".name"); m != nil && id[cut] == '.' {
			return m
		}
		if m := d.source.File.Message(id[:cut] + ".count"); m != nil && id[cut] == '.' {
			return m
		}
		id = id[:cut]
	}
}

// textAt is the text of a message without forms.
func (d *Draft) textAt(id string) string {
	if m := d.file.Message(id); m != nil {
		return m.Other
	}
	return ""
}

var anyPlace = pattern.Of(`\{\{\.(\w+)(?:\.[a-z-]+)?\}\}`)

// placesIn names the places of a text, each once.
func placesIn(text string) []string {
	var out []string
	for _, found := range anyPlace().FindAllStringSubmatch(text, -1) {
		if !slices.Contains(out, found[1]) {
			out = append(out, found[1])
		}
	}
	return out
}
