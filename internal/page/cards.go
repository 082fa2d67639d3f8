package page

import (
	"context"
	"io"

	"github.com/a-h/templ"

	"homebuild/internal/draw/cards"
)

// symbols are the cards' drawings, defined once for a page.
func symbols() templ.Component { return drawn(cards.Symbols) }

// card shows one card.
func card(id string) templ.Component {
	return drawn(func() (string, error) { return cards.Use(id) })
}

// stage holds every card in its place; the theme shows the picked pair.
func (s *sheet) stage(v *Own) templ.Component {
	classes := map[string]string{}
	for i, c := range v.Characters {
		classes[c.Symbol] = id("who who-", i+1)
	}
	for i, c := range v.Settings {
		classes[c.Symbol] = id("where where-", i+1)
	}
	return drawn(func() (string, error) {
		return cards.Stage(func(id string) string {
			if class := classes[id]; class != "" {
				return class
			}
			return "who" // a card that the language has no name for: never shown
		})
	})
}

// drawn is a component made of a ready drawing.
func drawn(draw func() (string, error)) templ.Component {
	return templ.ComponentFunc(func(_ context.Context, w io.Writer) error {
		svg, err := draw()
		if err != nil {
			return err
		}
		_, err = io.WriteString(w, svg)
		return err
	})
}
