package i18n

import (
	"os"
	"strings"
	"testing"
	"testing/fstest"
)

// fixture reads a file of testdata with some text in it replaced.
func fixture(t testing.TB, tag, old, new string) []byte {
	t.Helper()
	data, err := os.ReadFile("testdata/locales/" + tag + ".toml")
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(string(data), old) {
		t.Fatalf("%s.toml has no %q to replace", tag, old)
	}
	return []byte(strings.Replace(string(data), old, new, 1))
}

// problemsOf loads a language whose file was changed, and gives what is wrong with it,
// what it lacks and what it leaves out.
func problemsOf(t testing.TB, tag, old, new string) string {
	t.Helper()
	text := fixture(t, tag, old, new)
	if !testing.Short() { // TestLoadKeepsSoundLanguages is quicker
		c, problems := Load([]string{tag}, fstest.MapFS{"en.toml": {Data: fixture(t, "en", "", "")}, tag + ".toml": {Data: text}})
		if _, ok := c.Language(tag); ok && len(problems) > 0 {
			t.Errorf("%s has problems and is in the catalog", tag)
		}
	}
	f, problems := ReadFile(tag, fstest.MapFS{tag + ".toml": {Data: text}})
	if len(problems) > 0 {
		return problems.Error()
	}
	source, wrong := smallSource()
	if len(wrong) > 0 {
		t.Fatal(wrong)
	}
	p := source.Prove(f, maxProblems)
	problems = append(p.Problems(), p.Unused...)
	problems.Sort()
	return problems.Error()
}

type problemTest struct{ name, tag, old, new, want string }

func runProblems(t *testing.T, tests []problemTest) {
	t.Helper()
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			want := strings.TrimPrefix(strings.ReplaceAll(test.want, "\n\t\t\t", "\n"), "\n")
			if got := problemsOf(t, test.tag, test.old, test.new); got != want {
				t.Errorf("%s: %q for %q\nwant\n%s\ngot\n%s", test.tag, test.new, test.old, want, got)
			}
		})
	}
}

func TestHeaderProblems(t *testing.T) {
	runProblems(t, []problemTest{
		{"what is held back", "ar", `digits = `, "hold = \"kitchen.soup, compair\"\ndigits = ", `
			locales/ar.toml:4: hold names "compair", which is neither an event of the file nor a kind of story
			  hint: did you mean "compare"?`},
		{"direction of the script", "ar", `"rtl"`, `"ltr"`, `
			locales/ar.toml:3: direction does not fit the Arab script of ar
			  hint: write direction = "rtl"`},
		{"direction misspelt", "ar", `"rtl"`, `"rlt"`, `
			locales/ar.toml:3: direction is "rlt"
			  hint: did you mean "rtl"? there are: ltr, rtl`},
		{"direction missing", "ar", `direction = "rtl"`, ``, `
			locales/ar.toml:2: [language] does not say its direction
			  hint: write direction = "ltr" or "rtl" under [language]`},
		{"digits of the script", "es", `"latn"`, `"arab"`, `
			locales/es.toml:4: digits "arab" do not belong to the Latn script of es
			  hint: write digits = "latn"`},
		{"digits misspelt", "ar", `"latn"`, `"arabic"`, `
			locales/ar.toml:4: digits is "arabic"
			  hint: did you mean "arab"? there are: latn, arab, arabext, deva`},
		{"equations", "es", `equations = "ltr"`, `equations = "rtl"`, `
			locales/es.toml:5: equations run from left to right in a left-to-right language
			  hint: write equations = "ltr"`},
		{"review", "es", `review = "draft"`, `review = "done"`, `
			locales/es.toml:6: review is "done"
			  hint: write review = "draft", or reviewed = "M. G., 2026-10-01" once a fluent reader has signed it`},
		{"source elsewhere", "es", `review = "draft"`, `review = "source"`, `
			locales/es.toml:6: review is "source"
			  hint: write review = "draft", or reviewed = "M. G., 2026-10-01" once a fluent reader has signed it`},
		{"reviewed without a date", "es", `review = "draft"`, `reviewed = "M. G."`, `
			locales/es.toml:6: reviewed is "M. G."; it needs a name or initials, a comma and a date
			  hint: write review = "draft", or reviewed = "M. G., 2026-10-01" once a fluent reader has signed it`},
		{"both", "es", `review = "draft"`, "review = \"draft\"\nreviewed = \"M. G., 2026-10-01\"", `
			locales/es.toml:7: [language] has both review and reviewed
			  hint: write review = "draft", or reviewed = "M. G., 2026-10-01" once a fluent reader has signed it`},
		{"neither", "es", `review = "draft"`, "", `
			locales/es.toml:2: [language] does not say whether it was reviewed
			  hint: write review = "draft", or reviewed = "M. G., 2026-10-01" once a fluent reader has signed it`},
		{"unknown key", "es", `review = "draft"`, "review = \"draft\"\ndigit = \"latn\"", `
			locales/es.toml:7: [language] has no "digit"
			  hint: did you mean "digits"? there are: name, direction, digits, equations, review, reviewed, read, plurals, hold`},
		{"rule of no language", "es", `review = "draft"`, "review = \"draft\"\nplurals = \"xx\"", `
			locales/es.toml:7: plurals: "xx" is not a language tag
			  hint: write the tag of a language with the same plural rule, or "other" where nouns never change`},
		{"language without a rule", "es", `review = "draft"`, "review = \"draft\"\nplurals = \"qu\"", `
			locales/es.toml:7: no plural rule is known for "qu"
			  hint: write plurals = "other" under [language] where nouns never change after a number, or the tag of a language with the same rule`},
	})
}

