package recheck

import (
	"math/bits"
	"strconv"
	"strings"

	"golang.org/x/net/html"
)

// answer is one that a child can give: a tile picked in each place.
type answer struct {
	n     int   // -1 for a pair
	pair  []int // two parts; nil for none
	reply []int // which of the story's replies show; one is as it should be
}

// tile is one of a place. Its marks are the classes that decide which reply shows:
// the first two and then one for each box.
type tile struct {
	label string
	n     int
	marks uint64
}

const (
	markRight = 1 << iota // "e": the right digit
	markLess              // "l": a smaller one
	firstBox              // "k1": all answers whose tiles are of the box get the reply "r1"
)

// worths are what a step of one tile counts in each place.
var worths = map[string]int{"h": 100, "t": 10, "o": 1}

// answers are all that the tiles of a story can be picked for, each with the
// replies that the rules of the pages then show.
func answers(story *html.Node, replies []*html.Node) []answer {
	var places [][]tile
	var worth []int
	for _, row := range all(find(story, ".pick"), ".nums") {
		places = append(places, tiles(row))
		w := 0
		for name, of := range worths {
			if is(row, "."+name) {
				w = of
			}
		}
		worth = append(worth, w)
	}
	var out []answer
	each(places, nil, func(picked []tile) {
		a := answer{reply: showing(picked, replies)}
		for i, t := range picked {
			if worth[i] == 0 {
				a.n, a.pair = -1, append(a.pair, t.n)
				continue
			}
			a.n += worth[i] * t.n
		}
		out = append(out, a)
	})
	return out
}

func each(places [][]tile, picked []tile, do func([]tile)) {
	if len(places) == 0 {
		if len(picked) > 0 {
			do(picked)
		}
		return
	}
	for _, t := range places[0] {
		each(places[1:], append(picked, t), do)
	}
}

func tiles(row *html.Node) []tile {
	var out []tile
	for _, label := range children(row, "label") {
		t := tile{label: text(label), n: -1}
		if n := numbers(t.label); len(n) == 1 {
			t.n = n[0]
		}
		if radio := find(label, "input"); radio != nil {
			t.marks = marks(attr(radio, "class"), "k")
		}
		out = append(out, t)
	}
	return out
}

// marks reads classes; boxes begin with a letter: "k3".
func marks(classes, letter string) (m uint64) {
	for _, class := range strings.Fields(classes) {
		switch n, err := strconv.Atoi(strings.TrimPrefix(class, letter)); {
		case class == "e":
			m |= markRight
		case class == "l":
			m |= markLess
		case err == nil && n > 0 && n < 62 && strings.HasPrefix(class, letter):
			m |= firstBox << (n - 1)
		}
	}
	return m
}

// showing lists the replies that show when the tiles are picked.
func showing(picked []tile, replies []*html.Node) []int {
	common := ^uint64(0)
	less, decided := false, false
	for _, t := range picked {
		common &= t.marks
		if !decided && t.marks&markRight == 0 {
			less, decided = t.marks&markLess != 0, true
		}
	}
	right := common&markRight != 0
	box := bits.Len64(common / firstBox)
	var out []int
	for i, r := range replies {
		m := marks(attr(r, "class"), "r")
		switch {
		case m&common/firstBox != 0,
			is(r, ".right") && right,
			is(r, ".small") && less && box == 0,
			is(r, ".large") && !right && !less && box == 0:
			out = append(out, i)
		}
	}
	return out
}
