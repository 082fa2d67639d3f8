package week

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"homebuild/internal/activity"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

const keptFile = "weeks/2026-09-14.stories.toml"

// keptWith reads a week whose stories are kept as a text says.
func keptWith(t *testing.T, settings, kept string) Week {
	t.Helper()
	site, problems := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.toml", "target = \"add-within-20\"\n"+settings, keptFile, kept), keptAllowed())
	if problems != nil {
		t.Fatalf("Read problems:\n%v\nof\n%s", problems, kept)
	}
	return site.Weeks[0]
}

func keptAllowed() Allowed {
	a := someAllowed()
	a.Kinds = append(a.Kinds, "take-from-result", "difference-more")
	return a
}

// aStory is a kept story of a kind and numbers.
func aStory(t *testing.T, event string, k problem.Kind, numbers ...int) KeptStory {
	t.Helper()
	p, err := problem.New(k, numbers...)
	if err != nil {
		t.Fatal(err)
	}
	return KeptStory{Choice: story.Choice{Event: event, Problem: p}}
}

// What is written about the stories of a week says which is which to its reader, and is
// read again as it was: what families had stays.
func TestStoriesAreKept(t *testing.T) {
	worked := aStory(t, "harbour.board", problem.AddToResult, 8, 6)
	extra := aStory(t, "market.purse", problem.TakeFromResult, 13, 4)
	extra.Extra, extra.Proposed = 12, true
	back := aStory(t, "harbour.gulls", problem.TogetherTotal, 9, 7)
	back.Of = "subtract-within-20"
	easier := aStory(t, "harbour.tide", problem.AddToResult, 3, 2)
	easier.Rung, easier.Of = activity.Easier, "add-three-within-20"
	harder := aStory(t, "harbour.rope", problem.AddToResult, 9, 8)
	harder.Rung = activity.Harder
	stories := []KeptStory{worked, extra, back, easier, harder}

	text := Week{Date: "2026-09-14", Ladder: true}.StoriesText(stories)
	for _, want := range []string{
		"# The stories of the week of Monday, 2026-09-14.",
		"# The worked story: 8 + 6 = ?\n[[story]]\nevent = \"harbour.board\"\nkind = \"add-to-result\"\nnumbers = [8, 6]\n\n",
		"# Story 1: 13 - 4 = ?\n[[story]]\nevent = \"market.purse\"\nkind = \"take-from-result\"\nnumbers = [13, 4]\nextra = 12 # a number that nobody needs\nproposed = true # it may follow the week's settings\n\n",
		"# Story 2: 9 + 7 = ?\n[[story]]\nevent = \"harbour.gulls\"\nkind = \"together-total\"\nnumbers = [9, 7]\nreturns = \"subtract-within-20\" # from an earlier week\n\n",
		"# Story 3, easier than the week's: 3 + 2 = ?\n[[easier]]\nevent = \"harbour.tide\"\nkind = \"add-to-result\"\nnumbers = [3, 2]\ntarget = \"add-three-within-20\"\n\n",
		"# Story 4, harder than the week's: 9 + 8 = ?\n[[harder]]\n",
	} {
		if !strings.Contains(strings.ReplaceAll(text, "−", "-"), want) {
			t.Errorf("want\n%s\nin\n%s", want, text)
		}
	}
	week := keptWith(t, "ladder = true\n", text)
	if diff := cmp.Diff(stories, week.Kept, cmpopts.EquateComparable(problem.Problem{})); diff != "" {
		t.Errorf("read again: mismatch (-want +got):\n%s", diff)
	}
	for i, c := range stories {
		line := week.KeptProblem(i, "event", "x", "").Line
		if lines := strings.Split(text, "\n"); line == 0 || lines[line-1] != fmt.Sprintf("event = %q", c.Event) {
			t.Errorf("the problem of story %d stands on line %d, which is not of its event", i, line)
		}
	}

	// A teacher switches the ladder off: what stood on it is not lost.
	week.Ladder = false
	if again := keptWith(t, "", week.StoriesText(stories[:3])); !cmp.Equal(again.Kept, stories, cmpopts.EquateComparable(problem.Problem{})) {
		t.Errorf("without its ladder: want all five stories kept, got %+v", again.Kept)
	}
}

// A week that gets a ladder later keeps what it kept, and gets the stories of a rung of
// which it keeps none, and of no other.
func TestStoriesGetALadder(t *testing.T) {
	own := []KeptStory{aStory(t, "harbour.board", problem.AddToResult, 8, 6), aStory(t, "market.purse", problem.TakeFromResult, 13, 4)}
	easier, harder := aStory(t, "harbour.tide", problem.AddToResult, 3, 2), aStory(t, "harbour.rope", problem.AddToResult, 9, 8)
	easier.Rung, harder.Rung = activity.Easier, activity.Harder
	text := Week{Date: "2026-09-14", Ladder: true}.StoriesText(own) + "# hers\n\n\n"
	week := keptWith(t, "ladder = true\n", text)
	if got := week.WithLadder(own); got != "" {
		t.Errorf("no story is on a rung: want nothing to write, got\n%s", got)
	}
	longer := week.WithLadder(append(own, easier))
	if !strings.HasPrefix(longer, strings.TrimRight(text, "\n")+"\n") {
		t.Errorf("want the file as it stood, and more, got\n%s", longer)
	}
	week = keptWith(t, "ladder = true\n", longer)
	if n := len(week.KeptOn(activity.Easier)); n != 1 || len(week.Kept) != 3 {
		t.Errorf("want 3 stories, 1 of them easier, got %d and %d", len(week.Kept), n)
	}
	week = keptWith(t, "ladder = true\n", week.WithLadder(append(own, easier, harder)))
	if e, h := len(week.KeptOn(activity.Easier)), len(week.KeptOn(activity.Harder)); e != 1 || h != 1 {
		t.Errorf("want a story on each rung, got %d easier and %d harder", e, h)
	}
}

