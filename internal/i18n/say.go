package i18n

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

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

// written reports whether there is a text to say.
func (r *ready) written() bool {
	return r != nil && (r.text != nil || r.plural != nil || r.byGender != nil)
}

// word is the text, when it has no place.
func (r *ready) word() string {
	if len(r.text) == 1 {
		return r.text[0].text
	}
	return ""
}

// Say says a line. An unknown id, a place without a value and a value that the
// language does not have are bugs of the caller and panic; Load has proved
// everything that the file decides.
func (l *Language) Say(line phrase.Line) Text { return l.SayInto(nil, line) }

// SayInto says a line, in the room of a text that is not needed any more.
func (l *Language) SayInto(room Text, line phrase.Line) Text {
	t, err := l.tryInto(room, line)
	if err != nil {
		panic(fmt.Sprintf("i18n: saying %q in %s: %v", line.ID, l.tag, err))
	}
	return t
}

// Try says a line, or tells why it cannot be said: in a language that somebody
// is still writing.
func (l *Language) Try(line phrase.Line) (Text, error) { return l.tryInto(nil, line) }

func (l *Language) tryInto(room Text, line phrase.Line) (Text, error) {
	if l.marker != nil {
		return l.marker.say(l, line), nil
	}
	return l.try(room, line)
}

