package picture_test

import (
	"fmt"
	"strings"
	"testing"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// solved is a story as it is drawn with its answer.
func solved(t *testing.T, kind picture.Kind, story problem.Kind, numbers ...int) picture.Picture {
	t.Helper()
	p, err := problem.New(story, numbers...)
	if err != nil {
		t.Fatal(err)
	}
	pic, err := picture.OfProblem(p, kind, picture.Solved)
	if err != nil {
		t.Fatal(err)
	}
	return pic
}

// middle is the unit in the middle of an area.
func (a area) middle() (x, y int) { return (a.x1 + a.x2) / 2, (a.y1 + a.y2) / 2 }

// row is a group of a drawing that counts dots: the number, and the dots from the left.
type row struct {
	number area
	text   string
	dots   []area
	fills  string // the first letter of each dot's part: aaab
}

// rowsOf reads the groups of a drawing in rows.
func rowsOf(drawing string) map[string]row {
	rows := map[string]row{}
	all, _ := things(drawing)
	for _, m := range all {
		r := rows[m.class]
		switch {
		case m.text():
			r.number = m.area
			_, text, _ := strings.Cut(m.line, ">")
			r.text = strings.TrimSuffix(text, "</text>")
		case strings.HasPrefix(m.line, "<path") && !m.is("ring"):
			for _, dot := range strings.Split(attr(m.line, "d"), "M")[1:] {
				r.dots = append(r.dots, pathArea("M"+dot))
				r.fills += strings.TrimPrefix(attr(m.line, "class"), "part-")
			}
		}
		rows[m.class] = r
	}
	return rows
}

// Two rows are read across: as many dots as the number to their left says and at its
// height, each dot of the shorter row below one of the longer; what the longer row has
// more is filled otherwise, or ringed, and its number stands below it.
func TestRowsAreReadAcross(t *testing.T) {
	for _, test := range []struct {
		picture         picture.Picture
		longer, shorter string // the parts that the dots belong to
		difference      string
		rings           int
		said            string
	}{
		{picture.Double(7, 7), "aaaaaaa", "bbbbbbb", "", 0, "same"},
		{picture.Double(7, 6), "aaaaaaa", "bbbbbb", "", 1, "compare"},
		{picture.Double(6, 7), "bbbbbbb", "aaaaaa", "", 1, "compare"},
		{picture.Double(20, 20), strings.Repeat("a", 20), strings.Repeat("b", 20), "", 0, "same"},
		{solved(t, picture.Drawing, problem.DifferenceMore, 9, 9), "aaaaaaaaa", "aaaaaaaaa", "", 0, "compare"},
		{solved(t, picture.Drawing, problem.DifferenceMore, 14, 9), "aaaaaaaaabbbbb", "aaaaaaaaa", "5", 0, "compare"},
		{solved(t, picture.Drawing, problem.BiggerMore, 3, 17), "aaa" + strings.Repeat("b", 17), "aaa", "17", 0, "compare"},
		{solved(t, picture.Drawing, problem.SmallerMore, 20, 1), strings.Repeat("a", 19) + "b", strings.Repeat("a", 19), "1", 0, "compare"},
		{solved(t, picture.Drawing, problem.SmallerMore, 16, 1), strings.Repeat("a", 15) + "b", strings.Repeat("a", 15), "1", 0, "compare"},
	} {
		drawing := drawn(test.picture)
		name := say(test.picture.Describe())
		inside(t, name, drawing)
		rows := rowsOf(drawing)
		longer, shorter, difference := rows["longer"], rows["shorter"], rows["difference"]
		if longer.fills != test.longer || shorter.fills != test.shorter || difference.text != test.difference {
			t.Errorf("%s: rows of %s and %s, difference %s", name, longer.fills, shorter.fills, difference.text)
			continue
		}
		for _, r := range []row{longer, shorter} {
			if r.text != fmt.Sprint(len(r.dots)) {
				t.Errorf("%s: %s stands beside %d dots", name, r.text, len(r.dots))
			}
			_, y := r.number.middle()
			for i, dot := range r.dots {
				if x, at := dot.middle(); at != y || i == 0 && (dot.x1 <= r.number.x2 || dot.x1 > r.number.x2+24) {
					t.Errorf("%s: dot %d of %s lies at %d, %d", name, i+1, r.text, x, at)
				}
			}
		}
		for i, dot := range shorter.dots {
			if partner := longer.dots[i]; partner.x1 != dot.x1 || partner.y2 >= dot.y1 || partner.y2+40 < dot.y1 {
				t.Errorf("%s: dot %d has its partner at %v", name, i+1, partner)
			}
		}
		if difference.text != "" {
			extra := longer.dots[len(shorter.dots)].with(longer.dots[len(longer.dots)-1])
			want, _ := extra.middle()
			x, y := difference.number.middle()
			if _, low := shorter.number.middle(); x < want-1 || x > want+1 || y != low {
				t.Errorf("%s: the difference stands at %d, %d, and the dots that it counts at %v", name, x, y, extra)
			}
		}
		if got := len(shapes(t, drawing, "ring")); got != test.rings {
			t.Errorf("%s: want %d dots ringed, got %d", name, test.rings, got)
		}
		if test.picture.Describe().ID != "picture.drawing."+test.said {
			t.Errorf("%s: want it said as %s", name, test.said)
		}
	}
	if got := picture.Double(21, 20).Figure().Class; got != "bar" {
		t.Errorf("41 dots to count: want a bar, got %s", got)
	}
}

// On a line each number stands below its stop, each hop goes from its stop to the next,
// its arrow's tip there, and how far it goes stands over the middle of its arch (below
// the line where the walk turns round).
func TestLineIsReadFromStopToStop(t *testing.T) {
	for _, stops := range [][]int{{8, 14}, {14, 8}, {0, 10}, {40, 50}, {99, 100}, {90, 99, 100}, {18, 24, 19}, {30, 32, 36}, {36, 32, 30}, {45, 85, 84}, {248, 348, 418, 420, 423}, {305, 205, 135, 130, 127}} {
		drawing := drawn(picture.Walk(stops...))
		inside(t, fmt.Sprint(stops), drawing)
		all, _ := things(drawing)
		var numbers []thing
		hops := map[int][]thing{}
		for _, m := range all {
			switch {
			case m.class == "hop":
				hops[m.group] = append(hops[m.group], m)
			case m.text():
				numbers = append(numbers, m)
			}
		}
		dots := shapes(t, drawing, "solid")
		if len(numbers) != len(stops) || len(dots) != len(stops) || len(hops) != len(stops)-1 {
			t.Fatalf("%v: %d numbers, %d dots, %d hops", stops, len(numbers), len(dots), len(hops))
		}
		at := make([]int, len(stops))
		for i, dot := range dots {
			x, _ := numbers[i].middle()
			at[i], _ = dot.middle()
			if x != at[i] || numbers[i].y1 < dot.y2 || numbers[i].y1 > dot.y2+16 || !strings.Contains(numbers[i].line, fmt.Sprintf(">%d<", stops[i])) {
				t.Errorf("%v: %s stands at %v, and its stop at %v", stops, numbers[i].line, numbers[i].area, dot)
			}
		}
		for i := range len(stops) - 1 {
			arch, label := hops[i+1][0], hops[i+1][1]
			ways := strings.Split(attr(arch.line, "d"), "M")[1:]
			bow, head := corners("M"+ways[0]), corners("M"+ways[1])
			from, top, to, tip := bow[0], bow[1], bow[2], head[1]
			if from[0] != at[i] || to[0] != at[i+1] || tip != to {
				t.Errorf("%v: hop %d goes from %v to %v, its tip %v, stops %v", stops, i+1, from, to, tip, at)
			}
			if x, _ := label.middle(); x < (at[i]+at[i+1])/2-1 || x > (at[i]+at[i+1])/2+1 {
				t.Errorf("%v: how far hop %d goes stands at %d", stops, i+1, x)
			}
			away := top[1] - label.y2
			if turned := (stops[i+1] > stops[i]) != (stops[1] > stops[0]); turned {
				away = label.y1 - top[1]
			}
			if away < 2 || away > 12 {
				t.Errorf("%v: how far hop %d goes stands %d units from its arch", stops, i+1, away)
			}
		}
	}
}

// The longer of two hops has the higher arch, there and back.
func TestLongHopsHaveHighArches(t *testing.T) {
	for _, stops := range [][]int{{30, 32, 36}, {36, 34, 30}} {
		arches := shapes(t, drawn(picture.Walk(stops...)), "arch") // each with its head
		if short, long := arches[0], arches[2]; short.y2-short.y1 >= long.y2-long.y1 {
			t.Errorf("%v: a short hop over %v, a long one over %v", stops, short, long)
		}
	}
}

// A line that spans no more than ten has a mark for each number, equally far apart: the
// steps of a hop can be counted.
func TestNearNumbersHaveTicks(t *testing.T) {
	for _, stops := range [][]int{{8, 14}, {14, 8}, {0, 10}, {40, 50}, {18, 24, 19}, {83, 89}} {
		ticks := shapes(t, drawn(picture.Walk(stops...)), "tick")
		want := max(stops[0], stops[1]) - min(stops[0], stops[1]) + 1
		if len(ticks) != want {
			t.Errorf("%v: want %d marks, got %d", stops, want, len(ticks))
		}
		for i, tick := range ticks[1:] {
			if tick.x1-ticks[i].x1 != ticks[1].x1-ticks[0].x1 {
				t.Errorf("%v: marks at %v", stops, ticks)
			}
		}
	}
}

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

// A picture begins at the top of its sheet and ends at its foot, so that a page has no
// strip of nothing. Two rows and two bars have their places from the start; a line has
// room for arches, and a frame for what counts its parts, once there are some.
func TestNoStripIsLeftOver(t *testing.T) {
	all := samples(t)
	for kind, story := range map[picture.Kind]problem.Kind{picture.NumberLine: problem.AddToChange, picture.TenFrame: problem.TakeFromResult} {
		p, err := problem.New(story, 8, 6)
		if err != nil {
			t.Fatal(err)
		}
		first, err := picture.OfProblem(p, kind, picture.FirstPart)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, sample{kind.String() + " at first", first})
	}
	for _, s := range all {
		things, sheet := things(drawn(s.picture))
		seen := things[0].area
		for _, m := range things {
			seen = seen.with(m.area)
		}
		if class := s.picture.Figure().Class; class != "rows" && class != "compare" && (seen.y1 > 24 || seen.y2 < sheet.y2-24) {
			t.Errorf("%s: on a sheet of %v there is something at %v alone", s.name, sheet, seen)
		}
	}
}

