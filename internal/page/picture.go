package page

import (
	"strings"

	"github.com/a-h/templ"

	"homebuild/internal/picture"
)

// picture draws a picture where it stands.
func (s *sheet) picture(p picture.Picture) templ.Component {
	s.pictures++
	return raw(func(b *strings.Builder) { b.WriteString("<!--picture-->") })
}
