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
	numbers := p.Lesson.numbers()
	return &page.WeekCheck{
		WeekPage: c.week(p.Language, p.Lesson, weekCheckPath), Numbers: numbers,
		Pairs: checkPairs(numbers, problem.RangeOf(slices.Max(numbers)), p.Lesson.target.Grade),
		Small: c.link(p.path(), checkPath(p.Language.Tag())),
	}
}

// numbers are those that the week's stories tell, each once and in order: of the
// worked story first, then of those to try, as many as a check page has room for.
// There are none where the check pages know them all.
func (l *lesson) numbers() []int {
	most := 0
	var found []int
	for _, e := range l.exercises() {
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
