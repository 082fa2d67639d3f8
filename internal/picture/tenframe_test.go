package picture

import (
	"testing"

	"homebuild/internal/problem"
)

func countCells(cells []Cell, want Cell) int {
	n := 0
	for _, c := range cells {
		if c == want {
			n++
		}
	}
	return n
}

func TestFramesOfSums(t *testing.T) {
	for a := 0; a <= Most; a++ {
		for b := 0; a+b <= Most; b++ {
			p, err := problem.New(problem.TogetherTotal, a, b)
			if err != nil {
				t.Fatal(err)
			}
			f := framesOf(p, Solved)
			if countCells(f.Cells, Cell{Fill: 1}) != a || countCells(f.Cells, Cell{Fill: 2}) != b {
				t.Fatalf("%d + %d: cells %v", a, b, f.Cells)
			}
			for i := range a + b {
				if f.Cells[i].Fill == 0 {
					t.Fatalf("%d + %d: place %d is empty before the last dot", a, b, i)
				}
			}
			var middles []Point
			for i := range f.Cells {
				middles = append(middles, f.Middle(i))
			}
			apart(t, middles, f.Size()*2/5, sheetBox)
		}
	}
}

func TestFramesOfDifferences(t *testing.T) {
	for whole := 0; whole <= Most; whole++ {
		for taken := 0; taken <= whole; taken++ {
			p, err := problem.New(problem.TakeFromResult, whole, taken)
			if err != nil {
				t.Fatal(err)
			}
			f := framesOf(p, Open)
			if countCells(f.Cells, Cell{Fill: 1}) != whole-taken || countCells(f.Cells, Cell{Fill: 1, Mark: Crossed}) != taken {
				t.Fatalf("%d - %d: cells %v", whole, taken, f.Cells)
			}
		}
	}
}

func TestMakingTen(t *testing.T) {
	for a := 1; a <= 9; a++ {
		for b := 11 - a; b <= 9; b++ {
			m := makingTen(a, b)
			rest := a + b - 10
			before, after := m.Before.Cells, m.After.Cells
			if got := filled(before); got != a+b {
				t.Fatalf("%d + %d: %d dots before", a, b, got)
			}
			if filled(after[:10]) != 10 || filled(after[10:]) != rest {
				t.Fatalf("%d + %d: %d and %d dots after", a, b, filled(after[:10]), filled(after[10:]))
			}
			for _, move := range m.Moves {
				if before[move.From].Mark != Ringed || before[move.To].Mark != Dashed || after[move.To].Mark != Ringed {
					t.Fatalf("%d + %d: the move %v is not marked", a, b, move)
				}
			}
			if len(m.Moves) != 10-max(a, b) {
				t.Fatalf("%d + %d: %d dots move", a, b, len(m.Moves))
			}
			if m.Sums[0].Value() != a+b || m.Sums[1].Value() != a+b {
				t.Fatalf("%d + %d: sums %v", a, b, m.Sums)
			}
		}
	}
}

// filled counts dots: a dashed place is waiting for one.
func filled(cells []Cell) int {
	n := 0
	for _, c := range cells {
		if c.Fill > 0 && c.Mark != Dashed {
			n++
		}
	}
	return n
}
