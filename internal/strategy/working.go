package strategy

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// number keeps the strategies short.
func number(name string, n int) phrase.Value { return phrase.Number(name, n) }

// working is a Way while it is being written.
type working struct{ way Way }

func (w *working) step(id string, q problem.Equation, values ...phrase.Value) {
	w.way.Steps = append(w.way.Steps, Step{ID: id, Values: values, Equation: q})
}

// chain writes the calculation, the sides and the answer in one line, leaving
// out a side that repeats the one before.
func (w *working) chain(sides ...problem.Expression) {
	c := w.way.Calculation
	line := make([]problem.Expression, 0, len(sides)+2)
	line = append(line, c.Expression())
	for _, s := range append(sides, problem.Number(c.Value())) {
		if !slices.Equal(s, line[len(line)-1]) {
			line = append(line, s)
		}
	}
	w.way.Chain = problem.Equal(line...)
}

// hops jumps from each place to the next.
func (w *working) hops(places ...int) {
	for i := 1; i < len(places); i++ {
		w.way.Hops = append(w.way.Hops, Hop{places[i-1], places[i]})
	}
}

// made is "a + b = sum", left is "a - b = rest", parted is "whole = a + b".
func made(numbers ...int) problem.Equation { return evaluated(problem.Sum(numbers...)) }

func left(first int, rest ...int) problem.Equation {
	return evaluated(problem.Difference(first, rest...))
}

func parted(parts ...int) problem.Equation {
	e := problem.Sum(parts...)
	return problem.Equal(problem.Number(e.Value()), e)
}

func evaluated(e problem.Expression) problem.Equation {
	return problem.Equal(e, problem.Number(e.Value()))
}
