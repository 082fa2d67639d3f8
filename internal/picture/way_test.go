package picture

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

func TestEveryWayHasItsPicture(t *testing.T) {
	seen := map[strategy.Name]int{}
	check := func(c problem.Calculation) {
		for _, w := range strategy.Ways(c) {
			pictures := OfWay(w)
			if len(pictures) == 0 {
				t.Fatalf("%v by %v: no picture", c, w.Name)
			}
			seen[w.Name]++
			for _, p := range pictures {
				if p.Describe().ID == "" {
					t.Fatalf("%v by %v: %T does not describe itself", c, w.Name, p)
				}
				if l, ok := p.(Line); ok {
					checkLine(t, c, l)
				}
			}
		}
	}
	pairsTo1000(func(a, b int) {
		check(problem.Calculation{Op: problem.Plus, Numbers: []int{a, b}})
		check(problem.Calculation{Op: problem.Minus, Numbers: []int{a + b, b}})
	})
	for a := 0; a <= 20; a++ {
		for b := 0; b <= 20; b++ {
			for c := 0; c <= 20; c++ {
				check(problem.Calculation{Op: problem.Plus, Numbers: []int{a, b, c}})
				check(problem.Calculation{Op: problem.Minus, Numbers: []int{a + b + c, b, c}})
			}
		}
	}
	for _, name := range strategy.Names() {
		if seen[name] == 0 {
			t.Errorf("%v was never drawn", name)
		}
	}
}

// checkLine wants stops on the sheet and apart from each other.
func checkLine(t *testing.T, c problem.Calculation, l Line) {
	t.Helper()
	x := l.X()
	for i := range l.Hops {
		if wide := max(x[i+1]-x[i], x[i]-x[i+1]); wide < 20 {
			t.Fatalf("%v: hop %d of %v is %d wide", c, i, l.Stops, wide)
		}
		if got := max(l.Stops[i+1].N-l.Stops[i].N, l.Stops[i].N-l.Stops[i+1].N); got != l.Hops[i].N {
			t.Fatalf("%v: hop %d of %v says %d", c, i, l.Stops, l.Hops[i].N)
		}
	}
	for _, at := range x {
		if at < Margin+20 || at > Width-Margin-20 {
			t.Fatalf("%v: stops at %v", c, x)
		}
	}
}

// TestPublishedWays draws the worked examples that the standards print.
func TestPublishedWays(t *testing.T) {
	for _, tt := range []struct {
		by      strategy.Name
		c       problem.Calculation
		want    string
		source  string
		numbers []int // places of the picture's description, in order
	}{
		{strategy.MakeTen, problem.Calculation{Op: problem.Plus, Numbers: []int{8, 6}}, "picture.MakingTen",
			"CCSS-M 2010, 1.OA.C.6: 8 + 6 = 8 + 2 + 4 = 10 + 4", []int{8, 6, 2, 4}},
		{strategy.BridgeBack, problem.Calculation{Op: problem.Minus, Numbers: []int{13, 4}}, "picture.Frames",
			"CCSS-M 2010, 1.OA.C.6: 13 - 4 = 13 - 3 - 1 = 10 - 1 = 9", []int{13, 4, 9}},
		{strategy.FriendlyPair, problem.Calculation{Op: problem.Plus, Numbers: []int{2, 6, 4}}, "picture.Frames",
			"CCSS-M 2010, 1.OA.B.3: 2 + 6 + 4 = 2 + 10 = 12", []int{6, 4, 2, 12}},
		{strategy.NearDoubles, problem.Calculation{Op: problem.Plus, Numbers: []int{6, 7}}, "picture.Rows",
			"CCSS-M 2010, 1.OA.C.6: 6 + 7 = 6 + 6 + 1", []int{7, 6, 1}},
	} {
		w := strategy.Ways(tt.c, tt.by)[0]
		all := OfWay(w)
		i := slices.IndexFunc(all, func(p Picture) bool { return fmt.Sprintf("%T", p) == tt.want })
		if w.Name != tt.by || i < 0 {
			t.Errorf("%s: want %s by %v, got %T by %v", tt.source, tt.want, tt.by, all, w.Name)
			continue
		}
		p := all[i]
		values := p.Describe().Values
		if len(values) != len(tt.numbers) {
			t.Errorf("%s: want the numbers %v, got %v", tt.source, tt.numbers, values)
			continue
		}
		for i, v := range values {
			if v.N != tt.numbers[i] {
				t.Errorf("%s: want %s to be %d, got %d", tt.source, v.Name, tt.numbers[i], v.N)
			}
		}
	}
}

// Dots that are crossed out for good stand beside the last step: beside the step
// to ten they would show another number than ten.
func TestBridgeBackEndsWithItsDots(t *testing.T) {
	c := problem.Calculation{Op: problem.Minus, Numbers: []int{16, 7}}
	all := OfWay(strategy.Ways(c, strategy.BridgeBack)[0])
	if got := fmt.Sprintf("%T %T", all[0], all[len(all)-1]); got != "picture.Line picture.Frames" {
		t.Errorf("16 - 7 back through ten: want the line and then the frames, got %s", got)
	}
}

// TestPublishedHops follows the jumps that are printed for 65 - 49 and
// 45 + 39. Source, from memory: A. S. Klein, M. Beishuizen, A. Treffers, "The
// empty number line in Dutch second grades", JRME 29 (1998), 443-464.
func TestPublishedHops(t *testing.T) {
	for _, tt := range []struct {
		by      strategy.Name
		op      problem.Op
		numbers []int
		want    string
	}{
		{strategy.JumpUp, problem.Minus, []int{65, 49}, "49 + 1 + 10 + 5 = 65"},
		{strategy.FriendlyJump, problem.Plus, []int{45, 39}, "45 + 40 - 1 = 84"},
		{strategy.FriendlyJump, problem.Minus, []int{65, 49}, "65 - 50 + 1 = 16"},
	} {
		w := strategy.Ways(problem.Calculation{Op: tt.op, Numbers: tt.numbers}, tt.by)[0]
		line := OfWay(w)[0].Describe()
		if got := line.Values[0].Equation.String(); got != tt.want || !strings.HasSuffix(line.ID, ".hops") {
			t.Errorf("%v of %v: want %s, got %s", tt.by, tt.numbers, tt.want, got)
		}
	}
}
