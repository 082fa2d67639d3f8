package story

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"homebuild/internal/problem"
)

func tales(t testing.TB, kinds []problem.Kind, numbers ...int) []Tale {
	t.Helper()
	var out []Tale
	for _, k := range kinds {
		p, err := problem.New(k, numbers...)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, Tale{Choice: Choice{Problem: p}})
	}
	return out
}

func week(t testing.TB, teller *Teller, w Week) []Story {
	t.Helper()
	stories, err := teller.Week(w)
	if err != nil {
		t.Fatal(err)
	}
	return stories
}

var mixed = []problem.Kind{problem.AddToResult, problem.TakeFromResult, problem.TogetherTotal, problem.TakeFromChange, problem.AddToChange}

// The same weeks are told alike, and a year begins in every place.
func TestWeeks(t *testing.T) {
	year := func() (all [][]Story) {
		teller := NewTeller(load(t), "puddle")
		for _, date := range strings.Fields("09-07 09-14 09-21 09-28 10-05 10-12 10-19 10-26 11-02 11-09 11-16 11-23") {
			all = append(all, week(t, teller, Week{Date: date, Tales: tales(t, mixed, 9, 4)}))
		}
		return all
	}
	weeks := year()
	if !reflect.DeepEqual(weeks, year()) {
		t.Error("the same weeks were told otherwise")
	}
	begun, told := map[string]bool{}, map[string]bool{}
	for i, stories := range weeks {
		begun[stories[0].Place] = true
		events := map[string]bool{}
		moved := ""
		for _, s := range stories {
			key := s.Event + " " + s.Problem.Kind().String()
			if events[s.Event] || told[key] {
				t.Errorf("week %d: %s is told again", i, key)
			}
			events[s.Event], told[key] = true, true
			if s.Place != stories[0].Place {
				moved = s.Place
			}
			if moved != "" && s.Place != moved {
				t.Errorf("week %d goes back from %s to %s", i, moved, s.Place)
			}
		}
	}
	if len(begun) != 12 {
		t.Errorf("12 weeks began in %d places", len(begun))
	}
}

// A week stays where the teacher wants it and goes on next door, or, with
// numbers that few places bear, through the town.
func TestPlaceOfTheWeek(t *testing.T) {
	teller := NewTeller(load(t), "puddle")
	for _, row := range []struct {
		numbers []int
		places  string
	}{
		{[]int{9, 4}, "harbour reef"},
		{[]int{64, 25}, "harbour reef"},
		{[]int{700, 250}, "harbour reef market forest garden library night-train kitchen playground mountain-hut desert-well rainy-street"},
	} {
		for i, s := range week(t, teller, Week{Date: "09-14", Place: "harbour", Tales: tales(t, mixed, row.numbers...)}) {
			if !strings.Contains(row.places, s.Place) {
				t.Errorf("%v: story %d is told in %s", row.numbers, i, s.Place)
			}
		}
	}
}

// A kept story is told as it stands, and counts as told.
func TestKept(t *testing.T) {
	p := sample(t, problem.AddToResult)
	kept := Choice{"reef.shoal", p, 12}
	stories := week(t, NewTeller(load(t), "puddle"), Week{Date: "09-14", Place: "reef", Tales: []Tale{{Choice: kept}, {Choice: Choice{Problem: p}}}})
	if got := stories[0].Choice(); got != kept {
		t.Errorf("want %+v, got %+v", kept, got)
	}
	if stories[1].Event == kept.Event {
		t.Error("the other story is the kept one")
	}
}

func TestExtraNumber(t *testing.T) {
	all := load(t)
	teller := NewTeller(all, "puddle")
	odd := func(_ problem.Problem, n int) bool { return n%2 == 1 }
	for _, date := range strings.Fields("09-07 09-14 09-21 09-28") {
		w := Week{Date: date, Tales: tales(t, mixed, 9, 4), Apart: odd}
		for i := range w.Tales {
			w.Tales[i].WantsExtra = true
		}
		for _, s := range week(t, teller, w) {
			e := all.Event(s.Event)
			if s.Sentences[1].Role != Extra || s.ExtraNumber%2 == 0 || s.ExtraNumber < e.Extra.Least || s.ExtraNumber > e.Extra.Most {
				t.Errorf("%s has the extra number %d in %v", s.Event, s.ExtraNumber, s.Sentences[1])
			}
		}
	}
}

func TestCheck(t *testing.T) {
	p := sample(t, problem.AddToResult)
	big, _ := problem.New(problem.AddToResult, 500, 400)
	tests := []struct {
		choice        Choice
		setting, text string
	}{
		{Choice{"harbour.board", p, 0}, "", ""},
		{Choice{"harbour.board", p, 20}, "", ""},
		{Choice{"harbour.bord", p, 0}, "event", `"harbour.bord" is not an event`},
		{Choice{"harbour.crane", p, 0}, "kind", "tells no story of the kind add-to-result"},
		{Choice{"harbour.board", big, 0}, "numbers", "amounts from 1 to 90, the largest at least 4"},
		{Choice{"harbour.board", p, 21}, "extra", "from 5 to 20"},
	}
	for _, test := range tests {
		var wrong *Misfit
		err := load(t).Check(test.choice)
		if errors.As(err, &wrong) != (test.setting != "") {
			t.Errorf("%v: got %v", test.choice, err)
		} else if wrong != nil && (wrong.Setting != test.setting || !strings.Contains(wrong.Text, test.text) || wrong.Hint == "") {
			t.Errorf("%v: want %s: %s, got %+v", test.choice, test.setting, test.text, wrong)
		}
	}
}

func TestNoEvent(t *testing.T) {
	none := load(t).Only(func(id string) bool { return id == "event.harbour.crane" })
	_, err := NewTeller(none, "k").Week(Week{Tales: tales(t, mixed, 9, 4)})
	if !errors.Is(err, ErrNoEvent) || !strings.Contains(err.Error(), "add-to-result with [9 4]") {
		t.Errorf("got %v", err)
	}
}
