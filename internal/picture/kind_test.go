package picture

import (
	"slices"
	"testing"

	"homebuild/internal/problem"
)

// amountsOf are all numbers that a picture of a story shows, in any order.
func amountsOf(t *testing.T, p Picture) []amount {
	t.Helper()
	switch p := p.(type) {
	case bar:
		return append([]amount{p.whole}, p.parts...)
	case bond:
		return append([]amount{p.whole}, p.parts...)
	case dots:
		return append([]amount{p.whole}, p.parts...)
	case comparison:
		list := []amount{p.bigger, p.smaller, p.difference}
		if p.both != nil {
			list = append(list, *p.both)
		}
		return list
	case rows:
		return amountsOf(t, p.comparison)
	case steps:
		list := append(slices.Clone(p.parts), p.above.amount)
		if p.again != nil {
			return append(list, p.again...)
		}
		for _, b := range p.below {
			list = append(list, b.amount)
		}
		return list
	case line:
		return slices.Concat(p.stops, p.hops)
	case frames:
		list := []amount{p.whole}
		for _, l := range p.labels {
			list = append(list, l.amount)
		}
		return list
	case blocks:
		var list []amount
		for _, r := range p.rows {
			list = append(list, r.amount)
		}
		for _, l := range p.legend {
			list = append(list, l.amount)
		}
		return list
	case columns:
		return append([]amount{p.answer}, p.numbers...)
	}
	t.Fatalf("no amounts for %T", p)
	return nil
}

func count(list []amount, state state) int {
	n := 0
	for _, a := range list {
		if a.state == state {
			n++
		}
	}
	return n
}

// small are the numbers of stories: 0 to 12; in a quick run those beside which a
// picture changes.
func small() []int {
	if testing.Short() {
		return []int{0, 1, 5, 9, 10, 12}
	}
	return []int{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12}
}

// stories runs over every kind of problem with small numbers.
func stories(do func(p problem.Problem)) {
	for _, k := range problem.Kinds() {
		for _, a := range small() {
			for _, b := range small() {
				if p, err := problem.New(k, a, b); err == nil {
					do(p)
				}
				for c := 0; c <= 12; c += 3 {
					if p, err := problem.New(k, a, b, c); err == nil {
						do(p)
					}
					if p, err := problem.New(k, a, b, c, 7); err == nil {
						do(p)
					}
				}
			}
		}
	}
}

func TestFitsKeepsItsWord(t *testing.T) {
	drawn := map[Kind]int{}
	stories(func(p problem.Problem) {
		for _, kind := range Kinds() {
			for _, stage := range Stages() {
				_, err := OfProblem(p, kind, stage)
				if Fits(kind, p) != (err == nil) {
					t.Fatalf("%v of %v as %v: fits %v, error %v", p.Kind(), p.Numbers(), kind, Fits(kind, p), err)
				}
				if err == nil {
					drawn[kind]++
				}
			}
		}
	})
	for _, kind := range Kinds() {
		if drawn[kind] == 0 {
			t.Errorf("no story was ever drawn as %v", kind)
		}
	}
}

