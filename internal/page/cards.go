package page

import (
	"github.com/a-h/templ"

	"homebuild/internal/cards"
)

// The groups of cards, which name their inputs and classes: "who-3" is the
// third character. themes/base/own.css counts on twelve of each.
const (
	who   = "who"
	where = "where"
)

// deck is the cards drawn, the same in every page and so made once.
type deck struct {
	all     *cards.Deck
	symbols string
	stage   string            // every card in its place; the theme shows the picked pair
	tiles   map[string]string // one card, by id
	names   map[string]string // "who-3", by id
}

func newDeck() (deck, error) {
	all, err := cards.Load()
	if err != nil {
		return deck{}, err
	}
	d := deck{all: all, tiles: map[string]string{}, names: map[string]string{}}
	classes := map[string]string{}
	for group, ids := range map[string][]string{who: cards.Characters(), where: cards.Settings()} {
		for i, card := range ids {
			if d.tiles[card], err = all.Use(card); err != nil {
				return deck{}, err
			}
			d.names[card] = id(group, "-", i+1)
			classes[card] = group + " " + d.names[card]
		}
	}
	d.symbols, err = all.Symbols(append(cards.Settings(), cards.Characters()...)...)
	d.stage = cards.Stage(func(id string) string { return classes[id] })
	return d, err
}

// mover draws who shows a warm-up.
func (d deck) mover(symbol string, seated bool) templ.Component {
	if seated {
		symbol += "-seated"
	}
	return drawn(func() (string, error) { return d.all.Draw(symbol) })
}
