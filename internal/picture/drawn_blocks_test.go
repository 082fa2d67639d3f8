package picture_test

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// shapes are the parts of the paths of a class: a box or a dot each.
func shapes(t *testing.T, drawing, class string) (areas []area) {
	t.Helper()
	for _, e := range parse(t, drawing) {
		if e.name != "path" || !slices.Contains(strings.Fields(e.attrs["class"]), class) {
			continue
		}
		for _, d := range regexp.MustCompile(`M[^M]*`).FindAllString(e.attrs["d"], -1) {
			areas = append(areas, pathArea(d))
		}
	}
	return areas
}

// worth adds up what the blocks of a drawing are worth, those with a class or those
// without.
func worth(t *testing.T, drawing, with, without string) (sum int, all []area) {
	t.Helper()
	for class, each := range map[string]int{"hundred": 100, "ten": 10, "one": 1} {
		these := shapes(t, drawing, class)
		for _, not := range shapes(t, drawing, without) {
			these = slices.DeleteFunc(these, func(a area) bool { return a == not })
		}
		if with != "" {
			only := shapes(t, drawing, with)
			these = slices.DeleteFunc(these, func(a area) bool { return !slices.Contains(only, a) })
		}
		for _, a := range these {
			sum += each
			all = append(all, a)
		}
	}
	return sum, all
}

// touching are two areas that lie over each other, and false where none do.
func touching(all []area) (a, b area, ok bool) {
	for i, a := range all {
		for _, b := range all[:i] {
			if a.meets(b) {
				return a, b, true
			}
		}
	}
	return a, b, false
}

// The squares, sticks and dots of a sum come to its parts and their whole, side by side.
func TestBlocksOfSumsAreCounted(t *testing.T) {
	for _, n := range [][]int{{56, 37}, {60, 40}, {9, 90}, {99, 1}, {100, 99}, {345, 167}, {508, 390}, {999, 1}, {20, 30, 40}, {128, 256, 312}} {
		pic, ok := picture.Blocks(problem.Calculation{Op: problem.Plus, Numbers: n})
		if !ok {
			t.Fatalf("%v is not drawn", n)
		}
		drawing := drawn(pic)
		whole := 0
		for i, part := range n {
			whole += part
			if got, _ := worth(t, drawing, []string{"part-a", "part-b", "part-c"}[i], "opened"); got != part {
				t.Errorf("%v: the blocks of part %d come to %d", n, i+1, got)
			}
		}
		got, all := worth(t, drawing, "", "opened")
		if a, b, over := touching(all); got != whole || over {
			t.Errorf("%v: all blocks come to %d, want %d; over each other: %v %v %v", n, got, whole, over, a, b)
		}
		rule := 0
		for _, e := range parse(t, drawing) {
			if e.attrs["class"] == "underline" {
				rule = atoi(e.attrs["y1"])
			}
		}
		for _, class := range []string{"hundred", "ten", "one"} { // what a place comes to stands below its blocks
			for _, e := range parse(t, drawing) {
				blocks := shapes(t, drawing, class)
				if e.name != "text" || e.attrs["class"] != class || len(blocks) == 0 {
					continue
				}
				if x := atoi(e.attrs["x"]); x < blocks[0].x1 || x > blocks[0].x1+100 || atoi(e.attrs["y"])-16 < rule || rule < blocks[len(blocks)-1].y2 {
					t.Errorf("%v: %s stands at %d, and the first %s at %v", n, e.text, x, class, blocks[0])
				}
			}
		}
		hundreds := slices.ContainsFunc(n, func(n int) bool { return n >= 100 })
		if said := pic.Describe().Values[0].ID; said != map[bool]string{true: "picture.blocks.hundreds", false: "picture.blocks.tens"}[hundreds] {
			t.Errorf("%v: it is said to be drawn in %s", n, said)
		}
	}
}

