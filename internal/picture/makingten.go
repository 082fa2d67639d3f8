package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// MakingTen is two ten frames before and after the first one is filled from
// the second: 8 and 6 become 10 and 4.
type MakingTen struct {
	Before, After Frames
	// Moves join each ringed dot of Before with the place it goes to.
	Moves []Move
	// Sums are what is to be read under each side: 8 + 6 and 10 + 4.
	Sums [2]problem.Expression
}

// Move is a dot's way from one place to another.
type Move struct{ From, To int }

// makingTen wants two numbers under ten that pass ten. The first one's dots
// have the first part's fill, whichever frame they lie in.
func makingTen(first, second int) MakingTen {
	big, small, bigFill := first, second, 1
	if second > first {
		big, small, bigFill = second, first, 2
	}
	smallFill, need := 3-bigFill, 10-big
	m := MakingTen{
		Before: Frames{Cells: make([]Cell, 20), Stacked: true, Left: Margin},
		After:  Frames{Cells: make([]Cell, 20), Stacked: true, Left: Width - Margin - 5*cellSize[2]},
		Sums:   [2]problem.Expression{problem.Sum(big, small), problem.Sum(10, small-need)},
	}
	m.Before.put(0, big, Cell{Fill: bigFill})
	m.Before.put(big, need, Cell{Fill: smallFill, Mark: Dashed})
	m.Before.put(10, small, Cell{Fill: smallFill})
	m.After.put(0, big, Cell{Fill: bigFill})
	m.After.put(big, need, Cell{Fill: smallFill, Mark: Ringed})
	m.After.put(10, small-need, Cell{Fill: smallFill})
	// The dots right below the empty places move up where there are such dots.
	from := 10 + min(5, small) - need
	for i := range need {
		m.Before.Cells[from+i].Mark = Ringed
		m.Moves = append(m.Moves, Move{From: from + i, To: big + i})
	}
	return m
}

// Describe says what moves.
func (m MakingTen) Describe() phrase.Line {
	sum := m.Sums[0]
	return phrase.Say("picture.ten-frame.make-ten",
		phrase.Number("First", sum[0].Value), phrase.Number("Second", sum[1].Value),
		phrase.Number("Moved", len(m.Moves)), phrase.Number("Rest", m.Sums[1][1].Value))
}
