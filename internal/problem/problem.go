package problem

import (
	"errors"
	"fmt"
	"slices"
)

// Largest is the largest number of any story, picture, target or plural form. The
// published standards for kindergarten to grade 3 add and subtract within it
// (CCSS-M 2010, 3.NBT.A.2).
const Largest = 1000

// RangeOf is the range that a number belongs to: within 10, 20, 100 or 1000, as the
// published standards set the ranges (CCSS-M 2010, K.OA.A.2, 1.OA.A.1, 2.OA.A.1,
// 2.NBT.B.7). Beyond, it is the number itself.
func RangeOf(n int) int {
	for _, top := range []int{10, 20, 100, Largest} {
		if n <= top {
			return top
		}
	}
	return n
}

// Role names a quantity by the part it plays. It is also the name of its
// place in a story sentence: "{{.A}} has {{.Start}}."
type Role string

const (
	RoleStart      Role = "Start"
	RoleChange     Role = "Change"
	RoleResult     Role = "Result"
	RoleFirst      Role = "First"
	RoleSecond     Role = "Second"
	RoleThird      Role = "Third"
	RoleFourth     Role = "Fourth"
	RoleTotal      Role = "Total"
	RoleBigger     Role = "Bigger"
	RoleSmaller    Role = "Smaller"
	RoleDifference Role = "Difference"
	RoleLater      Role = "Later" // the change of a chain's second step
)

// Quantity is a number of the story with its role.
type Quantity struct {
	Role    Role
	Value   int
	Unknown bool // the story asks for it
}

// Calculation is what finds an answer: numbers joined by one operation.
type Calculation struct {
	Op      Op
	Numbers []int // two to four; for Minus the first is the whole
}

// Expression writes the calculation down.
func (c Calculation) Expression() Expression {
	if c.Op == Minus {
		return Difference(c.Numbers[0], c.Numbers[1:]...)
	}
	return Sum(c.Numbers...)
}

// Value is what the calculation comes to. It is asked for so often that it makes no
// expression first.
func (c Calculation) Value() int {
	value := 0
	for i, n := range c.Numbers {
		if c.Op == Minus && i > 0 {
			n = -n
		}
		value += n
	}
	return value
}

// String is the expression in ASCII.
func (c Calculation) String() string { return c.Expression().String() }

// Largest is the largest number that occurs, the answer included.
func (c Calculation) Largest() int {
	most := c.Value()
	for _, n := range c.Numbers {
		most = max(most, n)
	}
	return most
}

// mostNumbers is how many numbers the longest story tells.
const mostNumbers = 4

// Problem is a kind with its quantities. Make one with New.
type Problem struct {
	kind    Kind
	numbers [mostNumbers]int // as given to New
	count   int
}

// ErrNumbers says that the numbers given to New do not make a problem of the
// kind: wrong count, a negative number, or a part bigger than its whole.
var ErrNumbers = errors.New("numbers do not fit the kind")

// New makes a problem from its true quantities, in the order of the published
// table:
//
//	add to, take from           start, change
//	put together, take apart    part, part (the known part first), up to two more
//	compare, difference         bigger, smaller
//	compare, bigger             smaller, difference
//	compare, smaller            bigger, difference
//	chains                      first step's two, then the later change
//	bigger then together        smaller, difference
//
// The error wraps ErrNumbers.
func New(kind Kind, numbers ...int) (Problem, error) {
	p := Problem{kind: kind, count: len(numbers)}
	if !kind.Valid() {
		return Problem{}, fmt.Errorf("%w: kind %d is unknown", ErrNumbers, kind)
	}
	if want := kind.Numbers(); len(numbers) != want {
		return Problem{}, fmt.Errorf("%w: %v needs %d numbers, got %d", ErrNumbers, kind, want, len(numbers))
	}
	copy(p.numbers[:], numbers)
	for _, q := range p.Quantities() {
		if q.Value < 0 {
			return Problem{}, fmt.Errorf("%w: %v of %v: %v would be %d", ErrNumbers, kind, numbers, q.Role, q.Value)
		}
	}
	for _, s := range p.Steps() {
		if s.Answer() < 0 {
			return Problem{}, fmt.Errorf("%w: %v of %v goes below zero", ErrNumbers, kind, numbers)
		}
	}
	return p, nil
}

