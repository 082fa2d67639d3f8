package i18n

import (
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/phrase"
)

// A child's own story speaks of a character, in the place Who, and leaves gaps.
func TestCharactersAndGaps(t *testing.T) {
	const (
		english = `
[own]
starter = "One day {{.Who}} goes for a walk."
first = "{{.Gap}} has {{.Gap}}."
[character.fox]
name = "the fox"
[character.heron]
name = "the heron"
`
		russian = `
[own]
starter.feminine = "Однажды {{.Who}} пошла гулять."
starter.masculine = "Однажды {{.Who}} пошёл гулять."
first = "У {{.Gap}} есть {{.Gap}}."
[character.fox]
name = "лиса"
gender = "feminine"
[character.heron]
name = "журавль"
gender = "masculine"
`
	)
	load := func(old, new string) (*Catalog, string) {
		folder := fstest.MapFS{
			"en.toml": {Data: append(fixture(t, "en", "", ""), english...)},
			"ru.toml": {Data: append(fixture(t, "ru", "", ""), strings.Replace(russian, old, new, 1)...)},
		}
		c, problems := Load([]string{"ru"}, folder)
		return c, problems.Error()
	}
	c, problems := load("", "")
	if problems != "" {
		t.Fatal(problems)
	}
	ru := in(t, c, "ru")
	for who, want := range map[string]string{"character.fox": "Однажды лиса пошла гулять.", "character.heron": "Однажды журавль пошёл гулять."} {
		if got := ru.Say(phrase.Say("own.starter", phrase.Person("Who", who)).About(who)).String(); got != want {
			t.Errorf("Say about %s: want %s, got %s", who, want, got)
		}
	}
	if got, want := ru.Say(phrase.Say("own.first", phrase.Blank("Gap", ""))).String(), "У ____ есть ____."; got != want {
		t.Errorf("Say with gaps: want %s, got %s", want, got)
	}
	tests := []struct{ name, old, new, want string }{
		{"gap left out", "У {{.Gap}} есть {{.Gap}}.", "Есть {{.Gap}}.", "locales/ru.toml:73: own.first has {{.Gap}} 1 times, the English 2 times\n  hint: leave as many gaps as the English"},
		{"character left out", `feminine = "Однажды {{.Who}} пошла`, `feminine = "Однажды пошла`, "locales/ru.toml:71: own.starter.feminine: the place {{.Who}} is missing\n  hint: write {{.Who}} where it belongs in the sentence"},
		{"no gender", "gender = \"masculine\"\n", "", "locales/ru.toml:78: character.heron has no gender, and own.starter.feminine needs one\n  hint: write gender = \"feminine\" or another gender beside the name"},
		{"empty gender", `gender = "masculine"`, `gender = ""`, "locales/ru.toml:78: character.heron has no gender, and own.starter.feminine needs one\n  hint: write gender = \"feminine\" or another gender beside the name"},
		{"no form for a gender", `gender = "masculine"`, `gender = "neuter"`, "locales/ru.toml:71: own.starter has no neuter form\n  hint: write own.starter.neuter"},
		{"one lacks a case", "{{.Who}} пошла", "{{.Who.dative}} пошла", "locales/ru.toml:71: own.starter.feminine asks for {{.Who.dative}}, and nothing has \"dative\"\n  hint: add character.fox.dative and the like, 2 in all, or ask for a form that is there"},
	}
	for _, test := range tests {
		if _, got := load(test.old, test.new); got != test.want {
			t.Errorf("%s\nwant %s\ngot  %s", test.name, test.want, got)
		}
	}
}
