package i18n

import (
	"strings"
	"testing"

	"golang.org/x/text/feature/plural"
	"golang.org/x/text/language"

	"homebuild/internal/phrase"
	"homebuild/internal/story"
)

// counts are the numbers that every thing is counted with: 0 to 100; in a quick run,
// those beside which a plural rule of some language turns.
func counts() (all []int) {
	if testing.Short() {
		return []int{0, 1, 2, 3, 4, 5, 10, 11, 12, 14, 20, 21, 22, 25, 99, 100}
	}
	for n := range 100 + 1 {
		all = append(all, n)
	}
	return all
}

// everyLanguage runs a test on each language of tags.
func everyLanguage(t *testing.T, test func(t *testing.T, l *Language, f *File)) {
	for _, l := range loaded(t).Languages() {
		t.Run(l.Tag(), func(t *testing.T) {
			t.Parallel()
			test(t, l, files(t)[l.Tag()])
		})
	}
}

// Every thing is counted with the form of its CLDR category. Source of the
// category here: golang.org/x/text/feature/plural (Unicode CLDR 32), which is
// not what the package asks; browser/ holds the rules against CLDR 48.2 as well.
func TestEveryCountIsOfItsCategory(t *testing.T) {
	everyLanguage(t, func(t *testing.T, l *Language, f *File) {
		checked := 0
		for _, m := range f.Messages {
			kind, form := formOf(m.Key)
			if !Counted(m.Family) || kind != "count" {
				continue
			}
			for _, n := range counts() {
				text := m.Text(cldr32(l.Tag(), n))
				if text == "" {
					text = m.Other
				}
				want := strings.ReplaceAll(strings.ReplaceAll(text, "{{.N}} ", "{{.N}}\u00a0"), "{{.N}}", l.Number(n))
				v := phrase.Counted("N", m.Block, n)
				got, err := l.fill(nil, &v, form)
				if err != nil || got[0].Text != want {
					t.Errorf("%s of %d: want %q, got %v, %v", m.ID, n, want, got, err)
				}
				inWords, err := l.fill(nil, new(v.InWords()), form)
				if fault := blemish(inWords.String()); err != nil || fault != "" {
					t.Errorf("%s of %d in words: %q %s %v", m.ID, n, inWords, fault, err)
				}
				checked++
			}
		}
		if checked < len(l.Blocks("thing"))*len(counts()) {
			t.Errorf("only %d counts were checked", checked)
		}
	})
}

// cldr32 is the category of a number by golang.org/x/text.
func cldr32(tag string, n int) Category {
	return map[plural.Form]Category{
		plural.Other: Other, plural.Zero: Zero, plural.One: One, plural.Two: Two, plural.Few: Few, plural.Many: Many,
	}[plural.Cardinal.MatchPlural(language.MustParse(tag), n, 0, 0, 0, 0)]
}

// blemish says what no sentence may have.
func blemish(text string) string {
	switch {
	case text == "":
		return "is empty"
	case strings.Contains(text, "{") || strings.Contains(text, "}"):
		return "has a place that was not filled"
	case strings.Contains(text, "  "):
		return "has two spaces side by side"
	case strings.TrimSpace(text) != text:
		return "begins or ends with a space"
	case strings.Contains(text, " .") || strings.Contains(text, " ,") || strings.Contains(text, ".."):
		return "has a mark where none belongs"
	}
	return ""
}

// Every tale that a language tells is told with the numbers that try its grammar
// hardest, each in every place where the event bears it, in digits and in words,
// its answer with the number and with a line to write on.
func TestEveryTale(t *testing.T) {
	places := places(t)
	var stories []story.Story
	for at, e := range places.Events() {
		if testing.Short() && at%36 != 0 {
			continue
		}
		for _, k := range e.Kinds {
			trials := e.Trials(k, 1000)
			if len(trials) == 0 {
				t.Errorf("%s has no numbers for %v", e.ID, k)
			}
			for i, c := range trials {
				s, err := places.Tell(c, i%2 == 1)
				if err != nil {
					t.Fatal(err)
				}
				stories = append(stories, s)
			}
		}
	}
	t.Logf("%d stories", len(stories))
	everyLanguage(t, func(t *testing.T, l *Language, _ *File) {
		for _, s := range stories {
			if l.Has("event." + s.Event) {
				tellWell(t, l, s)
			}
		}
	})
}

func tellWell(t *testing.T, l *Language, s story.Story) {
	lines := []phrase.Line{s.Answer, s.AnswerFrame, s.So}
	for _, x := range s.Sentences {
		lines = append(lines, x.Line)
	}
	for _, line := range lines {
		text, err := l.Try(line)
		if fault := blemish(text.String()); err != nil || fault != "" {
			t.Errorf("%s of %v %s: %q %v", line.ID, s.Problem.Numbers(), fault, text, err)
		}
	}
}

// English tells every event, and so there is one that all others can be told from.
func TestEnglishTellsEveryEvent(t *testing.T) {
	english := english(t)
	for _, e := range places(t).Events() {
		if !english.Language.Has(e.Message("")) {
			t.Errorf("en.toml does not tell %s", e.ID)
		} else if english.File.Event(e.Message("")).Note == "" {
			t.Errorf("en.toml has no note for translators on %s", e.ID)
		}
	}
	for _, m := range english.File.Messages { // forms that no sentence asks for
		if Counted(m.Family) && strings.Contains(m.Key, "-") && !strings.Contains(english.File.Text, "."+strings.TrimPrefix(strings.TrimPrefix(m.Key, "count-"), "blank-")+"}}") {
			t.Errorf("no sentence asks for %s", m.ID)
		}
	}
}
