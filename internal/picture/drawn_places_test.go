package picture_test

import (
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
