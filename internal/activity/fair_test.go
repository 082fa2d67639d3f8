package activity

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"homebuild/internal/documented"
	"homebuild/internal/problem"
)

// spread is how the numbers of many stories of one kind lie.
type spread struct {
	odd      float64 // share of odd answers
	firsts   float64 // different first numbers
	answers  float64 // different answers
	commonly float64 // how often the commonest answer comes
}

// sparse is 1 in the long run, which tries everything, and times in a quick one
// (-short), which tries a spread.
func sparse(times int) int {
	if testing.Short() {
		return times
	}
	return 1
}

// A year of one kind is 40 weeks of a worked story and eight to try.
const storiesOfYear = 40 * 9

// drawn is the spread of a year of one kind within a range.
func drawn(kind problem.Kind, within int) spread {
	target := Target{ID: "all", Kinds: []problem.Kind{kind}, Within: within}
	odd, firsts, answers := 0, map[int]int{}, map[int]int{}
	for _, w := range Year(weeksOf(target, 40, 8)) {
		for _, a := range w.All() {
			odd += a.Problem.Answer() % 2
			firsts[a.Problem.Given()[0].Value]++
			answers[a.Problem.Answer()]++
		}
	}
	most := 0
	for _, n := range answers {
		most = max(most, n)
	}
	return spread{float64(odd) / storiesOfYear, float64(len(firsts)), float64(len(answers)), float64(most)}
}

// fair is what as many draws would give on average if each set of numbers of the
// range were as likely as any other. It is worked out here without the engine's
// own box and order: every set there is within twenty, and beyond that many that
// a linear congruential generator gives (multiplier of Knuth's MMIX).
func fair(kind problem.Kind, within int) spread {
	var firsts, answers []int
	joined := kind == problem.TogetherThree || kind == problem.TogetherFour || kind == problem.AddThenAdd
	add := func(n ...int) {
		if sum := n[0] + n[1] + n[len(n)-1]; joined && sum > within {
			return // most are: this is quicker than to make a problem of them
		}
		if p, err := problem.New(kind, n...); err == nil && inRange(p, within) {
			firsts, answers = append(firsts, p.Given()[0].Value), append(answers, p.Answer())
		}
	}
	three := kind == problem.TogetherThree || kind.Steps() != nil && kind != problem.BiggerThenTogether
	next := generator()
	switch {
	case within <= 20 && three:
		most := within
		if kind.Steps() != nil {
			most = 9 // the later numbers of chains within twenty have one digit
		}
		for i := range within * most * most {
			add(i/most/most+1, i/most%most+1, i%most+1)
		}
	case within <= 20 && kind == problem.TogetherFour:
		for i := range within * within * within * within {
			add(i/within/within/within+1, i/within/within%within+1, i/within%within+1, i%within+1)
		}
	case within <= 20:
		for i := range within * within {
			add(i/within+1, i%within+1)
		}
	default:
		for len(answers) < 15_000 {
			n := []int{next(within) + 1, next(within) + 1}
			if three || kind == problem.TogetherFour {
				n = append(n, next(within)+1)
			}
			if kind == problem.TogetherFour {
				n = append(n, next(within)+1)
			}
			add(n...)
		}
	}
	odd := 0
	for _, n := range answers {
		odd += n % 2
	}
	return spread{float64(odd) / float64(len(answers)), different(firsts), different(answers), commonest(answers, next)}
}

// generator gives numbers from 0 to n-1 (a linear congruential generator with the
// multiplier of Knuth's MMIX).
func generator() func(n int) int {
	seed := uint64(1)
	return func(n int) int {
		seed = seed*6364136223846793005 + 1442695040888963407
		return int(seed>>33) % n
	}
}

func inRange(p problem.Problem, within int) bool {
	for _, step := range p.Steps() {
		for _, q := range step.Quantities() {
			if q.Value < 1 || q.Value > within {
				return false
			}
		}
	}
	return true
}

