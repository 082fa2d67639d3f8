package activity

import (
	"slices"
	"testing"

	"homebuild/internal/problem"
)

// lessons are weeks about targets, each with some stories.
func lessons(about []Target, stories ...problem.Problem) []WeekPlan {
	var weeks []WeekPlan
	for i, target := range about {
		w := WeekPlan{Request: Request{Week: monday(i), Target: target}}
		for j, p := range stories {
			a := Activity{Problem: p, within: target.Within}
			if j == 0 {
				w.Worked = a
			} else {
				w.Stories = append(w.Stories, a)
			}
		}
		weeks = append(weeks, w)
	}
	return weeks
}

// school is a list of targets, from easy to hard, each named by a letter: sums to ten, to
// twenty and so on, and two about facts.
func school() map[byte]Target {
	out := map[byte]Target{}
	for _, id := range "abcdef" {
		out[byte(id)] = Target{ID: string(id), Grade: 1, Within: 20, Kinds: []problem.Kind{addTo}}
	}
	for _, id := range "xy" {
		out[byte(id)] = Target{ID: string(id), Grade: 1, Within: 20, Kinds: []problem.Kind{addTo}, Limits: Limits{PartMost: 9}}
	}
	return out
}

func targetsOf(ids string) (list []Target) {
	for i := range len(ids) {
		list = append(list, school()[ids[i]])
	}
	return list
}

// everyFact has each addition fact once.
func everyFact(t *testing.T) (all []problem.Problem) {
	for _, pair := range allFacts() {
		all = append(all, made(t, addTo, pair.First, pair.Second))
	}
	return all
}

// What comes next, week after week: each letter is a week about a target of that name.
func TestNextByTheRule(t *testing.T) {
	some, every := []problem.Problem{made(t, addTo, 8, 6)}, everyFact(t)
	for _, row := range []struct {
		name    string
		list    string // of targets
		weeks   string
		stories []problem.Problem
		want    string
	}{
		{"the next in the list", "abcdef", "a", every, "b"},
		{"from where the year began", "abcdef", "c", every, "d"},
		{"those before it come last", "abcdef", "cdef", every, "a"},
		{"from the first, where it began with another grade's", "abc", "z", every, "a"},
		{"one that no week had comes before all others", "abcdef", "aaabbbcde", every, "f"},
		{"then the one that is longest ago", "abcdef", "abcdef", every, "a"},
		{"the one with the fewest weeks", "abcdef", "abcdefa", every, "b"},
		{"fewest before longest ago", "abcdef", "aabcdefg", every, "b"},
		{"four weeks ago is long enough", "abcdef", "aabbcdef", every, "c"},
		{"three are not", "abcdef", "aabbccdef", every, "a"},
		{"where all were lately, any may come", "ab", "abab", every, "a"},
		{"facts in the fourth week", "abcdex", "abc", some, "x"},
		{"not in the third", "abcdex", "ab", some, "c"},
		{"not when all are met", "abcdex", "abc", every, "d"},
		{"again after four weeks", "abcdex", "abcxdea", some, "x"},
		{"not after three", "abcdefx", "abcxde", some, "f"},
		{"facts that no week was about come first", "abcdexy", "abxcde", some, "y"},
		{"facts that no week was about, though the year began with the others", "xyabcd", "xabcd", some, "y"},
		{"of two that no week was about the first", "abcdexy", "abc", some, "x"},
	} {
		about := targetsOf(row.weeks)
		for i := range about {
			if row.weeks[i] == 'z' || row.weeks[i] == 'g' {
				about[i] = Target{ID: "another", Grade: 0, Within: 10, Kinds: []problem.Kind{addTo}}
			}
		}
		if got, ok := Next(1, lessons(about, row.stories...), targetsOf(row.list)); !ok || got.Target.ID != row.want {
			t.Errorf("%s: after %s comes %s, want %s", row.name, row.weeks, got.Target.ID, row.want)
		}
	}
}

// Of targets that had as many weeks the one comes that shows most new facts, then the one
// whose stories the class has met least.
func TestNextAmongEquals(t *testing.T) {
	to10 := Target{ID: "to ten", Grade: 1, Within: 10, Kinds: []problem.Kind{addTo}}
	to20 := Target{ID: "to twenty", Grade: 1, Within: 20, Kinds: []problem.Kind{addTo}}
	taking := Target{ID: "taking", Grade: 1, Within: 20, Kinds: []problem.Kind{takeFrom}}
	both := Target{ID: "both", Grade: 1, Within: 20, Kinds: []problem.Kind{addTo, takeFrom}}
	outgrown := to10
	outgrown.Harder = to20.ID
	other := Target{ID: "other", Grade: 0, Within: 5, Kinds: []problem.Kind{apart}}
	before := func(first ...Target) []Target { return append(first, other, other, other, other) }
	for _, row := range []struct {
		name    string
		weeks   []Target
		stories []problem.Problem
		list    []Target
		want    string
	}{
		{"more new facts", before(to10, to20), []problem.Problem{made(t, addTo, 4, 3)}, []Target{to10, to20}, "to twenty"},
		{"no new facts, and met less", before(to20, taking), everyFact(t), []Target{to20, taking}, "taking"},
		{"outgrown", before(outgrown, to20), everyFact(t), []Target{outgrown, to20}, "to twenty"},
		{"a kind that was met less", before(to20, both), everyFact(t), []Target{to20, both}, "both"},
		{"a kind that was met less, in whatever place", before(to20, Target{ID: "both", Grade: 1, Within: 20, Kinds: []problem.Kind{takeFrom, addTo}}), everyFact(t),
			[]Target{to20, {ID: "both", Grade: 1, Within: 20, Kinds: []problem.Kind{takeFrom, addTo}}}, "both"},
	} {
		if got, ok := Next(1, lessons(row.weeks, row.stories...), row.list); !ok || got.Target.ID != row.want {
			t.Errorf("%s: %q comes next, want %q", row.name, got.Target.ID, row.want)
		}
	}
}

