package page

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/phrase"
)

// Answers are all that a child can answer a story with, and what is said to each:
// to every answer exactly one reply.
type Answers struct {
	// Most is the largest number of the range that the child works in. Up to 20 each
	// number has a tile; up to 100 it is put together from tens and ones, beyond from
	// hundreds, tens and ones.
	Most  int
	Right int // where one number is right
	// Whole is the number that a story takes apart: the answer is then any two
	// parts that make it, each up to Most, which is 20 at the most. 0 for an answer
	// that is one number.
	Whole   int
	Replies []Reply
}

// Reply is what is said to the answers that it is for.
type Reply struct {
	To      ReplyTo
	Numbers []int         // of ToSome, and of ToRight where more than one number is right; no two replies have the same
	Lines   []phrase.Line // kind and short; the page opens the right one with a calm word
}

// ReplyTo says which answers a reply is for.
type ReplyTo uint8

const (
	ToRight   ReplyTo = iota + 1
	ToSome            // to the numbers of a list
	ToSmaller         // to any other that is too small
	ToBigger          // to any other that is too big
)

// tiled is the largest number that has a tile of its own.
const tiled = 20

// place is a row of tiles, of which one is picked: how many hundreds, tens or
// ones, or how big a part is.
type place struct {
	class string // what the CSS counts it by
	name  string // message; empty for a number that is picked whole
	tiles int    // from 0 on
	worth int    // of a step of one tile, in the code of an answer
}

// places are the rows that an answer is picked from, the highest first. The code
// of an answer is the sum of what its tiles are worth: the number itself, and for
// two parts a number of their own.
func (a Answers) places() []place {
	switch {
	case a.Whole > 0:
		return []place{{"p", "try.first-part", a.Most + 1, a.Most + 1}, {"q", "try.second-part", a.Most + 1, 1}}
	case a.Most <= tiled:
		return []place{{"o", "", a.Most + 1, 1}}
	case a.Most <= 100:
		return []place{{"t", "try.tens", 11, 10}, {"o", "try.ones", 10, 1}}
	}
	return []place{{"h", "try.hundreds", 11, 100}, {"t", "try.tens", 10, 10}, {"o", "try.ones", 10, 1}}
}

// Largest is the largest number that can be picked.
func (a Answers) Largest() int {
	most := 0
	for _, p := range a.places() {
		most += (p.tiles - 1) * p.worth
	}
	return most
}

// tile is one tile of a place, with the classes by which the CSS finds the reply.
type tile struct {
	n     int
	class string
}

// keypad is how an answer is picked and which reply it then gets. The CSS in
// answer_style.go reads the classes: a tile is "l" where its digit is less than the
// right answer's and "e" where it is the same; and it is "k3" where the answers
// of the third box may have it. The reply of that box has the class "r3".
type keypad struct {
	places  []place
	tiles   [][]tile
	replies []string // the class of each reply
	boxes   int
}

// keypad lays the answers out.
func (a Answers) keypad() keypad {
	k := keypad{places: a.places()}
	var boxes []box
	for _, r := range a.Replies {
		of := a.boxes(r, k.places)
		k.replies = append(k.replies, replyClass(r, len(boxes), len(of)))
		boxes = append(boxes, of...)
	}
	k.boxes = len(boxes)
	rest := a.Right
	for i, p := range k.places {
		right := rest / p.worth
		rest %= p.worth
		var tiles []tile
		for n := range p.tiles {
			tiles = append(tiles, tile{n, a.tileClass(i, n, right, boxes)})
		}
		k.tiles = append(k.tiles, tiles)
	}
	return k
}

// boxes are those of a reply that has answers of its own; none for one that follows
// from the size of the answer.
func (a Answers) boxes(r Reply, places []place) []box {
	switch {
	case len(r.Numbers) > 0:
		return boxesOf(r.Numbers, places)
	case a.Whole > 0 && r.To != ToBigger:
		return boxesOf(a.pairs(r.To), places)
	}
	return nil
}

// replyClass is the class of a reply with so many boxes, behind those of the replies
// before it.
func replyClass(r Reply, before, boxes int) string {
	var class []string
	for i := range boxes {
		class = append(class, fmt.Sprintf("r%d", before+i+1))
	}
	switch {
	case r.To == ToRight:
		class = append(class, "right")
	case r.To == ToBigger:
		class = append(class, "large")
	case r.To == ToSmaller && boxes == 0:
		class = append(class, "small")
	}
	return strings.Join(class, " ")
}

// tileClass is the class of the tile n at a place where the right answer has the digit
// right.
func (a Answers) tileClass(at, n, right int, boxes []box) string {
	var class []string
	switch {
	case a.several():
	case n < right:
		class = append(class, "l")
	case n == right:
		class = append(class, "e")
	}
	for i, b := range boxes {
		if b[at]&(1<<n) != 0 {
			class = append(class, fmt.Sprintf("k%d", i+1))
		}
	}
	return strings.Join(class, " ")
}

// several reports whether more than one answer is right.
func (a Answers) several() bool {
	return a.Whole > 0 || slices.ContainsFunc(a.Replies, func(r Reply) bool { return r.To == ToRight && len(r.Numbers) > 0 })
}

// pairs are the codes of the two parts that make the whole, or less than it.
func (a Answers) pairs(to ReplyTo) []int {
	var out []int
	for first := range a.Most + 1 {
		for second := range a.Most + 1 {
			if first+second == a.Whole && to == ToRight || first+second < a.Whole && to == ToSmaller {
				out = append(out, first*(a.Most+1)+second)
			}
		}
	}
	return out
}

// box is a set of answers that can be told place by place: in each place the
// tiles whose bits are set, all combined with all.
type box [3]uint32

// boxesOf covers the codes, and no other, with boxes that do not meet.
func boxesOf(codes []int, places []place) []box {
	var boxes []box
	for _, code := range codes {
		var b box
		for i, p := range places {
			b[i] = 1 << (code / p.worth)
			code %= p.worth
		}
		boxes = append(boxes, b)
	}
	for i := len(places) - 1; i >= 0; i-- {
		boxes = joined(boxes, i)
	}
	return boxes
}

// joined joins the boxes that differ in one place only.
func joined(boxes []box, place int) []box {
	var out []box
	for _, b := range boxes {
		i := slices.IndexFunc(out, func(o box) bool {
			o[place] = b[place]
			return o == b
		})
		if i < 0 {
			out = append(out, b)
			continue
		}
		out[i][place] |= b[place]
	}
	return out
}

// runs are the numbers as a reader is told of them: "3", and "5" to "9".
func runs(numbers []int) (out [][2]int) {
	for _, n := range slices.Sorted(slices.Values(numbers)) {
		if last := len(out) - 1; last >= 0 && out[last][1] == n-1 {
			out[last][1] = n
			continue
		}
		out = append(out, [2]int{n, n})
	}
	return out
}

// group is the name of the place's radio buttons in story n.
func (p place) group(n int) string { return id(p.class, n) }

// runs names numbers to a reader: "3, 5…9". A dash before a number would be a minus.
func (s *state) runs(numbers []int) string {
	var all []string
	for _, r := range runs(numbers) {
		text := s.notation.Number(r[0])
		if r[1] > r[0] {
			text += "…" + s.notation.Number(r[1])
		}
		all = append(all, text)
	}
	return strings.Join(all, s.comma())
}

// mine is the class of the answer that was picked: how the CSS writes it.
func (s *state) mine(a Answers) string {
	if a.Whole > 0 {
		return "mine two"
	}
	return "mine"
}
