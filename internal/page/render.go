package page

import (
	"context"
	"fmt"
	"io"
	"strconv"

	"github.com/a-h/templ"
)

// Render writes the page. The same view gives the same bytes, always. It
// fails only when w does or a picture cannot be drawn.
func Render(w io.Writer, v View) error {
	s := &sheet{Frame: v.frame(), kind: v.kind()}
	if err := s.page(v).Render(context.Background(), w); err != nil {
		return fmt.Errorf("page %s: %w", s.Path, err)
	}
	return nil
}

// sheet is a page while it is being written.
type sheet struct {
	*Frame
	kind     kind
	pictures int // drawn so far, for their ids
}

func (s *sheet) page(v View) templ.Component {
	switch v := v.(type) {
	case *Learn:
		return s.learn(v)
	case *Try:
		return s.try(v)
	case *Own:
		return s.own(v)
	case *Print:
		return s.print(v)
	case *CheckIndex:
		return s.checkIndex(v)
	case *Check:
		return s.check(v)
	case *Home:
		return s.home(v)
	case *Weekly:
		return s.weekly(v)
	case *Front:
		return s.front(v)
	case *NotFound:
		return s.notFound(v)
	case *Key:
		return s.key(v)
	case *Slips:
		return s.slips(v)
	case *Sample:
		return s.sample(v)
	}
	panic(fmt.Sprintf("page: %T is not a page", v))
}

// word is a message without places.
func (s *sheet) word(id string) string { return s.Language.Word(id) }

// dir is the direction of a language for the dir attribute.
func dir(rightToLeft bool) string {
	if rightToLeft {
		return "rtl"
	}
	return "ltr"
}

// id joins the parts of an element's id.
func id(parts ...any) string {
	var b []byte
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
