package problem

import (
	"errors"
	"slices"
	"testing"
)

// pebbles is a heap counted one by one; it knows nothing of the engine.
type pebbles []struct{}

func heap(n int) pebbles { return make(pebbles, n) }

// same matches the heaps' pebbles one to one.
func (p pebbles) same(q pebbles) bool {
	for len(p) > 0 && len(q) > 0 {
		p, q = p[1:], q[1:]
	}
	return len(p) == 0 && len(q) == 0
}

func (p pebbles) with(q pebbles) pebbles {
	for len(q) > 0 {
		p, q = append(p, struct{}{}), q[1:]
	}
	return p
}

// without takes q away; it reports false when there are too few.
func (p pebbles) without(q pebbles) (pebbles, bool) {
	for len(q) > 0 {
		if len(p) == 0 {
			return nil, false
		}
		p, q = p[1:], q[1:]
	}
	return p, true
}

// counted works a side of an equation out with pebbles.
func counted(t *testing.T, e Expression) pebbles {
	t.Helper()
	var p pebbles
	for _, term := range e {
		if term.Op == Plus {
			p = p.with(heap(term.Value))
			continue
		}
		var ok bool
		if p, ok = p.without(heap(term.Value)); !ok {
			t.Errorf("%v takes away more than there is", e)
		}
	}
	return p
}

func checkTrue(t *testing.T, q Equation) {
	t.Helper()
	first := counted(t, q.Sides()[0])
	for _, s := range q.Sides()[1:] {
		if !counted(t, s).same(first) {
			t.Errorf("%v is not true", q)
		}
	}
	if q.Solved().Asks() {
		t.Errorf("%v is solved and still asks", q)
	}
}

// Every one-step problem to 20 has true equations, by counting pebbles, with as
// many unknowns as its cell of the table has.
func TestEquationsAreTrueByCounting(t *testing.T) {
	for _, kind := range Kinds() {
		for x := 0; x <= 20; x++ {
			for y := 0; y <= 20; y++ {
				p, err := New(kind, x, y)
				if err != nil {
					continue
				}
				for _, q := range append(p.Equations(), p.Equation(), p.Solving()) {
					checkTrue(t, q)
					if !q.Asks() {
						t.Errorf("%v: %v asks nothing", kind, q)
					}
				}
			}
		}
	}
}

// The whole space of one-step problems within 100: the answer is the quantity
// that is asked, found again by the calculation, and the fact's parts make its
// whole. There are 5,151 ordered pairs of parts with a whole up to 100, in each
// of 15 kinds.
func TestEveryProblemWithin100(t *testing.T) {
	problems := 0
	for _, kind := range Kinds() {
		if kind.Steps() != nil || kind == TogetherThree || kind == TogetherFour {
			continue
		}
		for x := 0; x <= 100; x++ {
			for y := 0; y <= 100; y++ {
				p, err := New(kind, x, y)
				if err != nil || p.Calculation().Largest() > 100 {
					continue
				}
				problems++
				checkProblem(t, p)
			}
		}
	}
	if want := 15 * 5151; problems != want {
		t.Errorf("%d problems within 100, want %d", problems, want)
	}
}

func checkProblem(t *testing.T, p Problem) {
	t.Helper()
	fact := p.Fact()
	if fact.Parts[0].Value+fact.Parts[1].Value != fact.Whole.Value {
		t.Errorf("%v %v: parts %v do not make %v", p.Kind(), p.Numbers(), fact.Parts, fact.Whole)
	}
	if p.Kind() == TogetherBoth {
		if n := len(p.Pairs()); n != fact.Whole.Value+1 {
			t.Errorf("both addends of %d: %d pairs, want %d", fact.Whole.Value, n, fact.Whole.Value+1)
		}
		return
	}
	if p.Calculation().Value() != p.Answer() || p.Asked()[0].Value != p.Answer() {
		t.Errorf("%v %v: answer %d, calculation %v", p.Kind(), p.Numbers(), p.Answer(), p.Calculation())
	}
	if len(p.Given()) != 2 {
		t.Errorf("%v %v: told %v, want two quantities", p.Kind(), p.Numbers(), p.Given())
	}
	for _, told := range p.Given() { // the working uses what the story tells, nothing else
		if !slices.Contains(p.Calculation().Numbers, told.Value) {
			t.Errorf("%v %v: %v works without %v", p.Kind(), p.Numbers(), p.Calculation(), told)
		}
	}
}

