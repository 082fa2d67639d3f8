package picture

import (
	"testing"

	"homebuild/internal/problem"
)

func countCells(cells []cell, want cell) int {
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
			f := framesOf(p, Solved).(frames)
			if countCells(f.cells, cell{fill: 1}) != a || countCells(f.cells, cell{fill: 2}) != b {
				t.Fatalf("%d + %d: cells %v", a, b, f.cells)
			}
			for i := range a + b {
				if f.cells[i].fill == 0 {
					t.Fatalf("%d + %d: place %d is empty before the last dot", a, b, i)
				}
			}
			if want := map[bool]int{true: 1, false: 2}[a+b <= 10]; len(f.corners) != want {
				t.Fatalf("%d + %d: in %d frames, want %d", a, b, len(f.corners), want)
			}
			var middles []point
			for i := range f.cells {
				middles = append(middles, f.middle(i))
			}
			apart(t, middles, f.size*2/5, sheetBox)
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
			f := framesOf(p, Open).(frames)
			if countCells(f.cells, cell{fill: 1}) != whole-taken || countCells(f.cells, cell{1, crossed}) != taken {
				t.Fatalf("%d - %d: cells %v", whole, taken, f.cells)
			}
		}
	}
}

func TestMakingTen(t *testing.T) {
	for a := 1; a <= 9; a++ {
		for b := 11 - a; b <= 9; b++ {
			m := MakeTen(a, b).(makingTen)
			rest := a + b - 10
			before, after := m.was.cells, m.now.cells
			if got := filled(before); got != a+b {
				t.Fatalf("%d + %d: %d dots before", a, b, got)
			}
			if filled(after[:10]) != 10 || filled(after[10:]) != rest {
				t.Fatalf("%d + %d: %d and %d dots after", a, b, filled(after[:10]), filled(after[10:]))
			}
			if countCells(before, cell{fill: 1})+countCells(before, cell{1, ringed}) != a {
				t.Fatalf("%d + %d: not %d dots have the first part's fill: %v", a, b, a, before)
			}
			if first := before[0].fill; first != 1 && a >= b {
				t.Fatalf("%d + %d: the first frame is not the first part's", a, b)
			}
			for _, move := range m.moves {
				if before[move.from].mark != ringed || before[move.to].mark != dashed || after[move.to].mark != ringed {
					t.Fatalf("%d + %d: the move %v is not marked", a, b, move)
				}
			}
			if len(m.moves) != 10-max(a, b) {
				t.Fatalf("%d + %d: %d dots move", a, b, len(m.moves))
			}
			if m.big+m.small != a+b {
				t.Fatalf("%d + %d: shown as %d + %d", a, b, m.big, m.small)
			}
		}
	}
}

// filled counts dots: a dashed place is waiting for one.
func filled(cells []cell) int {
	n := 0
	for _, c := range cells {
		if c.fill > 0 && c.mark != dashed {
			n++
		}
	}
	return n
}
