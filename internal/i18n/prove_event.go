package i18n

import (
	"fmt"
	"iter"
	"slices"
	"strings"
	"unicode/utf8"

	"homebuild/internal/diag"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// tale is an event ready to be told.
type tale []said

// said is a sentence of it.
type said struct {
	group, key string
	template   template // nil for one that is still to be written
}

// find is the sentence for a key that stories of the groups say, the most
// special first; -1 for none.
func (t tale) find(groups []string, key string) int {
	best, rank := -1, len(groups)+1
	for i := range t {
		if t[i].key != key {
			continue
		}
		r := len(groups)
		if t[i].group != "" {
			if r = slices.Index(groups, t[i].group); r < 0 {
				continue
			}
		}
		if r < rank {
			best, rank = i, r
		}
	}
	return best
}

// events makes the events of the file ready and proves them: for every kind of
// story that an event tells there are all sentences, each with the places that
// it must have and no other, and there is no sentence that nothing says.
func (b *builder) events() {
	b.lang.tales = make(map[string]tale, len(b.file.Events))
	for _, e := range b.file.Events {
		if b.full() {
			return
		}
		needs := b.source.events[e.ID]
		if needs == nil || e.English == noEvent {
			b.notAnEvent(e)
			continue
		}
		p := eventProof{builder: b, needs: needs, event: e, tale: make(tale, len(e.Sentences)), used: make([]bool, len(e.Sentences))}
		p.read()
		p.prove()
		p.checkAsked()
		b.lang.tales[e.ID] = p.tale
		b.lang.blocks[e.ID] = true
	}
}

// needs are what the words of an event are for.
type needs struct {
	*story.Event
	always   []story.EventText
	tellings []story.Telling
}

// eventProof proves one event.
type eventProof struct {
	*builder
	needs *needs
	event *Event
	tale  tale
	used  []bool
	lacks []string // keys that were told to be missing
}

// read takes every sentence apart.
func (p *eventProof) read() {
	for i, s := range p.event.Sentences {
		p.tale[i] = said{group: s.Group, key: s.Key}
		if s.Text == "" {
			p.missing(p.name(i), p.event.ID, s.Line, p.name(i)+" has no text", p.suggestion(s))
			continue
		}
		t, wrong := p.template(s.Text)
		if wrong != nil {
			p.problem(s.Line, p.name(i)+wrong.Text, wrong.Hint)
		}
		p.tale[i].template = t
		p.eventSlips(i, t)
	}
}

func (p *eventProof) name(i int) string { return p.event.ID + "." + p.event.Sentences[i].Name() }

// suggestion is what to write for a missing sentence.
func (p *eventProof) suggestion(s Sentence) string {
	for _, group := range []string{s.Group, ""} {
		if e := p.event.English.Sentence(group, s.Key); e != nil {
			return fmt.Sprintf("write the sentence for the English %q", e.Text)
		}
	}
	return "write the sentence, or take it out"
}

// prove finds the sentences of every kind of story.
func (p *eventProof) prove() {
	for _, text := range p.needs.always {
		p.need(nil, text, "")
	}
	for _, t := range p.needs.tellings {
		for _, text := range t.Texts {
			p.need(t.Groups, text, t.Kind.String())
		}
	}
	for i, used := range p.used {
		if !used && !p.full() {
			s := p.event.Sentences[i]
			p.unused(s.Line, p.name(i)+" is said by no story and is left out", func() string { return p.whyUnused(s) })
		}
	}
}

// whyUnused tells a misspelt name from a sentence that others take the place of.
func (p *eventProof) whyUnused(s Sentence) string {
	var groups []string
	for _, t := range p.needs.tellings {
		groups = append(groups, t.Groups...)
	}
	switch {
	case !slices.Contains(story.Keys(), s.Key):
		return diag.Suggest(s.Key, story.Keys(), "take it out")
	case s.Group != "" && !slices.Contains(groups, s.Group):
		return diag.Suggest(s.Group, groups, "take it out: the event tells no such stories")
	}
	return "take it out; the event tells no story that needs it, or others are said instead"
}

// need finds the sentence for a text and holds its places against it.
func (p *eventProof) need(groups []string, text story.EventText, kind string) {
	i := p.tale.find(groups, text.Key)
	if i < 0 {
		if !slices.Contains(p.lacks, text.Key) {
			p.lacks = append(p.lacks, text.Key)
			s := Sentence{Key: text.Key}
			p.missing(p.event.ID+"."+text.Key, p.event.ID, p.event.Line, fmt.Sprintf("%s.%s is missing%s", p.event.ID, text.Key, of(kind)), p.suggestion(s))
		}
		return
	}
	if p.used[i] { // its places follow from its key
		return
	}
	p.used[i] = true
	if t := p.tale[i].template; t != nil {
		p.places(i, t, text)
	}
}

func of(kind string) string {
	if kind == "" {
		return ""
	}
	return ": stories of the kind " + kind + " need it"
}

// places holds the places of a sentence against what it must tell, and notes the
// forms that it asks for.
func (p *eventProof) places(i int, t template, text story.EventText) {
	line := p.event.Sentences[i].Line
	for _, role := range text.Roles {
		switch n := t.count(string(role)); {
		case n == 0:
			p.problem(line, fmt.Sprintf("%s: the place {{.%s}} is missing", p.name(i), role), fmt.Sprintf("write {{.%s}} where it belongs in the sentence", role))
		case n > 1:
			p.problem(line, fmt.Sprintf("%s has {{.%s}} twice", p.name(i), role), "tell each number once")
		}
	}
	for _, s := range t {
		if s.place == "" {
			continue
		}
		if !slices.ContainsFunc(text.Roles, func(r problem.Role) bool { return string(r) == s.place }) {
			p.problem(line, fmt.Sprintf("%s has no place {{.%s}}", p.name(i), s.place), placeHint(s.place, placesOf(text)))
			continue
		}
		thing := p.needs.Thing
		if s.place == string(story.RoleExtra) {
			thing = p.needs.Extra.Thing
		}
		p.wants(wanted{thing, "count", s.form}, asker{event: p.event, sentence: i})
		if text.Answers {
			p.wants(wanted{thing, "blank", s.form}, asker{event: p.event, sentence: i})
		}
	}
}

func placesOf(t story.EventText) []string {
	var names []string
	for _, r := range t.Roles {
		names = append(names, string(r))
	}
	return names
}

// numberForm is the form that every thing has: its number alone.
const numberForm = "number"

// wanted is a form of a thing that sentences ask for: "thing.shell", "count",
// "accusative".
type wanted struct{ thing, key, form string }

// id is that of the message.
func (w wanted) id() string {
	if w.form == "" {
		return w.thing + "." + w.key
	}
	return w.thing + "." + w.key + "-" + w.form
}

// asker is a sentence that asks for something, by its place in its event: the first
// one of the event.
type asker struct {
	event    *Event
	sentence int
	before   int // the asker before it in builder.askers, from 1; 0 for none
}

// asking yields those who ask for a form, the last one first.
func (b *builder) asking(w wanted) iter.Seq[asker] {
	return func(yield func(asker) bool) {
		for i := b.wanted[w]; i > 0 && yield(b.askers[i-1]); i = b.askers[i-1].before {
		}
	}
}

func (b *builder) wants(w wanted, by asker) {
	if w.form == numberForm {
		return
	}
	if by.before = b.wanted[w]; by.before == 0 || b.askers[by.before-1].event != by.event {
		b.askers = append(b.askers, by)
		b.wanted[w] = len(b.askers)
	}
}

// checkThings proves that things have the forms that sentences ask them for.
func (b *builder) checkThings() {
	var missing []wanted
	for w := range b.wanted {
		m := b.file.byID[w.id()]
		switch {
		case m == nil:
			missing = append(missing, w)
		case b.broken[w.thing]:
			for by := range b.asking(w) {
				b.broken[by.event.ID] = true
			}
		}
	}
	slices.SortFunc(missing, func(x, y wanted) int { return strings.Compare(x.id(), y.id()) })
	for _, w := range missing {
		var by asker // the first of them
		for by = range b.asking(w) {
			b.broken[by.event.ID] = true
		}
		asking := by.event.Sentences[by.sentence]
		hint := "add it there, or say the sentence without the form"
		if forms := b.formsOf(w); len(forms) > 0 && w.form != "" {
			hint = diag.Suggest(w.form, forms, hint)
		}
		line := b.file.lineNear(w.id())
		if !b.lang.blocks[w.thing] {
			line, hint = asking.Line, fmt.Sprintf("write [%s] with all that is said of it", w.thing)
		}
		b.missing(w.id(), "", line, fmt.Sprintf("%s is missing; %s.%s asks for it in line %d", w.id(), by.event.ID, asking.Name(), asking.Line), hint)
	}
}

// formsOf lists the other forms of the same.
func (b *builder) formsOf(w wanted) []string {
	var forms []string
	for _, m := range b.file.Messages {
		if m.Block == w.thing {
			if form, ok := strings.CutPrefix(m.Key, w.key+"-"); ok {
				forms = append(forms, form)
			}
		}
	}
	return forms
}

// template checks a text and takes it apart. What is wrong with it is told as it
// stands behind the name of the message.
func (b *builder) template(text string) (template, *diag.Diagnostic) {
	if len(text) > maxMessage {
		if n := utf8.RuneCountInString(text); n > maxMessage {
			return nil, &diag.Diagnostic{Text: fmt.Sprintf(" has %d characters; a message has at most %d", n, maxMessage), Hint: "say it shorter"}
		}
	}
	wrong := CheckCharacters(text, b.lang.script)
	var t template
	if wrong == nil {
		t, wrong = parseTemplate(b.room(text), text)
	}
	if wrong != nil {
		wrong.Text = ": " + wrong.Text
		return nil, wrong
	}
	return t, nil
}
