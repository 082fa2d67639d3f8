package phrase_test

import (
	"slices"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

func TestDistinct(t *testing.T) {
	got := phrase.Distinct([]phrase.Line{
		phrase.Say("b", phrase.Number("N", 1)), phrase.Say("a"), phrase.Say("b", phrase.Number("N", 2)),
	})
	if len(got) != 2 || got[0].ID != "a" || got[1].ID != "b" || got[1].Values[0].N != 2 {
		t.Errorf("want a, and the last b with 2, got %v", got)
	}
	if phrase.Distinct(nil) != nil {
		t.Error("no lines make lines")
	}
}

// Each kind of value is made with what a language needs to write it.
func TestValues(t *testing.T) {
	sum := problem.Equal(problem.Sum(8, 6), problem.Number(14))
	made := []struct {
		value phrase.Value
		kind  phrase.Kind
		ok    func(v phrase.Value) bool
	}{
		{phrase.Number("P", 8), phrase.KindNumber, func(v phrase.Value) bool { return v.N == 8 && !v.Words }},
		{phrase.Number("P", 8).InWords(), phrase.KindNumber, func(v phrase.Value) bool { return v.N == 8 && v.Words }},
		{phrase.Counted("P", "thing.shell", 8), phrase.KindCounted, func(v phrase.Value) bool { return v.N == 8 && v.ID == "thing.shell" }},
		{phrase.Blank("P", ""), phrase.KindBlank, func(v phrase.Value) bool { return v.ID == "" }},
		{phrase.Person("P", "character.fox"), phrase.KindPerson, func(v phrase.Value) bool { return v.ID == "character.fox" }},
		{phrase.Equation("P", sum), phrase.KindEquation, func(v phrase.Value) bool { return v.Equation.String() == "8 + 6 = 14" }},
		{phrase.Expression("P", problem.Sum(8, 2)), phrase.KindEquation, func(v phrase.Value) bool { return v.Equation.String() == "8 + 2" }},
		{phrase.Message("P", "picture.asked"), phrase.KindMessage, func(v phrase.Value) bool { return v.ID == "picture.asked" }},
		{phrase.Text("P", "Hello"), phrase.KindText, func(v phrase.Value) bool { return v.Text == "Hello" }},
	}
	var seen []phrase.Kind
	for _, m := range made {
		if m.value.Name != "P" || m.value.Kind != m.kind || !m.ok(m.value) {
			t.Errorf("kind %d: made %+v", m.kind, m.value)
		}
		if !slices.Contains(seen, m.kind) {
			seen = append(seen, m.kind)
		}
	}
	if len(seen) != int(phrase.KindText) {
		t.Errorf("%d kinds of value are made, of %d", len(seen), phrase.KindText)
	}
	if line := phrase.Say("m", phrase.Number("N", 1)).About("character.fox"); line.Subject != "character.fox" || line.ID != "m" {
		t.Errorf("the line about somebody is %+v", line)
	}
}
