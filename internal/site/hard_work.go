package site

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/estimate"
	"homebuild/internal/i18n"
	"homebuild/internal/mistake"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
)

// work finds what pages say of the problems that try sentences hardest.
func (h *hardReading) work() {
	h.said = map[string][]heardLine{}
	for id, line := range h.in.worked() { // something for each message, should no other problem say it
		if family, _, _ := strings.Cut(id, "."); len(line.Values) > 0 || family == "reply" || family == "mistake" {
			h.add(line, "")
		}
	}
	h.estimates()
	seen := map[string]bool{}
	for _, k := range problem.Kinds() {
		all := story.TrialProblems(k)
		for _, p := range all {
			if c := p.Calculation(); len(c.Numbers) == 2 && !seen[c.String()] {
				seen[c.String()] = true
				h.steps(c)
			}
		}
		for _, p := range h.hardProblems(all) {
			h.steps(p.Calculation())
			h.replies(p)
			h.checks(p)
		}
	}
}

// mostProblems is how many problems of a kind and a range are answered in every way.
const mostProblems = 6

// hardProblems are the hardest of a kind in each range of numbers.
func (h *hardReading) hardProblems(all []problem.Problem) []problem.Problem {
	hard := func(p problem.Problem) int { return len(h.hardIn(p.Numbers()...)) }
	all = slices.Clone(all)
	slices.SortStableFunc(all, func(p, q problem.Problem) int { return cmp.Compare(hard(q), hard(p)) })
	taken := map[int]int{}
	return slices.DeleteFunc(all, func(p problem.Problem) bool {
		within := rangeOfProblem(p)
		taken[within]++
		return within > 1000 || taken[within] > mostProblems
	})
}

// rangeOfProblem is the range of the numbers of a problem.
func rangeOfProblem(p problem.Problem) int {
	return problem.RangeOf(largest(exercise{Activity: activity.Activity{Problem: p}}))
}

// gradeOf is the grade that meets numbers of a size first.
func gradeOf(c problem.Calculation) problem.Grade {
	switch n := c.Largest(); {
	case n <= 20:
		return 1
	case n <= 100:
		return 2
	}
	return 3
}

func (h *hardReading) steps(c problem.Calculation) {
	for _, n := range strategy.Names() {
		if !strategy.Suits(n, c) {
			continue
		}
		ways := strategy.Ways(c, gradeOf(c), n)
		if len(ways) == 0 || ways[0].Name != n {
			continue
		}
		for _, line := range ways[0].Said() {
			h.add(line, "")
		}
		for _, s := range ways[0].Slips {
			h.add(s.Ask, h.context(c.Asked(), s.Answer), c.Numbers...)
		}
	}
}

func (h *hardReading) replies(p problem.Problem) {
	c := p.Calculation()
	q := mistake.Question{Problem: p, Ways: strategy.Ways(c, gradeOf(c)), Columns: gradeOf(c) > 2}
	for _, r := range q.Help(rangeOfProblem(p), 0).All() {
		for _, line := range r.Lines {
			h.add(line, h.context(p.Equation(), r.Numbers[0]), p.Numbers()...)
		}
	}
}

// context is what a reply belongs to: the calculation and the child's number.
func (h *hardReading) context(q problem.Equation, answer int) string {
	return h.lang.Isolated(i18n.Text{{Kind: i18n.RunEquation, Text: h.lang.Equation(q)}, {Kind: i18n.RunPlain, Text: ": " + strconv.Itoa(answer)}})
}

func (h *hardReading) checks(p problem.Problem) {
	lines, _ := estimate.PartWhole(p)
	for _, line := range append(lines, estimate.GoingBack(p)) {
		h.add(line, "")
	}
}

// estimates finds what is said of calculations that friendly numbers are near to.
func (h *hardReading) estimates() {
	near := append([]int{6, 8, 9, 19, 38, 49, 97, 198, 389, 412}, hardNumbers...)
	for _, a := range near {
		for _, b := range near {
			h.estimate(problem.AddToResult, a, b)
			h.estimate(problem.TakeFromResult, a, b)
			if a < 10 && b < 10 {
				h.estimate(problem.TogetherThree, a, b, 5)
			}
		}
	}
}

func (h *hardReading) estimate(k problem.Kind, numbers ...int) {
	p, err := problem.New(k, numbers...)
	if err != nil {
		return
	}
	for grade := min(2, gradeOf(p.Calculation())); grade <= 3; grade++ {
		if e, ok := estimate.For(p.Calculation(), mistake.Likely(p, 0), grade); ok {
			for _, line := range []phrase.Line{e.Say(), e.Close(), e.Judge()} {
				h.add(line, "")
			}
		}
	}
}

// mostHeard is how many lines of a message are kept to choose from.
const mostHeard = 400

// add keeps a line to choose from, with what it belongs to and the numbers in that.
func (h *hardReading) add(line phrase.Line, of string, numbers ...int) {
	if line.ID == "" || len(h.said[line.ID]) > mostHeard {
		return
	}
	for _, v := range line.Values {
		switch v.Kind {
		case phrase.KindNumber, phrase.KindCounted:
			numbers = append(numbers, v.N)
		case phrase.KindEquation:
			for _, side := range v.Equation.Sides() {
				for _, term := range side {
					numbers = append(numbers, term.Value)
				}
			}
		}
	}
	h.said[line.ID] = append(h.said[line.ID], heardLine{line, of, h.hardIn(numbers...)})
}

// hardIn are the hard ones among numbers, each once.
func (h *hardReading) hardIn(numbers ...int) []int {
	return slices.DeleteFunc(slices.Clone(hardNumbers), func(n int) bool { return !slices.Contains(numbers, n) })
}
