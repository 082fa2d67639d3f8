package site

import (
	"strconv"

	"homebuild/internal/page"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// checkLargest is the largest whole that the check pages know, and checkGrade the
// grade that works within it (CCSS-M 2010, 1.OA.A.1).
const (
	checkLargest = 20
	checkGrade   = 1
)

// checkIndexPage is where the first of two numbers to check is picked.
type checkIndexPage struct{ Language *language }

func checkPath(tag string) string { return tag + "/check/index.html" }

func (p checkIndexPage) path() string { return checkPath(p.Language.Tag()) }

func (p checkIndexPage) view(c *common) page.View {
	v := &page.CheckIndex{Layout: c.layout(p.Language, p.path(), checkPath, frontPath)}
	for n := range checkLargest + 1 {
		v.Numbers = append(v.Numbers, page.Number{N: n, Href: strconv.Itoa(n) + ".html"})
	}
	return v
}

// checkPage checks every pair with one first number.
type checkPage struct {
	Language *language
	First    int
}

func checkFirstPath(tag string, first int) string {
	return tag + "/check/" + strconv.Itoa(first) + ".html"
}

func (p checkPage) path() string { return checkFirstPath(p.Language.Tag(), p.First) }

func (p checkPage) view(c *common) page.View {
	own := p.path()
	to := func(tag string) string { return checkFirstPath(tag, p.First) }
	return &page.Check{
		Layout: c.layout(p.Language, own, to, frontPath), First: p.First,
		Index: link(own, checkPath(p.Language.Tag())), Seconds: c.checks()[p.First],
	}
}

// newChecks are the pairs of each first number, the same in every language.
func newChecks() [][]page.CheckPair {
	checks := make([][]page.CheckPair, checkLargest+1)
	for first := range checks {
		for second := range checkLargest + 1 {
			checks[first] = append(checks[first], checkPair(first, second))
		}
	}
	return checks
}

// checkPair is what two numbers make together, where that is within the range,
// and what is left when the smaller is taken from the bigger.
func checkPair(first, second int) page.CheckPair {
	pair := page.CheckPair{Second: second}
	if first+second <= checkLargest {
		pair.Results = append(pair.Results, checkResult(problem.TogetherTotal, first, second))
	}
	pair.Results = append(pair.Results, checkResult(problem.TakeFromResult, max(first, second), min(first, second)))
	return pair
}

// checkResult is a calculation solved, with a way but without the way's
// pictures: a check page holds many.
func checkResult(kind problem.Kind, x, y int) page.CheckResult {
	p, err := problem.New(kind, x, y)
	if err != nil {
		panic("site: " + err.Error()) // the pairs are in range
	}
	drawn, err := picture.OfProblem(p, picture.BarModel, picture.Solved)
	if err != nil {
		panic("site: " + err.Error()) // a bar model fits every problem
	}
	out := page.CheckResult{Equation: p.Equation().Solved(), Picture: drawn, Sense: checkSense(p)}
	if best, ok := strategy.Best(p.Calculation(), checkGrade); ok {
		out.Way = plainWorking(best)
	}
	return out
}