func TestFileProblems(t *testing.T) {
	runProblems(t, []problemTest{
		{"not TOML", "es", `language = "Idioma"`, `language = Idioma`, `
			locales/es.toml:24: "Idioma" has no quotes around it
			  hint: write language = "Idioma"`},
		{"quote left open", "es", `language = "Idioma"`, `language = "Idioma`, `
			locales/es.toml:24: the quote at the end is missing
			  hint: write language = "Idioma"`},
		{"typographic quotes", "es", `language = "Idioma"`, `language = “Idioma”`, `
			locales/es.toml:24: "“" is a curly quote
			  hint: use straight quotes: language = "..."`},
		{"two slips", "es", `language = "Idioma"`, "language = Idioma\nlengua: \"x\"", `
			locales/es.toml:24: "Idioma" has no quotes around it
			  hint: write language = "Idioma"
			locales/es.toml:25: a setting is written with "=", not ":"
			  hint: write lengua = "x"`},
		{"written twice", "es", `language = "Idioma"`, "language = \"Idioma\"\nlanguage = \"Lengua\"", `
			locales/es.toml:25: "page.language" is written twice
			  hint: keep one of the two; the first is on line 24`},
		{"table twice", "es", `[strategy.doubles]`, `[strategy.make-ten]`, `
			locales/es.toml:31: "strategy.make-ten" is written twice
			  hint: keep one of the two; the first is on line 27`},
		{"not text", "es", `language = "Idioma"`, `language = 7`, `
			locales/es.toml:24: page.language is not text
			  hint: put it in double quotes`},
		{"list", "es", `language = "Idioma"`, `language = ["Idioma"]`, `
			locales/es.toml:24: page.language is not text
			  hint: put it in double quotes`},
		{"list of tables", "es", `[strategy.doubles]`, `[[strategy.doubles]]`, `
			locales/es.toml:31: double brackets make a list, and a language file has none
			  hint: write the name in single brackets`},
		{"name with a space", "es", `language = "Idioma"`, `"the language" = "Idioma"`, `
			locales/es.toml:24: "the language" is not a name
			  hint: use letters a to z, digits and hyphens`},
		{"name too deep", "es", `language = "Idioma"`, `a.b.c.d.e.f.g.h = "Idioma"`, `
			locales/es.toml:24: names and lists stand more than 8 deep in each other
			  hint: write it with fewer dots and brackets`},
		{"not UTF-8", "es", `Idioma`, "Idi\xffoma", `
			locales/es.toml:24: a letter here is not saved as UTF-8
			  hint: choose "UTF-8" where your editor asks for the encoding, and save it again`},
		{"outside a message", "es", `[language]`, "other = \"x\"\n[language]", `
			locales/es.toml:1: "other" stands outside a message
			  hint: put it under the name of its message, in single brackets`},
		{"misspelt category", "es", `{ one = "{{.N}} semana", other`, `{ on = "{{.N}} semana", other`, `
			locales/es.toml:25: page.weeks: "on" is not a plural category
			  hint: did you mean "one"? there are: zero, one, two, few, many, other, description, hash`},
		{"capital category", "es", `{ one = "{{.N}} semana", other`, `{ One = "{{.N}} semana", other`, `
			locales/es.toml:25: page.weeks: "One" is not a plural category
			  hint: did you mean "one"? there are: zero, one, two, few, many, other, description, hash`},
		{"delimiters", "es", `{ one = "{{.N}} semana", other`, `{ leftDelim = "<<", other`, `
			locales/es.toml:25: page.weeks: "leftDelim" is not allowed in a message
			  hint: leave it out`},
		{"hash beside gender forms", "ru", `feminine = "Однажды`, "hash = \"0123456789\"\nfeminine = \"Однажды", `
			locales/ru.toml:48: own.starter: the form "feminine" stands beside the text of the message
			  hint: keep only the gender forms; a hash goes inside each of them
			locales/ru.toml:49: own.starter: the form "masculine" stands beside the text of the message
			  hint: keep only the gender forms; a hash goes inside each of them`},
	})
}

