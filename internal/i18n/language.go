package i18n

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Language is a language ready to be spoken: every message is parsed and
// proved, so that saying one is a look-up. It never changes and is safe for
// concurrent use.
type Language struct {
	header
	messages map[string]*ready
	tales    map[string]tale // events by their ids
	order    []string        // ids in the order of the file, gender forms under their message
	blocks   map[string]bool // whole blocks: "thing.shell", "event.harbour.board"
	plural   *Plurals
	sum      string
	missing  diag.Diagnostics
	unused   diag.Diagnostics
	lacks    func(id string)         // is told what is missing; nil in a language that pages are made in
	hears    func(id string, t Text) // is told what is said; nil in one that nobody listens to
	marker   *marker                 // marks what is said; nil in a language that pages are made in
}

// Sum names what the files say that the language was made from: its own and the English
// one that it was held against. Two languages with one sum and one tag say the
// same.
func (l *Language) Sum() string { return l.sum }

// Tag is the BCP 47 tag, which is also the name of the file: "pt-BR".
func (l *Language) Tag() string { return l.tag }

// Plurals is its plural rule.
func (l *Language) Plurals() *Plurals { return l.plural }

// Name is the language's own name for itself.
func (l *Language) Name() string { return l.name }

// unspaced are the languages that write no space between sentences (from
// memory).
var unspaced = []string{"ja", "km", "lo", "my", "th", "zh"}

// between is what stands between two sentences: a space, or nothing.
func between(language string) string {
	if slices.Contains(unspaced, language) {
		return ""
	}
	return " "
}

// Between is what stands between two sentences: a space, or nothing.
func (l *Language) Between() string { return l.between }

// commas stand between numbers, where the script has one of its own: the comma of
// Arabic (Unicode Standard, U+060C) and the enumeration comma of Chinese (GB/T 15834,
// from memory).
var commas = map[string]string{"Arab": "، ", "Hans": "、", "Hant": "、"}

// Comma is what stands between two numbers: "3, 5".
func (l *Language) Comma() string { return cmp.Or(commas[l.script], ", ") }

// RightToLeft reports the direction of the script.
func (l *Language) RightToLeft() bool { return l.rtl }

// Draft reports whether no fluent reader has signed the file. The source itself is
// not a draft.
func (l *Language) Draft() bool { return !l.source && l.reviewed == nil }

// PartlyRead reports whether the file was signed, and some of it is not what was read:
// it was changed since, or its English was.
func (l *Language) PartlyRead() bool { return l.reviewed != nil && l.open }

// Reviewed is who reviewed the file and when, as they signed it; empty for a draft.
func (l *Language) Reviewed() string { return l.reviewed.String() }

// Holds reports whether the language keeps an event back until a fluent reader has signed
// it, by its message, "event.kitchen.soup".
func (l *Language) Holds(event string) bool {
	return l.Draft() && slices.Contains(l.holds, strings.TrimPrefix(event, eventFamily+"."))
}

// HoldsKind is the same for a kind of story, or for a step of it.
func (l *Language) HoldsKind(k problem.Kind) bool {
	return l.Draft() && slices.ContainsFunc(append([]problem.Kind{k}, k.Steps()...), func(k problem.Kind) bool {
		return slices.ContainsFunc(l.holds, func(h string) bool { return strings.HasPrefix(k.String()+"-", h+"-") })
	})
}

// HoldsBack reports whether the language keeps anything back.
func (l *Language) HoldsBack() bool { return l.Draft() && len(l.holds) > 0 }

// Has reports whether the language has a text for the message with this id, or for
// the whole block of messages under it: "thing.shell", "setting.harbour",
// "event.harbour.board".
func (l *Language) Has(id string) bool { return l.messages[id].written() || l.blocks[id] }

// Word is a message without places, as it stands. An unknown id or a message
// with places is a bug of the caller and panics.
func (l *Language) Word(id string) string {
	if l.marker != nil {
		return l.marker.say(l, phrase.Say(id)).String()
	}
	m := l.messages[id]
	if m == nil || m.word() == "" {
		if l.lacks != nil {
			l.lacks(id)
			return ""
		}
		panic("i18n: " + l.tag + " has no word " + id)
	}
	if l.hears != nil {
		l.hears(id, m.text.around(Run{}))
	}
	return m.word()
}

// Plain says a line as plain text, for titles, feeds and share messages. In a
// right-to-left language equations are isolated with control characters.
func (l *Language) Plain(line phrase.Line) string { return l.Isolated(l.Say(line)) }

// Isolated is a text as plain text, as Plain gives it.
func (l *Language) Isolated(t Text) string {
	if l.rtl {
		t = slices.Clone(t)
		for i, r := range t {
			if r.Kind == RunEquation {
				t[i].Text = l.isolate() + r.Text + popIsolate
			}
		}
	}
	return t.String()
}

// NumberWords are the number words of the language's file with what they mean,
// in small letters, in every form that the file has; none where it has no
// table. Who reads a text of that language finds its numbers by them.
func (l *Language) NumberWords() map[string]int {
	out := map[string]int{}
	for id, m := range l.messages {
		if strings.HasPrefix(id, "words.") && m.word() != "" {
			n, _ := strconv.Atoi(id[strings.LastIndexByte(id, '.')+1:])
			out[strings.ToLower(m.word())] = n
		}
	}
	return out
}

// Blocks are the ids of a family's blocks in the order of the file: "thing.shell".
func (l *Language) Blocks(family string) []string {
	var out []string
	for _, id := range l.order {
		if !strings.HasPrefix(id, family+".") {
			continue
		}
		if in := blockOf(id); in != "" && !slices.Contains(out, in) {
			out = append(out, in)
		}
	}
	return out
}

// Form is a message as it stands in a language: its text, or one of those for
// each gender.
type Form struct {
	ID      string
	Gender  string   // of the person it is about; empty where it has none
	Plural  bool     // whether it has a text for each plural category
	Places  []string // in their order
	Written bool     // false in a language that somebody is still writing
}

// Forms lists what the language can say, in the order of its file.
func (l *Language) Forms() []Form {
	var out []Form
	for _, id := range l.order {
		r := l.messages[id]
		if r.byGender == nil {
			out = append(out, r.form(id, ""))
		}
		for _, g := range Genders {
			if r.byGender[g] != nil {
				out = append(out, r.byGender[g].form(id, g))
			}
		}
	}
	return out
}

func (r *ready) form(id, gender string) Form {
	f := Form{ID: id, Gender: gender, Plural: r.plural != nil, Written: r.written()}
	texts := []template{r.text}
	if r.plural != nil {
		texts = r.plural[:]
	}
	for _, t := range texts {
		for _, s := range t {
			if s.place != "" && !slices.Contains(f.Places, s.place) {
				f.Places = append(f.Places, s.place)
			}
		}
	}
	return f
}
