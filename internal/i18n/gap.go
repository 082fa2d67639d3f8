package i18n

import (
	"errors"

	"homebuild/internal/diag"
	"homebuild/internal/phrase"
)

// gap says that a message, or a form of one, is not written yet.
type gap struct {
	id  string // "page.skip", "event.harbour.board.start", "thing.shell.count-accusative"
	why string
}

func (g *gap) Error() string { return g.why }

// Missing are the texts that are still to be written. A page that needs one of them
// cannot be said.
func (l *Language) Missing() diag.Diagnostics { return l.missing }

// Unused are the texts that are left out, since no page asks for them.
func (l *Language) Unused() diag.Diagnostics { return l.unused }

// Whole reports whether nothing is missing, so that every line can be said.
func (l *Language) Whole() bool { return len(l.missing) == 0 }

// Telling is the language for trying out what it can say: it says nothing where a
// text is missing, and tells the id of the message that it lacks.
func (l *Language) Telling(lacks func(id string)) *Language {
	telling := *l
	telling.lacks = lacks
	return &telling
}

// Heard is the language while somebody listens: each message that is said, alone or
// inside another one, is told with its words.
func (l *Language) Heard(by func(id string, t Text)) *Language {
	heard := *l
	heard.hears = by
	return &heard
}

// lacking tells what a line lacks that cannot be said: a message, and what stands in its
// places, in the form that all have.
func (l *Language) lacking(line phrase.Line, err error) error {
	var g *gap
	if l.lacks == nil || !errors.As(err, &g) {
		return err
	}
	l.lacks(g.id)
	for i := range line.Values {
		v := &line.Values[i]
		if _, err := l.fill(nil, v, ""); errors.As(err, &g) {
			l.lacks(g.id)
		}
	}
	return nil
}
