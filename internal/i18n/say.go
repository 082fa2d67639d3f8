package i18n

import (
	"errors"
	"fmt"

	"homebuild/internal/phrase"
)

// writingLine is what a blank shows.
const writingLine = "____"

// ready is a message that was parsed and proved.
type ready struct {
	text     template             // empty for a message with plural or gender forms
	plural   *[Other + 1]template // forms by the number in the place N
	byGender map[string]*ready    // forms by the gender of the person it is about
}

// word is the text, when it has no place.
func (r *ready) word() string {
	if len(r.text) == 1 {
		return r.text[0].text
	}
	return ""
}

// thing is something to count, in every form that the language has.
type thing struct {
	gender string
	counts map[string]*counted // by form; "" is the plain one
	asks   map[string]string
	blanks map[string]around
}

// counted is a thing's counted form.
type counted struct {
	forms [Other + 1]around
	words []numberWords // tables to try, in order
}

// numberWords is a table of number words; numbers that it lacks are written in
// digits.
type numberWords map[int]string

// around is a text with a number in it.
type around struct {
	before, after string
	number        bool // false for a form that says its number by itself
}

// person is a name in every form that the language has.
type person struct {
	gender string
	forms  map[string]string // "" is the plain name
}

// Say says a line. An unknown id, a place without a value and a value that the
// language does not have are bugs of the caller and panic; Load has proved
// everything that the file decides.
func (l *Language) Say(line phrase.Line) Text {
	t, err := l.Try(line)
	if err != nil {
		panic(fmt.Sprintf("i18n: saying %q in %s: %v", line.ID, l.tag, err))
	}
	return t
}

// Try says a line, or tells why it cannot be said: in a language that somebody
// is still writing.
func (l *Language) Try(line phrase.Line) (Text, error) {
	t, err := l.template(line)
	if err != nil {
		return nil, err
	}
	out := make(Text, 0, len(t)+2)
	for i := range t {
		s := &t[i]
		if s.place == "" {
			out = append(out, Run{RunPlain, s.text})
			continue
		}
		v := value(line.Values, s.place)
		if v == nil {
			return nil, fmt.Errorf("the place {{.%s}} has no value", s.place)
		}
		first := len(out)
		if out, err = l.fill(out, v, s.form); err != nil {
			return nil, err
		}
		if s.capital && v.Kind != phrase.KindText {
			out[first].Text = l.capitalise(out[first].Text)
		}
	}
	return out, nil
}

func value(values []phrase.Value, name string) *phrase.Value {
	for i := range values {
		if values[i].Name == name {
			return &values[i]
		}
	}
	return nil
}

// template chooses the form of the message that fits its person and number.
func (l *Language) template(line phrase.Line) (template, error) {
	m := l.messages[line.ID]
	if m == nil {
		return nil, errors.New("there is no such message")
	}
	if m.byGender != nil {
		m = m.byGender[l.gender(line)]
		if m == nil {
			return nil, fmt.Errorf("no form for the gender of %q", line.Subject)
		}
	}
	if m.plural == nil {
		return m.text, nil
	}
	n := value(line.Values, "N")
	if n == nil {
		return nil, errors.New("the place {{.N}} has no value")
	}
	return m.plural[l.plural.Of(n.N)], nil
}

// gender is that of the line's subject, or of the first person in it.
func (l *Language) gender(line phrase.Line) string {
	subject := line.Subject
	for i := 0; subject == "" && i < len(line.Values); i++ {
		if line.Values[i].Kind == phrase.KindPerson {
			subject = line.Values[i].ID
		}
	}
	if p := l.people[subject]; p != nil {
		return p.gender
	}
	return ""
}

