package page

import (
	"context"
	"io"
	"strings"

	"github.com/a-h/templ"

	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// say writes a line in the page's language.
func (s *state) say(l phrase.Line) templ.Component { return sayIn(s.Language, l) }

// sayIn marks up what a reader should see at a glance: counted things, blanks
// to fill, equations, and words whose direction is not known. It writes by
// hand because a template would put spaces between the runs.
func sayIn(l *i18n.Language, line phrase.Line) templ.Component {
	return raw(func(m *markup) { m.line(l, line) })
}

// equation writes an equation, kept in its own direction.
func (s *state) equation(q problem.Equation) templ.Component {
	return raw(func(m *markup) { m.equation(s.Language.EquationsRightToLeft(), s.Language.Equation(q)) })
}

// sentences writes those of a story, each in an element of its class, with what
// the language puts between them.
func (s *state) sentences(lines []phrase.Line, class func(i int) string) templ.Component {
	return raw(func(m *markup) {
		for i, line := range lines {
			if i > 0 {
				m.write(s.Language.Between())
			}
			m.write("<span", class(i), ">")
			m.line(s.Language, line)
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

// markup writes markup by hand and keeps the first error.
type markup struct {
	to  io.Writer
	err error
}

// raw is a component that is written by hand.
func raw(write func(*markup)) templ.Component {
	return templ.ComponentFunc(func(_ context.Context, w io.Writer) error {
		m := markup{to: w}
		write(&m)
		return m.err
	})
}

// write writes ready markup.
func (m *markup) write(parts ...string) {
	for _, p := range parts {
		if m.err == nil {
			_, m.err = io.WriteString(m.to, p)
		}
	}
}

// line says a line in a language.
func (m *markup) line(l *i18n.Language, line phrase.Line) {
	for _, r := range l.Say(line) {
		if r.Kind == i18n.RunBlank {
			r.Text = l.Word("page.blank")
		}
		m.run(l.EquationsRightToLeft(), r)
	}
}

// run marks up one run; turned says that equations run from right to left.
func (m *markup) run(turned bool, r i18n.Run) {
	text := templ.EscapeString(r.Text)
	switch r.Kind {
	case i18n.RunCounted, i18n.RunNumber:
		m.write("<b class=n>", text, "</b>")
	case i18n.RunBlank:
		m.blank(text)
	case i18n.RunEquation:
		m.equation(turned, r.Text)
	case i18n.RunPerson, i18n.RunOwnText:
		m.write("<bdi>", text, "</bdi>")
	default:
		m.write(text)
	}
}

// blank draws a line to write on; what is heard is the text: "blank".
func (m *markup) blank(text string) {
	m.write("<span class=gap><span class=hide>", text, "</span></span>")
}

func (m *markup) equation(turned bool, text string) {
	text = templ.EscapeString(text)
	if strings.Count(text, "?") > 1 { // two unknown numbers have gaps of two shapes
		for _, shape := range []string{"round", "square"} {
			text = strings.Replace(text, "?", "<span class="+shape+">\x00</span>", 1)
		}
		text = strings.ReplaceAll(text, "\x00", "?")
	}
	if strings.Count(text, " = ") > 1 { // a long chain goes on to the next line before a "="
		text = "<span>" + strings.ReplaceAll(text, " = ", "</span> <span>= ") + "</span>"
	}
	if strings.Count(text, "?") == 2 { // two numbers that may differ: gaps of two shapes, as in the picture
		first, rest, _ := strings.Cut(text, "?")
		text = first + "<span class=ask>?</span>" + strings.Replace(rest, "?", "<span class=\"ask round\">?</span>", 1)
	}
	m.write("<bdi class=eq dir=", dir(turned), ">", text, "</bdi>")
}
