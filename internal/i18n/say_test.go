package i18n

import (
	"os"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// fixtures loads the small languages of testdata; all of them must be sound.
func fixtures(t testing.TB) *Catalog {
	t.Helper()
	c, problems := Load(nil, os.DirFS("testdata/locales"))
	if len(problems) > 0 {
		t.Fatalf("Load: %v", problems)
	}
	return c
}

func in(t testing.TB, c *Catalog, tag string) *Language {
	t.Helper()
	l, ok := c.Language(tag)
	if !ok {
		t.Fatalf("Language(%q) is not in the catalog", tag)
	}
	return l
}

func TestSay(t *testing.T) {
	a, b := phrase.Person("A", "person.lina"), phrase.Person("B", "person.omar")
	shells := func(name string, n int) phrase.Value { return phrase.Counted(name, "thing.shell", n) }
	story := "story.add-to-result.1."
	tests := []struct {
		name, tag string
		line      phrase.Line
		want, why string
	}{
		{"one", "en", phrase.Say(story+"start", a, shells("Start", 1)), "Lina has 1 shell.", "CLDR: en one is 1"},
		{"zero", "en", phrase.Say(story+"start", a, shells("Start", 0)), "Lina has 0 shells.", "CLDR: en 0 is other"},
		{"question", "en", phrase.Say(story+"ask", a, phrase.Asked("Ask", "thing.shell")), "How many shells does Lina have now?", "a place at the start is capitalised"},
		{"after an opening mark", "es", phrase.Say(story+"ask", phrase.Asked("Ask", "thing.pot")), "¿Cuántos tarros tiene ahora?", "¿ stands before the first letter"},
		{"person left out", "es", phrase.Say(story+"change", a, shells("Change", 6)), "Encuentra 6 conchas.", "the verb says who"},
		{"form", "en", phrase.Say("story.compare.1.answer", a, b, shells("Difference", 1)), "Lina has 1 more shell than Omar.", ""},
		{"form after the noun", "es", phrase.Say("story.compare.1.answer", a, b, shells("Difference", 5)), "Lina tiene 5 conchas más que Omar.", ""},
		{"case", "ru", phrase.Say(story+"change", a, shells("Change", 21)).About("person.lina"), "Лина нашла 21 ракушку.", "21 is one in Russian (CLDR)"},
		{"gender of the subject", "ru", phrase.Say(story+"change", phrase.Person("A", "person.omar"), shells("Change", 5)).About("person.omar"), "Омар нашёл 5 ракушек.", ""},
		{"gender of the first person", "ru", phrase.Say(story+"change", phrase.Person("A", "person.omar"), shells("Change", 5)), "Омар нашёл 5 ракушек.", "no subject is given"},
		{"case of a name", "ru", phrase.Say(story+"start", a, shells("Start", 2)), "У Лины 2 ракушки.", ""},
		{"case of a message", "ru", phrase.Say("help.way", phrase.Message("Way", "strategy.make-ten.name")), "Здесь можно воспользоваться дополнением до десяти.", ""},
		{"message", "en", phrase.Say("help.way", phrase.Message("Way", "strategy.make-ten.name")), "Make ten may help here.", ""},
		{"block named", "en", phrase.Say("help.way", phrase.Message("Way", "strategy.make-ten")), "Make ten may help here.", "a block stands for its name"},
		{"dual without the number", "ar", phrase.Say(story+"start", a, shells("Start", 2)), "عند لينا صدفتان.", "the dual says two by itself"},
		{"dual in a case", "ar", phrase.Say(story+"change", a, shells("Change", 2)), "وجدت لينا صدفتين.", ""},
		{"few", "ar", phrase.Say(story+"start", a, shells("Start", 103)), "عند لينا 103 صدفات.", "CLDR: 103 is few"},
		{"words", "en", phrase.Say(story+"start", a, shells("Start", 16).InWords()), "Lina has sixteen shells.", ""},
		{"words missing", "en", phrase.Say(story+"start", a, shells("Start", 17).InWords()), "Lina has 17 shells.", "no word for 17 in the table"},
		{"feminine words", "es", phrase.Say(story+"start", a, shells("Start", 21).InWords()), "Lina tiene veintiuna conchas.", "CLDR RBNF, spellout-cardinal-feminine"},
		{"masculine words", "es", phrase.Say(story+"start", a, phrase.Counted("Start", "thing.pot", 21).InWords()), "Lina tiene veintiún tarros.", "CLDR RBNF, spellout-cardinal-masculine"},
		{"shared words", "es", phrase.Say(story+"start", a, shells("Start", 2).InWords()), "Lina tiene dos conchas.", "only the numbers that differ are in the gender's table"},
		{"words in a case", "ru", phrase.Say(story+"change", a, shells("Change", 1).InWords()), "Лина нашла одну ракушку.", ""},
		{"words in a gender", "ru", phrase.Say(story+"start", a, shells("Start", 2).InWords()), "У Лины две ракушки.", ""},
		{"blank", "en", phrase.Say(story+"answer", a, phrase.Blank("Result", "thing.shell")), "Lina has ____ shells now.", ""},
		{"blank alone", "en", phrase.Say(story+"answer", a, phrase.Blank("Result", "")), "Lina has ____ now.", ""},
		{"bare numbers", "en", phrase.Say("strategy.make-ten.fill", phrase.Number("Need", 2), phrase.Number("A", 8), phrase.Expression("Equation", problem.Sum(10, 4))), "Put 2 with 8 to make ten. Now you have 10 + 4.", ""},
		{"counted message", "ru", phrase.Say("page.weeks", phrase.Number("N", 22)), "22 недели", "CLDR: ru 22 is few"},
		{"beyond the table", "ar", phrase.Say("page.weeks", phrase.Number("N", 1003)), "1003 أسابيع", "CLDR: ar 1003 is few"},
		{"own text", "en", phrase.Say("page.title", phrase.Text("Week", "14 September")), "At home, week of 14 September", ""},
		{"Vietnamese", "vi", phrase.Say(story+"start", a, shells("Start", 1)), "Lina có 1 vỏ sò.", "CLDR 48.2: vi has other alone"},
		{"Haitian Creole", "ht", phrase.Say(story+"ask", a, phrase.Asked("Ask", "thing.shell")), "Konbyen kokiy Lina genyen kounye a?", ""},
	}
	c := fixtures(t)
	for _, test := range tests {
		t.Run(test.tag+" "+test.name, func(t *testing.T) {
			if got := in(t, c, test.tag).Say(test.line).String(); got != test.want {
				t.Errorf("Say(%q)\nwant %s\ngot  %s\n%s", test.line.ID, test.want, got, test.why)
			}
		})
	}
}

// panicOf is what a function panics with; nil when it does not.
func panicOf(f func()) (said any) {
	defer func() { said = recover() }()
	f()
	return nil
}

func TestSayBugs(t *testing.T) {
	tests := []struct {
		name string
		line phrase.Line
		want string
	}{
		{"unknown id", phrase.Say("page.titel"), `i18n: saying "page.titel" in ru: there is no such message`},
		{"no value", phrase.Say("page.title"), `i18n: saying "page.title" in ru: the place {{.Week}} has no value`},
		{"unknown thing", phrase.Say("story.add-to-result.1.start", phrase.Person("A", "person.lina"), phrase.Counted("Start", "thing.shel", 3)), `i18n: saying "story.add-to-result.1.start" in ru: "thing.shel" in {{.Start}} has no form ""`},
		{"nobody to agree with", phrase.Say("story.add-to-result.1.change", phrase.Counted("Change", "thing.shell", 3)), `i18n: saying "story.add-to-result.1.change" in ru: no form for the gender of ""`},
		{"no number", phrase.Say("page.weeks"), `i18n: saying "page.weeks" in ru: the place {{.N}} has no value`},
	}
	ru := in(t, fixtures(t), "ru")
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if got := panicOf(func() { ru.Say(test.line) }); got != test.want {
				t.Errorf("panic\nwant %s\ngot  %v", test.want, got)
			}
		})
	}
	if got, want := panicOf(func() { ru.Word("page.title") }), "i18n: ru has no word page.title"; got != want {
		t.Errorf("panic of Word: want %s, got %v", want, got)
	}
}
