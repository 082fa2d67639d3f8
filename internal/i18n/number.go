package i18n

import (
	"strconv"
	"unicode/utf8"

	"homebuild/internal/problem"
)

// Notation is how a language writes numbers and equations.
type Notation struct {
	digits       digits
	equationsRTL bool
}

// EquationsRightToLeft reports whether the classes of this language write
// equations from right to left; most right-to-left languages keep the order
// from left to right.
func (n Notation) EquationsRightToLeft() bool { return n.equationsRTL }

// digits are the ten digits that a language's pages use, by their zero.
type digits rune

// digitSets are CLDR's numbering systems that a file may state.
var digitSets = map[string]struct {
	zero    rune
	scripts []string // empty: any script
}{
	"latn":    {zero: '0'},
	"arab":    {zero: '\u0660', scripts: []string{"Arab"}},
	"arabext": {zero: '\u06f0', scripts: []string{"Arab"}},
	"deva":    {zero: '\u0966', scripts: []string{"Deva"}},
}

var digitNames = []string{"latn", "arab", "arabext", "deva"}

// append writes a number that is not negative.
func (d digits) append(b []byte, n int) []byte {
	if d == '0' {
		return strconv.AppendInt(b, int64(n), 10)
	}
	var ascii [20]byte
	for _, c := range strconv.AppendInt(ascii[:0], int64(n), 10) {
		if '0' <= c && c <= '9' {
			b = utf8.AppendRune(b, rune(d)+rune(c-'0'))
		} else {
			b = append(b, c)
		}
	}
	return b
}

// all are the ten digits in their order.
func (d digits) all() string {
	var b []byte
	for n := range 10 {
		b = d.append(b, n)
	}
	return string(b)
}

func (d digits) write(n int) string {
	if d == '0' {
		return strconv.Itoa(n) // which keeps the small ones
	}
	var b [32]byte
	return string(d.append(b[:0], n))
}

// Number writes a whole number in the language's digits, without marks between
// thousands: school numbers end at 1000.
func (n Notation) Number(number int) string { return n.digits.write(number) }

const (
	minusSign          = "\u2212"
	leftToRightIsolate = "\u2066"
	rightToLeftIsolate = "\u2067"
	popIsolate         = "\u2069"
)

// Equation writes an equation in the language's digits, with a real minus sign
// and "?" where the unknown stands. The order of the characters is always that
// of reading from the left; a page must isolate it, see EquationsRightToLeft.
func (n Notation) Equation(q problem.Equation) string {
	var short [64]byte // longer than most
	b := short[:0]
	for i, side := range q.Sides() {
		if i > 0 {
			b = append(b, " = "...)
		}
		for j, term := range side {
			if j > 0 {
				b = append(b, sign(term.Op)...)
			}
			if term.Unknown {
				b = append(b, '?')
			} else {
				b = n.digits.append(b, term.Value)
			}
		}
	}
	return string(b)
}

func sign(op problem.Op) string {
	if op == problem.Minus {
		return " " + minusSign + " "
	}
	return " + "
}

func (n Notation) isolate() string {
	if n.equationsRTL {
		return rightToLeftIsolate
	}
	return leftToRightIsolate
}
