// Package switched holds the changes of command mutate, each behind a switch: where
// the code says a < b, its changed copy says switched.Less(12, a, b), which is a <= b
// in a program that was started for change 12, and a < b in any other. Nothing but
// such copies imports it.
package switched

import (
	"cmp"
	"os"
	"strconv"
)

// Variable is the environment variable with the number of the change to switch on.
// Numbers begin at 1: without it, or at 0, the code is what it was.
const Variable = "MUTATE_CHANGE"

// on is read once: a change is the same for the whole life of a program.
var on = chosen(os.Getenv(Variable))

func chosen(text string) int {
	n, err := strconv.Atoi(text)
	if err != nil {
		return 0
	}
	return n
}

// Integer is what % is defined on.
type Integer interface {
	~int | ~int8 | ~int16 | ~int32 | ~int64 | ~uint | ~uint8 | ~uint16 | ~uint32 | ~uint64 | ~uintptr
}

// Number is what - is defined on. Of a type that is none, such as text, the change of
// + to - does not compile.
type Number interface {
	Integer | ~float32 | ~float64 | ~complex64 | ~complex128
}

// Not is a comparison, or its opposite: == and !=, < and >=, > and <=. (Of floating
// numbers that are not a number that is not quite so; a test that has one notices
// either.)
func Not(change int, holds bool) bool { return holds != (on == change) }

// Less is <, or <=.
func Less[T cmp.Ordered](change int, a, b T) bool { return a < b || on == change && a == b }

// LessOrEqual is <=, or <.
func LessOrEqual[T cmp.Ordered](change int, a, b T) bool { return a < b || on != change && a == b }

// Greater is >, or >=.
func Greater[T cmp.Ordered](change int, a, b T) bool { return a > b || on == change && a == b }

// GreaterOrEqual is >=, or >.
func GreaterOrEqual[T cmp.Ordered](change int, a, b T) bool { return a > b || on != change && a == b }

// Add is +, or -.
func Add[T Number](change int, a, b T) T {
	if on == change {
		return a - b
	}
	return a + b
}

// Subtract is -, or +.
func Subtract[T Number](change int, a, b T) T {
	if on == change {
		return a + b
	}
	return a - b
}

// Multiply is *, or /.
func Multiply[T Number](change int, a, b T) T {
	if on == change {
		return a / b
	}
	return a * b
}

// Divide is /, or *.
func Divide[T Number](change int, a, b T) T {
	if on == change {
		return a * b
	}
	return a / b
}

// Remainder is %, or *.
func Remainder[T Integer](change int, a, b T) T {
	if on == change {
		return a * b
	}
	return a % b
}

// Negate is - before a number, or +.
func Negate[T Number](change int, a T) T {
	if on == change {
		return a
	}
	return -a
}

// One is what ++ adds and -- takes away: 1, or -1. It is an int: ++ of another type has
// no switch.
func One(change int) int {
	if on == change {
		return -1
	}
	return 1
}