func TestMessageProblems(t *testing.T) {
	runProblems(t, []problemTest{
		{"missing id", "es", `language = "Idioma"`, ``, `
			locales/es.toml:23: page.language is missing
			  hint: write the sentence for the English "Language"`},
		{"misspelt id", "es", `language = "Idioma"`, `langage = "Idioma"`, `
			locales/es.toml:23: page.language is missing
			  hint: write the sentence for the English "Language"
			locales/es.toml:24: page.langage is not a message of en.toml and is left out
			  hint: did you mean "page.language"?`},
		{"extra id", "es", `language = "Idioma"`, "language = \"Idioma\"\nfavourite-colour = \"azul\"", `
			locales/es.toml:25: page.favourite-colour is not a message of en.toml and is left out
			  hint: take it out, or look the name up in en.toml`},
		{"empty", "es", `language = "Idioma"`, `language = ""`, `
			locales/es.toml:24: page.language has no text
			  hint: write the sentence for the English "Language"`},
		{"only a note", "es", `language = "Idioma"`, `language = { description = "Idioma" }`, `
			locales/es.toml:24: page.language has no text
			  hint: write the sentence for the English "Language"`},
		{"wrong place", "es", `semana del {{.Week}}`, `semana del {{.Wek}}`, `
			locales/es.toml:23: page.title has no place {{.Wek}}
			  hint: did you mean "{{.Week}}"? there are: {{.Week}}
			locales/es.toml:23: page.title: the place {{.Week}} is missing
			  hint: write {{.Week}} where it belongs in the sentence`},
		{"place of another message", "es", `language = "Idioma"`, `language = "Idioma {{.Week}}"`, `
			locales/es.toml:24: page.language has no place {{.Week}}
			  hint: this message has no places`},
		{"missing place", "es", `semana del {{.Week}}`, `semana`, `
			locales/es.toml:23: page.title: the place {{.Week}} is missing
			  hint: write {{.Week}} where it belongs in the sentence`},
		{"missing number", "es", `{{.N}} semanas`, `semanas`, `
			locales/es.toml:25: page.weeks: the place {{.N}} is missing
			  hint: write {{.N}} where it belongs in the sentence`},
		{"missing gap", "es", `{{.Who}} tiene {{.Gap}}.`, `{{.Who}} tiene.`, `
			locales/es.toml:45: own.has: the place {{.Gap}} is missing
			  hint: write {{.Gap}} where it belongs in the sentence`},
		{"gap twice", "es", `{{.Who}} tiene {{.Gap}}.`, `{{.Who}} tiene {{.Gap}} y {{.Gap}}.`, `
			locales/es.toml:45: own.has has {{.Gap}} 2 times, the English 1 times
			  hint: leave as many gaps as the English`},
		{"one is two numbers", "ru", `one = "{{.N}} тарелка супа"`, `one = "тарелка супа"`, `
			locales/ru.toml:62: thing.soup-bowl.count: the place {{.N}} is missing
			  hint: write {{.N}} where it belongs in the sentence`},
		{"number twice", "es", `blank = "{{.N}} pisos"`, `blank = "{{.N}} de {{.N}} pisos"`, `
			locales/es.toml:64: thing.floor.blank has its number twice
			  hint: keep one {{.N}}`},
		{"missing category", "ru", `few = "{{.N}} недели", `, ``, `
			locales/ru.toml:23: page.weeks has no form for the plural category few, as in 2
			  hint: write few = "{{.N}} ..."`},
		{"all other categories", "ru", `weeks = { one = "{{.N}} неделя", few = "{{.N}} недели", many = "{{.N}} недель" }`, `weeks = "{{.N}} недель"`, `
			locales/ru.toml:23: page.weeks has no form for the plural category one, as in 1
			  hint: write one = "{{.N}} ..."
			locales/ru.toml:23: page.weeks has no form for the plural category few, as in 2
			  hint: write few = "{{.N}} ..."
			locales/ru.toml:23: page.weeks has no form for the plural category many, as in 0
			  hint: write many = "{{.N}} ..."`},
		{"category of another language", "es", `{ one = "{{.N}} semana", other`, `{ one = "{{.N}} semana", few = "{{.N}} semanas", other`, `
			locales/es.toml:25: page.weeks: es never uses the plural category few
			  hint: write one, other`},
		{"word of no number", "es", `16 = "dieciséis"`, `16a = "dieciséis"`, `
			locales/es.toml:12: "16a" is not a number from 0 to 1000
			  hint: write the number in digits: 7 = "seven"`},
		{"markup", "es", `language = "Idioma"`, `language = "<b>Idioma</b>"`, `
			locales/es.toml:24: page.language: "<" is a sign of markup
			  hint: write words only; pages add their own markup`},
		{"too long", "es", `language = "Idioma"`, `language = "` + strings.Repeat("a", 601) + `"`, `
			locales/es.toml:24: page.language has 601 characters; a message has at most 600
			  hint: say it shorter`},
	})
}

