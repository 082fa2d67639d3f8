package page

import "homebuild/internal/draw/cards"

// The groups of cards, which name their inputs and classes: "who-3" is the
// third character. themes/base/own.css counts on twelve of each.
const (
	who   = "who"
	where = "where"
)

// deck is the cards drawn, the same in every page and so made once.
type deck struct {
	symbols string
	stage   string            // every card in its place; the theme shows the picked pair
	tiles   map[string]string // one card, by id
	names   map[string]string // "who-3", by id
}

func newDeck() (deck, error) {
	d := deck{tiles: map[string]string{}, names: map[string]string{}}
	classes := map[string]string{}
	for group, ids := range map[string][]string{who: cards.Characters(), where: cards.Settings()} {
		for i, card := range ids {
			tile, err := cards.Use(card)
			if err != nil {
				return deck{}, err
			}
			d.tiles[card], d.names[card] = tile, id(group, "-", i+1)
			classes[card] = group + " " + d.names[card]
		}
	}
	var err error
	if d.symbols, err = cards.Symbols(); err != nil {
		return deck{}, err
	}
	d.stage, err = cards.Stage(func(id string) string { return classes[id] })
	return d, err
}