func (l *Language) try(room Text, line phrase.Line) (Text, error) {
	t, err := l.template(line)
	if err != nil {
		return nil, l.lacking(line, err)
	}
	out := slices.Grow(room[:0], len(t)+2)
	for i := range t {
		s := &t[i]
		if s.place == "" {
			text := s.text
			if i > 0 && (t[i-1].form == numberForm || t[i-1].place == "N") {
				text = unparted(text)
			}
			if l.ending != nil && len(out) > 0 {
				text = l.ending(out.spoken().Text, text)
			}
			out = append(out, Run{RunPlain, text})
			continue
		}
		v := value(line.Values, s.place)
		if v == nil {
			return nil, fmt.Errorf("the place {{.%s}} has no value", s.place)
		}
		first := len(out)
		if out, err = l.fill(out, v, s.form); err != nil {
			if err = l.lacking(phrase.Line{}, err); err != nil {
				return nil, err
			}
			continue
		}
		if s.capital && v.Kind != phrase.KindText {
			if out[first].Kind == RunMark {
				first++
			}
			out[first].Text = l.capitalise(out[first].Text)
		}
	}
	if l.hears != nil {
		l.hears(line.ID, out)
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
	if event, key, ok := cutEvent(line.ID); ok {
		return l.sentence(event, key, line.Groups)
	}
	m := l.messages[line.ID]
	if m == nil {
		return nil, &gap{line.ID, "there is no such message"}
	}
	if m.byGender != nil {
		gender := l.gender(line)
		if m = m.byGender[gender]; m == nil {
			return nil, &gap{cmp.Or(line.Subject+".gender", line.ID), fmt.Sprintf("no form for the gender of %q", line.Subject)}
		}
	}
	switch {
	case !m.written():
		return nil, &gap{line.ID, "it is not written yet"}
	case m.plural == nil:
		return m.text, nil
	}
	n := value(line.Values, "N")
	if n == nil {
		return nil, errors.New("the place {{.N}} has no value")
	}
	return m.plural[l.plural.Of(n.N)], nil
}

// sentence is that of an event for stories of the groups.
func (l *Language) sentence(event, key string, groups []string) (template, error) {
	t := l.tales[event]
	i := t.find(groups, key)
	switch {
	case t == nil:
		return nil, &gap{event + "." + key, "there is no such event"}
	case i < 0:
		return nil, &gap{event + "." + key, "there is no such sentence"}
	case t[i].template == nil && t[i].group != "":
		return nil, &gap{event + "." + t[i].group + "." + key, "it is not written yet"}
	case t[i].template == nil:
		return nil, &gap{event + "." + key, "it is not written yet"}
	}
	return t[i].template, nil
}

// cutEvent parts the id of a sentence from that of its event.
func cutEvent(id string) (event, key string, ok bool) {
	if !strings.HasPrefix(id, eventFamily+".") {
		return "", "", false
	}
	dot := strings.LastIndexByte(id, '.')
	return id[:dot], id[dot+1:], true
}

// unparted is a text that stands behind a number that it agrees with, with a space
// between them that no line breaks at.
func unparted(text string) string {
	if rest, ok := strings.CutPrefix(text, " "); ok {
		return noBreakSpace + rest
	}
	return text
}

const noBreakSpace = "\u00a0"

// gender is that of the line's subject, or of the first person in it.
func (l *Language) gender(line phrase.Line) string {
	subject := line.Subject
	for i := 0; subject == "" && i < len(line.Values); i++ {
		if line.Values[i].Kind == phrase.KindPerson {
			subject = line.Values[i].ID
		}
	}
	return l.Gender(subject)
}

// Gender is that of a person, a character or a thing; empty where none is stated.
func (l *Language) Gender(id string) string {
	if m := l.messages[id+".gender"]; m != nil {
		return m.word()
	}
	return ""
}

// fill writes a value in a form.
func (l *Language) fill(out Text, v *phrase.Value, form string) (Text, error) {
	if l.marker != nil {
		return l.marker.fill(l, out, v, form), nil
	}
	return l.filled(out, v, form)
}

func (l *Language) filled(out Text, v *phrase.Value, form string) (filled Text, err error) {
	switch {
	case v.Kind == phrase.KindNumber:
		return append(out, Run{RunNumber, l.number(v, form, "")}), nil
	case v.Kind == phrase.KindEquation:
		return append(out, Run{RunEquation, l.Equation(v.Equation)}), nil
	case v.Kind == phrase.KindText:
		return append(out, Run{RunOwnText, v.Text}), nil
	case v.Kind == phrase.KindBlank && (v.ID == "" || form == numberForm):
		return append(out, Run{RunBlank, writingLine}), nil
	case v.Kind == phrase.KindCounted && form == numberForm:
		return append(out, Run{RunNumber, l.number(v, "", v.ID)}), nil
	case v.Kind == phrase.KindMessage && strings.HasPrefix(v.ID, eventFamily+"."):
		t, err := l.template(phrase.Say(v.ID))
		if err != nil {
			return out, err
		}
		return append(out, Run{RunPlain, t.with("")}), nil
	}
	m := l.message(v, form)
	if l.hears != nil {
		first := len(out)
		defer func() { l.hears(l.formID(v, form), filled[first:]) }()
	}
	switch {
	case !m.written():
		return out, &gap{l.formID(v, form), fmt.Sprintf("%q in {{.%s}} has no form %q", v.ID, v.Name, form)}
	case m.plural != nil:
		return append(out, Run{RunCounted, m.plural[l.plural.Of(v.N)].with(l.number(v, form, v.ID))}), nil
	case v.Kind == phrase.KindBlank:
		return append(out, m.text.around(Run{RunBlank, writingLine})...), nil
	case v.Kind == phrase.KindPerson:
		return append(out, Run{RunPerson, m.word()}), nil
	}
	return append(out, Run{RunPlain, m.word()}), nil
}

// message is the one that stands for a value in a form; nil for none.
func (l *Language) message(v *phrase.Value, form string) *ready {
	switch v.Kind {
	case phrase.KindCounted:
		return l.form(v.ID, "count", form)
	case phrase.KindBlank:
		return l.form(v.ID, "blank", form)
	case phrase.KindPerson:
		return l.messages[v.ID+"."+cmp.Or(form, "name")]
	case phrase.KindMessage:
		return l.inner(v.ID, form)
	}
	return nil
}

// formID is the id of the message that stands for a value in a form.
func (l *Language) formID(v *phrase.Value, form string) string {
	key := map[phrase.Kind]string{phrase.KindCounted: "count", phrase.KindBlank: "blank"}[v.Kind]
	switch {
	case v.Kind == phrase.KindPerson:
		return v.ID + "." + cmp.Or(form, "name")
	case key != "" && form != "":
		return v.ID + "." + key + "-" + form
	case key != "":
		return v.ID + "." + key
	case v.Kind == phrase.KindMessage && form == "" && (l.messages[v.ID] != nil || strings.HasPrefix(v.ID, eventFamily+".")):
		return v.ID
	case l.messages[v.ID] != nil && form != "":
		return v.ID + "-" + form
	}
	return v.ID + "." + cmp.Or(form, "name")
}

// form is a message of a thing: "count", or its form "count-accusative".
func (l *Language) form(thing, key, form string) *ready {
	if form == "" {
		return l.messages[thing+"."+key]
	}
	return l.messages[thing+"."+key+"-"+form]
}

// number writes a number, in words where they are wanted and a table has them:
// that of the form and the gender of what is counted, or the nearest to it.
func (l *Language) number(v *phrase.Value, form, thing string) string {
	if v.Words {
		gender := l.Gender(thing)
		tables := []string{gender + "-" + form + ".", form + ".", gender + ".", ""}
		if form == "" {
			tables = tables[2:]
		}
		for _, table := range tables {
			if m := l.messages["words."+table+strconv.Itoa(v.N)]; m != nil && m.word() != "" {
				return m.word()
			}
		}
	}
	return l.digits.write(v.N)
}

// inner is a message that stands inside another. "setting.harbour" may stand for
// its name; a form is a message of its own, "setting.harbour.at" or
// "strategy.make-ten.name-dative".
func (l *Language) inner(id, form string) *ready {
	for _, ending := range innerEndings(form) {
		if m := l.messages[id+ending]; m != nil && m.word() != "" {
			return m
		}
	}
	return nil
}

func innerEndings(form string) []string {
	if form == "" {
		return []string{"", ".name"}
	}
	return []string{"." + form, "-" + form}
}