func TestFormProblems(t *testing.T) {
	runProblems(t, []problemTest{
		{"one character lacks the form", "ru", `genitive = "журавля"`, ``, `
			locales/ru.toml:56: character.heron.genitive is missing; own.has asks for it in line 44
			  hint: add it here, or say the sentence without the form`},
		{"form of nothing", "ru", `{{.Way.instrumental}}`, `{{.Way.dative}}`, `
			locales/ru.toml:27: no sentence asks for the form strategy.make-ten.name-instrumental
			  hint: leave it for a story to come, or take it out
			locales/ru.toml:32: no sentence asks for the form strategy.doubles.name-instrumental
			  hint: leave it for a story to come, or take it out
			locales/ru.toml:36: help.way asks for {{.Way.dative}}, and no message has the form dative
			  hint: write {{.Way}}, or add the form to every message that may stand there`},
		{"form that nothing has", "ru", `{{.Who.genitive}}`, `{{.Who.dative}}`, `
			locales/ru.toml:44: own.has asks for {{.Who.dative}}, and nothing has "dative"
			  hint: add character.fox.dative and the like, 2 in all, or ask for a form that is there`},
		{"form of nobody, as there is nobody", "ru", "[character.fox]\nname = \"лиса\"\ngender = \"feminine\"\ngenitive = \"лисы\"\n\n[character.heron]\nname = \"журавль\"\ngender = \"masculine\"\ngenitive = \"журавля\"\n", "", ``},
		{"form that another family has as well", "ru", `blank = "{{.N}} этажей"`, "blank = \"{{.N}} этажей\"\nblank-instrumental = \"{{.N}} этажами\"", `
			locales/ru.toml:63: thing.soup-bowl.blank-instrumental is missing; help.way asks for it in line 36
			  hint: add it here, or say the sentence without the form`},
		{"one message lacks the form", "ru", `name-instrumental = "удвоением"`, ``, `
			locales/ru.toml:31: strategy.doubles.name-instrumental is missing; help.way asks for it in line 36
			  hint: add it here, or say the sentence without the form`},
		{"form that nobody asks for", "ru", `genitive = "лисы"`, "genitive = \"лисы\"\ngenetive = \"лисы\"", `
			locales/ru.toml:54: no sentence asks for the form character.fox.genetive
			  hint: did you mean "genitive"?`},
		{"unknown gender", "ru", `gender = "masculine"`, `gender = "masc"`, `
			locales/ru.toml:57: gender is "masc"
			  hint: did you mean "masculine"? there are: animate, common, feminine, inanimate, masculine, neuter, personal`},
		{"person without a gender", "ru", "gender = \"masculine\"\n", "", `
			locales/ru.toml:56: character.heron has no gender, and own.starter.feminine needs one
			  hint: write gender = "feminine" or another gender beside the name`},
		{"gender form missing", "ru", `masculine = "Однажды {{.Who}} пошёл гулять."`, ``, `
			locales/ru.toml:47: own.starter has no masculine form
			  hint: write own.starter.masculine`},
		{"gender form of no person", "es", `language = "Idioma"`, `language.feminine = "Idioma"`, `
			locales/es.toml:24: page.language is not about a person that is known, so it has no feminine form
			  hint: write one text for it`},
	})
}

