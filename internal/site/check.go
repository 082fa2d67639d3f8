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
		Layout: c.layout(p.Language, own, to, frontPath), CheckPairs: c.checks()[p.First],
		Index: link(own, checkPath(p.Language.Tag())),
	}
}

// newChecks are the pairs of each first number, the same in every language.
func newChecks() []*page.CheckPairs {
	checks := make([]*page.CheckPairs, checkLargest+1)
	for first := range checks {
		checks[first] = &page.CheckPairs{First: first}
		for second := range checkLargest + 1 {
			pair := page.CheckPair{Second: second, Results: checkPair(first, second, checkLargest, checkGrade)}
			checks[first].Seconds = append(checks[first].Seconds, pair)
		}
	}
	return checks
}

// checkPair is what two numbers make together, where that is within a range, and
// what is left when the smaller is taken from the bigger, as a grade works it out.
func checkPair(a, b, within int, grade problem.Grade) (results []page.CheckResult) {
	if a+b <= within {
		results = append(results, checkResult(problem.TogetherTotal, a, b, grade))
	}
	return append(results, checkResult(problem.TakeFromResult, max(a, b), min(a, b), grade))
}

// checkResult is a calculation solved, with a way but without the way's
// pictures: a check page holds many.
func checkResult(kind problem.Kind, x, y int, grade problem.Grade) page.CheckResult {
	p, err := problem.New(kind, x, y)
	if err != nil {
		panic("site: " + err.Error()) // the pairs are in range
	}
	out := page.CheckResult{
		Equation: p.Equation().Solved(), Picture: picture.OrBars(p, picture.BarModel, picture.Solved), Sense: checkSense(p, grade),
	}
	if best, ok := strategy.Best(p.Calculation(), grade); ok {
		out.Way = plainWorking(best)
	}
	return out
}
