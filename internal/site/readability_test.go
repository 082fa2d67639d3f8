package site

import (
	"strings"
	"testing"

	"homebuild/internal/i18n"
	"homebuild/internal/readability"
)

// forTeachers are families of messages, and endings of ids, that no family reads
// in running text: names, fragments, and what stands on the teacher's desk.
var forTeachers = []string{"kind.", "desk.", "key.", "share.", "story.", "thing.", "person.", "picture.", "sample.", ".name-"}

func familyText(s i18n.Sample) bool {
	for _, x := range forTeachers {
		if strings.HasPrefix(s.ID, x) {
			return false
		}
	}
	return !(strings.HasPrefix(s.ID, "mistake.") && strings.HasSuffix(s.ID, ".name"))
}

// textsOf are every message to families and every story of the example year in
// a language.
func textsOf(t *testing.T, tag string) (texts []readability.Text, names []string) {
	t.Helper()
	in := exampleInput(t, tag)
	lang, _ := in.Catalog.Language(tag)
	seen := map[string]bool{}
	for _, s := range i18n.Samples(lang) {
		if strings.HasPrefix(s.ID, "person.") {
			names = append(names, s.Text.String())
		}
		if id := s.ID + s.Gender; familyText(s) && !seen[id] && (s.N < 0 || s.N == 5) {
			seen[id] = true
			texts = append(texts, readability.Text{Name: s.ID, Text: s.Text.String()})
		}
	}
	lessons, _, problems := plan(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, l := range lessons {
		for _, x := range append([]told{l.worked}, l.stories...) {
			var sentences []string
			for _, s := range x.Story.Sentences {
				sentences = append(sentences, lang.Plain(s.Line))
			}
			texts = append(texts, readability.Text{Name: l.week.Date + " " + x.Story.Frame, Text: strings.Join(sentences, " "), Story: true})
		}
	}
	return texts, names
}

// knownLong are wordings of stories with a sentence of more than ten words, and
// why it stays.
var knownLong = map[string]string{
	"compare-difference-more.2": "a comparison names both sides, and every shorter question is stilted or leaves one out",
}

// What families read is easy enough, in the languages that have a formula.
func TestReadability(t *testing.T) {
	met := map[string]bool{}
	for _, tag := range []string{"en", "es"} {
		texts, names := textsOf(t, tag)
		r := readability.Texts(tag, texts, names...)
		t.Logf("%s: family %+v", tag, r.Family)
		t.Logf("%s: stories %+v", tag, r.Stories)
		if r.Family.Words < 1000 || r.Stories.Words < 1000 {
			t.Errorf("%s: only %d words to families and %d words of stories were read", tag, r.Family.Words, r.Stories.Words)
		}
		for _, m := range r.Misses {
			_, frame, _ := strings.Cut(m.Name, " ")
			if knownLong[frame] == "" {
				t.Errorf("%s: %s: %s", tag, m.Name, m.Why)
			}
			met[frame] = true
		}
	}
	for frame := range knownLong {
		if !met[frame] {
			t.Errorf("%s is on the list of long ones, and is not long", frame)
		}
	}
}