// Texts that were copied from the message that says the opposite, and names that have
// none.
func TestOpposite(t *testing.T) {
	tests := []struct{ name, want string }{
		{"ask-more", "ask-fewer"}, {"ask-fewer", "ask-more"}, {"first", "second"}, {"own.frame.more", "own.frame.fewer"},
		{"later-in", "later-out"}, {"reply.too-big", "reply.too-small"}, {"bigger-more", ""}, {"open", ""}, {"strategy.spin", ""}, {"outer", ""},
		{"own.more.frame", "own.fewer.frame"}, {"more.frame", "fewer.frame"}, {"in", "out"}, {"spin-in", "spin-out"}, {"inner-spin", ""},
	}
	for _, test := range tests {
		if got := opposite(test.name); got != test.want {
			t.Errorf("opposite(%q): want %q, got %q", test.name, test.want, got)
		}
	}
}

// What no page asks for is left out and told, and stops nothing: a form ahead of its
// story, names that an earlier version had.
func TestUnused(t *testing.T) {
	early := func(text string) string {
		return strings.Replace(text, `genitive = "журавля"`, "genitive = \"журавля\"\ndative = \"журавлю\"", 1)
	}
	for _, test := range []struct {
		name   string
		change func(string) string
		unused string // beginning of the remark; empty for none
	}{
		{"a form that nothing asks for", early, "no sentence asks for the form character.heron.dative"},
		{"a form while something is still to be written", func(text string) string { return strings.Replace(early(text), `title = "`, `title = "" # "`, 1) }, ""},
		{"a message that is gone", func(text string) string { return text + "\n[page.old]\nother = \"Было {{.Here}}\"\n" }, "page.old is not a message"},
		{"a thing that is gone", func(text string) string { return text + "\n[thing.pot]\nblank = \"{{.N}}\"\n" }, "thing.pot.blank is not a message"},
		{"an event that is gone", func(text string) string { return text + "\n[event.cave.bats]\nopen = \"Темно.\"\n" }, "[event.cave.bats] is not an event"},
		{"a sentence that is gone", func(text string) string { return text + "\n[event.kitchen.soup.part]\nopen = \"Темно.\"\n" }, "event.kitchen.soup.part.open is said by no story"},
	} {
		folder := fstest.MapFS{"en.toml": {Data: fixture(t, "en", "", "")}, "ru.toml": {Data: []byte(test.change(string(fixture(t, "ru", "", ""))))}}
		c, problems := Load([]string{"ru"}, folder)
		if len(problems) > 0 {
			t.Errorf("%s: want no problem, got %v", test.name, problems)
			continue
		}
		got := in(t, c, "ru").Unused()
		if test.unused == "" && len(got) > 0 || test.unused != "" && (len(got) != 1 || !strings.HasPrefix(got[0].Text, test.unused)) {
			t.Errorf("%s: want the remark %q, got %v", test.name, test.unused, got)
		}
	}
}