// A class has outgrown a target when a harder one of the grade has the same kind of story
// with larger numbers, or with more tens to pass.
func TestOutgrown(t *testing.T) {
	for _, row := range []struct {
		name   string
		harder Target
		from   Crossing
		want   bool
	}{
		{"larger numbers", Target{ID: "next", Within: 100, Kinds: []problem.Kind{addTo}}, CrossEither, true},
		{"more tens to pass", Target{ID: "next", Within: 20, Crossing: CrossAlways, Kinds: []problem.Kind{addTo}}, CrossEither, true},
		{"as many tens to pass", Target{ID: "next", Within: 20, Crossing: CrossAlways, Kinds: []problem.Kind{addTo}}, CrossAlways, false},
		{"the same numbers", Target{ID: "next", Within: 20, Kinds: []problem.Kind{addTo}}, CrossEither, false},
		{"another kind", Target{ID: "next", Within: 100, Kinds: []problem.Kind{takeFrom}}, CrossEither, false},
		{"one more kind", Target{ID: "next", Within: 100, Kinds: []problem.Kind{takeFrom, addTo}}, CrossEither, true},
		{"not the next", Target{ID: "later", Within: 100, Kinds: []problem.Kind{addTo}}, CrossEither, false},
	} {
		target := Target{ID: "this", Within: 20, Crossing: row.from, Kinds: []problem.Kind{addTo}, Harder: "next"}
		if got := outgrown(target, []Suggestion{{Target: target}, {Target: row.harder}}); got != row.want {
			t.Errorf("%s: outgrown %v, want %v", row.name, got, row.want)
		}
	}
}

// Why a target is proposed: what is new in it, and how many weeks it had.
func TestSuggestion(t *testing.T) {
	target := Target{ID: "this", Grade: 1, Within: 10, Kinds: []problem.Kind{addTo, takeFrom}}
	got := lookBack(lessons([]Target{target, target, {ID: "other", Within: 20}}, made(t, addTo, 4, 3), made(t, addTo, 2, 2))).suggest(target)
	// To ten there are 25 facts, and two of them were met.
	if got.Before != 2 || !slices.Equal(got.New, []problem.Kind{takeFrom}) || got.Facts != 23 {
		t.Errorf("%d weeks before, new %v, %d facts; want 2, taking and 23", got.Before, got.New, got.Facts)
	}
}

// Which addition facts the stories of a target can show.
func TestShows(t *testing.T) {
	for _, row := range []struct {
		name   string
		target Target
		a, b   int
		want   bool
	}{
		{"a sum", Target{Within: 20, Kinds: []problem.Kind{addTo}}, 6, 8, true},
		{"a sum that is too large", Target{Within: 10, Kinds: []problem.Kind{addTo}}, 6, 8, false},
		{"a difference", Target{Within: 20, Kinds: []problem.Kind{takeFrom}}, 6, 8, true},
		{"a difference from what is too large", Target{Within: 10, Kinds: []problem.Kind{takeFrom}}, 6, 8, false},
		{"the second number is the larger one", Target{Within: 20, Kinds: []problem.Kind{addTo}, Limits: Limits{SecondLeast: 8}}, 6, 8, true},
		{"the first number is the larger one", Target{Within: 20, Kinds: []problem.Kind{addTo}, Limits: Limits{FirstLeast: 8}}, 6, 8, true},
		{"the smaller one is taken", Target{Within: 20, Kinds: []problem.Kind{takeFrom}, Limits: Limits{SecondMost: 6}}, 6, 8, true},
		{"the larger one is taken", Target{Within: 20, Kinds: []problem.Kind{takeFrom}, Limits: Limits{SecondLeast: 8}}, 6, 8, true},
		{"from ten and more", Target{Within: 20, Kinds: []problem.Kind{addTo}, Limits: Limits{FirstLeast: 10}}, 6, 8, false},
		{"no ten is passed", Target{Within: 20, Crossing: CrossNever, Kinds: []problem.Kind{addTo}}, 6, 8, false},
		{"two steps to twenty", Target{Within: 20, Kinds: []problem.Kind{problem.AddThenAdd}}, 6, 8, true},
		{"two steps beyond", Target{Within: 100, Kinds: []problem.Kind{problem.AddThenAdd}}, 6, 8, false},
		{"three addends", Target{Within: 20, Kinds: []problem.Kind{problem.TogetherThree}}, 6, 8, false},
		{"four addends", Target{Within: 20, Kinds: []problem.Kind{problem.TogetherFour}}, 1, 2, false},
		{"numbers to take apart", Target{Within: 20, Kinds: []problem.Kind{apart}}, 6, 8, false},
		{"another kind beside them", Target{Within: 20, Kinds: []problem.Kind{apart, addTo}}, 6, 8, true},
	} {
		if got := row.target.shows(problem.Pair{First: row.a, Second: row.b}); got != row.want {
			t.Errorf("%s: %d + %d is shown: %v, want %v", row.name, row.a, row.b, got, row.want)
		}
	}
}
