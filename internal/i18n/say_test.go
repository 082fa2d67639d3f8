package i18n

import (
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// fixtures are the small languages of testdata; all of them must be sound.
func fixtures(t testing.TB) *Catalog {
	t.Helper()
	c, problems := smallOnce()
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

// soup is a sentence of the event of the fixtures.
func soup(key string, values ...phrase.Value) phrase.Line {
	return phrase.Say("event.kitchen.soup."+key, values...)
}

// bowls fills a place with a number of them.
func bowls(name string, n int) phrase.Value { return phrase.Counted(name, "thing.soup-bowl", n) }

func TestSay(t *testing.T) {
	fox, heron := phrase.Person("Who", "character.fox"), phrase.Person("Who", "character.heron")
	tests := []struct {
		name, tag string
		line      phrase.Line
		want, why string
	}{
		{"one", "en", soup("start", bowls("Start", 1)), "He had cooked 1\u00a0bowl of soup.", "CLDR: en one is 1"},
		{"zero", "en", soup("start", bowls("Start", 0)), "He had cooked 0\u00a0bowls of soup.", "CLDR: en 0 is other"},
		{"question", "en", soup("ask-end"), "How many bowls of soup could he still fill?", ""},
		{"form", "en", soup("later-in", bowls("Later", 1)), "Then he chopped more carrots and cooked 1\u00a0more bowl.", ""},
		{"form after the noun", "es", soup("later-in", bowls("Later", 5)), "Entonces el abuelo picó zanahorias y preparó 5\u00a0platos más.", ""},
		{"case", "ru", soup("out", bowls("Change", 21)), "Соседи с верхнего этажа съели 21\u00a0тарелку супа.", "21 is one in Russian (CLDR)"},
		{"extra", "ru", soup("extra", phrase.Counted("Extra", "thing.floor", 2)), "В доме было 2\u00a0этажа.", "a verb that bends with the number"},
		{"gender of the subject", "ru", phrase.Say("own.starter", heron).About("character.heron"), "Однажды журавль пошёл гулять.", ""},
		{"gender of the first person", "ru", phrase.Say("own.starter", fox), "Однажды лиса пошла гулять.", "no subject is given"},
		{"gender of the person behind a number", "ru", phrase.Say("own.starter", phrase.Number("N", 3), fox), "Однажды лиса пошла гулять.", ""},
		{"gender of the first of two people", "ru", phrase.Say("own.starter", heron, phrase.Person("With", "character.fox")), "Однажды журавль пошёл гулять.", ""},
		{"case of a name", "ru", phrase.Say("own.has", fox, phrase.Blank("Gap", "")), "У лисы есть ____.", ""},
		{"capital", "en", phrase.Say("own.has", fox, phrase.Blank("Gap", "")), "The fox has ____.", "a place at the start is capitalised"},
		{"case of a message", "ru", phrase.Say("help.way", phrase.Message("Way", "strategy.make-ten.name")), "Здесь можно воспользоваться дополнением до десяти.", ""},
		{"message", "en", phrase.Say("help.way", phrase.Message("Way", "strategy.make-ten.name")), "Make ten may help here.", ""},
		{"block named", "en", phrase.Say("help.way", phrase.Message("Way", "strategy.make-ten")), "Make ten may help here.", "a block stands for its name"},
		{"sentence in a message", "en", phrase.Say("help.way", phrase.Message("Way", "event.kitchen.soup.so-out")), "Then they carried their spoons up again, very slowly. may help here.", ""},
		{"dual without the number", "ar", soup("end", bowls("Result", 2)), "بعد ذلك، بقي في القدر صحنا حساء.", "the dual says two by itself"},
		{"dual in a case", "ar", soup("out", bowls("Change", 2)), "أكل جيران الطابق الأعلى صحني حساء.", ""},
		{"few", "ar", soup("end", bowls("Result", 103)), "بعد ذلك، بقي في القدر 103\u00a0صحون حساء.", "CLDR: 103 is few"},
		{"words", "en", soup("start", bowls("Start", 16).InWords()), "He had cooked sixteen\u00a0bowls of soup.", ""},
		{"words missing", "en", soup("start", bowls("Start", 17).InWords()), "He had cooked 17\u00a0bowls of soup.", "no word for 17 in the table"},
		{"masculine words", "es", soup("start", bowls("Start", 21).InWords()), "En su olla había sopa para veintiún\u00a0platos.", "CLDR RBNF, spellout-cardinal-masculine"},
		{"words in a case", "ru", soup("out", bowls("Change", 1).InWords()), "Соседи с верхнего этажа съели одну\u00a0тарелку супа.", ""},
		{"words in a gender", "ru", soup("start", bowls("Start", 2).InWords()), "Он сварил супа на две\u00a0тарелки.", ""},
		{"blank", "en", soup("answer-out", phrase.Blank("Change", "thing.soup-bowl")), "The top floor ate ____\u00a0bowls of soup.", ""},
		{"blank in a form", "en", soup("answer-end", phrase.Blank("Result", "thing.soup-bowl")), "He could still fill ____\u00a0bowls.", ""},
		{"bare numbers", "en", phrase.Say("strategy.make-ten.fill", phrase.Number("Need", 2), phrase.Number("A", 8), phrase.Expression("Equation", problem.Sum(10, 4))), "Put 2 with 8 to make ten. Now you have 10 + 4.", ""},
		{"counted message", "ru", phrase.Say("page.weeks", phrase.Number("N", 22)), "22\u00a0недели", "CLDR: ru 22 is few"},
		{"beyond the table", "ar", phrase.Say("page.weeks", phrase.Number("N", 1003)), "1003\u00a0أسابيع", "CLDR: ar 1003 is few"},
		{"own text", "en", phrase.Say("page.title", phrase.Text("Week", "14 September")), "At home, week of 14 September", ""},
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
		{"unknown event", phrase.Say("event.kitchen.soop.open"), `i18n: saying "event.kitchen.soop.open" in ru: there is no such event`},
		{"unknown sentence", soup("opne"), `i18n: saying "event.kitchen.soup.opne" in ru: there is no such sentence`},
		{"unknown thing", soup("out", phrase.Counted("Change", "thing.soup", 3)), `i18n: saying "event.kitchen.soup.out" in ru: "thing.soup" in {{.Change}} has no form "accusative"`},
		{"nobody to agree with", phrase.Say("own.starter"), `i18n: saying "own.starter" in ru: no form for the gender of ""`},
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

// What follows a place follows its sound, and what stands alone stays as it is written.
func TestEndingFollowsThePlace(t *testing.T) {
	l := &Language{header: header{ending: withParticle}, messages: map[string]*ready{
		"page.fox": {text: sentenceOf(t, "{{.Name}}은(는) 갔다.")}, "page.alone": {text: sentenceOf(t, "은(는)은 조사다.")},
	}}
	for name, want := range map[string]string{"여우": "여우는 갔다.", "곰": "곰은 갔다."} {
		if got := l.Say(phrase.Say("page.fox", phrase.Text("Name", name))).String(); got != want {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
	if got, want := l.Say(phrase.Say("page.alone")).String(), "은(는)은 조사다."; got != want {
		t.Errorf("alone: %q, want %q", got, want)
	}
}
