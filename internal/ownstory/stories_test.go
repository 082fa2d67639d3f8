package ownstory

import (
	"flag"
	"fmt"
	"os"
	"strings"
	"testing"

	"homebuild/internal/documented"
	"homebuild/internal/problem"
)

var _ = flag.Bool("update", false, "write the figures in docs/ anew")

// meant is a story of the set, with what it was written to tell.
type meant struct{ tag, kind, equation, text, marked string }

func readStories(t *testing.T, file string) []meant {
	t.Helper()
	data, err := os.ReadFile("testdata/" + file)
	if err != nil {
		t.Fatal(err)
	}
	var out []meant
	for line := range strings.Lines(string(data)) {
		line = strings.TrimSpace(line)
		switch tag, rest, _ := strings.Cut(line, " "); {
		case line == "" || tag == "#":
		case tag == "marked":
			out[len(out)-1].marked = rest
		case len(out) == 0 || out[len(out)-1].text != "":
			kind, equation, _ := strings.Cut(rest, " ")
			out = append(out, meant{tag: tag, kind: kind, equation: equation})
		default:
			out[len(out)-1].text = line
		}
	}
	return out
}

// tally is how many stories of a set are offered as they were meant.
type tally struct {
	stories int
	kinds   int // the meant kind is shown
	wholes  int // with its numbers in the meant places, perhaps turned round
	most    int // choices that were shown of one story
}

func (t *tally) add(one tally) {
	t.stories += one.stories
	t.kinds += one.kinds
	t.wholes += one.wholes
	t.most = max(t.most, one.most)
}

// shown counts one story, told by a text.
func (m meant) shown(t *testing.T, lang Language, text string) tally {
	kind, ok := problem.ParseKind(m.kind)
	if _, fits := parseEquation(kind, m.equation); !ok || !fits {
		t.Fatalf("%q: %s %s is no story", m.text, m.kind, m.equation)
	}
	choices := read(t, lang, text).Offer().Of(Happening(kind.Situation())).Choices
	out := tally{stories: 1, most: len(choices)}
	for _, c := range choices {
		if c.Problem.Kind() != kind {
			continue
		}
		out.kinds = 1
		for _, way := range append(c.Turned, c) {
			if writes(way.Problem, m.equation) {
				out.wholes = 1
			}
		}
	}
	return out
}

// count counts the stories of a file, by what happens. Where the meant one is not
// among what is shown, marks mend it.
func count(t *testing.T, file string) (counts map[Happening]*tally, all tally) {
	t.Helper()
	languages := map[string]Language{}
	counts = map[Happening]*tally{Joins: {}, Leaves: {}, Parts: {}, Compared: {}}
	for _, m := range readStories(t, file) {
		if _, ok := languages[m.tag]; !ok {
			languages[m.tag] = NewLanguage(m.tag, wordsOf(t, m.tag))
		}
		one := m.shown(t, languages[m.tag], m.text)
		if one.wholes == 0 && m.shown(t, languages[m.tag], m.marked).wholes == 0 {
			t.Errorf("%s is not offered, and no marks mend it: %s", m.kind, m.text)
		}
		kind, _ := problem.ParseKind(m.kind)
		counts[Happening(kind.Situation())].add(one)
		all.add(one)
	}
	return counts, all
}

// Of a hundred stories of all kinds, the meant one is among the few that a teacher
// is shown once she has said what happens.
func TestMeantKindIsShown(t *testing.T) {
	counts, all := count(t, "stories.txt")
	_, later := count(t, "stories-later.txt")
	kinds := map[string]bool{}
	for _, m := range readStories(t, "stories.txt") {
		kinds[m.kind] = true
	}
	if all.stories != 100 || len(kinds) != len(problem.Kinds()) {
		t.Errorf("the set has %d stories of %d kinds, want 100 of %d", all.stories, len(kinds), len(problem.Kinds()))
	}
	if all.kinds < 95 || all.most > MostShown {
		t.Errorf("%d of the meant kinds are shown, among at most %d; want 95 among at most %d", all.kinds, all.most, MostShown)
	}
	table := "| what happens | stories | meant kind shown | with its numbers in their places | most shown |\n| --- | --- | --- | --- | --- |\n"
	row := func(name string, c tally) {
		table += fmt.Sprintf("| %s | %d | %d | %d | %d |\n", name, c.stories, c.kinds, c.wholes, c.most)
	}
	for _, h := range Happenings() {
		row(strings.TrimSuffix(h.Label(), "."), *counts[h])
	}
	row("all", all)
	row("all of those written later", later)
	documented.Hold(t, "../../docs/mathematics.md", "own stories", table)
}