// Numbers is how many numbers New wants for the kind.
func (k Kind) Numbers() int {
	switch k {
	case TogetherFour:
		return 4
	case TogetherThree, AddThenAdd, AddThenTake, TakeThenAdd, TakeThenTake, TogetherThenTake:
		return 3
	}
	return 2
}

// Kind is the problem's cell of the table.
func (p Problem) Kind() Kind { return p.kind }

// Numbers returns the numbers that New was given.
func (p Problem) Numbers() []int { return append([]int(nil), p.numbers[:p.count]...) }

// Quantities lists every quantity of the problem in the order in which the
// story meets them; the unknown ones are marked.
func (p Problem) Quantities() []Quantity {
	x, y, z := p.numbers[0], p.numbers[1], p.numbers[2]
	u := p.kind.Unknown()
	three := func(a, b, c Role, va, vb, vc int, ua, ub, uc bool) []Quantity {
		return []Quantity{{a, va, ua}, {b, vb, ub}, {c, vc, uc}}
	}
	switch p.kind {
	case TogetherThree:
		return []Quantity{{RoleFirst, x, false}, {RoleSecond, y, false}, {RoleThird, z, false}, {RoleTotal, x + y + z, true}}
	case TogetherFour:
		last := p.numbers[3]
		return []Quantity{{RoleFirst, x, false}, {RoleSecond, y, false}, {RoleThird, z, false}, {RoleFourth, last, false}, {RoleTotal, x + y + z + last, true}}
	case AddThenAdd:
		return []Quantity{{RoleStart, x, false}, {RoleChange, y, false}, {RoleLater, z, false}, {RoleResult, x + y + z, true}}
	case AddThenTake:
		return []Quantity{{RoleStart, x, false}, {RoleChange, y, false}, {RoleLater, z, false}, {RoleResult, x + y - z, true}}
	case TakeThenAdd:
		return []Quantity{{RoleStart, x, false}, {RoleChange, y, false}, {RoleLater, z, false}, {RoleResult, x - y + z, true}}
	case TakeThenTake:
		return []Quantity{{RoleStart, x, false}, {RoleChange, y, false}, {RoleLater, z, false}, {RoleResult, x - y - z, true}}
	case TogetherThenTake:
		return []Quantity{{RoleFirst, x, false}, {RoleSecond, y, false}, {RoleLater, z, false}, {RoleResult, x + y - z, true}}
	case BiggerThenTogether:
		return []Quantity{{RoleSmaller, x, false}, {RoleDifference, y, false}, {RoleTotal, x + x + y, true}}
	}
	switch p.kind.Situation() {
	case AddTo:
		return three(RoleStart, RoleChange, RoleResult, x, y, x+y, u == Start, u == Change, u == Result)
	case TakeFrom:
		return three(RoleStart, RoleChange, RoleResult, x, y, x-y, u == Start, u == Change, u == Result)
	case PutTogether:
		both := u == BothAddends
		return three(RoleFirst, RoleSecond, RoleTotal, x, y, x+y, both, both || u == Addend, u == Total)
	}
	bigger, smaller, difference := p.compared()
	return three(RoleBigger, RoleSmaller, RoleDifference, bigger, smaller, difference,
		u == Bigger, u == Smaller, u == DifferenceUnknown)
}

// compared gives the three quantities of a Compare problem.
func (p Problem) compared() (bigger, smaller, difference int) {
	x, y := p.numbers[0], p.numbers[1]
	switch p.kind.Unknown() {
	case Bigger:
		return x + y, x, y
	case Smaller:
		return x, x - y, y
	}
	return x, y, x - y
}

