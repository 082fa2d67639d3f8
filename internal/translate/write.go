package translate

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/pattern"
	"homebuild/internal/tomlfile"
)

// Write is the text of the file with other texts for a question, by the names of its
// asks, as a person typed them; every other line is as it was. Problems are what a
// check would say of the new texts; there is nothing to write then.
func (d *Draft) Write(q Question, typed map[string]string) ([]byte, diag.Diagnostics) {
	text, texts := d.file.Text, map[string]string{}
	for _, ask := range q.Asks {
		t, known := typed[ask.Name]
		if !known {
			continue
		}
		if !utf8.ValidString(t) {
			return nil, diag.Diagnostics{{File: d.file.Path, Line: q.Line, Text: q.ID + " is not UTF-8 text", Hint: "type it again"}}
		}
		if t = d.meant(ask, t); t != ask.Text {
			texts[ask.Name] = t
		}
	}
	var ok bool
	if text, ok = d.put(text, q, texts); !ok {
		return nil, d.cannot(q)
	}
	return d.proved(q, text, texts)
}

func (d *Draft) cannot(q Question) diag.Diagnostics {
	return diag.Diagnostics{{File: d.file.Path, Line: q.Line, Text: q.ID + " cannot be written where it stands", Hint: "write it in an editor"}}
}

// put writes the texts.
func (d *Draft) put(text string, q Question, texts map[string]string) (string, bool) {
	if q.ID == Head {
		text = strings.Join(each(strings.Split(text, "\n"), d.confirmed(q)), "\n")
	}
	if len(texts) == 0 {
		return text, true
	}
	if event, group, key, isSentence := cutSentence(q.ID); isSentence && d.file.Event(event) == nil {
		return d.putEvent(text, event, group, key, texts[q.ID]), true
	}
	if _, _, _, isSentence := cutSentence(q.ID); !isSentence && q.ID != Head && len(d.file.All(q.ID)) == 0 {
		return d.putMessage(text, q, texts)
	}
	for _, ask := range q.Asks {
		t, changed := texts[ask.Name]
		if !changed {
			continue
		}
		var ok bool
		if text, ok = tomlfile.Put(text, ask.Name, tomlfile.Quote(t)); !ok {
			return text, false
		}
	}
	for _, m := range d.file.All(q.ID) {
		if m.Stale() { // it was held against the English of today now
			text, _ = tomlfile.Put(text, m.ID+".hash", tomlfile.Quote(m.EnglishHash()))
		}
	}
	return text, true
}

// confirmed takes the remarks away that mark guesses of the head.
func (d *Draft) confirmed(q Question) func(line string) string {
	keys := map[string]bool{}
	for _, ask := range q.Asks {
		keys[ask.English] = true
	}
	return func(line string) string {
		if key, _, _ := strings.Cut(line, " "); keys[key] {
			before, _, _ := strings.Cut(line, guessed)
			return strings.TrimRightFunc(before, unicode.IsSpace)
		}
		return line
	}
}

// putEvent begins an event that the file does not have.
func (d *Draft) putEvent(text, event, group, key, sentence string) string {
	lines := []string{"[" + event + "]"}
	if e := d.source.File.Event(event); e != nil {
		lines = append(lines, "source = "+tomlfile.Quote(e.SourceHash()))
	}
	if group != "" {
		lines = append(lines, "", "["+event+"."+group+"]")
	}
	return tomlfile.PutTable(text, "", append(lines, key+" = "+tomlfile.Quote(sentence)))
}

// putMessage writes a message that the file does not have, in the way of the one that
// it is a form of, and behind it.
func (d *Draft) putMessage(text string, q Question, texts map[string]string) (string, bool) {
	var keys []string
	for _, ask := range q.Asks {
		if t := texts[ask.Name]; t != "" {
			keys = append(keys, ask.Name[strings.LastIndexByte(ask.Name, '.')+1:]+" = "+tomlfile.Quote(t))
		}
	}
	english := d.englishOf(q.ID)
	if strings.HasSuffix(q.ID, ".gender") {
		return tomlfile.Put(text, q.ID, tomlfile.Quote(texts[q.ID]))
	}
	table := append([]string{"[" + q.ID + "]", "hash = " + tomlfile.Quote(english.EnglishHash())}, keys...)
	base := d.file.Message(english.ID)
	switch {
	case base == nil || tomlfile.Headed(text, base.ID):
		return tomlfile.PutTable(text, english.ID, table), true
	case len(keys) == 1 && len(q.Asks) == 1:
		return tomlfile.Put(text, q.ID, tomlfile.Quote(texts[q.Asks[0].Name]))
	}
	return tomlfile.Put(text, q.ID, "{ "+strings.Join(table[1:], ", ")+" }")
}

