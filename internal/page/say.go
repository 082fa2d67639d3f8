package page

import (
	"context"
	"io"
	"strings"
	"sync"

	"github.com/a-h/templ"

	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// word is a message without places.
func (s *state) word(id string) string {
	if s.outline != nil {
		return s.outline.place(said{as: asWord, line: phrase.Line{ID: id}})
	}
	return s.Language.Word(id)
}

// plain says a line as plain text.
func (s *state) plain(l phrase.Line) string {
	if s.outline != nil {
		return s.outline.place(said{as: asPlain, line: l})
	}
	return s.Language.Plain(l)
}

// between is what stands between two sentences.
func (s *state) between() string {
	if s.outline != nil {
		return s.outline.place(said{as: asBetween})
	}
	return s.Language.Between()
}

// comma is what stands between two numbers.
func (s *state) comma() string {
	if s.outline != nil {
		return s.outline.place(said{as: asComma})
	}
	return s.Language.Comma()
}

// direction is the one of the language.
func (s *state) direction() string {
	if s.outline != nil {
		return s.outline.place(said{as: asDirection})
	}
	return dir(s.Language.RightToLeft())
}

// say writes a line in the page's language.
func (s *state) say(l phrase.Line) templ.Component {
	return raw(func(m *markup) { m.say(s, l) })
}

// sayIn marks up what a reader should see at a glance: counted things, blanks
// to fill, equations, and words whose direction is not known. It writes by
// hand because a template would put spaces between the runs.
func sayIn(l *i18n.Language, line phrase.Line) templ.Component {
	return raw(func(m *markup) { m.line(l, line) })
}

// equation writes an equation, kept in its own direction.
func (s *state) equation(q problem.Equation) templ.Component {
	return raw(func(m *markup) { m.equation(s.notation.EquationsRightToLeft(), s.notation.Equation(q)) })
}

// sentences writes those of a story, each in an element of its class, with what
// the language puts between them.
func (s *state) sentences(lines []phrase.Line, class func(i int) string) templ.Component {
	return raw(func(m *markup) {
		for i, line := range lines {
			if i > 0 {
				m.write(s.between())
			}
			m.write("<span", class(i), ">")
			m.say(s, line)
			m.write("</span>")
		}
	})
}

// sentenceLines are the lines of a story's sentences.
func sentenceLines(t story.Story) []phrase.Line {
	lines := make([]phrase.Line, len(t.Sentences))
	for i, x := range t.Sentences {
		lines[i] = x.Line
	}
	return lines
}

func noClass(int) string { return "" }

// isZero reports whether a line says nothing.
func isZero(l phrase.Line) bool { return l.ID == "" }

// markup is written by hand, at the end of what is there already.
type markup struct {
	text  []byte
	runs  i18n.Text // room to say a line
	spans []span    // room for where what an outline says stands
	err   error
}

var markups = sync.Pool{New: func() any { return new(markup) }}

// raw is a component that is written by hand.
func raw(write func(*markup)) templ.Component {
	return templ.ComponentFunc(func(_ context.Context, w io.Writer) error {
		m := markups.Get().(*markup)
		defer markups.Put(m)
		m.text, m.err = m.text[:0], nil
		write(m)
		if m.err != nil {
			return m.err
		}
		_, err := w.Write(m.text)
		return err
	})
}

// write writes ready markup.
func (m *markup) write(parts ...string) {
	for _, p := range parts {
		m.text = append(m.text, p...)
	}
}

// escapes are what letters of markup are written as in a text.
var escapes = [256]string{'&': "&amp;", '<': "&lt;", '>': "&gt;", '"': "&#34;", '\'': "&#39;"}

// escape writes text so that none of it is markup.
func (m *markup) escape(text string) {
	from := 0
	for i := range len(text) {
		if name := escapes[text[i]]; name != "" {
			m.write(text[from:i], name)
			from = i + 1
		}
	}
	m.write(text[from:])
}

// say writes a line in the page's language.
func (m *markup) say(s *state, l phrase.Line) {
	if s.outline != nil {
		m.write(s.outline.place(said{as: asLine, line: l}))
		return
	}
	m.line(s.Language, l)
}

// line says a line in a language.
func (m *markup) line(l *i18n.Language, line phrase.Line) {
	m.runs = l.SayInto(m.runs, line)
	for _, r := range m.runs {
		if r.Kind == i18n.RunBlank {
			r.Text = l.Word("page.blank")
		}
		m.run(l.EquationsRightToLeft(), r)
	}
}

// plain says a line in a language as plain text.
func (m *markup) plain(l *i18n.Language, line phrase.Line) {
	m.runs = l.SayInto(m.runs, line)
	m.escape(l.Isolated(m.runs))
}

// run marks up one run; turned says that equations run from right to left.
func (m *markup) run(turned bool, r i18n.Run) {
	switch r.Kind {
	case i18n.RunCounted, i18n.RunNumber:
		m.element("<b class=n>", r.Text, "</b>")
	case i18n.RunBlank:
		m.blank(r.Text)
	case i18n.RunEquation:
		m.equation(turned, r.Text)
	case i18n.RunPerson, i18n.RunOwnText:
		m.element("<bdi>", r.Text, "</bdi>")
	default:
		m.escape(r.Text)
	}
}

// element writes a text between two tags.
func (m *markup) element(begin, text, end string) {
	m.write(begin)
	m.escape(text)
	m.write(end)
}

// blank draws a line to write on; what is heard is the text: "blank".
func (m *markup) blank(text string) {
	m.element("<span class=gap><span class=hide>", text, "</span></span>")
}

func (m *markup) equation(turned bool, text string) {
	text = templ.EscapeString(text)
	if strings.Count(text, "?") > 1 { // two numbers that may differ: gaps of two shapes, as in the picture
		for _, shape := range []string{"square", "round"} {
			text = strings.Replace(text, "?", "<span class="+shape+">\x00</span>", 1)
		}
		text = strings.ReplaceAll(text, "\x00", "?")
	}
	if strings.Count(text, " = ") > 1 { // a long chain goes on to the next line before a "="
		text = "<span>" + strings.ReplaceAll(text, " = ", "</span> <span>= ") + "</span>"
	}
	m.write("<bdi class=eq dir=", dir(turned), ">", text, "</bdi>")
}