// Once all of a story of two steps is told, what is left of a whole has its place, since
// it can be seen how much of the bar is left; what three parts come to cannot.
func TestWhatIsLeftHasItsPlace(t *testing.T) {
	for _, test := range []struct {
		story   problem.Kind
		numbers []int
		said    string
	}{
		{problem.AddThenAdd, []int{43, 22, 14}, "Whole=picture.hidden"},
		{problem.AddThenTake, []int{8, 6, 5}, "Left=picture.empty"},
		{problem.TogetherThenTake, []int{8, 6, 5}, "Left=picture.empty"},
		{problem.TakeThenAdd, []int{61, 22, 34}, "Result=picture.empty"},
		{problem.TakeThenTake, []int{61, 22, 4}, "Left=picture.empty"},
	} {
		p, err := problem.New(test.story, test.numbers...)
		if err != nil {
			t.Fatal(err)
		}
		pic, err := picture.OfProblem(p, picture.BarModel, picture.SecondPart)
		if err != nil {
			t.Fatal(err)
		}
		if said := say(pic.Describe()); !strings.HasSuffix(said, test.said) {
			t.Errorf("%v: want %s, said is %s", test.story, test.said, said)
		}
		places := len(shapes(t, drawn(pic), "unknown"))
		for _, m := range parse(t, drawn(pic)) {
			if m.name == "rect" && m.attrs["class"] == "unknown" {
				places++
			}
		}
		if want := map[bool]int{true: 1, false: 2}[test.story == problem.AddThenAdd]; places != want { // between the steps, and at the end
			t.Errorf("%v: want %d places without a number, got %d", test.story, want, places)
		}
	}
}

