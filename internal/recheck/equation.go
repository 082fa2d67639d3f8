package recheck

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"golang.org/x/net/html"

	"homebuild/internal/pattern"
)

// term is a number, or a "?", with its sign.
type term struct {
	sign  int
	n     int
	asked bool
}

// side is what stands on one side of an equals sign.
type side []term

// String is the side as a page writes it.
func (s side) String() string {
	text := ""
	for i, t := range s {
		switch {
		case t.sign < 0:
			text += " − "
		case i > 0:
			text += " + "
		}
		if t.asked {
			text += "?"
		} else {
			text += strconv.Itoa(t.n)
		}
	}
	return text
}

// equation is one side or several; with one it is a sum without an end.
type equation []side

// minus is the real minus sign, U+2212. A hyphen is not one: it is read as
// "dash" and breaks over lines.
const minus = '\u2212'

var token = pattern.Of(`[0-9]+|\S`)

// String writes an equation as it stands on the page.
func (q equation) String() string {
	var sides []string
	for _, s := range q {
		sides = append(sides, s.String())
	}
	return strings.Join(sides, " = ")
}

// read reads an equation, in the digits of any script.
func read(s string) (equation, error) {
	q := equation{side{}}
	sign, want := 1, true // want: a number or "?" comes next
	for _, t := range token().FindAllString(european(s), -1) {
		last := &q[len(q)-1]
		n, err := strconv.Atoi(t)
		switch {
		case want && (t == "?" || err == nil):
			*last = append(*last, term{sign, n, t == "?"})
			sign, want = 1, false
		case !want && t == "=":
			q, want = append(q, side{}), true
		case !want && t == "+":
			want = true
		case !want && t == string(minus):
			sign, want = -1, true
		default:
			return nil, fmt.Errorf("%q cannot stand there in the equation %q", t, strings.TrimSpace(s))
		}
	}
	if want {
		return nil, fmt.Errorf("the equation %q stops too early", strings.TrimSpace(s))
	}
	return q, nil
}

// asked counts the question marks.
func (q equation) asked() int {
	return len(slices.DeleteFunc(slices.Concat(q...), func(t term) bool { return !t.asked }))
}

// value is what a side comes to; every step on the way must be a whole number.
func (s side) value() (v int, ok bool) {
	for _, t := range s {
		v += t.sign * t.n
		if v < 0 {
			return v, false
		}
	}
	return v, true
}

// holds reports whether all sides are equal. A "?" that was not filled in
// counts as nothing.
func (q equation) holds() bool {
	for _, s := range q {
		first, _ := q[0].value()
		if v, ok := s.value(); !ok || v != first {
			return false
		}
	}
	return true
}

// fill puts numbers in place of the question marks, in order.
func (q equation) fill(values ...int) equation {
	out := make(equation, len(q))
	for i, s := range q {
		out[i] = append(side{}, s...)
		for j := range out[i] {
			if out[i][j].asked && len(values) > 0 {
				out[i][j] = term{sign: out[i][j].sign, n: values[0]}
				values = values[1:]
			}
		}
	}
	return out
}

// solve finds the number for the only "?". It weighs the sides: a "?" counts
// as one more or one less on the side that it is on.
func (q equation) solve() (int, bool) {
	if q.asked() != 1 || len(q) < 2 {
		return 0, false
	}
	known, unknown := make([]int, len(q)), make([]int, len(q))
	for i, s := range q {
		for _, t := range s {
			if t.asked {
				unknown[i] += t.sign
			} else {
				known[i] += t.sign * t.n
			}
		}
	}
	for i := range q[1:] {
		if weight := unknown[i] - unknown[i+1]; weight != 0 {
			x := (known[i+1] - known[i]) / weight
			return x, x >= 0 && q.fill(x).holds()
		}
	}
	return 0, false
}

// numbers are the numbers that are written, in order.
func (q equation) numbers() []int {
	var out []int
	for _, t := range slices.Concat(q...) {
		if !t.asked {
			out = append(out, t.n)
		}
	}
	return out
}

// equations works out every equation, chain and sum of a page.
func (p *page) equations() {
	for _, n := range all(p.root, "bdi.eq") {
		p.found.Equations++
		q, err := read(text(n))
		switch {
		case err != nil:
			p.add("%s", err)
		case q.asked() == 0 && !q.holds():
			p.add("%q is not true", text(n))
		case q.asked() == 1 && len(q) > 1:
			if _, ok := q.solve(); !ok {
				p.add("no whole number solves %q", text(n))
			}
		case q.asked() > 2:
			p.add("%q asks for too much at once", text(n))
		}
	}
}

// closed lists the equations below n that have an end and no "?".
func closed(n *html.Node) []equation {
	var out []equation
	for _, x := range all(n, "bdi.eq") {
		if q, err := read(text(x)); err == nil && len(q) > 1 && q.asked() == 0 {
			out = append(out, q)
		}
	}
	return out
}
