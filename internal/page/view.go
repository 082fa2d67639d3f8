package page

import (
	"crypto/sha256"
	"encoding/base64"
	"slices"

	"github.com/a-h/templ"

	"homebuild/internal/phrase"
	"homebuild/internal/picture/svg"
)

// View is a page as data, ready for Render. Each type of page has a file of its
// own name: what stands on it, in which style, and, in the .templ file beside
// it, the component that writes it.
type View interface {
	layout() *Layout
	component(s *state) templ.Component
}

// kind is a sort of page: the class of its root element and the files of CSS
// that it needs, so that no page carries another's style.
type kind struct {
	class string
	css   []string // in order; a theme's colors come before and its theme.css after
	parts []string // ids of the places at which a reader may be, kept when the language changes
}

// pictureCSS, walkCSS and picksCSS stand for styles that are made by the program, as
// answerCSS does.
const (
	pictureCSS = "svg.Style"
	walkCSS    = "walk"
)

// made is the style that a name stands for; empty for the name of a file.
func made(name string) string {
	switch name {
	case pictureCSS:
		return svg.Style()
	case walkCSS:
		return walkStyle()
	case picksCSS:
		return picksStyle()
	}
	for _, n := range boxCounts {
		if name == answerCSS(n) {
			return answerStyle(n)
		}
	}
	return ""
}

// kinds are all there are: a theme makes the style of each ready.
var kinds = slices.Concat([]*kind{learnKind, inventKind, printKind, checkKind, indexKind, deskKind, sampleKind, wholeKind, sheetsKind}, tryKinds, stepsKinds)

// hasPictures reports whether pages of the kind may hold pictures of
// internal/picture.
func (k *kind) hasPictures() bool { return slices.Contains(k.css, pictureCSS) }

// style is the CSS of a kind of page and its hash for the security policy.
type style struct{ css, hash string }

func newStyle(css string) style {
	sum := sha256.Sum256([]byte(css))
	return style{css, "sha256-" + base64.StdEncoding.EncodeToString(sum[:])}
}

func (s style) element() templ.Component {
	return raw(func(m *markup) { m.write("<style>", s.css, "</style>") })
}

// policy is the content security of a page: its own style and nothing else.
func (s style) policy() string {
	return "default-src 'none'; style-src '" + s.hash + "'; base-uri 'none'; form-action 'none'"
}

// WeekPage is what the pages of a week have in common.
type WeekPage struct {
	Layout
	Week   string      // its first day: "2026-09-14"
	Target phrase.Line // "I can ..."
	Links  Links
}

// Links leads to the other pages of the week. Empty ones are left out.
type Links struct{ Learn, Try, Invent, Check, Print string }
