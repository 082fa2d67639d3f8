package i18n

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"homebuild/internal/diag"
)

// segment is a stretch of a message: its own words, or a place.
type segment struct {
	text    string // where place is empty
	place   string
	form    string // "accusative" of {{.Start.accusative}}
	capital bool   // the place begins a sentence
}

// template is a message taken apart.
type template []segment

// parseTemplate takes a message apart and puts its segments behind those of t.
// Only {{.Name}} and {{.Name.form}} are places; functions, loops, variables and
// pipelines of Go templates are not.
func parseTemplate(t template, text string) (template, *diag.Diagnostic) {
	start := sentenceStart{open: true}
	for rest := text; rest != ""; {
		brace := nextBrace(rest)
		if brace > 0 {
			t = append(t, segment{text: rest[:brace]})
			if brace < len(rest) { // a place follows
				start.read(rest[:brace])
			}
			rest = rest[brace:]
			continue
		}
		place, length := parsePlace(rest)
		if length == 0 {
			return t, &diag.Diagnostic{Text: fmt.Sprintf("%q is not a place", untilClosed(rest)), Hint: "a place is only a name, {{.Start}}, or a name and a form, {{.Start.accusative}}"}
		}
		place.capital = start.open
		t = append(t, place)
		start = sentenceStart{}
		rest = rest[length:]
	}
	return t, nil
}

// nextBrace is where the first brace of a text stands; its end where none does.
func nextBrace(text string) int {
	if open := strings.IndexByte(text, '{'); open >= 0 {
		text = text[:open]
	}
	if closed := strings.IndexByte(text, '}'); closed >= 0 {
		return closed
	}
	return len(text)
}

// parsePlace reads a place at the start of a text: {{.Start}} or
// {{.Start.accusative}}. The length is 0 when there is none.
func parsePlace(text string) (place segment, length int) {
	inside, ok := strings.CutPrefix(text, "{{.")
	if !ok {
		return segment{}, 0
	}
	inside, _, ok = strings.Cut(inside, "}}")
	name, form, formed := strings.Cut(inside, ".")
	if !ok || !isName(name) || formed && !isForm(form) {
		return segment{}, 0
	}
	return segment{place: name, form: form}, len("{{.") + len(inside) + len("}}")
}

// isName reports whether a word can name a place: "Start".
func isName(word string) bool {
	return word != "" && isBig(rune(word[0])) && strings.TrimLeftFunc(word, func(c rune) bool { return isSmall(c) || isBig(c) || '0' <= c && c <= '9' }) == ""
}

// isForm reports whether a word can name a form: "accusative".
func isForm(word string) bool {
	return word != "" && word[0] != '-' && strings.TrimLeftFunc(word, func(c rune) bool { return isSmall(c) || c == '-' }) == ""
}

func isSmall(c rune) bool { return 'a' <= c && c <= 'z' }

func isBig(c rune) bool { return 'A' <= c && c <= 'Z' }

// untilClosed is the start of a text up to its closing braces, shortened.
func untilClosed(text string) string {
	if i := strings.Index(text, "}}"); i >= 0 {
		text = text[:i+2]
	}
	if r := []rune(text); len(r) > 40 {
		text = string(r[:40]) + "..."
	}
	return text
}

// count is how often a place stands in the template.
func (t template) count(place string) int {
	n := 0
	for _, s := range t {
		if s.place == place {
			n++
		}
	}
	return n
}

// has reports whether a place stands in the template.
func (t template) has(place string) bool { return t.count(place) > 0 }

// with is the text with a number in its place.
func (t template) with(number string) string {
	if len(t) == 1 && t[0].place == "" {
		return t[0].text
	}
	size := len(number)
	for _, s := range t {
		size += len(s.text)
	}
	var b strings.Builder
	b.Grow(size)
	for i, s := range t {
		switch {
		case s.place != "":
			b.WriteString(number)
		case i > 0:
			b.WriteString(unparted(s.text))
		default:
			b.WriteString(s.text)
		}
	}
	return b.String()
}

// around is the text with something in its place.
func (t template) around(inside Run) Text {
	out := make(Text, 0, len(t))
	for i, s := range t {
		switch {
		case s.place != "":
			out = append(out, inside)
		case i > 0:
			out = append(out, Run{RunPlain, unparted(s.text)})
		default:
			out = append(out, Run{RunPlain, s.text})
		}
	}
	return out
}

// WithoutPlaces is a text without its places.
func WithoutPlaces(text string) string {
	t, wrong := parseTemplate(nil, text)
	if wrong != nil {
		return text
	}
	var b strings.Builder
	for _, s := range t {
		b.WriteString(s.text)
	}
	return b.String()
}

// sentenceStart follows a text and knows whether a sentence begins at its end.
type sentenceStart struct {
	open    bool // nothing but opening marks since the sentence began
	ended   bool // an end mark was read, and no letter since
	letters int  // of the last word, so that "z. B." ends nothing
}

func (s *sentenceStart) read(text string) {
	for _, c := range text {
		switch {
		case inWord(c):
			s.letters++
			s.open, s.ended = false, false
		case strings.ContainsRune(".!?…", c):
			s.ended = c != '.' || s.letters != 1
		case strings.ContainsRune("。！？।؟۔።", c):
			s.ended, s.open = true, true
		case unicode.IsSpace(c):
			s.open = s.open || s.ended
			s.letters = 0
		case unicode.IsDigit(c):
			s.letters = 2
			s.open, s.ended = false, false
		case !isQuoteOrOpening(c):
			s.open = false
		}
	}
}

func isQuoteOrOpening(c rune) bool {
	return strings.ContainsRune(`¿¡"'`, c) || unicode.In(c, unicode.Ps, unicode.Pi, unicode.Pf, unicode.Pe)
}

// capitalise makes the first letter of a sentence big, behind any opening
// mark. Title case is used so that scripts without capitals at the start of a
// sentence, such as Georgian, stay as they are.
func (l *Language) capitalise(text string) string {
	for i, c := range text {
		if unicode.IsLetter(c) {
			title := unicode.ToTitle(c)
			if l.turkic {
				title = unicode.TurkishCase.ToTitle(c)
			}
			if title == c {
				return text
			}
			return text[:i] + string(title) + text[i+utf8.RuneLen(c):]
		}
		if !isQuoteOrOpening(c) && !unicode.IsSpace(c) {
			return text
		}
	}
	return text
}
