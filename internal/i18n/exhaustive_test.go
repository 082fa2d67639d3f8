package i18n

import (
	"slices"
	"strings"
	"testing"

	"golang.org/x/text/feature/plural"
	"golang.org/x/text/language"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/locales"
)

// highest is the largest number that the exhaustive tests say.
const highest = 100

// everyLanguage runs a test on each language that comes with the program.
func everyLanguage(t *testing.T, test func(t *testing.T, l *Language, f *File)) {
	catalog, problems := Load(nil, locales.Files)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, l := range catalog.Languages() {
		f, problems := ReadFile(l.Tag(), locales.Files)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		t.Run(l.Tag(), func(t *testing.T) {
			t.Parallel()
			test(t, l, f)
		})
	}
}

// Every thing is counted with the form of its CLDR Category. Source of the
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
			for n := range highest + 1 {
				text := m.Text(cldr32(l.Tag(), n))
				if text == "" {
					text = m.Other
				}
				want := strings.ReplaceAll(text, "{{.N}}", l.Number(n))
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
		if checked < 20*(highest+1) {
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

// Every sentence of every frame can be said of every thing, from 0 to 100, of
// people of each gender, with the number and with a line to write on.
func TestEveryStorySentence(t *testing.T) {
	stock, err := story.LoadStock()
	if err != nil {
		t.Fatal(err)
	}
	everyLanguage(t, func(t *testing.T, l *Language, _ *File) {
		s := stock.Only(l.Has)
		lines := 0
		for _, pair := range pairs(l, s.People) {
			for _, line := range allLines(t, s, pair) {
				lines += sayOfEverything(t, l, s, line)
			}
		}
		if lines < 100_000 {
			t.Errorf("only %d sentences were said", lines)
		}
	})
}

// pairs are two people for each gender that the first can have.
func pairs(l *Language, people []string) [][2]string {
	var out [][2]string
	var seen []string
	for i, p := range people {
		if g := l.Gender(p); !slices.Contains(seen, g) {
			seen = append(seen, g)
			out = append(out, [2]string{p, people[(i+1)%len(people)]})
		}
	}
	return out
}

// allLines are the sentences of the stock about two people. Things are still
// to be put in.
func allLines(t *testing.T, s story.Stock, pair [2]string) []phrase.Line {
	people := []phrase.Value{phrase.Person("A", pair[0]), phrase.Person("B", pair[1])}
	about := map[string]string{"A": pair[0], "B": pair[1], "": ""}
	var out []phrase.Line
	add := func(id, subject string, values ...phrase.Value) {
		out = append(out, phrase.Line{ID: "story." + id, Subject: about[subject], Values: slices.Concat(people, values)})
	}
	for _, f := range s.Frames {
		for _, x := range f.Sentences {
			switch {
			case x.Asks != "":
				add(f.ID+"."+x.ID, x.Subject, phrase.Asked("Ask", ""))
			case x.Tells != "":
				add(f.ID+"."+x.ID, x.Subject, phrase.Counted(string(x.Tells), "", 0))
			default:
				add(f.ID+"."+x.ID, x.Subject)
			}
		}
		var answers, blanks []phrase.Value
		for _, role := range askedRoles(t, f) {
			answers = append(answers, phrase.Counted(string(role), "", 0))
			blanks = append(blanks, phrase.Value{Name: string(role), Kind: phrase.KindBlank})
		}
		add(f.ID+".answer", f.AnswerSubject, answers...)
		add(f.ID+".answer", f.AnswerSubject, blanks...)
	}
	for _, x := range s.Extras {
		if x.Counts == "" {
			add("extra."+x.ID, "A", phrase.Counted("Extra", "", 0))
		} else {
			add("extra."+x.ID, "A", phrase.Counted("Extra", x.Counts, 0))
		}
	}
	return out
}

func askedRoles(t *testing.T, f story.Frame) []problem.Role {
	kind, ok := f.Kind()
	p, err := problem.New(kind, 5, 2)
	if err != nil {
		p, err = problem.New(kind, 5, 2, 1)
	}
	if !ok || err != nil {
		t.Fatalf("%s: %v", f.ID, err)
	}
	var out []problem.Role
	for _, q := range p.Asked() {
		out = append(out, q.Role)
	}
	return out
}

// sayOfEverything says a line of each thing and each number that it can have,
// and tells how many sentences that were.
func sayOfEverything(t *testing.T, l *Language, s story.Stock, line phrase.Line) int {
	said := 0
	for _, thing := range s.Things {
		counts := false
		values := append(slices.Clone(line.Values), phrase.Message("Some", thing.ID+".some"))
		for i, v := range values {
			if v.Kind == phrase.KindCounted || v.Kind == phrase.KindAsked || v.Kind == phrase.KindBlank {
				counts = counts || v.Kind == phrase.KindCounted
				if v.ID == "" {
					values[i].ID = thing.ID
				}
			}
		}
		for n := range highest + 1 {
			for i := range values {
				values[i].N = n
			}
			text, err := l.Try(phrase.Line{ID: line.ID, Subject: line.Subject, Values: values})
			if err != nil {
				t.Errorf("%s of %d %s: %v", line.ID, n, thing.ID, err)
				break
			}
			if fault := blemish(text.String()); fault != "" {
				t.Errorf("%s of %d %s %s: %q", line.ID, n, thing.ID, fault, text)
			}
			if said++; !counts {
				break // the number is not said
			}
		}
	}
	return said
}
