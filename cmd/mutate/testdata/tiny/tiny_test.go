package tiny

import "testing"

func TestAll(t *testing.T) {
	for name, good := range map[string]bool{
		"Sum":      Sum(1, 2, 3) == 6 && Sum(0.5, 1) == 1.5,
		"Join":     Join("a", "b") == "a, b",
		"Both":     Both(1, 2) == 3 && Both("a", "b") == "ab",
		"Larger":   Larger(1, 2) == 2 && Larger("b", "a") == "b",
		"Below":    Below(3) == 6,
		"Opposite": Opposite(0) == 0,
		"Same":     Same(1, 2, 3, 4) && !Same(2, 1, 3, 4),
		"Even":     Even(4) && !Even(3),
		"Left":     Left(5, 2) == 3,
	} {
		if !good {
			t.Error(name)
		}
	}
	if length, number := Fixed(); length != 3 || number != 2 {
		t.Error("Fixed", length, number)
	}
}
