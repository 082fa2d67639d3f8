package site

import (
	"slices"

	"homebuild/internal/page"
	"homebuild/internal/problem"
)

// mostChecked is how many of a week's numbers its check page knows: every two of
// them have room on one light page.
const mostChecked = 6

// weekCheckPage is where any two numbers of a week are looked at: of weeks whose
// numbers are larger than the check pages know.
type weekCheckPage struct {
	Language *language
	Lesson   *lesson
}

func weekCheckPath(tag, date string) string { return tag + "/check/" + date + ".html" }

func (p weekCheckPage) path() string { return weekCheckPath(p.Language.Tag(), p.Lesson.date) }

func (p weekCheckPage) view(c *common) page.View {
	return &page.WeekCheck{
		WeekPage: c.week(p.Language, p.Lesson, weekCheckPath), WeekPairs: p.Lesson.weekPairs(),
		Small: c.link(p.path(), checkPath(p.Language.Tag())),
	}
}

// weekPairs are all pairs of the week's numbers.
func (l *lesson) weekPairs() *page.WeekPairs {
	return l.checked.get(func() *page.WeekPairs {
		return &page.WeekPairs{Numbers: l.numbers, Pairs: checkPairs(l.numbers, problem.RangeOf(slices.Max(l.numbers)), l.target.Grade)}
	})
}

// numbers are those that a week's stories tell, each once and in order: of the
// worked story first, then of those to try, as many as a check page has room for.
// There are none where the check pages know them all.
func numbers(of []exercise) []int {
	most := 0
	var found []int
	for _, e := range of {
		most = max(most, largest(e))
		for _, q := range e.Problem.Given() {
			if len(found) < mostChecked && q.Value > 0 && !slices.Contains(found, q.Value) {
				found = append(found, q.Value)
			}
		}
	}
	if most <= checkLargest || len(found) < 2 {
		return nil
	}
	slices.Sort(found)
	return found
}

// checkPairs are all pairs of numbers that stand in order, the bigger one first.
func checkPairs(numbers []int, within int, grade problem.Grade) []page.WeekPair {
	var out []page.WeekPair
	for i, small := range numbers {
		for _, big := range numbers[i+1:] {
			out = append(out, page.WeekPair{First: big, Second: small, Results: checkPair(big, small, within, grade)})
		}
	}
	return out
}
