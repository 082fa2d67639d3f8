package problem

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// Op is what a term does to the terms before it.
type Op uint8

const (
	Plus  Op = iota + 1 // +
	Minus               // -
)

// String gives the ASCII sign, for logs and tests; pages print their own.
func (o Op) String() string {
	if o == Minus {
		return "-"
	}
	return "+"
}

// Inverse undoes o.
func (o Op) Inverse() Op {
	if o == Minus {
		return Plus
	}
	return Minus
}

// Term is one number of an expression. The first term's Op is Plus.
type Term struct {
	Op      Op
	Value   int  // the true value, also when it is the unknown
	Unknown bool // shown as "?" until the equation is solved
}

// Expression is a chain of terms worked from left to right.
type Expression []Term

// Number is the expression of a single known number.
func Number(n int) Expression { return Expression{{Op: Plus, Value: n}} }

// Sum adds known numbers: Sum(8, 2, 4) is 8 + 2 + 4.
func Sum(numbers ...int) Expression {
	e := make(Expression, len(numbers))
	for i, n := range numbers {
		e[i] = Term{Op: Plus, Value: n}
	}
	return e
}

// Difference takes the later numbers from the first: Difference(13, 3, 1) is
// 13 - 3 - 1.
func Difference(first int, rest ...int) Expression {
	e := append(make(Expression, 0, 1+len(rest)), Term{Op: Plus, Value: first})
	for _, n := range rest {
		e = append(e, Term{Op: Minus, Value: n})
	}
	return e
}

// Asking returns a copy of e whose terms at the given places are unknown.
func (e Expression) Asking(places ...int) Expression {
	c := append(Expression(nil), e...)
	for _, i := range places {
		c[i].Unknown = true
	}
	return c
}

// Value is what the expression comes to.
func (e Expression) Value() int {
	total := 0
	for _, t := range e {
		if t.Op == Minus {
			total -= t.Value
		} else {
			total += t.Value
		}
	}
	return total
}

// Asks reports whether a term of e is unknown.
func (e Expression) Asks() bool {
	return slices.ContainsFunc(e, func(t Term) bool { return t.Unknown })
}

// Equation is two or more expressions that are the same number. A chain of
// three or more shows a strategy: 8 + 6 = 8 + 2 + 4 = 10 + 4 = 14.
type Equation struct{ sides []Expression }

// Equal makes an equation. Sides that differ, or fewer than two, are a bug of
// the caller and panic: a false equation must not exist.
func Equal(sides ...Expression) Equation {
	if len(sides) < 2 {
		panic("problem: an equation needs two sides")
	}
	for _, s := range sides[1:] {
		if s.Value() != sides[0].Value() {
			panic(fmt.Sprintf("problem: %v is not %v", Equation{sides}, sides[0].Value()))
		}
	}
	return Equation{sides: sides}
}

// Alone is a single expression in the place of an equation, for sentences that
// show "8 + 2" before anything is said about what it comes to.
func Alone(e Expression) Equation { return Equation{sides: []Expression{e}} }

// Sides returns the expressions from left to right; the caller must not
// change them.
func (q Equation) Sides() []Expression { return q.sides }

// IsZero reports whether q is the zero Equation, which says nothing.
func (q Equation) IsZero() bool { return len(q.sides) == 0 }

// Asks reports whether q has an unknown.
func (q Equation) Asks() bool { return slices.ContainsFunc(q.sides, Expression.Asks) }

// Solved returns q with every unknown filled in.
func (q Equation) Solved() Equation {
	sides := make([]Expression, len(q.sides))
	for i, s := range q.sides {
		c := append(Expression(nil), s...)
		for j := range c {
			c[j].Unknown = false
		}
		sides[i] = c
	}
	return Equation{sides: sides}
}

// String writes the equation in ASCII with European digits, as the published
// tables do: "8 + ? = 14".
func (q Equation) String() string {
	var b strings.Builder
	for i, s := range q.sides {
		if i > 0 {
			b.WriteString(" = ")
		}
		b.WriteString(s.String())
	}
	return b.String()
}

// String writes the expression in ASCII: "8 + 2 + 4".
func (e Expression) String() string {
	var b strings.Builder
	for i, t := range e {
		if i > 0 {
			b.WriteString(" " + t.Op.String() + " ")
		}
		if t.Unknown {
			b.WriteString("?")
		} else {
			b.WriteString(strconv.Itoa(t.Value))
		}
	}
	return b.String()
}
