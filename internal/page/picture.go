package page

import (
	"github.com/a-h/templ"

	"homebuild/internal/picture"
	"homebuild/internal/picture/svg"
)

// picture draws a picture where it stands.
func (s *sheet) picture(p picture.Picture) templ.Component {
	s.pictures++
	o := svg.Options{ID: id("picture-", s.pictures), Say: s.Language.Plain, Number: s.Language.Number}
	return drawn(func() (string, error) { return svg.Draw(p, o), nil })
}
