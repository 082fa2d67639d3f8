package i18n

import (
	"slices"

	"homebuild/internal/phrase"
)

// Signs of the private use areas, which no language file may hold: they stand around
// each message of a page that somebody writes on.
const (
	written  = rune('\U000F0000') // and those behind it: a message begins
	inPencil = rune('\U00100000') // and those behind it: one begins that is still to be written, said in English
	markEnd  = '\uE000'
	mostIDs  = 0xFFFD // signs of a plane
)

// Marks tell by the signs on a page which messages it says.
type Marks struct {
	ids    []string
	values map[string]map[string]string // by id and place
}

// Value is what stood in a place of a message when a page first said it, in English;
// empty where no page did.
func (m *Marks) Value(id, place string) string { return m.values[id][place] }

// keep keeps what stands in the places of a message.
func (m *Marks) keep(id string, line phrase.Line, english *Language) {
	if len(line.Values) == 0 || m.values[id] != nil {
		return
	}
	if m.values == nil {
		m.values = map[string]map[string]string{}
	}
	m.values[id] = map[string]string{}
	for i := range line.Values {
		if t, err := english.filled(nil, &line.Values[i], ""); err == nil {
			m.values[id][line.Values[i].Name] = t.String()
		}
	}
}

// Mark is what a sign means.
type Mark struct {
	ID     string // of the message that begins; empty where one ends
	Pencil bool   // it is still to be written, and said in English
}

// Read tells what a letter of a page is; false for one that is no mark.
func (m *Marks) Read(c rune) (Mark, bool) {
	switch i := int(c - written); {
	case c == markEnd:
		return Mark{}, true
	case c >= inPencil && int(c-inPencil) < len(m.ids):
		return Mark{m.ids[c-inPencil], true}, true
	case i >= 0 && i < len(m.ids):
		return Mark{m.ids[i], false}, true
	}
	return Mark{}, false
}

func (m *Marks) sign(id string, from rune) string {
	i := slices.Index(m.ids, id)
	if i < 0 && len(m.ids) < mostIDs {
		i = len(m.ids)
		m.ids = append(m.ids, id)
	}
	return string(from + rune(max(i, 0)))
}

// marker marks what a language says.
type marker struct {
	marks   *Marks
	english *Language // says what is missing
	of      *Language // in English that is said instead: the language that lacks it
}

// Marked is the language for a page that somebody writes on: what it says stands
// between marks, and what is still to be written is said in English. Such a page is
// for the translator alone, and one goroutine makes it.
func (l *Language) Marked(english *Language, marks *Marks) *Language {
	marked := *l
	instead := *english
	instead.marker = &marker{marks: marks, of: l}
	marked.marker = &marker{marks: marks, english: &instead}
	return &marked
}

// between puts a text between a sign and its end.
func (k *marker) between(id string, from rune, t Text) Text {
	return slices.Concat(Text{{RunMark, k.marks.sign(id, from)}}, t, Text{{RunMark, string(markEnd)}})
}

// say says a line, in English where the language cannot.
func (k *marker) say(l *Language, line phrase.Line) Text {
	id := l.exactID(line)
	k.marks.keep(id, line, k.english)
	t, err := l.try(nil, line)
	if err != nil {
		return k.between(id, inPencil, must(k.english.try(nil, line)))
	}
	return k.between(id, written, t)
}

// fill fills a place, in English where the language cannot: in the form that is
// asked for, if English has it.
func (k *marker) fill(l *Language, out Text, v *phrase.Value, form string) Text {
	if k.of != nil {
		return k.within(l, out, v, form)
	}
	t, err := l.filled(nil, v, form)
	switch {
	case err == nil && !isNamed(v, form):
		return append(out, t...)
	case err == nil:
		return append(out, k.between(l.formID(v, form), written, t)...)
	}
	if t, err = k.english.filled(nil, v, form); err != nil {
		t = must(k.english.filled(nil, v, ""))
	}
	return append(out, k.between(l.formID(v, form), inPencil, t)...)
}

// within fills a place of an English sentence that is said instead: what stands there
// is marked, too, as the language will say it.
func (k *marker) within(english *Language, out Text, v *phrase.Value, form string) Text {
	t := must(english.filled(nil, v, form))
	if !isNamed(v, form) {
		return append(out, t...)
	}
	from := written
	if _, err := k.of.filled(nil, v, ""); err != nil {
		from = inPencil
	}
	return append(out, k.between(k.of.formID(v, ""), from, t)...)
}

// must is what English says, which was proved whole.
func must(t Text, err error) Text {
	if err != nil {
		panic(err)
	}
	return t
}

// isNamed reports whether a message stands for a value.
func isNamed(v *phrase.Value, form string) bool {
	switch v.Kind {
	case phrase.KindPerson, phrase.KindMessage:
		return true
	case phrase.KindCounted, phrase.KindBlank:
		return v.ID != "" && form != numberForm
	}
	return false
}

// spoken is the last run that is no mark; an empty one for none.
func (t Text) spoken() Run {
	for _, r := range slices.Backward(t) {
		if r.Kind != RunMark {
			return r
		}
	}
	return Run{}
}

// exactID is the id of the sentence of an event that stories of the groups say,
// within its group; that of any other line is its own.
func (l *Language) exactID(line phrase.Line) string {
	event, key, ok := cutEvent(line.ID)
	if !ok {
		return line.ID
	}
	t := l.tales[event]
	if i := t.find(line.Groups, key); i >= 0 && t[i].group != "" {
		return event + "." + t[i].group + "." + key
	}
	return line.ID
}
