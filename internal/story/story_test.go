package story

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"homebuild/internal/problem"
)

// sample gives numbers that fit a kind.
func sample(t *testing.T, k problem.Kind) problem.Problem {
	t.Helper()
	for _, numbers := range [][]int{{9, 4}, {9, 4, 3}} {
		if p, err := problem.New(k, numbers...); err == nil {
			return p
		}
	}
	t.Fatalf("no sample for %v", k)
	return problem.Problem{}
}

func load(t *testing.T) Stock {
	t.Helper()
	s, err := LoadStock()
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// Every kind has at least two wordings, and each frame tells exactly what the
// story is to give and asks for exactly what is unknown.
func TestStockTellsEveryKind(t *testing.T) {
	wordings := map[problem.Kind]int{}
	for _, f := range load(t).Frames {
		kind, ok := f.Kind()
		if !ok {
			t.Errorf("frame %q belongs to no kind", f.ID)
			continue
		}
		wordings[kind]++
		p := sample(t, kind)
		var told, asked []string
		for _, s := range f.Sentences {
			if s.Tells != "" {
				told = append(told, string(s.Tells))
			}
			if s.Asks != "" {
				asked = append(asked, string(s.Asks))
			}
			if s.Subject == "B" && f.People < 2 || s.Subject == "A" && f.People < 1 {
				t.Errorf("%s.%s: subject %s of %d people", f.ID, s.ID, s.Subject, f.People)
			}
		}
		if want := roles(p.Told()); !sameSet(told, want) {
			t.Errorf("%s tells %v, want %v", f.ID, told, want)
		}
		if want := string(p.Asked()[0].Role); len(asked) != 1 || asked[0] != want {
			t.Errorf("%s asks %v, want %v", f.ID, asked, want)
		}
		if last := f.Sentences[len(f.Sentences)-1]; last.Asks == "" {
			t.Errorf("%s does not end with its question", f.ID)
		}
	}
	for _, k := range problem.Kinds() {
		if wordings[k] < 2 {
			t.Errorf("kind %v has %d wordings, want at least 2", k, wordings[k])
		}
	}
}

func roles(qs []problem.Quantity) []string {
	var out []string
	for _, q := range qs {
		out = append(out, string(q.Role))
	}
	return out
}

func sameSet(a, b []string) bool {
	count := map[string]int{}
	for _, s := range a {
		count[s]++
	}
	for _, s := range b {
		count[s]--
	}
	for _, n := range count {
		if n != 0 {
			return false
		}
	}
	return true
}

func TestTellIsRepeatable(t *testing.T) {
	tell := func() []Story {
		teller := NewTeller(load(t), "puddle")
		var out []Story
		for i, k := range problem.Kinds() {
			s, err := teller.Tell(Request{Problem: sample(t, k), ExtraNumber: 5, Week: "2026-09-14", Place: i})
			if err != nil {
				t.Fatal(err)
			}
			out = append(out, s)
		}
		return out
	}
	if first, second := tell(), tell(); !reflect.DeepEqual(first, second) {
		t.Error("the same requests told different stories")
	}
}

// The extra number stands in exactly one sentence, right before the question,
// and counts something else than the story does.
func TestExtraSentence(t *testing.T) {
	small := map[string]bool{}
	for _, thing := range load(t).Things {
		small[thing.ID] = thing.Small
	}
	teller := NewTeller(load(t), "puddle")
	for i, k := range problem.Kinds() {
		for extra := 2; extra <= 15; extra++ {
			s, err := teller.Tell(Request{Problem: sample(t, k), ExtraNumber: extra, Week: "2026-09-14", Place: i})
			if err != nil {
				t.Fatal(err)
			}
			var extras []Sentence
			for _, sentence := range s.Sentences {
				if sentence.Role == Extra {
					extras = append(extras, sentence)
				}
			}
			if len(extras) != 1 || s.Sentences[len(s.Sentences)-2].Role != Extra {
				t.Fatalf("%s: extra sentences %v", s.Frame, extras)
			}
			for _, v := range extras[0].Line.Values {
				if v.Name == "Extra" && extras[0].Line.ID == "story.extra.jar" && !small[v.ID] {
					t.Errorf("%s puts %s into a jar", s.Frame, v.ID)
				}
				if v.Name == "Extra" && (v.N != extra || v.ID == s.Thing) {
					t.Errorf("%s counts %d of %s beside %s", s.Frame, v.N, v.ID, s.Thing)
				}
			}
		}
	}
}

func TestPeopleAndFramesTakeTurns(t *testing.T) {
	stock := load(t)
	teller := NewTeller(stock, "puddle")
	met := map[string]int{}
	frames := map[string]int{}
	p := sample(t, problem.AddToResult)
	for i := range 20 {
		s, err := teller.Tell(Request{Problem: p, Week: "2026-09-14", Place: i})
		if err != nil {
			t.Fatal(err)
		}
		if s.A == s.B {
			t.Fatalf("story %d has %s twice", i, s.A)
		}
		met[s.A]++
		met[s.B]++
		frames[s.Frame]++
	}
	for _, id := range stock.People {
		if met[id] != 4 { // 40 parts for 10 people
			t.Errorf("%s is met %d times, want 4", id, met[id])
		}
	}
	if frames["add-to-result.1"] != 10 || frames["add-to-result.2"] != 10 {
		t.Errorf("frames told %v times, want 10 each", frames)
	}
}

func TestTellSaysWhatIsMissing(t *testing.T) {
	full := load(t)
	p := sample(t, problem.AddToResult)
	for _, row := range []struct {
		name, drop, want string
	}{
		{"no frame", "story.add-to-result", "has no frame"},
		{"nothing to count", "thing.", "nothing to count"},
		{"nobody", "person.", "needs two people"},
	} {
		t.Run(row.name, func(t *testing.T) {
			stock := full.Only(func(id string) bool { return !strings.HasPrefix(id, row.drop) })
			_, err := NewTeller(stock, "k").Tell(Request{Problem: p})
			if !errors.Is(err, ErrNoFrame) || !strings.Contains(err.Error(), row.want) {
				t.Errorf("got %v, want ErrNoFrame with %q", err, row.want)
			}
		})
	}
}

// Things and settings fit the numbers: nobody carries a hundred kites.
func TestThingsFitTheNumbers(t *testing.T) {
	stock := load(t)
	most := map[string]int{}
	for _, thing := range stock.Things {
		most[thing.ID] = thing.Most
	}
	teller := NewTeller(stock, "puddle")
	p, err := problem.New(problem.AddToResult, 456, 178)
	if err != nil {
		t.Fatal(err)
	}
	for i := range 30 {
		for _, setting := range append(stock.Settings(), "") {
			s, err := teller.Tell(Request{Problem: p, Setting: setting, Place: i})
			if err != nil {
				t.Fatal(err)
			}
			if most[s.Thing] < 634 || setting != "" && s.Setting != setting {
				t.Errorf("634 of %s in %s (asked for %q)", s.Thing, s.Setting, setting)
			}
		}
	}
}
