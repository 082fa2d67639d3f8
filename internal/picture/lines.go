package picture

import (
	"cmp"
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// NameLine is the name beside a bar or a row, alone.
func NameLine(name phrase.Value) phrase.Line {
	name.Name = "Name"
	return phrase.Say("picture.name", name)
}

// StripLine describes a strip of numbers.
func StripLine(from, to int) phrase.Line {
	return phrase.Say("picture.strip", phrase.Number("First", from), phrase.Number("Last", to))
}

// BlankLine describes an empty picture to fill in by hand.
func BlankLine(kind Kind) phrase.Line { return phrase.Say("picture." + kind.String() + ".blank") }

// Lines lists a sample of every sentence that pictures can ask for, sorted by
// message id, so that a catalogue can be checked for all of them.
func Lines() []phrase.Line {
	found := map[string]phrase.Line{}
	add := func(line phrase.Line) { found[line.ID] = line }
	for _, id := range []string{asked, empty, hidden} {
		add(phrase.Say(id))
	}
	add(NameLine(phrase.Person("", "person")))
	for _, kind := range Kinds() {
		for _, k := range problem.Kinds() {
			for _, p := range ofStory(kind, k) {
				add(p.Describe())
			}
		}
	}
	for _, c := range sampleCalculations() {
		for _, w := range strategy.Ways(c) {
			for _, p := range OfWay(w) {
				add(p.Describe())
			}
		}
	}
	lines := make([]phrase.Line, 0, len(found))
	for _, line := range found {
		lines = append(lines, line)
	}
	slices.SortFunc(lines, func(a, b phrase.Line) int { return cmp.Compare(a.ID, b.ID) })
	return lines
}

// ofStory grows a small story of a kind, with and without names.
func ofStory(kind Kind, k problem.Kind) []Picture {
	p, err := problem.New(k, 13, 5)
	if err != nil {
		p, err = problem.New(k, 8, 5, 2)
	}
	if err != nil || !Fits(kind, p) {
		return nil
	}
	var out []Picture
	if pairs, ok := AllPairs(p); ok {
		out = append(out, pairs)
	}
	a, b := phrase.Person("", "person"), phrase.Person("", "person")
	for _, stage := range Stages() {
		picture, err := OfProblem(p, kind, stage)
		if err != nil {
			continue
		}
		out = append(out, picture, WithNames(picture, a, b))
	}
	return out
}

// WithNames returns a picture that compares with the names of the two people
// whose amounts it shows; any other picture is returned as it is.
func WithNames(p Picture, bigger, smaller phrase.Value) Picture {
	switch p := p.(type) {
	case Comparison:
		return p.WithNames(bigger, smaller)
	case Rows:
		return p.WithNames(bigger, smaller)
	case Steps:
		return p.WithNames(bigger, smaller)
	}
	return p
}

// sampleCalculations together show every sort of picture of a strategy.
func sampleCalculations() []problem.Calculation {
	plus := func(n ...int) problem.Calculation { return problem.Calculation{Op: problem.Plus, Numbers: n} }
	minus := func(n ...int) problem.Calculation {
		return problem.Calculation{Op: problem.Minus, Numbers: n}
	}
	return []problem.Calculation{
		plus(7, 7), plus(6, 7), plus(8, 6), plus(6, 12), plus(45, 39), plus(56, 37), plus(8, 4, 2),
		plus(4, 9, 5), plus(40, 25, 60), minus(13, 4), minus(65, 49), minus(387, 254), minus(7, 0),
	}
}