// fill writes a value.
func (l *Language) fill(out Text, v *phrase.Value, form string) (Text, error) {
	switch v.Kind {
	case phrase.KindNumber:
		return append(out, Run{RunNumber, l.number(v.N, v.Words, l.words[form], l.words[""])}), nil
	case phrase.KindCounted:
		return l.count(out, v, form)
	case phrase.KindAsked:
		return l.ask(out, v, form)
	case phrase.KindBlank:
		return l.blank(out, v, form)
	case phrase.KindPerson:
		return l.personName(out, v, form)
	case phrase.KindEquation:
		return append(out, Run{RunEquation, l.Equation(v.Equation)}), nil
	case phrase.KindMessage:
		return l.inner(out, v, form)
	case phrase.KindText:
		return append(out, Run{RunOwnText, v.Text}), nil
	}
	return nil, fmt.Errorf("the place {{.%s}} has a value of no kind", v.Name)
}

// number writes n, in words where they are wanted and a table has them.
func (l *Language) number(n int, inWords bool, tables ...numberWords) string {
	if inWords {
		for _, t := range tables {
			if word := t[n]; word != "" {
				return word
			}
		}
	}
	return l.digits.write(n)
}

func (l *Language) thing(v *phrase.Value) (*thing, error) {
	t := l.things[v.ID]
	if t == nil {
		return nil, fmt.Errorf("%q in {{.%s}} cannot be counted", v.ID, v.Name)
	}
	return t, nil
}

func (l *Language) count(out Text, v *phrase.Value, form string) (Text, error) {
	t, err := l.thing(v)
	if err != nil {
		return nil, err
	}
	c := t.counts[form]
	if c == nil {
		return nil, fmt.Errorf("%s has no counted form %q", v.ID, form)
	}
	a := &c.forms[l.plural.Of(v.N)]
	if !a.number {
		return append(out, Run{RunCounted, a.before}), nil
	}
	return append(out, Run{RunCounted, a.before + l.number(v.N, v.Words, c.words...) + a.after}), nil
}

func (l *Language) ask(out Text, v *phrase.Value, form string) (Text, error) {
	t, err := l.thing(v)
	if err != nil {
		return nil, err
	}
	ask, ok := t.asks[form]
	if !ok {
		return nil, fmt.Errorf("%s cannot be asked for in the form %q", v.ID, form)
	}
	return append(out, Run{RunPlain, ask}), nil
}

// blank writes a line to write on and the words around it.
func (l *Language) blank(out Text, v *phrase.Value, form string) (Text, error) {
	if v.ID == "" {
		return append(out, Run{RunBlank, writingLine}), nil
	}
	t, err := l.thing(v)
	if err != nil {
		return nil, err
	}
	a, ok := t.blanks[form]
	if !ok {
		return nil, fmt.Errorf("%s has no blank in the form %q", v.ID, form)
	}
	if a.before != "" {
		out = append(out, Run{RunPlain, a.before})
	}
	out = append(out, Run{RunBlank, writingLine})
	if a.after != "" {
		out = append(out, Run{RunPlain, a.after})
	}
	return out, nil
}

func (l *Language) personName(out Text, v *phrase.Value, form string) (Text, error) {
	p := l.people[v.ID]
	if p == nil {
		return nil, fmt.Errorf("there is no person %q", v.ID)
	}
	name, ok := p.forms[form]
	if !ok {
		return nil, fmt.Errorf("%s has no form %q", v.ID, form)
	}
	return append(out, Run{RunPerson, name}), nil
}

// inner writes a message inside a message. "setting.harbour" may stand for its
// name; a form is a message of its own, "setting.harbour.at" or
// "strategy.make-ten.name-dative".
func (l *Language) inner(out Text, v *phrase.Value, form string) (Text, error) {
	for _, ending := range innerEndings(form) {
		if m := l.messages[v.ID+ending]; m != nil && m.word() != "" {
			return append(out, Run{RunPlain, m.word()}), nil
		}
	}
	return nil, fmt.Errorf("%q in {{.%s}} has no form %q", v.ID, v.Name, form)
}

func innerEndings(form string) []string {
	if form == "" {
		return []string{"", ".name"}
	}
	return []string{"." + form, "-" + form}
}
