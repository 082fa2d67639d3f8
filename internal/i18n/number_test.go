package i18n

import (
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Digits: Unicode Standard, code charts U+0660, U+06F0 and U+0966.
func TestNumber(t *testing.T) {
	tests := []struct {
		digits string
		n      int
		want   string
	}{
		{"latn", 0, "0"}, {"latn", 47, "47"}, {"latn", 1000, "1000"},
		{"arab", 0, "٠"}, {"arab", 47, "٤٧"}, {"arab", 1000, "١٠٠٠"},
		{"arabext", 456, "۴۵۶"},
		{"deva", 1908, "१९०८"},
	}
	for _, test := range tests {
		l := Notation{digits: digits(digitSets[test.digits].zero)}
		if got := l.Number(test.n); got != test.want {
			t.Errorf("Number(%d) in %s: want %s, got %s", test.n, test.digits, test.want, got)
		}
	}
}

// Between numbers stands the comma of the letters: Unicode Standard, U+060C, for Arabic;
// GB/T 15834, from memory, for Chinese.
func TestComma(t *testing.T) {
	catalog := fixtures(t)
	for tag, want := range map[string]string{"ar": "، ", "en": ", ", "vi": ", "} {
		if got := in(t, catalog, tag).Comma(); got != want {
			t.Errorf("%s: want %q, got %q", tag, want, got)
		}
	}
}

func TestEquation(t *testing.T) {
	sum := problem.Equal(problem.Sum(8, 6).Asking(1), problem.Number(14))
	tests := []struct {
		name, digits string
		equation     problem.Equation
		want         string
	}{
		{"unknown", "latn", sum, "8 + ? = 14"},
		{"minus sign", "latn", problem.Equal(problem.Difference(13, 4), problem.Number(9)), "13 \u2212 4 = 9"},
		{"chain", "latn", problem.Equal(problem.Sum(8, 6), problem.Sum(8, 2, 4), problem.Number(14)), "8 + 6 = 8 + 2 + 4 = 14"},
		{"expression", "latn", problem.Alone(problem.Sum(8, 2)), "8 + 2"},
		{"Arabic digits", "arab", sum, "٨ + ? = ١٤"},
	}
	for _, test := range tests {
		l := Notation{digits: digits(digitSets[test.digits].zero)}
		if got := l.Equation(test.equation); got != test.want {
			t.Errorf("%s: Equation: want %s, got %s", test.name, test.want, got)
		}
	}
}

// Isolates: Unicode Standard Annex 9, U+2066 to U+2069.
func TestPlain(t *testing.T) {
	c := fixtures(t)
	line := phrase.Say("strategy.doubles.fill", phrase.Equation("Equation", problem.Equal(problem.Sum(7, 7), problem.Number(14))))
	tests := []struct {
		tag          string
		equationsRTL bool
		want         string
	}{
		{"es", false, "Di el doble: 7 + 7 = 14."},
		{"ar", false, "قل الضعف: \u20667 + 7 = 14\u2069."},
		{"ar", true, "قل الضعف: \u20677 + 7 = 14\u2069."},
	}
	for _, test := range tests {
		l := *in(t, c, test.tag)
		l.equationsRTL = test.equationsRTL
		if got := l.Plain(line); got != test.want {
			t.Errorf("%s: Plain: want %q, got %q", test.tag, test.want, got)
		}
	}
	ar := in(t, c, "ar")
	for _, run := range ar.Say(line) {
		if run.Kind == RunEquation && run.Text != "7 + 7 = 14" {
			t.Errorf("Say: want the bare equation, got %q", run.Text)
		}
	}
}

func TestRuns(t *testing.T) {
	es := in(t, fixtures(t), "es")
	fox := phrase.Person("Who", "character.fox")
	tests := []struct {
		name string
		line phrase.Line
		want Text
	}{
		{"counted", soup("answer-end", bowls("Result", 14)),
			Text{{RunPlain, "Todavía había sopa para "}, {RunCounted, "14\u00a0platos"}, {RunPlain, "."}}},
		{"blank", soup("answer-end", phrase.Blank("Result", "thing.soup-bowl")),
			Text{{RunPlain, "Todavía había sopa para "}, {RunBlank, "____"}, {RunPlain, "\u00a0platos"}, {RunPlain, "."}}},
		{"person", phrase.Say("own.has", fox, phrase.Blank("Gap", "")),
			Text{{RunPerson, "El zorro"}, {RunPlain, " tiene "}, {RunBlank, "____"}, {RunPlain, "."}}},
		{"equation", phrase.Say("strategy.doubles.fill", phrase.Expression("Equation", problem.Sum(4, 4))),
			Text{{RunPlain, "Di el doble: "}, {RunEquation, "4 + 4"}, {RunPlain, "."}}},
		{"number", phrase.Say("page.weeks", phrase.Number("N", 3)), Text{{RunNumber, "3"}, {RunPlain, "\u00a0semanas"}}},
	}
	for _, test := range tests {
		got := es.Say(test.line)
		if len(got) != len(test.want) {
			t.Errorf("%s: Say: want %v, got %v", test.name, test.want, got)
			continue
		}
		for i := range got {
			if got[i] != test.want[i] {
				t.Errorf("%s: run %d: want %v, got %v", test.name, i, test.want[i], got[i])
			}
		}
	}
}

func TestSentenceStart(t *testing.T) {
	l := &Language{}
	turkish := &Language{header: header{turkic: true}}
	capitals := []struct {
		lang       *Language
		text, want string
	}{
		{l, "cuántas conchas", "Cuántas conchas"},
		{l, "“eight shells", "“Eight shells"},
		{l, "¿cuántas", "¿Cuántas"},
		{l, "8 shells", "8 shells"},
		{l, "сколько", "Сколько"},
		{l, "éclair", "Éclair"},
		{l, "კარგი", "კარგი"}, // Georgian has no capitals at the start of a sentence (Unicode Standard, 7.7)
		{l, "كم صدفة", "كم صدفة"},
		{l, "ile", "Ile"},
		{turkish, "ile", "İle"}, // Unicode SpecialCasing: Turkish i
	}
	for _, test := range capitals {
		if got := test.lang.capitalise(test.text); got != test.want {
			t.Errorf("capitalise(%q): want %q, got %q", test.text, test.want, got)
		}
	}
	places := []struct {
		text string
		want bool
		why  string
	}{
		{"{{.X}} a", true, "at the start"},
		{"¿{{.X}}?", true, "after an opening mark"},
		{"«{{.X}}»", true, "in quotes"},
		{"a. {{.X}}", false, "after one letter and a full stop: an abbreviation"},
		{"Da. {{.X}}", true, "after a sentence"},
		{"Da! “{{.X}}", true, "after a sentence, in quotes"},
		{"3.{{.X}}", false, "no space after the full stop"},
		{"走。{{.X}}", true, "the full stop of Chinese needs no space"},
		{"Da: {{.X}}", false, "a colon ends nothing"},
		{"a {{.X}}", false, "in the middle"},
	}
	for _, test := range places {
		tpl, wrong := parseTemplate(nil, test.text)
		if wrong != nil {
			t.Fatal(wrong)
		}
		for _, s := range tpl {
			if s.place != "" && s.capital != test.want {
				t.Errorf("%q: capital: want %v, got %v: %s", test.text, test.want, s.capital, test.why)
			}
		}
	}
}