// different is how many different values a year's draws have on average.
func different(values []int) float64 {
	count := map[int]int{}
	for _, v := range values {
		count[v]++
	}
	sum := 0.0
	for _, n := range count {
		sum += 1 - math.Pow(1-float64(n)/float64(len(values)), storiesOfYear)
	}
	return sum
}

// commonest is how often the commonest value of a year's draws comes, on average
// over a hundred years.
func commonest(values []int, next func(int) int) float64 {
	const years = 100
	sum := 0
	for range years {
		count, most := map[int]int{}, 0
		for range storiesOfYear {
			v := values[next(len(values))]
			count[v]++
			most = max(most, count[v])
		}
		sum += most
	}
	return float64(sum) / years
}

// Every kind and range draws from all of its range, as a fair draw does: no
// parity, first number or answer is favoured.
func TestNumbersAreFair(t *testing.T) {
	var b strings.Builder
	b.WriteString("| kind | range | odd answers, % | first numbers | answers | commonest answer |\n| --- | --- | --- | --- | --- | --- |\n")
	for i, kind := range problem.Kinds() {
		for _, within := range []int{10, 20, 100, 1000} {
			if testing.Short() && (i%12 > 0 || within != 20) {
				continue
			}
			got, want := drawn(kind, within), fair(kind, within)
			holdFair(t, fmt.Sprintf("%v within %d", kind, within), got, want)
			fmt.Fprintf(&b, "| %v | %d | %.0f (%.0f) | %.0f (%.0f) | %.0f (%.0f) | %.0f (%.0f) |\n", kind, within,
				100*got.odd, 100*want.odd, got.firsts, want.firsts, got.answers, want.answers, got.commonly, want.commonly)
		}
	}
	if !testing.Short() {
		documented.Hold(t, mathematics, "numbers of a year", b.String())
	}
}

// holdFair allows what chance would, and what the wishes move: larger numbers
// rather than those of the range before, seldom a 1.
func holdFair(t *testing.T, name string, got, want spread) {
	t.Helper()
	fiveDeviations := 5 * math.Sqrt(want.odd*(1-want.odd)/storiesOfYear)
	if math.Abs(got.odd-want.odd) > fiveDeviations {
		t.Errorf("%s: %.0f%% of the answers are odd, a fair draw gives %.0f%%", name, 100*got.odd, 100*want.odd)
	}
	if got.firsts < 0.85*want.firsts-1 || got.answers < 0.85*want.answers-1 {
		t.Errorf("%s: %.0f first numbers and %.0f answers, a fair draw gives %.0f and %.0f", name, got.firsts, got.answers, want.firsts, want.answers)
	}
	if got.commonly > 1.5*want.commonly+2 {
		t.Errorf("%s: one answer comes %.0f times, a fair draw gives %.0f", name, got.commonly, want.commonly)
	}
}

// No residue of any number is favoured: over a year of two-digit numbers, the
// ones of each number of a story go through all ten digits, none more than twice
// as often as its share of a tenth.
func TestDigitsAreFair(t *testing.T) {
	for i, kind := range problem.Kinds() {
		if i%sparse(12) > 0 {
			continue
		}
		target := Target{ID: "all", Kinds: []problem.Kind{kind}, Within: 100}
		digits := map[problem.Role]*[10]int{}
		for _, w := range Year(weeksOf(target, 40, 8)) {
			for _, a := range w.All() {
				for _, q := range a.Problem.Quantities() {
					if digits[q.Role] == nil {
						digits[q.Role] = &[10]int{}
					}
					digits[q.Role][q.Value%10]++
				}
			}
		}
		for role, count := range digits {
			if least, most := slices.Min(count[:]), slices.Max(count[:]); least == 0 || most > 2*storiesOfYear/10 {
				t.Errorf("%v: the ones of %v come %v times", kind, role, *count)
			}
		}
	}
}
