package i18n

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/language"

	"homebuild/internal/diag"
	"homebuild/internal/pattern"
)

// slips finds what a careful reader marks in a text, whatever it means: spaces,
// words left in English or in letters of another script, end marks.
type slips struct {
	tag     string
	writing writing
	own     *runeSet // nil for a script that nothing is known about
	spanish bool     // questions are opened, too
	strange string   // quotation marks that it does not use
	digits  string   // of its pages
}

func newSlips(f *File, l *Language, tag language.Tag) slips {
	base, _ := tag.Base()
	s := slips{tag: f.Tag, writing: writings[l.script], spanish: base.String() == "es", strange: strangeQuotes(f), digits: l.digits.all()}
	if slices.Contains(withFullStopOfUrdu, base.String()) {
		s.writing.ends[0] = "۔…"
	}
	if s.writing.letters != nil {
		s.own = s.writing.own()
	}
	return s
}

// entity is a letter as markup writes it: "&nbsp;", "&#39;".
var entity = pattern.Of(`&(#\d+|#x[0-9a-fA-F]+|[a-zA-Z]+);`)

// alone finds the slips of a text that can be seen without the English. It is told
// behind the name of the message.
func (s slips) alone(text string) *diag.Diagnostic {
	switch {
	case strings.Contains(text, "  "):
		return &diag.Diagnostic{Text: " has two spaces side by side", Hint: "write one"}
	case text[0] <= ' ' || text[len(text)-1] <= ' ' || strings.TrimSpace(text) != text:
		return &diag.Diagnostic{Text: " begins or ends with a space", Hint: "take it out"}
	case strings.IndexByte(text, '&') >= 0 && entity().MatchString(text):
		return &diag.Diagnostic{Text: fmt.Sprintf(": %s would stand on the page as it is", entity().FindString(text)), Hint: "write the sign itself; for a space that no line breaks at, a plain space will do"}
	case s.writing.foreign != "" && strings.ContainsAny(text, s.writing.foreign):
		mark := strings.IndexAny(text, s.writing.foreign)
		return &diag.Diagnostic{Text: fmt.Sprintf(" has the mark %q of another script", text[mark:mark+1]), Hint: "write the mark of your own"}
	case s.spanish && strings.Count(text, "?")+strings.Count(text, "!") != strings.Count(text, "¿")+strings.Count(text, "¡"):
		return &diag.Diagnostic{Text: ": a question or exclamation is not opened or not closed", Hint: "write ¿ ... ? and ¡ ... !"}
	}
	return s.marks(text)
}

// stillEnglish reports whether a text of several words is the English one.
func stillEnglish(text, english string) bool {
	return text == english && len(strings.Fields(WithoutPlaces(english))) > 1
}

// script looks for words in letters of another script. Those of the English may stand:
// names, "ABC"; but a text that is nothing else was left in English.
func (s slips) script(t template, english string) *diag.Diagnostic {
	if s.own == nil {
		return nil
	}
	for _, part := range t {
		for word := range s.own.foreignWords(part.text) {
			if !slices.Contains(strings.Fields(WithoutPlaces(english)), word) || strings.TrimSpace(part.text) == english {
				return &diag.Diagnostic{Text: fmt.Sprintf(": %q has letters of another script", word), Hint: "write it in the script of " + s.tag}
			}
		}
	}
	return nil
}

// end asks for the end mark that English has, in the marks of the script.
func (s slips) end(text, english string) *diag.Diagnostic {
	want := writings["Latn"].endMark(english)
	if want < 0 || s.writing.letters == nil || s.writing.ends[want] == "" || s.writing.endMark(text) == want {
		return nil
	}
	mark, _ := utf8.DecodeRuneInString(s.writing.ends[want])
	return &diag.Diagnostic{
		Text: fmt.Sprintf(" ends without %q, where the English ends with %q", mark, westernEnds[want][0]),
		Hint: fmt.Sprintf("write %q at the end, or say it as the English does", mark),
	}
}

// messageSlips tells of the first slip of a text of a message, whose template is
// empty where it cannot be read.
func (b *builder) messageSlips(m *Message, line int, text string, t template) {
	if m.Family == "words" || m.Key == "gender" {
		return
	}
	english := m.English.Other
	var wrong *diag.Diagnostic
	switch {
	case !m.translated():
		wrong = b.slips.alone(text)
	case text != english && nearlyEnglish(text, english):
		wrong = &diag.Diagnostic{Text: " is the English but for a letter or two", Hint: m.Suggestion()}
	case stillEnglish(text, english):
		wrong = &diag.Diagnostic{Text: " is still English", Hint: m.Suggestion()}
	default:
		wrong = cmp.Or(b.slips.alone(text), b.slips.script(t, english), b.slips.end(text, english))
	}
	if wrong != nil {
		b.problem(line, m.ID+wrong.Text, wrong.Hint)
	}
}

// eventSlips tells of the first slip of a sentence of an event. Sentences are told
// anew and not translated; only a question stays one.
func (p *eventProof) eventSlips(i int, t template) {
	s := p.event.Sentences[i]
	english := cmp.Or(p.event.English.Sentence(s.Group, s.Key), p.event.English.Sentence("", s.Key))
	var wrong *diag.Diagnostic
	switch {
	case english == nil || p.event.English == p.event:
		wrong = p.slips.alone(s.Text)
	case s.Text != english.Text && nearlyEnglish(s.Text, english.Text):
		wrong = &diag.Diagnostic{Text: " is the English but for a letter or two", Hint: fmt.Sprintf("tell it in %s: %q", p.slips.tag, english.Text)}
	case stillEnglish(s.Text, english.Text):
		wrong = &diag.Diagnostic{Text: " is still English", Hint: fmt.Sprintf("tell it in %s: %q", p.slips.tag, english.Text)}
	default:
		wrong = cmp.Or(p.slips.alone(s.Text), p.slips.script(t, english.Text))
		if wrong == nil && strings.HasPrefix(s.Key, "ask-") {
			wrong = p.slips.end(s.Text, english.Text)
		}
	}
	if wrong != nil {
		p.problem(s.Line, p.name(i)+wrong.Text, wrong.Hint)
	}
}