// Two "?" that may stand for different numbers stand in shapes of their own, one in a
// square and one in a circle.
func TestEachUnknownHasItsShape(t *testing.T) {
	p, err := problem.New(problem.TogetherBoth, 3, 4)
	if err != nil {
		t.Fatal(err)
	}
	for _, kind := range picture.Kinds() {
		pic, err := picture.OfProblem(p, kind, picture.Open)
		if err != nil {
			continue
		}
		all, _ := things(drawn(pic))
		shapes := map[string]int{}
		for _, gap := range all {
			for _, m := range all {
				x, y := m.middle()
				if at, level := gap.middle(); gap.is("gap") && strings.HasSuffix(m.line, ">?</text>") && at == x && level == y {
					name, _, _ := strings.Cut(gap.line, " ")
					shapes[name]++
				}
			}
		}
		if shapes["<rect"] != 1 || shapes["<circle"] != 1 {
			t.Errorf("%v: the two that are asked stand in %v", kind, shapes)
		}
	}
}

// What a part counts stands right below its dots, where these fill two rows and more.
func TestNumbersStandBelowTheirDots(t *testing.T) {
	for _, numbers := range [][]int{{8, 6}, {10, 10}, {10, 5}, {5, 6}, {8, 4, 2}, {10, 5, 5}} {
		story := problem.TogetherTotal
		if len(numbers) == 3 {
			story = problem.TogetherThree
		}
		lowest := 0
		var below []area
		all, _ := things(drawn(solved(t, picture.Drawing, story, numbers...)))
		for _, m := range all {
			switch {
			case m.class == "part" && m.text():
				below = append(below, m.area)
			case m.class == "part" && !m.is("plate"):
				lowest = max(lowest, m.y2)
			}
		}
		for _, number := range below {
			if number.y1 < lowest+2 || number.y1 > lowest+20 {
				t.Errorf("%v: the dots end at %d, and a number stands at %v", numbers, lowest, number)
			}
		}
		if len(below) != len(numbers) {
			t.Errorf("%v: %d numbers below dots", numbers, len(below))
		}
	}
}

// A number beside the sample of what it counts keeps clear of it, with one digit or three.
func TestLegendsHaveRoom(t *testing.T) {
	for _, numbers := range [][]int{{13, 4}, {65, 49}, {110, 10}, {734, 155}} {
		all, _ := things(drawn(solved(t, picture.BaseTen, problem.TakeFromResult, numbers...)))
		samples, found := map[int]area{}, 0
		for _, m := range all {
			switch {
			case m.class != "legend" || m.text():
			case m.is("plate"):
				found++
				if sample := samples[m.group]; m.x1 < sample.x2+4 || m.x1 > sample.x2+16 {
					t.Errorf("%v: a number at %v beside its sample at %v", numbers, m.area, sample)
				}
			default:
				samples[m.group] = m.area
			}
		}
		if found != 2 {
			t.Errorf("%v: want 2 numbers in the legend, got %d", numbers, found)
		}
	}
}
