package site

import (
	"strings"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Every kind has a blank story that tells as many numbers as its stories give
// (CCSS-M 2010, Glossary, Table 1: one of three quantities is unknown), asks, and
// answers with the number that is asked for; and it is about two where it says so.
func TestFrames(t *testing.T) {
	catalog := catalogOf(t, allTags()...)
	numbers := map[problem.Kind][]int{problem.TogetherBoth: {3, 4}, problem.TogetherThree: {2, 9, 8}, problem.TogetherFour: {24, 17, 36, 13}, problem.BiggerThenTogether: {8, 5}}
	who, with := phrase.Text("Who", "WHO"), phrase.Text("With", "WITH")
	for _, k := range problem.Kinds() {
		values := numbers[k]
		if values == nil {
			if values = []int{9, 3}; k.Steps() != nil {
				values = []int{9, 3, 4}
			}
		}
		p, err := problem.New(k, values...)
		if err != nil {
			t.Fatal(err)
		}
		f, ok := frames[k]
		if !ok {
			t.Errorf("%v has no blank story", k)
			continue
		}
		for _, lang := range catalog.Languages() {
			tag := lang.Tag()
			told, all := 0, ""
			for i, l := range append(f.story(who, with), f.say(f.answer, who, with)) {
				text := lang.Plain(l)
				all += text
				if i < len(f.told) && f.told[i] != "some" { // a thing alone stands there
					told += strings.Count(text, "____")
				}
			}
			if told != len(p.Given()) {
				t.Errorf("%s: the blank story of %v tells %d numbers, its stories give %d", tag, k, told, len(p.Given()))
			}
			if answers := strings.Count(lang.Plain(f.say(f.answer, who, with)), "____"); answers != len(p.Asked()) {
				t.Errorf("%s: the answer of %v has %d gaps, want %d", tag, k, answers, len(p.Asked()))
			}
			if two := strings.Contains(all, "WITH"); two != f.two || !strings.Contains(all, "WHO") {
				t.Errorf("%s: the blank story of %v is about two: %v, want %v: %s", tag, k, two, f.two, all)
			}
			if line := phrase.Say("own.numbers."+f.numbers, phrase.Number("Within", 20)); lang.Plain(line) == "" {
				t.Errorf("%s: nothing tells which numbers fit %v", tag, k)
			}
		}
	}
}
