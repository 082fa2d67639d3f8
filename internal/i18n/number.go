package i18n

import (
	"strconv"
	"strings"

	"homebuild/internal/problem"
)

// digits are the ten digits that a language's pages use.
type digits [10]string

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

func newDigits(zero rune) digits {
	var d digits
	for i := range d {
		d[i] = string(zero + rune(i))
	}
	return d
}

// write writes a number that is not negative.
func (d *digits) write(n int) string {
	ascii := strconv.Itoa(n)
	if d[0] == "0" {
		return ascii
	}
	var b strings.Builder
	b.Grow(len(ascii) * len(d[0]))
	for _, c := range []byte(ascii) {
		if c < '0' || c > '9' {
			b.WriteByte(c)
			continue
		}
		b.WriteString(d[c-'0'])
	}
	return b.String()
}

// Number writes a whole number in the language's digits, without marks between
// thousands: school numbers end at 1000.
func (l *Language) Number(n int) string { return l.digits.write(n) }

const (
	minusSign          = "\u2212"
	leftToRightIsolate = "\u2066"
	rightToLeftIsolate = "\u2067"
	popIsolate         = "\u2069"
)

// Equation writes an equation in the language's digits, with a real minus sign
// and "?" where the unknown stands. The order of the characters is always that
// of reading from the left; a page must isolate it, see EquationsRightToLeft.
func (l *Language) Equation(q problem.Equation) string {
	var b strings.Builder
	for i, side := range q.Sides() {
		if i > 0 {
			b.WriteString(" = ")
		}
		for j, term := range side {
			if j > 0 {
				b.WriteString(sign(term.Op))
			}
			if term.Unknown {
				b.WriteByte('?')
			} else {
				b.WriteString(l.digits.write(term.Value))
			}
		}
	}
	return b.String()
}

func sign(op problem.Op) string {
	if op == problem.Minus {
		return " " + minusSign + " "
	}
	return " + "
}

func (l *Language) isolate() string {
	if l.equationsRTL {
		return rightToLeftIsolate
	}
	return leftToRightIsolate
}
