package picture_test

import (
	"strings"
	"testing"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// counted is a group of a drawing: a number, and the shape that it counts.
type counted struct {
	class  string
	n      int
	number area
	shape  area
}

// countedIn are the groups of a drawing that have a number, in their order.
func countedIn(drawing string) (groups []counted) {
	all, _ := things(drawing)
	for _, m := range all {
		if m.group == 0 || m.is("plate") {
			continue
		}
		for len(groups) < m.group {
			groups = append(groups, counted{class: m.class})
		}
		switch g := &groups[m.group-1]; {
		case m.text():
			_, text, _ := strings.Cut(m.line, ">")
			g.n, g.number = atoi(strings.TrimSuffix(text, "</text>")), m.area
		case g.shape == (area{}):
			g.shape = m.area
		default:
			g.shape = g.shape.with(m.area)
		}
	}
	return groups
}

// Of a bar of two steps the parts lie side by side, a number in the middle of each. A
// brace over or under them reaches from the first that it joins to the last, whose
// numbers come to its own, and that stands at its tip.
func TestBracesJoinWhatTheyCount(t *testing.T) {
	all := []picture.Picture{picture.Joined(43, 22, 24), picture.Pairs(24, 17, 36, 13), picture.Pairs(1, 2, 300, 4)}
	for _, story := range []problem.Kind{problem.AddThenAdd, problem.AddThenTake, problem.TogetherThenTake, problem.TakeThenAdd, problem.TakeThenTake} {
		for _, numbers := range [][]int{{43, 22, 14}, {8, 6, 2}, {61, 22, 34}, {400, 180, 210}} {
			all = append(all, solved(t, picture.BarModel, story, numbers...))
		}
	}
	for _, pic := range all {
		name := say(pic.Describe())
		groups := countedIn(drawn(pic))
		bar, braces := area{}, 0
		for _, g := range groups {
			switch {
			case g.class != "part":
				braces++
				continue
			case bar == area{}:
				bar = g.shape
			case g.shape.x1 != bar.x2 || g.shape.y1 != bar.y1 || g.shape.y2 != bar.y2:
				t.Errorf("%s: a part lies at %v beside %v", name, g.shape, bar)
			}
			bar = bar.with(g.shape)
		}
		for _, g := range groups {
			x, y := g.number.middle()
			middle, at := g.shape.middle()
			from, to, away := g.shape.y2, bar.y1, g.shape.y1-g.number.y2 // from a brace to the bar, and to its number
			switch g.class {
			case "part":
				from, to, away = 0, 4, 4+y-at
			case "under":
				from, to, away = bar.y2, g.shape.y1, g.number.y1-g.shape.y2
			}
			if x < middle-1 || x > middle+1 || to-from < 2 || to-from > 8 || away < 2 || away > 10 {
				t.Errorf("%s: %s %d stands at %v, its shape lies at %v", name, g.class, g.n, g.number, g.shape)
			}
			var joined []counted
			sum := 0
			for _, part := range groups {
				if part.class == "part" && part.shape.x1 >= g.shape.x1 && part.shape.x2 <= g.shape.x2 {
					joined = append(joined, part)
					sum += part.n
				}
			}
			if g.class == "under" && strings.Contains(name, "join-take") {
				continue // cut in another place than the parts: the next test
			}
			if sum != g.n || joined[0].shape.x1 != g.shape.x1 || joined[len(joined)-1].shape.x2 != g.shape.x2 {
				t.Errorf("%s: %s %d joins %v", name, g.class, g.n, joined)
			}
		}
	}
}

// A bar of two parts of which something is taken is cut again below, in the same place
// only where the numbers are the same: what is left is longer than the first part where
// its number is bigger.
func TestCutAgain(t *testing.T) {
	for _, numbers := range [][]int{{43, 22, 14}, {43, 22, 24}, {8, 6, 5}, {20, 15, 15}, {500, 400, 398}, {500, 400, 399}, {500, 400, 400}, {500, 400, 401}, {500, 400, 402}, {1, 900, 899}, {900, 50, 948}} {
		pic := solved(t, picture.BarModel, problem.AddThenTake, numbers...)
		groups := countedIn(drawn(pic))
		whole, first, second, left, taken := groups[0], groups[1], groups[2], groups[3], groups[4]
		if left.n != numbers[0]+numbers[1]-numbers[2] || taken.n != numbers[2] {
			t.Fatalf("%v: cut into %d and %d", numbers, left.n, taken.n)
		}
		if left.shape.x1 != whole.shape.x1 || left.shape.x2 != taken.shape.x1 || taken.shape.x2 != second.shape.x2 {
			t.Errorf("%v: the braces below lie at %v and %v", numbers, left.shape, taken.shape)
		}
		longer := left.shape.x2 - first.shape.x2
		if left.n > first.n && longer < 2 || left.n < first.n && longer > -2 || left.n == first.n && longer != 0 {
			t.Errorf("%v: %d ends at %d, and %d at %d", numbers, first.n, first.shape.x2, left.n, left.shape.x2)
		}
	}
}

// A story of two steps that begins with a whole shows it in one piece, under its brace.
func TestWholeOfTwoStepsIsInOnePiece(t *testing.T) {
	p, err := problem.New(problem.TakeThenAdd, 61, 22, 34)
	if err != nil {
		t.Fatal(err)
	}
	pic, err := picture.OfProblem(p, picture.BarModel, picture.FirstPart)
	if err != nil {
		t.Fatal(err)
	}
	all, sheet := things(drawn(pic))
	var brace, bar area
	for _, m := range all {
		switch {
		case m.is("brace"):
			brace = m.area
		case m.is("part-0"):
			bar = m.area
		}
	}
	if bar.x1 != brace.x1 || bar.x2 != brace.x2 || bar.y1 < brace.y2 || bar.y1 > brace.y2+8 || sheet.y2 > bar.y2+8 {
		t.Errorf("the bar lies at %v, its brace at %v", bar, brace)
	}
}
