package mistake

import (
	"flag"
	"fmt"
	"strings"
	"testing"

	"homebuild/internal/documented"
	"homebuild/internal/estimate"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

var _ = flag.Bool("update", false, "write the tables of docs/mathematics.md")

// mathematicsPage is where the figures stand for people.
const mathematicsPage = "../../docs/mathematics.md"

// The tables of the page are those that are counted here.
func TestMathematicsPage(t *testing.T) {
	if testing.Short() {
		t.Skip("counts a million pairs")
	}
	documented.Hold(t, mathematicsPage, "estimates", estimatesTable(t))
	documented.Hold(t, mathematicsPage, "slips", slipsTable(t))
}

// tallied counts the estimates of a range.
type tallied struct {
	pairs, with, off, most int
	likely, found          map[string]int
}

// estimatesTable counts, over all pairs of numbers from 1 of each range that are not
// of an earlier one, how many have an estimate, how far off, and what it finds.
func estimatesTable(t *testing.T) string {
	t.Helper()
	var b strings.Builder
	b.WriteString("| numbers | pairs | with an estimate | off by, on average | at most | wrong operation found | a ten found | a hundred found |\n")
	b.WriteString("| --- | --- | --- | --- | --- | --- | --- | --- |\n")
	for _, kind := range []problem.Kind{problem.TogetherTotal, problem.TakeFromResult} {
		ranges := map[int]*tallied{}
		for a := 1; a <= problem.Largest; a++ {
			for other := 1; other <= problem.Largest; other++ {
				p, err := problem.New(kind, a, other)
				if err != nil || p.Answer() == 0 || p.Calculation().Largest() > problem.Largest {
					break // a larger second number makes no problem either
				}
				count := ranges[problem.RangeOf(p.Calculation().Largest())]
				if count == nil {
					count = &tallied{likely: map[string]int{}, found: map[string]int{}}
					ranges[problem.RangeOf(p.Calculation().Largest())] = count
				}
				count.add(p)
			}
		}
		for _, top := range []int{10, 20, 100, 1000} {
			b.WriteString(ranges[top].row(kind, top))
		}
	}
	return b.String()
}

func (c *tallied) add(p problem.Problem) {
	c.pairs++
	likely := Likely(p, 0)
	e, ok := estimate.For(p.Calculation(), likely, 2)
	if !ok {
		return
	}
	off := max(e.Value-p.Answer(), p.Answer()-e.Value)
	c.with, c.off, c.most = c.with+1, c.off+off, max(c.most, off)
	for i, n := range likely {
		slip := "operation" // the likeliest comes first
		if off := max(n-p.Answer(), p.Answer()-n); i > 0 {
			slip = map[int]string{10: "ten", 100: "hundred"}[off]
		}
		c.likely[slip]++
		if !e.Near(n) {
			c.found[slip]++
		}
	}
}

func (c *tallied) row(kind problem.Kind, top int) string {
	name := "sums to %d"
	if kind == problem.TakeFromResult {
		name = "differences to %d"
	}
	average, most := "-", "-"
	if c.with > 0 {
		average, most = fmt.Sprintf("%.1f", float64(c.off)/float64(c.with)), fmt.Sprint(c.most)
	}
	row := fmt.Sprintf("| "+name+" | %d | %d | %s | %s |", top, c.pairs, c.with, average, most)
	for _, id := range []string{"operation", "ten", "hundred"} {
		if c.likely[id] == 0 {
			row += " - |"
			continue
		}
		row += fmt.Sprintf(" %d of %d |", c.found[id], c.likely[id])
	}
	return row + "\n"
}

// slipsTable counts, over all sums and differences of two numbers to 100 and all sums
// of three and four to 20, the slips of each way: how many there are, in how many of them the
// way's slip is known, and in how many no other cause gives the number.
func slipsTable(t *testing.T) string {
	t.Helper()
	type counted struct{ fits, slips, known, alone int }
	rows := map[strategy.Name]*counted{}
	count := func(p problem.Problem) {
		for _, n := range strategy.Names() {
			if !strategy.Fits(n, p.Calculation()) {
				continue
			}
			grade := max(n.FirstGrade(), 2)
			if n == strategy.CountAll {
				grade = 0
			}
			q := Question{Problem: p, Ways: strategy.Ways(p.Calculation(), grade, n)[:1], Columns: n == strategy.Expanded}
			row := rows[n]
			if row == nil {
				row = &counted{}
				rows[n] = row
			}
			row.fits++
			mistakes := q.Mistakes()
			for _, s := range q.Ways[0].Slips {
				row.slips++
				for _, m := range mistakes {
					if m.Answer == s.Answer && m.Cause == Cause(s.Name) {
						row.known++
						if m.Only {
							row.alone++
						}
					}
				}
			}
		}
	}
	for a := 1; a <= 100; a++ {
		for c := 1; a+c <= 100; c++ {
			count(mustNew(t, problem.TogetherTotal, a, c))
			count(mustNew(t, problem.TakeFromResult, a+c, c))
			for d := 1; a+c+d <= 20; d++ {
				count(mustNew(t, problem.TogetherThree, a, c, d))
				for e := 1; a+c+d+e <= 20; e++ {
					count(mustNew(t, problem.TogetherFour, a, c, d, e))
				}
			}
		}
	}
	var b strings.Builder
	b.WriteString("| way | calculations it fits | wrong numbers it gives | known as its own | by no other cause |\n| --- | --- | --- | --- | --- |\n")
	for _, n := range strategy.Names() {
		r := rows[n]
		fmt.Fprintf(&b, "| %s | %d | %d | %d | %d |\n", n, r.fits, r.slips, r.known, r.alone)
	}
	return b.String()
}