// Of a whole as many blocks are struck out as are taken, each struck once, and what is
// left is the answer; for each ten that is opened its place and an arrow are drawn.
func TestBlocksTakenAreCounted(t *testing.T) {
	for _, test := range []struct{ whole, taken, opened int }{
		{68, 23, 0}, {65, 49, 1}, {40, 9, 1}, {90, 90, 0}, {99, 1, 0}, {100, 1, 2}, {110, 10, 0}, {120, 30, 1},
		{734, 155, 2}, {534, 151, 1}, {305, 178, 2}, {345, 167, 2}, {519, 19, 0}, {1000, 1, 2}, {999, 100, 0},
	} {
		p, err := problem.New(problem.TakeFromResult, test.whole, test.taken)
		if err != nil {
			t.Fatal(err)
		}
		pic, err := picture.OfProblem(p, picture.BaseTen, picture.Solved)
		if err != nil {
			t.Fatal(err)
		}
		drawing := drawn(pic)
		gone, struck := worth(t, drawing, "gone", "opened")
		all, areas := worth(t, drawing, "", "opened")
		if gone != test.taken || all != test.whole {
			t.Errorf("%d - %d: of %d, %d are struck out", test.whole, test.taken, all, gone)
		}
		if a, b, over := touching(areas); over {
			t.Errorf("%d - %d: %v and %v lie over each other", test.whole, test.taken, a, b)
		}
		strikes := shapes(t, drawing, "strike")
		for _, block := range struck {
			if n := len(slices.DeleteFunc(slices.Clone(strikes), func(s area) bool { return !s.meets(block) })); n != 1 {
				t.Errorf("%d - %d: the block at %v is struck %d times", test.whole, test.taken, block, n)
			}
		}
		opened, arrows := shapes(t, drawing, "opened"), shapes(t, drawing, "move")
		if len(opened) != test.opened || len(arrows) != 2*test.opened || len(strikes) != len(struck) {
			t.Errorf("%d - %d: %d places of opened blocks, %d lines of arrows, %d strikes for %d blocks", test.whole, test.taken, len(opened), len(arrows), len(strikes), len(struck))
		}
		if _, _, over := touching(append(areas, opened...)); over {
			t.Errorf("%d - %d: the place of an opened block is not free", test.whole, test.taken)
		}
		for i, arrow := range arrows { // a line and a head each, to the right of the place
			if from := opened[i/2]; i%2 == 0 && (arrow.x1 <= from.x2 || arrow.x1 > from.x2+4 || arrow.y1 < from.y1 || arrow.y2 > from.y2 || arrow.x2 <= arrow.x1) {
				t.Errorf("%d - %d: the arrow %v does not begin at %v", test.whole, test.taken, arrow, from)
			}
		}
		want := map[bool]string{true: "picture.blocks.crossed-traded", false: "picture.blocks.crossed"}[test.opened > 0]
		if got := pic.Describe().ID; got != want {
			t.Errorf("%d - %d: want %s said, got %s", test.whole, test.taken, want, got)
		}
		if _, ok := picture.Blocks(problem.Calculation{Op: problem.Minus, Numbers: []int{test.whole, test.taken}}); ok != (test.opened == 0) {
			t.Errorf("%d - %d: struck out without a trade: %v", test.whole, test.taken, ok)
		}
	}
}

