package site

import (
	"strings"
	"testing"

	"homebuild/internal/readability"
)

// textsOf are every message to families and every story of the example year in
// a language.
func textsOf(t *testing.T, tag string) (texts []readability.Text, names []string) {
	t.Helper()
	p, _, problems := Plan(exampleInput(t, tag))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return p.Texts(tag)
}

// What families read is easy enough, in the languages that have a formula.
func TestReadability(t *testing.T) {
	for _, tag := range []string{"en", "es"} {
		texts, names := textsOf(t, tag)
		r := readability.Texts(tag, texts, names...)
		t.Logf("%s: family %+v", tag, r.Family)
		t.Logf("%s: stories %+v", tag, r.Stories)
		if r.Family.Words < 1000 || r.Stories.Words < 1000 {
			t.Errorf("%s: only %d words to families and %d words of stories were read", tag, r.Family.Words, r.Stories.Words)
		}
		for _, m := range r.Misses {
			t.Errorf("%s: %s: %s", tag, m.Name, m.Why)
		}
	}
}

// Every English tale, told whole, has no sentence that is too long, and on the
// average a tale is easy (Spache, the names of the cast counted as easy words).
func TestTalesAreEasy(t *testing.T) {
	in := exampleInput(t, "en")
	english := in.Catalog.Source()
	var names []string
	for _, id := range english.Blocks("character") {
		names = append(names, english.Word(id+".name"))
	}
	sum, n := 0.0, 0
	for _, e := range in.Places.Events() {
		for _, k := range e.Kinds {
			s, err := in.Places.Tell(e.Trials(k, 1)[0], false)
			if err != nil {
				t.Fatal(err)
			}
			var sentences []string
			for _, x := range s.Sentences {
				sentences = append(sentences, english.Plain(x.Line))
			}
			text := readability.Text{Name: e.Message(k.String()), Text: strings.Join(append(sentences, english.Plain(s.Answer), english.Plain(s.So)), " "), Story: true}
			r := readability.Texts("en", []readability.Text{text}, names...)
			for _, m := range r.Misses {
				if m.Name != "" { // a single tale is too short for a formula's limit
					t.Errorf("%s: %s", m.Name, m.Why)
				}
			}
			sum, n = sum+r.Stories.Spache, n+1
		}
	}
	mean := sum / float64(n)
	t.Logf("%d tales, Spache %.2f on the average", n, mean)
	if mean >= readability.MaxSpache {
		t.Errorf("the tales have a Spache grade of %.2f on the average, want below %.1f", mean, readability.MaxSpache)
	}
}
