package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Places are the hundreds, tens and ones of a number; a thousand is ten
// hundreds.
type Places struct{ Hundreds, Tens, Ones int }

// PlacesOf takes a number apart.
func PlacesOf(n int) Places { return Places{n / 100, n / 10 % 10, n % 10} }

// Value is the number.
func (p Places) Value() int { return 100*p.Hundreds + 10*p.Tens + p.Ones }

// plus adds place by place, without trading ten ones for a ten.
func (p Places) plus(q Places) Places {
	return Places{p.Hundreds + q.Hundreds, p.Tens + q.Tens, p.Ones + q.Ones}
}

// within reports whether q can be taken from p place by place.
func (p Places) within(q Places) bool {
	return p.Hundreds <= q.Hundreds && p.Tens <= q.Tens && p.Ones <= q.Ones
}

// BlockRow is a number drawn in hundreds, tens and ones.
type BlockRow struct {
	Amount
	Fill    int    // which part; 0 for the whole
	Crossed Places // taken away from the end of each place
}

// Blocks is a base-ten drawing: a row for each number, hundreds as squares,
// tens as sticks, ones as dots.
type Blocks struct {
	Rows []BlockRow
	// Totals, where given, counts each place of all rows together: 8 tens and
	// 13 ones.
	Totals *Places
	line   phrase.Line
}

// Hundreds reports whether the drawing needs room for hundreds.
func (b Blocks) Hundreds() bool {
	for _, r := range b.Rows {
		if r.N >= 100 {
			return true
		}
	}
	return false
}

// Describe says the numbers.
func (b Blocks) Describe() phrase.Line { return b.line }

// blocksOf draws the parts, and the whole below them.
func blocksOf(p problem.Problem, stage Stage) Blocks {
	f := grown(p, stage)
	b := Blocks{line: f.describe(BaseTen)}
	for i, a := range f.parts {
		if a.Drawn() {
			b.Rows = append(b.Rows, BlockRow{Amount: a, Fill: i + 1})
		}
	}
	if f.whole.Drawn() {
		b.Rows = append(b.Rows, BlockRow{Amount: f.whole})
	}
	return b
}

// splitSum draws the numbers of a sum with the totals of each place.
func splitSum(numbers []int) Blocks {
	b := Blocks{Totals: new(Places)}
	var values []phrase.Value
	for i, n := range numbers {
		b.Rows = append(b.Rows, BlockRow{Amount: Given(n), Fill: i + 1})
		*b.Totals = b.Totals.plus(PlacesOf(n))
		values = append(values, phrase.Number(ordinals[i], n))
	}
	id := "picture.base-ten.split"
	if len(numbers) == 3 {
		id = "picture.base-ten.split-three"
	}
	b.line = phrase.Say(id, append(values, phrase.Expression("Places", expanded(*b.Totals)))...)
	return b
}

// splitDifference draws the whole and crosses out what is taken, place by
// place. It reports false where a ten would have to be opened first.
func splitDifference(whole, taken int) (Blocks, bool) {
	if !PlacesOf(taken).within(PlacesOf(whole)) {
		return Blocks{}, false
	}
	return Blocks{
		Rows: []BlockRow{{Amount: Given(whole), Fill: 1, Crossed: PlacesOf(taken)}},
		line: phrase.Say("picture.base-ten.crossed", phrase.Number("Whole", whole), phrase.Number("Taken", taken)),
	}, true
}