// While a story is told a picture says what is drawn of it, and no more.
func TestWhatIsSaidAtEachStage(t *testing.T) {
	for _, test := range []struct {
		story   problem.Kind
		numbers []int
		kind    picture.Kind
		said    [4]string // at each stage
	}{
		{problem.AddToResult, []int{8, 6}, picture.BarModel, [4]string{"bar-model.first-part", "bar-model.two", "bar-model.two", "bar-model.two"}},
		{problem.TogetherAddend, []int{6, 8}, picture.BarModel, [4]string{"bar-model.first-whole", "bar-model.two", "bar-model.two", "bar-model.two"}},
		{problem.TogetherThree, []int{8, 4, 2}, picture.BarModel, [4]string{"bar-model.first-part", "bar-model.three", "bar-model.three", "bar-model.three"}},
		{problem.TakeFromResult, []int{13, 4}, picture.BarModel, [4]string{"bar-model.first-whole", "bar-model.two", "bar-model.two", "bar-model.two"}},
		{problem.TakeFromResult, []int{13, 4}, picture.BaseTen, [4]string{"blocks.first-whole", "blocks.crossed-traded", "blocks.crossed-traded", "blocks.crossed-traded"}},
		{problem.AddThenAdd, []int{43, 22, 14}, picture.BarModel, [4]string{"bar-model.first-part", "bar-model.join-join", "bar-model.join-join", "bar-model.join-join"}},
		{problem.AddThenTake, []int{8, 6, 5}, picture.BarModel, [4]string{"bar-model.first-part", "bar-model.join-take", "bar-model.join-take", "bar-model.join-take"}},
		{problem.TakeThenAdd, []int{61, 22, 34}, picture.BarModel, [4]string{"bar-model.first-whole", "bar-model.take-join", "bar-model.take-join", "bar-model.take-join"}},
		{problem.TakeThenTake, []int{61, 22, 4}, picture.BarModel, [4]string{"bar-model.first-whole", "bar-model.take-take", "bar-model.take-take", "bar-model.take-take"}},
		{problem.AddToResult, []int{8, 6}, picture.NumberLine, [4]string{"number-line.first", "number-line.hops", "number-line.hops", "number-line.hops"}},
		{problem.AddToStart, []int{8, 6}, picture.NumberLine, [4]string{"number-line.hops", "number-line.hops", "number-line.hops", "number-line.hops"}},
		{problem.TakeFromResult, []int{13, 4}, picture.Drawing, [4]string{"drawing.first-whole", "drawing.crossed", "drawing.crossed", "drawing.crossed"}},
	} {
		p, err := problem.New(test.story, test.numbers...)
		if err != nil {
			t.Fatal(err)
		}
		for i, stage := range picture.Stages() {
			pic, err := picture.OfProblem(p, test.kind, stage)
			if err != nil {
				t.Fatal(err)
			}
			if got := pic.Describe().ID; got != "picture."+test.said[i] {
				t.Errorf("%v as %v, stage %d: want %s said, got %s", test.story, test.kind, stage, test.said[i], got)
			}
		}
	}
}

// A row is as high as what stands in it: nothing hangs into what is below, and where more
// lines are drawn than usual no room is left over.
func TestBlocksHaveTheirRoom(t *testing.T) {
	for _, n := range [][2]int{{68, 23}, {20, 5}, {21, 5}, {25, 6}, {26, 9}, {28, 9}, {209, 150}, {210, 150}, {290, 195}, {305, 178}, {315, 178}, {345, 167}, {1000, 1}} {
		p, err := problem.New(problem.TakeFromResult, n[0], n[1])
		if err != nil {
			t.Fatal(err)
		}
		pic, err := picture.OfProblem(p, picture.BaseTen, picture.Solved)
		if err != nil {
			t.Fatal(err)
		}
		const legend = 36 // the line below, which says what is struck out
		drawing := drawn(pic)
		lowest := 0
		for _, class := range []string{"hundred", "ten", "one"} {
			for _, a := range shapes(t, drawing, class) {
				lowest = max(lowest, a.y2)
			}
		}
		room := pic.Figure().Height - legend - lowest
		traded := strings.Contains(drawing, "opened")
		if room < 2 || traded && room > 20 {
			t.Errorf("%d - %d: %d units are left below the blocks", n[0], n[1], room)
		}
		if strings.Contains(drawing, "underline") {
			t.Errorf("%d - %d: a line as above a total, and there is none", n[0], n[1])
		}
	}
	sum, err := problem.New(problem.AddToResult, 56, 37)
	if err != nil {
		t.Fatal(err)
	}
	pic, err := picture.OfProblem(sum, picture.BaseTen, picture.Solved)
	if err != nil {
		t.Fatal(err)
	}
	if got := strings.Count(drawn(pic), `class="underline"`); got != 1 {
		t.Errorf("56 + 37: want one line above the whole, got %d", got)
	}
}