// The stories of a teacher's own come first, so the chosen ones are counted from there:
// the numbers are those on the page to try.
func TestStoriesBesideHerOwn(t *testing.T) {
	week := keptWith(t, someStory, "[[story]]\nevent = \"harbour.board\"\nkind = \"add-to-result\"\nnumbers = [8, 6]\n")
	text := week.StoriesText([]KeptStory{week.Kept[0], aStory(t, "harbour.tide", problem.AddToResult, 3, 2)})
	if !strings.Contains(text, "# The worked story: ") || !strings.Contains(text, "# Story 2: 3 + 2 = ?") {
		t.Errorf("want the worked story and, after hers, story 2, got\n%s", text)
	}
}

// Slips in the file of kept stories, each with what is said about it.
func TestSlipsOfKeptStories(t *testing.T) {
	const one = "[[story]]\nevent = \"harbour.board\"\nkind = \"add-to-result\"\nnumbers = [8, 6]\n"
	rung := strings.Replace(one, "story", "easier", 1)
	tests := []struct{ name, settings, text, want string }{
		{"two stories", "", one + one, ""},
		{"one, beside hers", someStory, one, ""},
		{"as many as a week has, and the worked one", "", strings.Repeat(one, MaxStories+1), ""},
		{"two on a rung", "", one + one + rung + rung, ""},
		{"numbers at their least and most", "", one + strings.Replace(one, "8, 6", "0, 1000", 1) + "extra = 1000\n", ""},
		{"one story", "", one, keptFile + `: the file has 1 stories
  hint: a week has two at least, the first one worked step by step; take the file away, and they are chosen anew`},
		{"none, beside hers", someStory, "# mine\n", keptFile + `: the file has no story
  hint: take it away, and they are chosen anew`},
		{"too many", "", strings.Repeat(one, MaxStories+2), fmt.Sprintf("%s:%d: the file has 10 stories\n  hint: keep 9: the worked one, and 8 to try", keptFile, 4*(MaxStories+1)+1)},
		{"three on a rung", "", one + one + rung + rung + rung, keptFile + ":17: the file has 3 stories [[easier]]\n  hint: keep 2"},
		{"no kind", "", one + "[[story]]\nevent = \"harbour.board\"\nnumbers = [8, 6]\n", keptFile + `:5: a story has no kind
  hint: write it; or take the file away, and the stories are chosen anew`},
		{"a number too large", "", one + strings.Replace(one, "8", "1001", 1), keptFile + ":8: numbers holds 1001\n  hint: write whole numbers from 0 to 1000: numbers = [8, 6]"},
		{"numbers that are none of its kind", "", one + strings.Replace(one, "8, 6", "8", 1), keptFile + ":8: "},
	}
	for _, test := range tests {
		site, problems := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.toml", "target = \"add-within-20\"\n"+test.settings, keptFile, test.text), keptAllowed())
		got := problems.Error()
		if (test.want == "") != (got == "") || !strings.HasPrefix(got, test.want) || len(problems) > 1 {
			t.Errorf("%s: want one problem\n%s\ngot\n%s", test.name, test.want, got)
		}
		if stories := strings.Count(test.text, "numbers"); test.want == "" && len(site.Weeks[0].Kept) != stories {
			t.Errorf("%s: want %d stories, got %d", test.name, stories, len(site.Weeks[0].Kept))
		}
	}
}

// Stories whose week is gone are told, once: not where the week's own file is told of,
// nor where a week was misnamed.
func TestKeptStoriesWithoutAWeek(t *testing.T) {
	const one = "[[story]]\nevent = \"harbour.board\"\nkind = \"add-to-result\"\nnumbers = [8, 6]\n"
	const gone = `weeks/2026-09-14.stories.toml: the stories of this week are kept, and its file, "weeks/2026-09-14.toml", is gone
  hint: put it back; or take this file away as well. What families had stays published, until homebuild build --remove 2026-09-14`
	for _, test := range []struct{ name, file, text, want string }{
		{"gone", "weeks/2026-09-21.toml", goodWeek, gone},
		{"empty", "weeks/2026-09-14.toml", " ", "weeks/2026-09-14.toml: the file is empty\n  hint: write it, or take it away"},
		{"misnamed", "weeks/14.9.2026.toml", goodWeek, "weeks/14.9.2026.toml: \"14.9.2026.toml\" is not the name of a week\n  hint: name it 2026-09-14.toml"},
	} {
		_, problems := Read(folder(SiteFile, goodSite, test.file, test.text, keptFile, one+one), keptAllowed())
		if diff := cmp.Diff(test.want, problems.Error()); diff != "" {
			t.Errorf("%s: mismatch (-want +got):\n%s", test.name, diff)
		}
	}
}
