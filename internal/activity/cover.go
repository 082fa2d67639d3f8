package activity

import (
	"fmt"
	"slices"

	"homebuild/internal/problem"
)

// mostAddend is the largest addend of the addition facts to know by heart
// (CCSS-M 2010, 2.OA.B.2: all sums of two one-digit numbers).
const mostAddend = 9

// FactsInAll is how many addition facts there are, a + b and b + a being one.
const FactsInAll = mostAddend * (mostAddend + 1) / 2

// Coverage is what a class has met in its weeks, for the teacher's plan.
type Coverage struct {
	Weeks []string // dates, in order
	Kinds []KindRow
	Work  []WorkRow // from small numbers to large ones; only what was met
	// Facts counts how often each addition fact 1 + 1 to 9 + 9 was met, as a sum
	// in either order or as a difference: Facts[a-1][b-1] for a + b.
	Facts   [mostAddend][mostAddend]int
	Missing []problem.Pair // facts not met, a <= b, in order
	Lacks   []Warning      // what the grade still lacks
}

// KindRow is a kind of story over the weeks.
type KindRow struct {
	Kind   problem.Kind
	ByWeek []int // stories of the kind in each week
	Total  int
}

// Cover counts what the weeks hold and names what a class of the grade still
// lacks.
func Cover(weeks []WeekPlan, grade problem.Grade) Coverage {
	c := Coverage{Work: workBy(weeks)}
	rows := map[problem.Kind]*KindRow{}
	for _, k := range problem.Kinds() {
		rows[k] = &KindRow{Kind: k, ByWeek: make([]int, len(weeks))}
	}
	for i, w := range weeks {
		c.Weeks = append(c.Weeks, w.Request.Week)
		for _, a := range w.All() {
			row := rows[a.Problem.Kind()]
			row.ByWeek[i]++
			row.Total++
			c.meet(a.Problem)
		}
	}
	for _, k := range problem.Kinds() {
		c.Kinds = append(c.Kinds, *rows[k])
	}
	for _, pair := range allFacts() {
		if c.Facts[pair.First-1][pair.Second-1] == 0 {
			c.Missing = append(c.Missing, pair)
		}
	}
	c.Lacks = c.lacks(grade)
	return c
}

// meet counts the addition facts of one-digit numbers that a problem shows.
func (c *Coverage) meet(p problem.Problem) {
	for _, f := range factsOf(p) {
		if a, b := f.pair.First, f.pair.Second; f.digits() {
			c.Facts[a-1][b-1]++
			if a != b {
				c.Facts[b-1][a-1]++
			}
		}
	}
}

// lacks says which kinds that the grade works with were not met, and how many
// facts. The grade of each kind: Progressions for the CCSS-M, K-5 Operations and
// Algebraic Thinking, Table 2; numbers are no longer taken apart in grade 3
// (common practice, no published source), and four are added in grade 2 alone (CCSS-M
// 2010, 2.NBT.B.6).
func (c Coverage) lacks(grade problem.Grade) []Warning {
	var out []Warning
	for _, row := range c.Kinds {
		past := grade > 2 && (row.Kind == problem.TogetherBoth || row.Kind == problem.TogetherFour)
		if row.Total == 0 && row.Kind.FirstGrade() <= grade && !past {
			out = append(out, Warning{
				Setting: "target", Count: 1,
				Text: fmt.Sprintf("no week has a story of the kind %q", row.Kind),
				Hint: "plan a week with a target that has it",
			})
		}
	}
	missing := len(c.Missing)
	if grade == 0 { // to ten only (CCSS-M 2010, K.OA.A.2)
		missing = len(slices.DeleteFunc(slices.Clone(c.Missing), func(p problem.Pair) bool { return p.First+p.Second > 10 }))
	}
	if missing > 0 && grade <= 2 {
		out = append(out, Warning{
			Setting: "target", Count: missing,
			Text: fmt.Sprintf("%d addition facts of one-digit numbers are in no story yet", missing),
			Hint: "plan a week with a target within 10 or 20",
		})
	}
	return out
}
