package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// steps is two steps in one bar: its parts side by side, and braces over and
// under them for what they come to. Everything is drawn to one scale.
type steps struct {
	parts []amount
	above brace
	below []brace  // none where the bar is cut again instead
	again []amount // how the whole is cut again, under the bar
	line  phrase.Line
}

// brace joins parts of the bar.
type brace struct {
	amount
	first, end int // the places of the parts
}

// Joined shows a sum of three: the first two are joined first.
func Joined(a, b, c int) Picture {
	return joinJoin(given(a), given(b), given(c), given(a+b), given(a+b+c))
}

// joinJoin is a + b, then + c.
func joinJoin(a, b, c, between, whole amount) steps {
	return steps{
		parts: []amount{a, b, c}, above: brace{whole, 0, 3}, below: []brace{{between, 0, 2}},
		line: sayAmounts("picture.bar-model.join-join",
			[]string{"First", "Second", "Third", "Between", "Whole"}, a, b, c, between, whole),
	}
}

// Pairs shows a sum of four: the first two are joined, and the last two.
func Pairs(a, b, c, d int) Picture {
	parts, first, second, whole := givens(a, b, c, d), given(a+b), given(c+d), given(a+b+c+d)
	return steps{
		parts: parts, above: brace{whole, 0, 4}, below: []brace{{first, 0, 2}, {second, 2, 4}},
		line: sayAmounts("picture.bar-model.join-pairs",
			[]string{"First", "Second", "Third", "Fourth", "Pair", "OtherPair", "Whole"}, append(parts, first, second, whole)...),
	}
}

// joinTake is a + b, then - c: the whole is cut again under the bar.
func joinTake(a, b, c, whole, rest amount) steps {
	return steps{
		parts: []amount{a, b}, above: brace{whole, 0, 2}, again: []amount{rest, c},
		line: sayAmounts("picture.bar-model.join-take",
			[]string{"First", "Second", "Whole", "Taken", "Left"}, a, b, whole, c, rest),
	}
}

// takeJoin is a - b, then + c: what is kept belongs to both wholes.
func takeJoin(a, b, c, kept, result amount) steps {
	return steps{
		parts: []amount{b, kept, c}, above: brace{a, 0, 2}, below: []brace{{result, 1, 3}},
		line: sayAmounts("picture.bar-model.take-join",
			[]string{"Start", "Taken", "Kept", "Added", "Result"}, a, b, kept, c, result),
	}
}

// takeTake is a - b, then - c, each from the end of the bar.
func takeTake(a, b, c, between, rest amount) steps {
	return steps{
		parts: []amount{rest, c, b}, above: brace{a, 0, 3}, below: []brace{{between, 0, 2}},
		line: sayAmounts("picture.bar-model.take-take",
			[]string{"Start", "Taken", "Between", "Later", "Left"}, a, b, between, c, rest),
	}
}

// sayAmounts fills the places of a description, each with what can be seen.
func sayAmounts(id string, names []string, amounts ...amount) phrase.Line {
	values := make([]phrase.Value, len(amounts))
	for i, a := range amounts {
		values[i] = a.value(names[i])
	}
	return phrase.Say(id, values...)
}

// chainOf shows a chain. What the first step finds keeps an empty place until
// the chain is solved, so that one "?" is left: the one that the story asks for.
func chainOf(p problem.Problem, stage Stage) Picture {
	first := p.Steps()[0]
	states := map[Stage]state{SecondPart: empty, Open: empty, Solved: found}
	between := amount{n: first.Answer(), state: states[stage]}
	told := firstTold(p)
	q := p.Quantities()
	at := make([]amount, len(q))
	for i := range q {
		at[i] = amount{n: q[i].Value, state: stateAt(q[i], told, stage)}
	}
	if p.Kind() == problem.BiggerThenTogether {
		return comparison{bigger: between, smaller: at[0], difference: at[1], both: &at[2]}
	}
	if rest := &at[3]; stage == SecondPart && p.Kind() != problem.AddThenAdd {
		rest.state = empty // where it is can be seen
	}
	s := map[problem.Kind]func(a, b, c, between, result amount) steps{
		problem.AddThenAdd: joinJoin, problem.AddThenTake: joinTake, problem.TogetherThenTake: joinTake,
		problem.TakeThenAdd: takeJoin, problem.TakeThenTake: takeTake,
	}[p.Kind()](at[0], at[1], at[2], between, at[3])
	switch {
	case stage != FirstPart:
	case first.Kind().Situation() == problem.TakeFrom:
		s.line = phrase.Say("picture.bar-model.first-whole", at[0].value("Whole"))
	default:
		s.line = phrase.Say("picture.bar-model.first-part", at[0].value("Part"))
	}
	return s
}

// spans lays the parts out.
func (s steps) spans() []span { return share(margin, inner, leastSegment, numbers(s.parts)...) }

// over is what the brace spans.
func (b brace) over(parts []span) span {
	x := parts[b.first].x
	return span{x, parts[b.end-1].end() - x}
}

// leastCut keeps two cuts of a bar apart that belong to different numbers.
const leastCut = 3

// cutAgain lays the whole out once more, cut in another place than its parts.
func (s steps) cutAgain(parts []span) []span {
	again := share(margin, inner, leastSegment, numbers(s.again)...)
	cut, other := parts[0].end(), again[0].end()
	switch part, rest := s.parts[0].n, s.again[0].n; {
	case part < rest:
		other = max(other, cut+leastCut)
	case part > rest:
		other = min(other, cut-leastCut)
	default:
		other = cut
	}
	return []span{{margin, other - margin}, {other, margin + inner - other}}
}

// Figure draws the bar between its braces.
func (s steps) Figure() Figure {
	parts := s.spans()
	under, spans := s.again, []span(nil)
	if s.again != nil {
		spans = s.cutAgain(parts)
	}
	for _, b := range s.below {
		under, spans = append(under, b.amount), append(spans, b.over(parts))
	}
	top := below(s.above.amount)
	bottom := top + barHeight
	height := bottom + 6
	for _, a := range under {
		if a.drawn() {
			height = bottom + 4 + braceHeight + 2 + plateHeight + 4
		}
	}
	return Figure{"steps", height, func(d *Pen) {
		d.whole(s.above.over(parts), s.above.amount)
		if s.undivided() {
			w := s.above.over(parts)
			d.Rect(w.x, top, w.w, barHeight, fills[0])
		}
		for i, a := range s.parts {
			d.segment("part", box{parts[i].x, top, parts[i].w, barHeight}, i+1, a)
		}
		for i, a := range under {
			d.wholeBelow(spans[i], bottom+4, a)
		}
	}}
}

// undivided reports whether the bar is in one piece yet.
func (s steps) undivided() bool { return amounts{parts: s.parts}.undivided() }

// Describe says the parts and what the braces say.
func (s steps) Describe() phrase.Line { return s.line }
