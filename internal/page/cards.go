package page

import (
	"fmt"
	"slices"
	"strings"

	"github.com/a-h/templ"

	"homebuild/internal/cards"
)

// The groups of cards, which name their inputs and classes: "who-3" is the third
// character. A story of two has another one "with" the first.
const (
	who   = "who"
	with  = "with"
	where = "where"
)

// picksCSS stands for the style that shows what is picked.
const picksCSS = "picks"

// picksStyle are the rules by which the radio buttons of the cards show what is
// picked.
func picksStyle() string {
	var hidden, shown []string
	for group, cards := range map[string][]string{who: cards.Characters(), with: cards.Characters(), where: cards.Settings()} {
		hidden = append(hidden, fmt.Sprintf("[class^=%s-]", group))
		for i := range cards {
			shown = append(shown, fmt.Sprintf("main:has(#%s-%d:checked) .%[1]s-%[2]d", group, i+1))
		}
	}
	slices.Sort(hidden)
	slices.Sort(shown)
	return strings.Join(hidden, ",") + "{display:none}" + strings.Join(shown, ",") + "{display:block}"
}

// deck is the cards drawn, the same in every page and so made once.
type deck struct {
	all     *cards.Deck
	symbols string
	stages  [2]string         // every card in its place, for one character or two; the theme shows the picked ones
	gaps    map[string]string // every character of a group, small, to stand in a sentence
	tiles   map[string]string // one card, by id
	numbers map[string]int    // the place of a card in its group, from 1, by id
}

func newDeck() (deck, error) {
	all, err := cards.Load()
	if err != nil {
		return deck{}, err
	}
	d := deck{all: all, tiles: map[string]string{}, numbers: map[string]int{}}
	for _, ids := range [][]string{cards.Characters(), cards.Settings()} {
		for i, card := range ids {
			if d.tiles[card], err = all.Use(card); err != nil {
				return deck{}, err
			}
			d.numbers[card] = i + 1
		}
	}
	d.symbols, err = all.Symbols(append(cards.Settings(), cards.Characters()...)...)
	d.stages = [2]string{cards.Stage(d.classes(where), d.classes(who)), cards.Stage(d.classes(where), d.classes(who), d.classes(with))}
	d.gaps = map[string]string{who: cards.Choice(d.classes(who)), with: cards.Choice(d.classes(with))}
	return d, err
}

// name is the id of a card's input in a group, and its class.
func (d deck) name(group, card string) string { return id(group, "-", d.numbers[card]) }

// classes gives each card its class in a group.
func (d deck) classes(group string) func(card string) string {
	return func(card string) string { return d.name(group, card) }
}

// mover draws who shows a warm-up.
func (d deck) mover(symbol string, seated bool) templ.Component {
	if seated {
		symbol += "-seated"
	}
	return drawn(func() (string, error) { return d.all.Draw(symbol) })
}
