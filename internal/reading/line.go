package reading

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/problem"
)

// Largest is the largest number that a teacher's story may have.
const Largest = problem.Largest

// Line writes a problem as a reading line: "add-to-change 8 + ? = 14".
func Line(p problem.Problem) string { return p.Kind().String() + " " + p.Equation().String() }

// Fault is what is wrong with a reading line, for the person who wrote it.
type Fault struct{ Text, Hint string }

func (f *Fault) Error() string { return f.Text }

// ParseLine reads a reading line: a kind and its equation with one "?" (two for
// both addends unknown), or a kind and the true numbers in the order of
// problem.New. The error is a *Fault.
func ParseLine(line string) (problem.Problem, error) {
	word, rest, _ := strings.Cut(strings.TrimSpace(line), " ")
	kind, ok := problem.ParseKind(strings.TrimSuffix(word, ":"))
	if !ok {
		return problem.Problem{}, noKind(word)
	}
	rest = plainSigns.Replace(rest)
	numbers, err := wholeNumbers(rest)
	if err != nil {
		return problem.Problem{}, err
	}
	if !strings.ContainsAny(rest, "=?+-") {
		p, err := problem.New(kind, numbers...)
		return p, misfit(kind, rest, err)
	}
	for order := range orders(numbers) {
		p, err := fromTold(kind, order...)
		if err == nil && slices.ContainsFunc(p.Equations(), func(q problem.Equation) bool { return same(q.String(), rest) }) ||
			err == nil && same(Line(p), kind.String()+" "+rest) {
			return p, nil
		}
	}
	return problem.Problem{}, misfit(kind, rest, errors.New("no such equation"))
}

func noKind(word string) error {
	var ids []string
	for _, k := range problem.Kinds() {
		ids = append(ids, k.String())
	}
	hint := "a reading is a kind and its equation, such as add-to-result 8 + 6 = ?; \"homebuild help own-stories\" lists the kinds"
	if near := diag.Nearest(word, ids); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	return &Fault{fmt.Sprintf("%q is not a kind of story", word), hint}
}

// misfit says that the numbers or the equation are not those of the kind.
func misfit(kind problem.Kind, typed string, err error) error {
	if err == nil {
		return nil
	}
	return &Fault{fmt.Sprintf("%q does not fit the kind %s", strings.TrimSpace(typed), kind),
		"its equation is written like this: " + sample(kind).Equation().String()}
}

// sample is a problem of the kind with handy numbers.
func sample(kind problem.Kind) problem.Problem {
	for _, numbers := range [][]int{{8, 6}, {8, 6, 3}} {
		if p, err := problem.New(kind, numbers...); err == nil {
			return p
		}
	}
	panic("reading: no numbers for " + kind.String())
}

// plainSigns undoes what editors do to signs.
var plainSigns = strings.NewReplacer("−", "-", "–", "-", "＝", "=", "？", "?", "＋", "+", ",", " ")

// same compares equations whatever the spaces.
func same(a, b string) bool {
	return strings.ReplaceAll(a, " ", "") == strings.ReplaceAll(b, " ", "")
}

// wholeNumbers reads the numbers of a line.
func wholeNumbers(s string) ([]int, error) {
	var out []int
	for _, field := range strings.FieldsFunc(s, func(c rune) bool { return strings.ContainsRune(" =?+-", c) }) {
		n, err := strconv.Atoi(field)
		if err != nil || n > Largest {
			return nil, &Fault{fmt.Sprintf("%q is not a whole number up to %d", field, Largest),
				"a reading is a kind and its equation, such as add-to-result 8 + 6 = ?; \"homebuild help own-stories\" lists the kinds"}
		}
		out = append(out, n)
	}
	if len(out) > 4 {
		return nil, &Fault{"a reading has at most three numbers", "leave out those that are not needed"}
	}
	return out, nil
}

// orders yields every order of up to four numbers. An equation may write a
// number twice that the story tells once: 9 + 9 + 3.
func orders(numbers []int) func(func([]int) bool) {
	return func(yield func([]int) bool) {
		seen := [][]int{}
		var extend func(chosen []int, used uint) bool
		extend = func(chosen []int, used uint) bool {
			if len(chosen) > 0 && !slices.ContainsFunc(seen, func(s []int) bool { return slices.Equal(s, chosen) }) {
				seen = append(seen, slices.Clone(chosen))
				if !yield(slices.Clone(chosen)) {
					return false
				}
			}
			for i, n := range numbers {
				if used&(1<<i) == 0 && !extend(append(slices.Clone(chosen), n), used|1<<i) {
					return false
				}
			}
			return true
		}
		extend(nil, 0)
	}
}
