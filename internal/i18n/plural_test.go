package i18n

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"golang.org/x/text/feature/plural"
	"golang.org/x/text/language"
	"golang.org/x/text/language/display"
)

// Source: Unicode CLDR 48.2, supplemental plurals (cardinal), read in the
// published JSON data. ht has no rule there; that its noun does not change is
// from memory.
func TestPlurals(t *testing.T) {
	tests := []struct{ tag, want string }{
		{"ar", "0 zero, 1 one, 2 two, 3 few, 10 few, 11 many, 99 many, 100 other, 101 other, 103 few, 1000 other, 1003 few, 1011 many"},
		{"ru", "1 one, 2 few, 5 many, 11 many, 12 many, 21 one, 22 few, 25 many, 100 many, 1001 one"},
		{"uk", "0 many, 1 one, 2 few, 5 many, 11 many, 21 one, 22 few, 100 many"},
		{"pl", "1 one, 2 few, 5 many, 12 many, 21 many, 22 few"},
		{"fr", "0 one, 1 one, 2 other, 1000000 many"},
		{"pt", "0 one, 1 one, 2 other"},
		{"pt-PT", "0 other, 1 one, 2 other"},
		{"hi", "0 one, 1 one, 2 other"},
		{"am", "0 one, 1 one, 2 other"},
		{"es", "0 other, 1 one, 2 other, 1000000 many"},
		{"es-MX", "0 other, 1 one, 2 other"},
		{"fil", "3 one, 4 other, 5 one, 6 other, 9 other, 10 one, 14 other"},
		{"en", "0 other, 1 one, 2 other"},
		{"so", "0 other, 1 one, 2 other"},
		{"sw", "0 other, 1 one, 2 other"},
		{"ur", "0 other, 1 one, 2 other"},
		{"vi", "0 other, 1 other, 2 other, 100 other, 1001 other"},
		{"zh", "0 other, 1 other, 2 other, 100 other"},
		{"zh-Hant", "0 other, 1 other, 2 other, 100 other"},
		{"ko", "0 other, 1 other, 2 other, 100 other"},
		{"ht", "0 other, 1 other, 2 other, 100 other"},
	}
	for _, test := range tests {
		t.Run(test.tag, func(t *testing.T) {
			p, err := NewPlurals(language.MustParse(test.tag))
			if err != nil {
				t.Fatal(err)
			}
			var got []string
			for _, row := range strings.Split(test.want, ", ") {
				var n int
				var name string
				if _, err := fmt.Sscanf(row, "%d %s", &n, &name); err != nil {
					t.Fatal(err)
				}
				got = append(got, fmt.Sprintf("%d %v", n, p.Of(n)))
			}
			if got := strings.Join(got, ", "); got != test.want {
				t.Errorf("categories\nwant %s\ngot  %s", test.want, got)
			}
		})
	}
}

// How many of the numbers 0 to 100 fall into each category. Source: counted
// over the CLDR 48.2 rules with an independent script.
func TestPluralCounts(t *testing.T) {
	tests := []struct{ tag, want string }{
		{"ar", "zero 1, one 1, two 1, few 8, many 89, other 1"},
		{"ru", "one 9, few 27, many 65"},
		{"uk", "one 9, few 27, many 65"},
		{"pl", "one 1, few 27, many 73"},
		{"fil", "one 71, other 30"},
	}
	for _, test := range tests {
		p, err := NewPlurals(language.MustParse(test.tag))
		if err != nil {
			t.Fatal(err)
		}
		var counts [Other + 1]int
		for n := range 101 {
			counts[p.Of(n)]++
		}
		var got []string
		for c, n := range counts {
			if n > 0 {
				got = append(got, fmt.Sprintf("%v %d", Category(c), n))
			}
		}
		if got := strings.Join(got, ", "); got != test.want {
			t.Errorf("%s: want %s, got %s", test.tag, test.want, got)
		}
	}
}

func TestNoRule(t *testing.T) {
	if _, err := NewPlurals(language.MustParse("qu")); err == nil {
		t.Error("NewPlurals(qu): want an error, CLDR has no rule for Quechua")
	}
}

