package i18n

import (
	"testing"

	goi18n "github.com/nicksnyder/go-i18n/v2/i18n"
	"github.com/pelletier/go-toml/v2"
)

// Number words of the files that come with the program. Source: Unicode CLDR
// 48.2, rule-based number formats (cldr-rbnf), rule set beside each row; the
// Spanish counting form "uno" is the rule set spellout-numbering.
func TestNumberWordsOfLocales(t *testing.T) {
	tests := []struct {
		tag, table, rules string
		want              map[string]string
	}{
		{"en", "", "spellout-cardinal", map[string]string{"1": "one", "2": "two", "16": "sixteen", "21": "twenty-one", "31": "thirty-one", "100": "one hundred"}},
		{"es", "masculine", "spellout-cardinal-masculine", map[string]string{"1": "un", "2": "dos", "16": "dieciséis", "21": "veintiún", "31": "treinta y un", "100": "cien"}},
		{"es", "feminine", "spellout-cardinal-feminine", map[string]string{"1": "una", "2": "dos", "16": "dieciséis", "21": "veintiuna", "31": "treinta y una", "100": "cien"}},
		{"uk", "masculine", "spellout-cardinal-masculine", map[string]string{"1": "один", "2": "два", "16": "шістнадцять", "21": "двадцять один", "31": "тридцять один", "100": "сто"}},
		{"uk", "feminine", "spellout-cardinal-feminine", map[string]string{"1": "одна", "2": "дві", "16": "шістнадцять", "21": "двадцять одна", "31": "тридцять одна", "100": "сто"}},
		{"fr", "feminine", "spellout-cardinal-feminine", map[string]string{"1": "une", "2": "deux", "16": "seize", "21": "vingt-et-une", "31": "trente-et-une", "100": "cent"}},
		{"pt", "feminine", "spellout-cardinal-feminine", map[string]string{"1": "uma", "2": "duas", "16": "dezesseis", "21": "vinte e uma", "31": "trinta e uma", "100": "cem"}},
		{"pt-BR", "feminine", "spellout-cardinal-feminine", map[string]string{"1": "uma", "2": "duas", "16": "dezesseis", "21": "vinte e uma", "31": "trinta e uma", "100": "cem"}},
		{"pl", "feminine", "spellout-cardinal-feminine", map[string]string{"1": "jedna", "2": "dwie", "16": "szesnaście", "21": "dwadzieścia jeden", "31": "trzydzieści jeden", "100": "sto"}},
		{"sw", "", "spellout-cardinal", map[string]string{"1": "moja", "2": "mbili", "16": "kumi na sita", "21": "ishirini na moja", "31": "thelathini na moja", "100": "mia moja"}},
	}
	checked := 0
	for _, test := range tests {
		f := files(t)[test.tag]
		if f == nil {
			continue // no such file, or not in a quick run
		}
		for n, want := range test.want {
			m := f.Message("words." + test.table + "." + n)
			if m == nil {
				m = f.Message("words." + n)
			}
			if m == nil {
				continue // written in digits
			}
			checked++
			if m.Other != want {
				t.Errorf("%s:%d: %s in %s: want %q, got %q", f.Path, m.Line, n, test.rules, want, m.Other)
			}
		}
	}
	if checked == 0 {
		t.Error("no number word was checked: locales/en.toml has lost its table")
	}
}

// go-i18n itself, reading the files in its own way, finds the same messages.
func TestFilesAreOfGoI18nsFormat(t *testing.T) {
	for tag, f := range files(t) {
		theirs, err := goi18n.ParseMessageFileBytes([]byte(f.Text), tag+".toml", map[string]goi18n.UnmarshalFunc{"toml": toml.Unmarshal})
		if err != nil {
			t.Fatal(err)
		}
		ours := map[string]string{} // texts of events by their ids
		for _, e := range f.Events {
			for _, s := range append(e.Sentences, Sentence{Key: noteKey, Text: e.Note}, Sentence{Key: sourceKey, Text: e.Source}) {
				if s.Text != "" {
					ours[e.ID+"."+s.Name()] = s.Text
				}
			}
		}
		if len(theirs.Messages) != len(f.Messages)+len(ours) {
			t.Errorf("%s: go-i18n reads %d messages, we read %d", tag, len(theirs.Messages), len(f.Messages)+len(ours))
		}
		for _, m := range theirs.Messages {
			if text, ok := ours[m.ID]; ok && text == m.Other {
				continue
			}
			if got := f.Message(m.ID); got == nil || got.Message != *m {
				t.Errorf("%s: %s: go-i18n reads %+v, we read %+v", tag, m.ID, m, got)
			}
		}
	}
}
