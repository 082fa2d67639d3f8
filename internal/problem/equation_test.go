package problem

import "testing"

// Equations printed in CCSS-M 2010: 1.OA.C.6 (chains), 1.OA.D.7 (the meaning of
// the equals sign) and 1.OA.D.8 (the unknown in any place).
func TestPrintedEquations(t *testing.T) {
	for _, row := range []struct {
		equation Equation
		want     string
		solved   string
	}{
		{Equal(Sum(8, 6), Sum(8, 2, 4), Sum(10, 4), Number(14)), "8 + 6 = 8 + 2 + 4 = 10 + 4 = 14", "8 + 6 = 8 + 2 + 4 = 10 + 4 = 14"},
		{Equal(Difference(13, 4), Difference(13, 3, 1), Difference(10, 1), Number(9)), "13 - 4 = 13 - 3 - 1 = 10 - 1 = 9", "13 - 4 = 13 - 3 - 1 = 10 - 1 = 9"},
		{Equal(Number(6), Number(6)), "6 = 6", "6 = 6"},
		{Equal(Number(7), Difference(8, 1)), "7 = 8 - 1", "7 = 8 - 1"},
		{Equal(Sum(5, 2), Sum(2, 5)), "5 + 2 = 2 + 5", "5 + 2 = 2 + 5"},
		{Equal(Sum(8, 3).Asking(1), Number(11)), "8 + ? = 11", "8 + 3 = 11"},
		{Equal(Number(5), Difference(8, 3).Asking(0)), "5 = ? - 3", "5 = 8 - 3"},
		{Equal(Sum(6, 6), Number(12).Asking(0)), "6 + 6 = ?", "6 + 6 = 12"},
	} {
		if got := row.equation.String(); got != row.want {
			t.Errorf("got %q, want %q", got, row.want)
		}
		if got := row.equation.Solved().String(); got != row.solved {
			t.Errorf("solved: got %q, want %q", got, row.solved)
		}
	}
}

// An equation that does not hold cannot be made: 4 + 1 = 5 + 2 is the false one
// printed in CCSS-M 2010, 1.OA.D.7.
func TestFalseEquationsCannotBeMade(t *testing.T) {
	for name, sides := range map[string][]Expression{
		"sides differ": {Sum(4, 1), Sum(5, 2)}, "last side differs": {Sum(4, 1), Number(5), Number(6)},
		"one side": {Number(5)}, "no side": nil,
	} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("%s: an equation was made", name)
				}
			}()
			Equal(sides...)
		}()
	}
}

// What one operation does, its inverse undoes: the relationship between addition and
// subtraction (CCSS-M 2010, 1.OA.C.6).
func TestInverse(t *testing.T) {
	for _, op := range []Op{Plus, Minus} {
		e := append(Number(13), Term{Op: op, Value: 4}, Term{Op: op.Inverse(), Value: 4})
		if e.Value() != 13 {
			t.Errorf("%v comes to %d, want 13", e, e.Value())
		}
	}
}

func TestIsZero(t *testing.T) {
	if !(Equation{}).IsZero() || Alone(Number(8)).IsZero() || Equal(Number(6), Number(6)).IsZero() {
		t.Error("want the zero equation alone to say nothing")
	}
}

func TestKindIDs(t *testing.T) {
	seen := map[string]bool{}
	for _, k := range Kinds() {
		back, ok := ParseKind(k.String())
		if !ok || back != k || seen[k.String()] {
			t.Errorf("%v: read back as %v, %v, met before %v", k, back, ok, seen[k.String()])
		}
		seen[k.String()] = true
	}
	if len(seen) != 23 {
		t.Errorf("%d kinds, want 23: 15 of the table, three and four addends and six chains", len(seen))
	}
	if k, ok := ParseKind("sharing"); ok {
		t.Errorf("\"sharing\" was read as %v", k)
	}
}