// Given lists the quantities that the story gives, in the story's order.
func (p Problem) Given() []Quantity { return p.pick(false) }

// Asked lists the quantities that the story asks for: one, or two for both
// addends unknown.
func (p Problem) Asked() []Quantity { return p.pick(true) }

func (p Problem) pick(unknown bool) []Quantity {
	var out []Quantity
	for _, q := range p.Quantities() {
		if q.Unknown == unknown {
			out = append(out, q)
		}
	}
	return out
}

// Answer is the number that is asked for. For both addends unknown it is the
// first part of the chosen pair; see Answers.
func (p Problem) Answer() int {
	all := p.Quantities()
	return all[slices.IndexFunc(all, func(q Quantity) bool { return q.Unknown })].Value
}

// Pair is one way to take a total apart.
type Pair struct{ First, Second int }

// Pairs lists every right answer of a both-addends-unknown problem, n + 1
// ordered pairs for a total of n; nil for other kinds.
func (p Problem) Pairs() []Pair {
	if p.kind != TogetherBoth {
		return nil
	}
	total := p.numbers[0] + p.numbers[1]
	pairs := make([]Pair, 0, total+1)
	for a := 0; a <= total; a++ {
		pairs = append(pairs, Pair{a, total - a})
	}
	return pairs
}

// Steps returns the one-step problems that a chain is made of, the second
// using the first's answer; a one-step problem returns itself.
func (p Problem) Steps() []Problem {
	steps := p.kind.Steps()
	if steps == nil {
		return []Problem{p}
	}
	first := Problem{kind: steps[0], numbers: [mostNumbers]int{p.numbers[0], p.numbers[1]}, count: 2}
	second := Problem{kind: steps[1], numbers: [mostNumbers]int{first.Answer(), p.numbers[2]}, count: 2}
	if p.kind == BiggerThenTogether {
		second.numbers = [mostNumbers]int{p.numbers[0], first.Answer()}
	}
	return []Problem{first, second}
}

// Calculation is the one that finds the answer. For a chain it is that of the
// last step; for both addends unknown, the sum of the chosen pair.
func (p Problem) Calculation() Calculation {
	steps := p.Steps()
	last := steps[len(steps)-1]
	x, y := last.numbers[0], last.numbers[1]
	switch last.kind {
	case TogetherThree, TogetherFour:
		return Calculation{Plus, last.Numbers()}
	case AddToChange, TogetherAddend:
		return Calculation{Minus, []int{x + y, x}}
	case AddToStart:
		return Calculation{Minus, []int{x + y, y}}
	case TakeFromResult, DifferenceMore, DifferenceFewer, SmallerMore, SmallerFewer:
		return Calculation{Minus, []int{x, y}}
	case TakeFromChange:
		return Calculation{Minus, []int{x, x - y}}
	case TakeFromStart:
		return Calculation{Plus, []int{x - y, y}}
	}
	return Calculation{Plus, []int{x, y}}
}

// Fact is a whole with the two to four parts that make it.
type Fact struct {
	Parts []Quantity
	Whole Quantity
}

// Fact shows the problem as parts and a whole, with the unknown marked: what
// a bar model or a number bond draws. In Compare the bigger amount is the
// whole, the smaller one and the difference are its parts. A chain gives the
// fact of its last step.
func (p Problem) Fact() Fact {
	steps := p.Steps()
	last := steps[len(steps)-1]
	q := last.Quantities()
	switch last.kind.Situation() {
	case TakeFrom:
		return Fact{Parts: []Quantity{q[1], q[2]}, Whole: q[0]}
	case Compare:
		return Fact{Parts: []Quantity{q[1], q[2]}, Whole: q[0]}
	}
	return Fact{Parts: q[:len(q)-1], Whole: q[len(q)-1]}
}
