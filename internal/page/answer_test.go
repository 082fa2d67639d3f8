package page

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// answerRows are answers of every sort, with replies to numbers apart, in a run
// and across the places.
func answerRows() map[string]Answers {
	general := []Reply{{To: ToRight}, {To: ToSmaller}, {To: ToBigger}}
	some := func(numbers ...int) Reply { return Reply{To: ToSome, Numbers: numbers} }
	run := slices.Concat(except(213, 336, -1).Numbers, except(338, 641, 373).Numbers)
	return map[string]Answers{
		"to 10":               {Most: 10, Right: 7, Replies: append(general, some(3), some(6, 8, 10))},
		"to 20":               {Most: 20, Right: 0, Replies: append(general, some(1, 20))},
		"to 100":              {Most: 100, Right: 100, Replies: append(general, some(9, 90, 99, 101, 109), some(91, 92, 93, 94))},
		"to 1000":             {Most: 1000, Right: 733, Replies: append(general, some(337, 373), except(723, 743, 733), some(run...))},
		"to 1000, round":      {Most: 1000, Right: 700, Replies: append(general, some(7, 70), some(699, 701))},
		"every pair of 7":     {Most: 10, Whole: 7, Replies: general},
		"every pair of 20":    {Most: 20, Whole: 20, Replies: general},
		"any part is right":   {Most: 100, Replies: []Reply{{To: ToRight, Numbers: except(0, 45, -1).Numbers}, {To: ToBigger}}},
		"all others are some": {Most: 10, Right: 4, Replies: []Reply{{To: ToRight}, {To: ToBigger}, some(0, 1, 2, 3)}},
	}
}

// except is a reply to the numbers of a run but for one.
func except(from, to, but int) Reply {
	r := Reply{To: ToSome}
	for n := from; n <= to; n++ {
		if n != but {
			r.Numbers = append(r.Numbers, n)
		}
	}
	return r
}

// Every answer that can be picked gets the reply that it is meant for, and no
// other: the classes are read here as the rules of answerStyle read them; a
// browser does the same in browser/answer_test.go.
func TestEveryAnswerHasOneReply(t *testing.T) {
	for name, a := range answerRows() {
		k := a.keypad()
		for code := range a.Largest() + 1 {
			picked, rest := make([]string, len(k.places)), code
			digits := make([]int, len(k.places))
			for i, p := range k.places {
				digits[i] = rest / p.worth
				picked[i] = k.tiles[i][digits[i]].class
				rest %= p.worth
			}
			var got []int
			for i, class := range k.replies {
				if shows(class, picked) {
					got = append(got, i)
				}
			}
			if want := []int{a.replyTo(code, digits)}; !slices.Equal(got, want) {
				t.Fatalf("%s: %v gets the replies %v, want %v", name, digits, got, want)
			}
		}
	}
}

// replyTo is the place of the reply to an answer, by what the fields say.
func (a Answers) replyTo(code int, digits []int) int {
	to, value, right := ToBigger, code, a.Right
	if a.Whole > 0 {
		value, right = digits[0]+digits[1], a.Whole
	}
	switch {
	case value == right:
		to = ToRight
	case value < right:
		to = ToSmaller
	}
	if i := slices.IndexFunc(a.Replies, func(r Reply) bool { return slices.Contains(r.Numbers, code) }); i >= 0 && a.Whole == 0 {
		return i
	}
	return slices.IndexFunc(a.Replies, func(r Reply) bool { return r.To == to })
}

// shows is what the style says of a reply when the tiles with these classes are
// picked.
func shows(reply string, picked []string) bool {
	all := func(class string) bool {
		return !slices.ContainsFunc(picked, func(p string) bool { return !slices.Contains(strings.Fields(p), class) })
	}
	less := func() bool {
		for _, p := range picked {
			switch classes := strings.Fields(p); {
			case slices.Contains(classes, "l"):
				return true
			case !slices.Contains(classes, "e"):
				return false
			}
		}
		return false
	}
	boxed := false
	for i := range mostBoxes {
		boxed = boxed || all(fmt.Sprintf("k%d", i+1))
	}
	for _, class := range strings.Fields(reply) {
		n, isBox := strings.CutPrefix(class, "r")
		switch {
		case class == "right" && all("e"), class == "small" && less() && !boxed, class == "large" && !less() && !boxed && !all("e"):
			return true
		case isBox && class != "right" && all("k"+n):
			return true
		}
	}
	return false
}

// A page of four stories with numbers to 1000 has fewer controls than one list
// to 1000 would have, and four tab stops a story: three places and the reply.
func TestControls(t *testing.T) {
	s := newStock(t)
	f := s.in("en")
	big := f.tryStory()
	big.Answers = answerRows()["to 1000"]
	v := &Try{WeekPage: f.week("en/2026-09-14-try.html"), First: 1, Stories: []*TryStory{big, big, big, big}}
	d := read(t, render(t, v))
	groups := map[string]bool{}
	radios := 0
	for _, n := range d.all("input") {
		radios++
		groups[attr(n, "name")] = true
	}
	if most := 4 * (11 + 10 + 10 + 2); radios > most {
		t.Errorf("%d controls, want at most %d", radios, most)
	}
	if len(groups) != 4*3 {
		t.Errorf("%d groups, want three a story", len(groups))
	}
	for _, n := range d.all("label") {
		if attr(n, "for") == "" && !wraps(n, "input") {
			t.Errorf("a label names nothing: %s", textOf(n))
		}
	}
}

func wraps(n *html.Node, element string) bool {
	for d := range n.Descendants() {
		if d.Data == element {
			return true
		}
	}
	return false
}