// Numbers of pairs for both addends unknown: 5 has 6, 10 has 11 (counted).
func TestPairs(t *testing.T) {
	for total, want := range map[int]int{0: 1, 5: 6, 10: 11, 20: 21} {
		if got := len(mustNew(t, TogetherBoth, 0, total).Pairs()); got != want {
			t.Errorf("%d has %d pairs, want %d", total, got, want)
		}
	}
	if mustNew(t, TogetherBoth, 2, 3).SolvingDiffers() {
		t.Error("both addends unknown: any pair is right, and no other equation finds it")
	}
	if got := mustNew(t, TogetherTotal, 2, 3).Pairs(); got != nil {
		t.Errorf("one unknown has pairs %v, want none", got)
	}
}

func TestChains(t *testing.T) {
	for _, row := range []struct {
		kind        Kind
		numbers     []int
		first, last string
		whole       string
		answer      int
	}{
		{AddThenAdd, []int{8, 5, 4}, "8 + 5 = ?", "13 + 4 = ?", "8 + 5 + 4 = ?", 17},
		{AddThenTake, []int{8, 5, 4}, "8 + 5 = ?", "13 - 4 = ?", "8 + 5 - 4 = ?", 9},
		{TakeThenAdd, []int{9, 5, 3}, "9 - 5 = ?", "4 + 3 = ?", "9 - 5 + 3 = ?", 7},
		{TakeThenTake, []int{15, 6, 4}, "15 - 6 = ?", "9 - 4 = ?", "15 - 6 - 4 = ?", 5},
		{TogetherThenTake, []int{7, 6, 5}, "7 + 6 = ?", "13 - 5 = ?", "7 + 6 - 5 = ?", 8},
		{BiggerThenTogether, []int{6, 3}, "6 + 3 = ?", "6 + 9 = ?", "6 + 6 + 3 = ?", 15},
	} {
		p := mustNew(t, row.kind, row.numbers...)
		steps := p.Steps()
		if len(steps) != 2 || steps[0].Solving().String() != row.first || steps[1].Solving().String() != row.last {
			t.Errorf("%v %v: steps %v, want %q then %q", row.kind, row.numbers, steps, row.first, row.last)
		}
		if got := p.Equation().String(); got != row.whole {
			t.Errorf("%v %v: equation %q, want %q", row.kind, row.numbers, got, row.whole)
		}
		if p.SolvingDiffers() {
			t.Errorf("%v %v: a chain is solved by its steps, not by another equation", row.kind, row.numbers)
		}
		if p.Answer() != row.answer || steps[1].Answer() != row.answer {
			t.Errorf("%v %v: answer %d and %d, want %d", row.kind, row.numbers, p.Answer(), steps[1].Answer(), row.answer)
		}
		checkTrue(t, p.Equation())
	}
}

func TestThreeAddends(t *testing.T) {
	p := mustNew(t, TogetherThree, 2, 6, 4) // printed in CCSS-M 2010, 1.OA.B.3: 2 + 6 + 4 = 12
	if p.Equation().String() != "2 + 6 + 4 = ?" || p.Answer() != 12 || len(p.Fact().Parts) != 3 {
		t.Errorf("got %v, answer %d, %d parts; want 2 + 6 + 4 = ?, 12, three parts", p.Equation(), p.Answer(), len(p.Fact().Parts))
	}
}

// Up to four two-digit numbers are added in grade 2 (CCSS-M 2010, 2.NBT.B.6).
func TestFourAddends(t *testing.T) {
	p := mustNew(t, TogetherFour, 24, 17, 36, 13)
	if p.Equation().String() != "24 + 17 + 36 + 13 = ?" || p.Answer() != 90 || len(p.Fact().Parts) != 4 || p.Kind().FirstGrade() != 2 {
		t.Errorf("got %v, answer %d, %d parts", p.Equation(), p.Answer(), len(p.Fact().Parts))
	}
}

func TestNewRefuses(t *testing.T) {
	for _, row := range []struct {
		kind    Kind
		numbers []int
		why     string
	}{
		{TakeFromResult, []int{4, 9}, "more is taken than there is"},
		{DifferenceMore, []int{4, 9}, "the bigger amount is smaller"},
		{SmallerFewer, []int{4, 9}, "the smaller amount would be below zero"},
		{AddToResult, []int{-1, 4}, "a number below zero"},
		{AddToResult, []int{1, 2, 3}, "too many numbers"},
		{TogetherThree, []int{1, 2}, "too few numbers"},
		{TogetherFour, []int{1, 2, 3}, "too few numbers"},
		{TakeThenAdd, []int{4, 6, 9}, "the first step goes below zero"},
		{TakeThenTake, []int{9, 4, 6}, "the second step goes below zero"},
		{0, []int{1, 2}, "no kind"},
		{lastKind + 1, []int{1, 2}, "no kind"},
	} {
		if p, err := New(row.kind, row.numbers...); !errors.Is(err, ErrNumbers) {
			t.Errorf("%v %v: got %v, %v; want an error, because %s", row.kind, row.numbers, p, err, row.why)
		}
	}
}