// An independent implementation of older data: golang.org/x/text holds CLDR
// 32. For these languages and numbers the rules have not changed since.
func TestPluralsAgainstXText(t *testing.T) {
	forms := map[plural.Form]Category{plural.Zero: Zero, plural.One: One, plural.Two: Two, plural.Few: Few, plural.Many: Many, plural.Other: Other}
	for _, tag := range []string{"en", "es", "fr", "pt", "pt-PT", "vi", "zh", "ko", "ar", "uk", "ru", "pl", "fil", "so", "sw", "hi", "ur", "am", "fa", "ne", "cy"} {
		parsed := language.MustParse(tag)
		p, err := NewPlurals(parsed)
		if err != nil {
			t.Fatal(err)
		}
		for n := range 1201 {
			if got, want := p.Of(n), forms[plural.Cardinal.MatchPlural(parsed, n, 0, 0, 0, 0)]; got != want {
				t.Errorf("%s: %d: want %v, got %v", tag, n, want, got)
			}
		}
	}
}

// The table is learnt from some numbers; go-i18n gives the same for all of them,
// in every language that x/text knows a name for.
func TestPluralsOfEveryNumber(t *testing.T) {
	languages, every, oneOf := 0, 1, 1
	if testing.Short() {
		every, oneOf = 13, 7
	}
	for i, tag := range display.Supported.Tags() {
		if i%oneOf > 0 {
			continue
		}
		p, err := NewPlurals(tag)
		if err != nil || p.localizer == nil {
			continue
		}
		languages++
		asksAsOften(t, tag.String(), p, every)
	}
	for _, tag := range []string{"br", "gv", "kw", "cy", "ga", "gd", "mt", "lt", "lv", "sl", "tzm", "lag", "shi", "he", "is", "mk", "dsb"} { // rules of their own
		p, err := NewPlurals(language.MustParse(tag))
		if err != nil {
			t.Errorf("%s: %v", tag, err)
			continue
		}
		asksAsOften(t, tag, p, every)
	}
	if languages < 80/oneOf {
		t.Errorf("only %d languages were asked", languages)
	}
}

// asksAsOften holds the table against go-i18n, for one number of so many and for those
// at its ends.
func asksAsOften(t *testing.T, tag string, p *Plurals, every int) {
	t.Helper()
	ask := func(n int) {
		if got, want := p.Of(n), p.ask(n); got != want {
			t.Errorf("%s: %d: want %v, got %v", tag, n, want, got)
		}
	}
	for n := 0; n <= most; n += every {
		ask(n)
	}
	ask(most) // alone in Cornish (CLDR 48.2: two)
	ask(most + 1)
}

// The smallest numbers of a category, as many as there are: in Arabic one number is dual
// (CLDR 48.2), and none in English.
func TestExamples(t *testing.T) {
	for _, row := range []struct {
		tag      string
		category Category
		n        int
		want     []int
	}{
		{"ar", Two, 3, []int{2}}, {"ar", Few, 3, []int{3, 4, 5}}, {"ar", Few, 1, []int{3}}, {"en", Two, 3, nil},
		{"en", Other, 2, []int{0, 2}}, {"ru", Many, 4, []int{0, 5, 6, 7}},
	} {
		p, err := NewPlurals(language.MustParse(row.tag))
		if err != nil {
			t.Fatal(err)
		}
		if got := p.Examples(row.category, row.n); !slices.Equal(got, row.want) {
			t.Errorf("%s: up to %d of %v are %v, want %v", row.tag, row.n, row.category, got, row.want)
		}
	}
}

// A message has plural forms where English has some, where it counts a thing, and where
// it has a number and its language writes any category but other.
func TestIsPlural(t *testing.T) {
	message := func(key string, english source) *Message {
		return &Message{Family: "page", Key: key, English: &Message{source: english}}
	}
	number := source{places: []string{"N"}}
	for _, c := range Categories() {
		m := message("weeks", number)
		m.lines[c] = 7
		if got := m.isPlural(); got != (c != Other) {
			t.Errorf("with a number and a text for %v alone it is plural: %v", c, got)
		}
		without := message("weeks", source{places: []string{"Way"}})
		if without.lines[c] = 7; without.isPlural() {
			t.Errorf("without a number and with a text for %v it is plural", c)
		}
	}
	if m := message("weeks", source{plural: true}); !m.isPlural() || !m.numbered() {
		t.Error("English has plural forms, and it has none")
	}
	for key, want := range map[string][2]bool{"count": {true, true}, "count-bowl": {true, true}, "blank": {false, true}, "gender": {false, false}} {
		m := message(key, source{})
		m.Family = "thing"
		if m.isPlural() != want[0] || m.numbered() != want[1] {
			t.Errorf("thing.pot.%s: plural %v, with a number %v; want %v", key, m.isPlural(), m.numbered(), want)
		}
	}
}
