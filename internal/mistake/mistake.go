package mistake

import (
	"cmp"
	"slices"

	"homebuild/internal/problem"
)

// Mistake is a known way to a wrong number.
type Mistake struct {
	Cause  Cause
	Answer int  // the number it gives, never the right one and never negative
	Only   bool // no other cause gives this number
	// Equation is the wrong working with what it comes to, "14 + 8 = 22"; zero
	// where the child worked nothing that can be written down.
	Equation problem.Equation
}

// Of lists every known way to a wrong number, in the order of the causes. The
// extra number is one that the story tells and the question does not need, 0
// for none. For both addends unknown, no number up to the total is a mistake.
func Of(p problem.Problem, extra int) []Mistake {
	q := newQuestion(p, extra)
	var out []Mistake
	add := func(cause Cause, f found) {
		if f.answer < 0 || right(p, f.answer) || has(out, cause, f.answer) {
			return
		}
		m := Mistake{Cause: cause, Answer: f.answer}
		if f.working != nil {
			m.Equation = problem.Equal(f.working, problem.Number(f.answer))
		}
		out = append(out, m)
	}
	for _, rule := range storyRules {
		if q.asksPair() && rule.cause != PartOnly {
			continue
		}
		for _, f := range rule.find(q) {
			add(rule.cause, f)
		}
	}
	for _, rule := range columnRules {
		if rule.op != q.calc.Op || q.calc.Largest() <= columnsFrom || q.asksPair() {
			continue
		}
		if n, applies := rule.wrong(q.calc); applies {
			add(rule.cause, found{answer: n})
		}
	}
	slices.SortStableFunc(out, func(a, b Mistake) int { return cmp.Compare(a.Cause, b.Cause) })
	markOnly(out)
	return out
}

// right reports whether n answers p. Both addends unknown takes any number up
// to the total as its first part.
func right(p problem.Problem, n int) bool {
	if p.Kind() == problem.TogetherBoth {
		return n >= 0 && n <= p.Calculation().Value()
	}
	return n == p.Answer()
}

func has(all []Mistake, cause Cause, answer int) bool {
	return slices.ContainsFunc(all, func(m Mistake) bool { return m.Cause == cause && m.Answer == answer })
}

func markOnly(all []Mistake) {
	for i := range all {
		all[i].Only = true
		for j := range all {
			if i != j && all[i].Answer == all[j].Answer {
				all[i].Only = false
			}
		}
	}
}

// Likely lists the wrong answers that an estimate should show to be out of
// reach, the likeliest first, each number once: those of the wrong operation.
// Slips by one, in columns, or of a number left out can be too near the answer.
func Likely(p problem.Problem, extra int) []int {
	var out []int
	for _, m := range Of(p, extra) {
		switch m.Cause {
		case ReversedComparison, AddedInstead, SubtractedInstead:
			if !slices.Contains(out, m.Answer) {
				out = append(out, m.Answer)
			}
		}
	}
	return out
}