func TestFits(t *testing.T) {
	for _, tt := range []struct {
		kind    Kind
		story   problem.Kind
		numbers []int
		want    bool
		why     string
	}{
		{BarModel, problem.TogetherTotal, []int{500, 500}, true, "bars go to a thousand"},
		{BarModel, problem.TogetherTotal, []int{501, 500}, false, "and no further"},
		{TenFrame, problem.TogetherTotal, []int{10, 10}, true, "two ten frames hold 20"},
		{TenFrame, problem.TogetherTotal, []int{10, 11}, false, "and no more"},
		{TenFrame, problem.TakeFromResult, []int{21, 9}, false, "the whole must fit, not the answer"},
		{Drawing, problem.DifferenceMore, []int{20, 3}, true, "rows of dots to 20"},
		{NumberLine, problem.TogetherBoth, []int{3, 4}, false, "a line shows one way to split, not all"},
		{NumberLine, problem.AddToResult, []int{8, 0}, false, "a hop of nothing cannot be seen"},
		{NumberLine, problem.TakeThenAdd, []int{10, 4, 4}, false, "two numbers at one place cannot be read"},
		{NumberBond, problem.AddThenTake, []int{8, 6, 5}, false, "one bond has one whole"},
		{BarModel, problem.TogetherFour, []int{24, 17, 36, 13}, true, "four parts of a bar"},
		{BaseTen, problem.TogetherFour, []int{24, 17, 36, 13}, false, "four parts need a bar"},
		{BaseTen, problem.TogetherTotal, []int{4, 5}, false, "no tens to draw"},
		{BaseTen, problem.TogetherTotal, []int{4, 6}, true, "a ten in the whole"},
		{Columns, problem.TogetherTotal, []int{4, 5}, false, "no tens to put in a column"},
		{Columns, problem.TogetherTotal, []int{4, 6}, true, "a ten in the answer"},
		{0, problem.TogetherTotal, []int{4, 5}, false, "no kind of picture"},
	} {
		p, err := problem.New(tt.story, tt.numbers...)
		if err != nil {
			t.Fatal(err)
		}
		if got := Fits(tt.kind, p); got != tt.want {
			t.Errorf("%s: Fits(%v, %v of %v): want %v, got %v", tt.why, tt.kind, tt.story, tt.numbers, tt.want, got)
		}
	}
}

func TestStages(t *testing.T) {
	stories(func(p problem.Problem) {
		for _, kind := range Kinds() {
			if !Fits(kind, p) {
				continue
			}
			checkStages(t, p, kind)
		}
	})
}

// checkStages wants a picture that grows: one number first, the question only
// when it is open, the answer only when it is solved.
func checkStages(t *testing.T, p problem.Problem, kind Kind) {
	t.Helper()
	at := func(stage Stage) []amount {
		picture, err := OfProblem(p, kind, stage)
		if err != nil {
			t.Fatal(err)
		}
		return amountsOf(t, picture)
	}
	name := func() string { return p.Kind().String() + " as " + kind.String() }
	if got := count(at(FirstPart), known); got != 1 {
		t.Fatalf("%s of %v: the first part shows %d numbers, want 1", name(), p.Numbers(), got)
	}
	for _, stage := range []Stage{FirstPart, SecondPart} {
		if got := count(at(stage), asked) + count(at(stage), found); got != 0 {
			t.Fatalf("%s of %v: stage %d asks or answers %d times before the question", name(), p.Numbers(), stage, got)
		}
	}
	open, solved := at(Open), at(Solved)
	if got, want := count(open, asked), len(p.Asked()); got != want {
		t.Fatalf("%s of %v: %d question marks, want %d", name(), p.Numbers(), got, want)
	}
	if count(open, found) != 0 || count(solved, asked) != 0 || count(solved, empty) != 0 {
		t.Fatalf("%s of %v: open %v, solved %v", name(), p.Numbers(), open, solved)
	}
	for _, a := range solved {
		if a.state == found && a.n == p.Answer() {
			return
		}
	}
	t.Fatalf("%s of %v: solved %v lacks the answer %d", name(), p.Numbers(), solved, p.Answer())
}

// A story that asks for a part tells the whole first (the frames of
// internal/story), and so the whole is drawn first.
func TestWholeIsDrawnFirst(t *testing.T) {
	p, err := problem.New(problem.TogetherAddend, 3, 12)
	if err != nil {
		t.Fatal(err)
	}
	for _, kind := range Kinds() {
		if !Fits(kind, p) {
			continue
		}
		picture, err := OfProblem(p, kind, FirstPart)
		if err != nil {
			t.Fatal(err)
		}
		for _, a := range amountsOf(t, picture) {
			if a.written() != (a.n == 15) {
				t.Errorf("%v: want 15 and nothing else at first, got %v", kind, amountsOf(t, picture))
			}
		}
	}
}
