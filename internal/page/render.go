package page

import (
	"context"
	"fmt"
	"io"
	"strconv"

	"homebuild/internal/i18n"
)

// Render writes the page. The same view gives the same bytes, always. It
// fails only when w does or a picture cannot be drawn.
func Render(w io.Writer, v View) error {
	s := newState(v.layout())
	if err := v.component(s).Render(context.Background(), w); err != nil {
		return fmt.Errorf("page %s: %w", s.Path, err)
	}
	return nil
}

// state is that of one page while it is written.
type state struct {
	*Layout
	notation i18n.Notation
	outline  *outline // what is written, in place of a page; it is in no language
	counted
	part string // the id of the part of a larger page that it is; empty for a page of its own
}

func newState(l *Layout) *state { return &state{Layout: l, notation: l.Language.Notation} }

// counted is what a page has so far.
type counted struct {
	pictures int // for their ids
	groups   int // of radio buttons, for their names
}

// next is the name of another group of radio buttons.
func (s *state) next() string {
	s.groups++
	return id("group-", s.groups)
}

func (s *state) style(k *kind) style { return s.Theme.styles[k] }

// dir is the direction of a language for the dir attribute.
func dir(rightToLeft bool) string {
	if rightToLeft {
		return "rtl"
	}
	return "ltr"
}

// id joins the words and numbers of an element's id.
func id(parts ...any) string {
	b := make([]byte, 0, 64)
	for _, p := range parts {
		switch p := p.(type) {
		case string:
			b = append(b, p...)
		case int:
			b = strconv.AppendInt(b, int64(p), 10)
		}
	}
	return string(b)
}
