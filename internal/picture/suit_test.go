package picture

import (
	"slices"
	"testing"

	"homebuild/internal/problem"
)

// Nothing but taking away with the result asked is ever crossed out, whatever
// the class's picture and however the answer is worked out.
func TestOnlyWhatIsTakenAwayIsCrossedOut(t *testing.T) {
	crossed := map[problem.Kind]int{}
	stories(func(p problem.Problem) {
		for _, kind := range Kinds() {
			for _, stage := range Stages() {
				if pic, err := OfProblem(p, kind, stage); err == nil && crossesOut(pic) {
					crossed[p.Kind()]++
				}
			}
		}
		if isChain(p) || isBoth(p) {
			return
		}
		taken, _ := problem.New(problem.TakeFromResult, 13, 4)
		frames, err := OfProblem(taken, TenFrame, Solved)
		if err != nil {
			t.Fatal(err)
		}
		blocks, _ := Blocks(problem.Calculation{Op: problem.Minus, Numbers: []int{38, 12}})
		for _, work := range []Picture{frames, blocks} {
			if got := Suits(work, p); got != (p.Kind() == problem.TakeFromResult) {
				t.Fatalf("%v of %v: crossing out suits it: %t", p.Kind(), p.Numbers(), got)
			}
		}
	})
	if len(crossed) != 1 || crossed[problem.TakeFromResult] == 0 {
		t.Errorf("crossed out in stories of %v", crossed)
	}
}

// Amounts that are compared are drawn in two bars, in two rows, or on a line.
func TestComparedSideBySide(t *testing.T) {
	stories(func(p problem.Problem) {
		if !isCompare(p) || isChain(p) {
			return
		}
		for _, kind := range Kinds() {
			pic, err := OfProblem(p, kind, Open)
			if err != nil {
				continue
			}
			switch pic.(type) {
			case comparison, rows, line:
			default:
				t.Fatalf("%v as %v: drawn as %T", p.Kind(), kind, pic)
			}
		}
		if Suits(Bond(p.Calculation()), p) {
			t.Fatalf("%v is worked out as a number bond", p.Kind())
		}
	})
}

// Two steps are drawn to one scale: wherever no part is widened to be read, a
// bigger number is never the shorter one.
func TestStepsHaveOneScale(t *testing.T) {
	stretches := func(s steps) map[int]int {
		parts := s.spans()
		out := map[int]int{s.above.n: s.above.over(parts).w}
		for i, a := range s.parts {
			out[a.n] = parts[i].w
		}
		for _, b := range s.below {
			out[b.n] = b.over(parts).w
		}
		if s.again == nil {
			return out
		}
		for i, x := range s.cutAgain(parts) {
			out[s.again[i].n] = x.w
		}
		return out
	}
	checked := 0
	for _, k := range problem.Kinds() {
		for a := 20; a <= 60; a += 3 {
			for b := 18; b <= 44; b++ {
				for c := 18; c <= 44; c += 5 {
					p, err := problem.New(k, a, b, c)
					if err != nil || !isChain(p) {
						continue
					}
					drawn := barsOf(p, Solved).(steps)
					if slices.ContainsFunc(drawn.spans(), func(s span) bool { return s.w == leastSegment }) {
						continue
					}
					at := stretches(drawn)
					for n, w := range at {
						for m, v := range at {
							if n > m && w < v-leastCut {
								t.Fatalf("%v of %v: %d is %d wide, %d is %d", k, p.Numbers(), n, w, m, v)
							}
						}
					}
					checked++
				}
			}
		}
	}
	if checked == 0 {
		t.Error("no chain was drawn")
	}
}
