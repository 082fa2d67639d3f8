package activity

import (
	"cmp"
	"slices"
	"sync"
	"testing"

	"homebuild/internal/problem"
)

// readOnce has the targets of the program, which no test changes.
var readOnce = sync.OnceValues(Targets)

func embedded(t testing.TB) []Target {
	t.Helper()
	targets, err := readOnce()
	if err != nil {
		t.Fatal(err)
	}
	return slices.Clone(targets)
}

// sample has the targets of the program; in a quick run (-short) one of so many.
func sample(t testing.TB, times int) (some []Target) {
	t.Helper()
	for i, target := range embedded(t) {
		if i%sparse(times) == 0 {
			some = append(some, target)
		}
	}
	return some
}

func named(t testing.TB, id string) Target {
	t.Helper()
	targets := embedded(t)
	i := slices.IndexFunc(targets, func(x Target) bool { return x.ID == id })
	if i < 0 {
		t.Fatalf("there is no target %q", id)
	}
	return targets[i]
}

// Codes of published standards that a target may name, with the largest number
// that the standard works with. CCSS-M 2010, grade pages; K.OA.A.4, K.OA.A.5, 1.NBT.C.6,
// 3.NBT.A.2 and 3.OA.D.8 from memory. Australian Curriculum: Mathematics v9.0.
// Department for Education, National curriculum in England: mathematics
// programmes of study, key stages 1 and 2 (2013); year 3 from memory. Ministry
// of Education (Singapore), Primary Mathematics Syllabus 2007.
var standards = map[string]int{
	"K.OA.A.1": 10, "K.OA.A.2": 10, "K.OA.A.3": 10, "K.OA.A.4": 10, "K.OA.A.5": 5,
	"1.OA.A.1": 20, "1.OA.A.2": 20, "1.OA.B.3": 20, "1.OA.B.4": 20, "1.OA.C.6": 20, "1.OA.D.8": 20,
	"1.NBT.C.4": 100, "1.NBT.C.5": 100, "1.NBT.C.6": 100,
	"2.OA.A.1": 100, "2.OA.B.2": 20, "2.NBT.B.5": 100, "2.NBT.B.6": 100, "2.NBT.B.7": 1000, "2.NBT.B.8": 1000,
	"3.NBT.A.2": 1000, "3.OA.D.8": 1000,
	"AC9M1N04": 20, "AC9M2N04": 100,
	"England Y1": 20, "England Y2": 100, "England Y3": 1000,
	"Singapore P1": 20, "Singapore P2": 1000,
}

func TestEmbeddedTargets(t *testing.T) {
	targets := embedded(t)
	if len(targets) < 30 {
		t.Errorf("%d targets, want 30 at least", len(targets))
	}
	kinds, ranges, grades := map[problem.Kind]bool{}, map[int]bool{}, map[problem.Grade]bool{}
	for _, target := range targets {
		ranges[target.Within], grades[target.Grade] = true, true
		for _, k := range target.Kinds {
			kinds[k] = true
		}
		if len(target.Standards) == 0 {
			t.Errorf("%s names no standard", target.ID)
		}
		for _, code := range target.Standards {
			if most, ok := standards[code]; !ok || target.Within > most {
				t.Errorf("%s is within %d and names %q, which works with numbers to %d", target.ID, target.Within, code, most)
			}
		}
	}
	for _, k := range problem.Kinds() {
		if !kinds[k] {
			t.Errorf("no target has the kind %v", k)
		}
	}
	for _, n := range []int{10, 20, 100, 1000} {
		if !ranges[n] {
			t.Errorf("no target is within %d", n)
		}
	}
	for g := problem.Grade(0); g <= 3; g++ {
		if !grades[g] {
			t.Errorf("no target is for grade %d", g)
		}
	}
}

// Kindergarten has four subtypes, within ten (Progressions for the CCSS-M, K-5
// Operations and Algebraic Thinking, Table 2; CCSS-M 2010, K.OA.A.2), and the
// missing part of ten (K.OA.A.4, from memory).
func TestKindergartenTargets(t *testing.T) {
	allowed := []problem.Kind{problem.AddToResult, problem.TakeFromResult, problem.TogetherTotal, problem.TogetherBoth}
	for _, target := range embedded(t) {
		if target.Grade > 0 {
			continue
		}
		if target.Within > 10 {
			t.Errorf("%s is for kindergarten and within %d, want 10 at most", target.ID, target.Within)
		}
		for _, k := range target.Kinds {
			partOfTen := k == problem.TogetherAddend && target.Limits.Whole == 10
			if !slices.Contains(allowed, k) && !partOfTen {
				t.Errorf("%s is for kindergarten and has %v", target.ID, k)
			}
		}
	}
}

