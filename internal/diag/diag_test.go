package diag

import (
	"strings"
	"testing"
)

func TestNearest(t *testing.T) {
	tests := []struct{ typed, allowed, want, why string }{
		{"foucs", "focus picture", "focus", "two letters swapped"},
		{"Bar-Model", "bar-model ten-frame", "bar-model", "capitals typed"},
		{"pt-br", "en pt-BR", "pt-BR", "capitals of the word itself"},
		{"masc", "feminine masculine", "masculine", "the only word that begins so"},
		{"ten", "ten-frame ten-and-more", "", "two words begin so, and none is near"},
		{"moon", "harbour market", "", "nothing is near"},
		{"", "harbour", "", "nothing was typed"},
	}
	for _, test := range tests {
		if got := Nearest(test.typed, strings.Fields(test.allowed)); got != test.want {
			t.Errorf("Nearest(%q, %s): want %q, got %q: %s", test.typed, test.allowed, test.want, got, test.why)
		}
	}
}

func TestChoice(t *testing.T) {
	many := strings.Fields("aa bb cc dd ee ff gg hh ii jj kk ll mm nn pp")
	tests := []struct {
		typed   string
		allowed []string
		want    string
	}{
		{"foucs", []string{"focus", "picture"}, `did you mean "focus"? there are: focus, picture`},
		{"moon", []string{"focus", "picture"}, "there are: focus, picture"},
		{"aab", many, `did you mean "aa"?`},
		{"moon", many, "there are: aa, bb, cc, dd, ee, ff, gg, hh, ii, jj, kk, ll, mm, nn and 1 more"},
		{"moon", nil, "there is none to choose yet; leave it out"},
	}
	for _, test := range tests {
		if got := Choice(test.typed, test.allowed); got != test.want {
			t.Errorf("Choice(%q): want %s, got %s", test.typed, test.want, got)
		}
	}
}

func TestDiagnostics(t *testing.T) {
	ps := Diagnostics{
		{File: "b.toml", Line: 2, Text: "second"},
		{File: "b.toml", Line: 1, Text: "first", Hint: "write it"},
		{File: "a.toml", Text: "whole"},
		{Text: "nowhere"},
	}
	ps.Sort()
	want := "nowhere\na.toml: whole\nb.toml:1: first\n  hint: write it\nb.toml:2: second"
	if got := ps.Error(); got != want {
		t.Errorf("want\n%s\ngot\n%s", want, got)
	}
}
