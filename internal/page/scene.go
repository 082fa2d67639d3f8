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

// symbols are the drawings of some scenes, each of them once. The larger page of
// which this one is a part has them all.
func (s *state) symbols(scenes ...Scene) templ.Component {
	if s.part != "" {
		return templ.NopComponent
	}
	var ids []string
	for _, x := range scenes {
		for _, id := range x.drawings() {
			if !slices.Contains(ids, id) {
				ids = append(ids, id)
			}
		}
	}
	return drawn(func() (string, error) {
		if len(ids) == 0 {
			return "", nil
		}
		return s.Theme.deck.all.Symbols(ids...)
	})
}

// allSymbols are the drawings of all scenes there can be.
func (s *state) allSymbols() templ.Component {
	if s.part != "" {
		return templ.NopComponent
	}
	return templ.Raw(s.Theme.deck.symbols)
}

// scene draws one of which the page has the symbols.
func (s *state) scene(x Scene) templ.Component {
	return raw(func(m *markup) {
		if x.Place != "" {
			m.write(cards.Scene(x.Place, x.drawings()[1:]...))
		}
	})
}
