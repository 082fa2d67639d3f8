package strategy

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// working is a Way while it is being written.
type working struct {
	id, said string // of the strategy, and under which its name is said here
	way      Way
	pictures []picture.Picture
}

func work(n Name, c problem.Calculation) Way {
	w := working{id: methods[n].id, said: methods[n].said(c), way: Way{Name: n, Calculation: c}}
	methods[n].work(c, &w)
	w.place()
	return w.way
}

// hint is what to say first to a child who is stuck: the end of its message id
// and the numbers of its sentence. A hint that would tell the answer is left out.
func (w *working) hint(id string, values ...phrase.Value) {
	w.way.Hint = phrase.Line{}
	if line := phrase.Say(message(w.said, id), values...); !w.tells(line) {
		w.way.Hint = line
	}
}

// number keeps the strategies short.
func number(name string, n int) phrase.Value { return phrase.Number(name, n) }

// step writes a step: the end of its message id, what is written down, and
// the numbers of its sentence.
func (w *working) step(id string, q problem.Equation, values ...phrase.Value) {
	w.way.Steps = append(w.way.Steps, Step{Say: phrase.Say(message(w.id, id), values...), Equation: q})
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

// show adds a picture. The pictures stand beside the last steps, in this order.
func (w *working) show(p picture.Picture) { w.pictures = append(w.pictures, p) }

// walk shows the way along a number line.
func (w *working) walk(stops ...int) { w.show(picture.Walk(stops...)) }

// showPlaces shows tens with tens and ones with ones, where no ten has to be
// opened.
func (w *working) showPlaces() {
	if p, ok := picture.Blocks(w.way.Calculation); ok {
		w.show(p)
	}
}

// showTens shows a sum or difference of two within 20 on ten frames, where the
// ten can be seen, the bigger number of a sum first since the ten is in it; a
// bigger one in tens and ones.
func (w *working) showTens() {
	c := w.way.Calculation
	big, small, _ := bySize(c)
	switch {
	case c.Largest() > picture.Most:
		w.showPlaces()
	case c.Op == problem.Plus:
		w.showFrames(problem.TogetherTotal, big, small)
	default:
		w.showFrames(problem.TakeFromResult, big, small)
	}
}

// showFrames shows a small story of a kind on ten frames.
func (w *working) showFrames(kind problem.Kind, numbers ...int) {
	w.showStory(picture.TenFrame, kind, numbers...)
}

// showStory shows a small story of a kind by a picture.
func (w *working) showStory(by picture.Kind, kind problem.Kind, numbers ...int) {
	p, err := problem.New(kind, numbers...)
	if err != nil {
		panic("strategy: " + err.Error()) // a way that does not fit its calculation
	}
	drawn, err := picture.OfProblem(p, by, picture.Solved)
	if err != nil {
		panic("strategy: " + err.Error())
	}
	w.show(drawn)
}

// place puts the pictures beside the last steps. A way that has none shows the
// calculation as a whole and its parts.
func (w *working) place() {
	if len(w.pictures) == 0 {
		w.show(picture.Bond(w.way.Calculation))
	}
	last := w.way.Steps[len(w.way.Steps)-len(w.pictures):]
	for i, p := range w.pictures {
		last[i].Picture = p
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