func TestTargetLines(t *testing.T) {
	for _, row := range []struct {
		target     Target
		can, about string
	}{
		{Target{ID: "add-within-20"}, "target.add-within-20.can", "target.add-within-20.about"},
		{Target{ID: OwnID, Within: 30}, "target.own.can", "target.own.about"},
	} {
		if can, about := row.target.CanLine().ID, row.target.AboutLine().ID; can != row.can || about != row.about {
			t.Errorf("%q says %q and %q, want %q and %q", row.target.ID, can, about, row.can, row.about)
		}
	}
}

func TestLines(t *testing.T) {
	ids := map[string]bool{}
	for _, line := range Lines(embedded(t)) {
		ids[line.ID] = true
	}
	for _, id := range []string{"target.add-within-20.can", "target.own.about", "kind.add-to-start.name", "kind.together-three.name"} {
		if !ids[id] {
			t.Errorf("Lines lacks %s", id)
		}
	}
	if want := 2*len(embedded(t)) + 2 + len(problem.Kinds()); len(ids) != want {
		t.Errorf("%d messages, want %d", len(ids), want)
	}
}

// Easier means a smaller range; or in the same range an earlier kind of story,
// counting the last of each; or with the same kinds less passing of tens. Where
// the ranges differ the two share a kind, or the easier one has none that is
// later, so that the step is one in numbers. Grades never go back.
func TestNeighborsAreSound(t *testing.T) {
	targets := embedded(t)
	last := func(t Target) int {
		return stage(slices.MaxFunc(t.Kinds, func(a, b problem.Kind) int { return stage(a) - stage(b) }))
	}
	tens := func(t Target) int {
		return map[Crossing]int{CrossNever: 0, CrossEither: 1, CrossAlways: 2}[t.Crossing]
	}
	check := func(easier, harder Target) {
		order := cmp.Or(cmp.Compare(easier.Within, harder.Within), cmp.Compare(last(easier), last(harder)), cmp.Compare(tens(easier), tens(harder)))
		shares := slices.ContainsFunc(easier.Kinds, func(k problem.Kind) bool { return slices.Contains(harder.Kinds, k) })
		if order >= 0 || easier.Grade > harder.Grade || !shares && last(easier) > last(harder) {
			t.Errorf("%s is said to be easier than %s", easier.ID, harder.ID)
		}
	}
	alone := 0
	for _, target := range targets {
		if target.Easier != "" {
			check(named(t, target.Easier), target)
		}
		if target.Harder != "" {
			check(target, named(t, target.Harder))
		}
		if target.Easier == "" && target.Within > Smallest || target.Harder == "" {
			alone++
		}
	}
	if alone != 1 {
		t.Errorf("%d targets lack a neighbor, want the last alone", alone)
	}
}

// Within a grade no target comes before one that is easier in every way: no kind
// of story is mastered earlier, and two steps come last.
func TestTargetsGoFromEasyToHard(t *testing.T) {
	targets := embedded(t)
	for i, before := range targets {
		for _, after := range targets[i+1:] {
			if before.Grade > after.Grade {
				t.Errorf("%s of grade %d comes before %s of grade %d", before.ID, before.Grade, after.ID, after.Grade)
			}
			if before.Grade < after.Grade {
				continue
			}
			if twoSteps(before) && !twoSteps(after) {
				t.Errorf("%s with two steps comes before %s", before.ID, after.ID)
			}
			if before.Easier == after.ID || after.Harder == before.ID {
				t.Errorf("%s comes before %s, which is easier", before.ID, after.ID)
			}
			if before.Grade == 1 && slices.ContainsFunc(before.Kinds, problem.Kind.Difficult) && !slices.ContainsFunc(after.Kinds, problem.Kind.Difficult) {
				t.Errorf("%s, which grade 2 masters, comes before %s", before.ID, after.ID)
			}
		}
	}
}

// twoSteps reports whether a target has stories of two steps.
func twoSteps(t Target) bool {
	return slices.ContainsFunc(t.Kinds, func(k problem.Kind) bool { return k.Steps() != nil })
}
