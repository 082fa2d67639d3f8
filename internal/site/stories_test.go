package site

import (
	"flag"
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"homebuild/internal/activity"
	"homebuild/internal/documented"
	"homebuild/internal/i18n"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/week"
)

var _ = flag.Bool("update", false, "write the tables of docs/stories.md again")

const storiesPage = "../../docs/stories.md"

// The events, by the kind of story that they tell, their size and their place.
func TestStoriesAreCounted(t *testing.T) {
	places, err := story.LoadPlaces()
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	b.WriteString("| kind | events | places | to 10 | to 20 | to 100 | to 1000 |\n| --- | --- | --- | --- | --- | --- | --- |\n")
	for _, k := range problem.Kinds() {
		var in []string
		n, sizes := 0, [4]int{}
		for _, e := range places.Events() {
			if !slices.Contains(e.Kinds, k) {
				continue
			}
			n++
			if !slices.Contains(in, e.Place) {
				in = append(in, e.Place)
			}
			span := e.Span(k)
			for i, fits := range [4]bool{span.Least <= 8, span.Least <= 12, span.Most >= 60, span.Most >= 600} {
				if fits {
					sizes[i]++
				}
			}
		}
		fmt.Fprintf(&b, "| %s | %d | %d | %d | %d | %d | %d |\n", k, n, len(in), sizes[0], sizes[1], sizes[2], sizes[3])
	}
	documented.Hold(t, storiesPage, "tales", b.String())
	b.Reset()
	b.WriteString("| place | next door | events | tales |\n| --- | --- | --- | --- |\n")
	for _, p := range places {
		tales := 0
		for _, e := range p.Events {
			tales += len(e.Kinds)
		}
		fmt.Fprintf(&b, "| %s | %s | %d | %d |\n", p.ID, p.Next, len(p.Events), tales)
	}
	documented.Hold(t, storiesPage, "places", b.String())
}

// A year of each grade feels told, not filled in: at least 60 of 100 stories
// have a skeleton of their own, none comes more than four times, and no week has
// an opening twice (our own measures, no published source).
func TestStoriesOfAYear(t *testing.T) {
	in := exampleInput(t, "en")
	english := in.Catalog.Source()
	var b strings.Builder
	b.WriteString("| grade | stories | skeletons | share, % | the same at most | events | places |\n| --- | --- | --- | --- | --- | --- | --- |\n")
	for grade := problem.Grade(0); grade <= 3; grade++ {
		seen, events, places := map[string]int{}, map[string]bool{}, map[string]bool{}
		stories, most := 0, 0
		for _, told := range toldYear(t, in, grade) {
			openings := map[string]bool{}
			for _, s := range told {
				if err := in.Places.Check(s.Choice()); err != nil {
					t.Errorf("grade %d: %s: %v", grade, s.Event, err)
				}
				opening := english.Plain(s.Sentences[0].Line)
				if openings[opening] {
					t.Errorf("grade %d: %q opens two stories of a week", grade, opening)
				}
				openings[opening], events[s.Event], places[s.Place] = true, true, true
				key := skeleton(english, s)
				seen[key]++
				stories, most = stories+1, max(most, seen[key])
			}
		}
		share := 100 * len(seen) / stories
		if share < 60 || most > 4 {
			t.Errorf("grade %d: %d of %d stories (%d %%) have a skeleton of their own, one comes %d times; want 60 %% and 4", grade, len(seen), stories, share, most)
		}
		fmt.Fprintf(&b, "| %d | %d | %d | %d | %d | %d | %d |\n", grade, stories, len(seen), share, most, len(events), len(places))
	}
	documented.Hold(t, storiesPage, "years of stories", b.String())
}

// toldYear tells the year of a grade as the program proposes it, week by week.
func toldYear(t *testing.T, in Input, grade problem.Grade) [][]story.Story {
	t.Helper()
	events := in.SharedEvents()
	first := slices.IndexFunc(in.Targets, func(x activity.Target) bool { return x.Grade == grade })
	next := activity.Suggestion{Target: in.Targets[first]}
	var requests []activity.Request
	var plans []activity.WeekPlan
	monday := time.Date(2026, 9, 7, 0, 0, 0, 0, time.UTC)
	for i := range 36 {
		if i > 0 {
			next, _ = activity.Next(grade, plans, in.Targets)
		}
		requests = append(requests, activity.Request{
			Week: monday.AddDate(0, 0, 7*i).Format(time.DateOnly), Key: "puddle", Target: next.Target,
			Stories: 4, Review: true, Bears: events,
		})
		plans = activity.Year(requests)
	}
	teller := story.NewTeller(events, "puddle")
	var out [][]story.Story
	for i, p := range plans {
		l, err := tellWeek(teller, week.Week{Date: requests[i].Week}, p, nil)
		if err != nil {
			t.Fatal(err)
		}
		stories := []story.Story{l.worked.Story}
		for _, e := range l.stories {
			stories = append(stories, e.Story)
		}
		out = append(out, stories)
	}
	return out
}

// skeleton is what is left of a story without its numbers and what they count.
func skeleton(l *i18n.Language, s story.Story) string {
	var b strings.Builder
	for _, x := range s.Sentences {
		if x.Role == story.Extra {
			continue
		}
		for _, run := range l.Say(x.Line) {
			if run.Kind == i18n.RunPlain {
				b.WriteString(run.Text)
			}
		}
	}
	return b.String()
}
