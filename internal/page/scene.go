package page

import (
	"slices"

	"github.com/a-h/templ"

	"homebuild/internal/cards"
)

// Scene is where a story happens and who is there: ids of drawings. The zero
// value draws nothing.
type Scene struct {
	Place string   // "setting.harbour"
	Cast  []string // "character.otter", of which two are drawn at most
}

func (s Scene) drawings() []string {
	if s.Place == "" {
		return nil
	}
	return append([]string{s.Place}, s.Cast[:min(2, len(s.Cast))]...)
}

// symbols are the drawings of some scenes.
func (s *state) symbols(scenes ...Scene) templ.Component {
	var ids []string
	for _, x := range scenes {
		ids = append(ids, x.drawings()...)
	}
	return s.bring(ids)
}

// bring brings drawings along, each of them once on a page.
func (s *state) bring(drawings []string) templ.Component {
	var ids []string
	for _, id := range drawings {
		if !slices.Contains(s.drawn, id) {
			ids, s.drawn = append(ids, id), append(s.drawn, id)
		}
	}
	return drawn(func() (string, error) {
		if len(ids) == 0 {
			return "", nil
		}
		return s.Theme.deck.all.Symbols(ids...)
	})
}

// scene draws one of which the page has the symbols.
func (s *state) scene(x Scene) templ.Component {
	return raw(func(m *markup) {
		if x.Place != "" {
			m.write(cards.Scene(x.Place, x.drawings()[1:]...))
		}
	})
}
