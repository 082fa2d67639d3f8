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
func (s *sheet) say(l phrase.Line) templ.Component { return sayIn(s.Language, l) }

// equation writes an equation, kept in its own direction.
func (s *sheet) equation(q problem.Equation) templ.Component {
	return raw(func(b *strings.Builder) { writeEquation(b, s.Language.EquationsRightToLeft(), s.Language.Equation(q)) })
}

// sayIn marks up what a reader should see at a glance: counted things, blanks
// to fill, equations, and words whose direction is not known. It writes by
// hand because a template would put spaces between the runs.
func sayIn(l *i18n.Language, line phrase.Line) templ.Component {
	return raw(func(b *strings.Builder) {
		for _, r := range l.Say(line) {
			writeRun(b, l.EquationsRightToLeft(), r)
		}
	})
}

// sentences writes sentence after sentence, each in an element of its class,
// with what the language puts between them.
func (s *sheet) sentences(lines []phrase.Line, class func(i int) string) templ.Component {
	return raw(func(b *strings.Builder) {
		for i, line := range lines {
			if i > 0 {
				b.WriteString(s.Language.Between())
			}
			b.WriteString("<span" + class(i) + ">")
			for _, r := range s.Language.Say(line) {
				writeRun(b, s.Language.EquationsRightToLeft(), r)
			}
			b.WriteString("</span>")
		}
	})
}

// toldLines are the lines of a story's sentences.
func toldLines(t story.Story) []phrase.Line {
	lines := make([]phrase.Line, len(t.Sentences))
	for i, x := range t.Sentences {
		lines[i] = x.Line
	}
	return lines
}

func noClass(int) string { return "" }

// writeRun marks up one run; turned says that equations run from right to left.
func writeRun(b *strings.Builder, turned bool, r i18n.Run) {
	text := templ.EscapeString(r.Text)
	switch r.Kind {
	case i18n.RunCounted, i18n.RunNumber:
		b.WriteString("<b class=n>" + text + "</b>")
	case i18n.RunBlank:
		// The line is drawn; what is heard is the run's own text.
		b.WriteString("<span class=gap><span class=hide>" + text + "</span></span>")
	case i18n.RunEquation:
		writeEquation(b, turned, r.Text)
	case i18n.RunPerson, i18n.RunOwnText:
		b.WriteString("<bdi>" + text + "</bdi>")
	default:
		b.WriteString(text)
	}
}

func writeEquation(b *strings.Builder, turned bool, text string) {
	text = templ.EscapeString(text)
	if strings.Count(text, " = ") > 1 { // a long chain goes on to the next line before a "="
		text = "<span>" + strings.ReplaceAll(text, " = ", "</span> <span>= ") + "</span>"
	}
	b.WriteString(`<bdi class=eq dir=` + dir(turned) + `>` + text + `</bdi>`)
}

// raw is a component that writes ready HTML.
func raw(write func(*strings.Builder)) templ.Component {
	return templ.ComponentFunc(func(_ context.Context, w io.Writer) error {
		var b strings.Builder
		write(&b)
		_, err := io.WriteString(w, b.String())
		return err
	})
}

// isZero reports whether a line says nothing.
func isZero(l phrase.Line) bool { return l.ID == "" }