// proved wants the new text of the file to say what was asked for and nothing else to
// have changed, and gives what a check says of it that it did not say before.
func (d *Draft) proved(q Question, text string, texts map[string]string) ([]byte, diag.Diagnostics) {
	after, problems := i18n.Parse(d.file.Tag, text)
	if len(problems) > 0 || !d.onlyChanged(q, after) {
		return nil, d.cannot(q)
	}
	proof := d.source.Prove(after, math.MaxInt)
	said := map[string]bool{}
	for _, p := range d.Problems {
		said[p.Text] = true
	}
	wrong := slices.DeleteFunc(proof.Wrong, func(p diag.Diagnostic) bool { return said[p.Text] })
	if len(wrong) > 0 && len(texts) > 0 {
		return nil, wrong
	}
	return []byte(text), nil
}

// onlyChanged reports whether a file says the same but for the texts of a question.
func (d *Draft) onlyChanged(q Question, after *i18n.File) bool {
	own := func(id string) bool {
		return id == q.ID || strings.HasPrefix(id, q.ID+".") && (q.ID == Head || slices.Contains(i18n.Genders, id[len(q.ID)+1:]))
	}
	for _, m := range d.file.Messages {
		if got := after.Message(m.ID); got == nil || !own(m.ID) && got.Message != m.Message {
			return false
		}
	}
	for _, m := range after.Messages {
		if d.file.Message(m.ID) == nil && !own(m.ID) {
			return false
		}
	}
	return d.sameEvents(q, after)
}

// sameEvents reports whether each sentence of an event is there and the same, but for
// the one that a question is about.
func (d *Draft) sameEvents(q Question, after *i18n.File) bool {
	for _, e := range d.file.Events {
		got := after.Event(e.ID)
		if got == nil {
			return false
		}
		for _, s := range e.Sentences {
			if now := got.Sentence(s.Group, s.Key); now == nil || now.Text != s.Text && e.ID+"."+s.Name() != q.ID {
				return false
			}
		}
	}
	return true
}

// loosePlace is a place as people type it.
var loosePlace = pattern.Of(`\{+ *\.?([A-Z][A-Za-z0-9]*)(\.[a-z-]+)? *\}+`)

// number is one in any digits.
var number = pattern.Of(`\p{Nd}+`)

// meant is a text as the file writes it: in one line, with its places, and the place
// of the number where the number stands that it was asked with.
func (d *Draft) meant(ask Ask, typed string) string {
	text := strings.Join(strings.FieldsFunc(typed, func(c rune) bool { return c == '\n' || c == '\r' }), " ")
	text = loosePlace().ReplaceAllString(strings.TrimSpace(text), "{{.$1$2}}")
	if len(ask.Numbers) == 0 || strings.Contains(text, "{{.N}}") {
		return text
	}
	found := number().FindAllStringIndex(text, -1)
	if len(found) != 1 {
		return text
	}
	at := found[0]
	if n := numeral(text[at[0]:at[1]]); n >= 0 && slices.Contains(ask.Numbers, n) {
		return text[:at[0]] + "{{.N}}" + text[at[1]:]
	}
	return text
}

// numeral reads a number in the digits of any script, which stand in tens; -1 for
// one that is too long.
func numeral(digits string) int {
	plain := strings.Map(func(c rune) rune {
		zero := c
		for unicode.Is(unicode.Nd, zero-1) && c-(zero-1) <= 9 {
			zero--
		}
		return '0' + c - zero
	}, digits)
	n, err := strconv.Atoi(plain)
	if err != nil {
		return -1
	}
	return n
}

func each[T, U any](all []T, do func(T) U) []U {
	out := make([]U, len(all))
	for i, x := range all {
		out[i] = do(x)
	}
	return out
}

// Notes are what a careful reader looks at in the texts of a question, and may leave.
func (d *Draft) Notes(id string) diag.Diagnostics {
	return slices.DeleteFunc(slices.Clone(d.Advice), func(n diag.Diagnostic) bool {
		return !strings.HasPrefix(n.Text, fmt.Sprintf("%s ", id))
	})
}
