package page

import "slices"

// kind is a sort of page: it decides which parts of a theme are needed, so
// that no page carries another's style.
type kind string

const (
	kindLearn kind = "learn"
	kindTry   kind = "try"
	kindOwn   kind = "own"
	kindPrint kind = "print"
	kindCheck kind = "check"
	kindIndex kind = "index"
	kindDesk  kind = "desk"

	kindSample kind = "sample"
)

// pictureCSS stands for the style that internal/picture/svg brings along.
const pictureCSS = "svg.Style"

// parts lists the shared CSS files of each kind, in order; a theme's colours
// come before them and its own theme.css after them.
var parts = map[kind][]string{
	kindLearn: {"base.css", pictureCSS, "cards.css", "learn.css"},
	kindTry:   {"base.css", pictureCSS, "try.css"},
	kindOwn:   {"base.css", "cards.css", "own.css"},
	kindPrint: {"base.css", "print.css"},
	kindCheck: {"base.css", pictureCSS, "try.css"},
	kindIndex: {"base.css", "index.css"},
	kindDesk:  {"base.css", pictureCSS, "desk.css"},

	kindSample: {"base.css", "sample.css"},
}

func (v *Learn) kind() kind      { return kindLearn }
func (v *Try) kind() kind        { return kindTry }
func (v *Own) kind() kind        { return kindOwn }
func (v *Print) kind() kind      { return kindPrint }
func (v *CheckIndex) kind() kind { return kindCheck }
func (v *Check) kind() kind      { return kindCheck }
func (v *Home) kind() kind       { return kindIndex }
func (v *Weekly) kind() kind     { return kindIndex }
func (v *Front) kind() kind      { return kindIndex }
func (v *NotFound) kind() kind   { return kindIndex }

func (v *Learn) frame() *Frame      { return &v.Frame }
func (v *Try) frame() *Frame        { return &v.Frame }
func (v *Own) frame() *Frame        { return &v.Frame }
func (v *Print) frame() *Frame      { return &v.Frame }
func (v *CheckIndex) frame() *Frame { return &v.Frame }
func (v *Check) frame() *Frame      { return &v.Frame }
func (v *Home) frame() *Frame       { return &v.Frame }
func (v *Weekly) frame() *Frame     { return &v.Frame }
func (v *Front) frame() *Frame      { return &v.Frame }
func (v *NotFound) frame() *Frame   { return &v.Frame }

// hasPictures reports whether pages of the kind may hold pictures of
// internal/picture.
func (k kind) hasPictures() bool { return slices.Contains(parts[k], pictureCSS) }
