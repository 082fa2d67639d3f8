package recheck

import (
	"cmp"
	"fmt"
	"slices"
)

// legend are the dots that stand before a number to say what it counts.
type legend struct {
	sample dot
	crossed,
	rest bool // the number counts the crossed dots, or those that are left
	label label
}

// split parts the legend from the dots that are counted.
func (f *figure) split() (counted []dot, legends []legend, rest []label) {
	used := map[int]bool{}
	for _, l := range f.labels {
		i := slices.IndexFunc(f.dots, func(d dot) bool { return d.r == 10 && l.x-d.x == 34 && l.y-d.y == 8 })
		if i < 0 {
			rest = append(rest, l)
			continue
		}
		used[i] = true
		d := f.dots[i]
		crossed := slices.ContainsFunc(f.crosses, func(x dot) bool { return near(x, d) })
		legends = append(legends, legend{sample: d, crossed: crossed, label: l})
	}
	anyCrossed := slices.ContainsFunc(legends, func(l legend) bool { return l.crossed })
	for i := range legends {
		legends[i].rest = anyCrossed && !legends[i].crossed
	}
	for i, d := range f.dots {
		// A dot before an empty place belongs to the legend too.
		if !used[i] && !(d.r == 10 && slices.ContainsFunc(legends, func(l legend) bool { return l.sample.y == d.y })) && d.class != "ring" {
			counted = append(counted, d)
		}
	}
	return counted, legends, rest
}

func near(a, b dot) bool { return max(a.x-b.x, b.x-a.x) <= 1 && max(a.y-b.y, b.y-a.y) <= 1 }

// crossedOut reports whether a dot is crossed out.
func (f *figure) crossedOut(d dot) bool {
	return slices.ContainsFunc(f.crosses, func(x dot) bool { return near(x, d) })
}

// frameFaults counts the dots in ten frames.
func (f *figure) frameFaults() []string {
	counted, legends, rest := f.split()
	out := f.placeFaults(counted)
	for _, l := range legends {
		a := l.label.amount()
		if got := f.count(counted, l); a.known && got != a.n {
			out = append(out, fmt.Sprintf("frames: %d dots stand for %d", got, a.n))
		}
	}
	for _, l := range rest {
		if a := l.amount(); a.known && a.n != len(counted) {
			out = append(out, fmt.Sprintf("frames: there are %d dots in all, not %d", len(counted), a.n))
		}
	}
	return out
}

// count counts what an entry of the legend stands for.
func (f *figure) count(dots []dot, l legend) int {
	n := 0
	for _, d := range dots {
		if d.class == l.sample.class && !(l.crossed && !f.crossedOut(d)) && !(l.rest && f.crossedOut(d)) {
			n++
		}
	}
	return n
}

// placeFaults wants each dot in a place of a frame, no place twice.
func (f *figure) placeFaults(dots []dot) []string {
	var out []string
	seen := map[[2]int]bool{}
	for _, d := range dots {
		at := [2]int{d.x, d.y}
		if seen[at] {
			out = append(out, "frames: two dots lie in one place")
		}
		seen[at] = true
		if !slices.ContainsFunc(f.rects, func(r rect) bool { return r.class == "grid" && r.holds(d.x, d.y) }) {
			out = append(out, "frames: a dot lies beside the frames")
		}
	}
	return out
}

// makingTenFaults rechecks frames before and after dots moved: each sum below
// is that of the two frames above it, and as many arrows are drawn as dots move.
func (f *figure) makingTenFaults() []string {
	var out []string
	var results []int
	for _, l := range f.labels {
		var above []rect
		for _, r := range f.rects {
			if r.class == "grid" && r.x <= l.x && l.x <= r.x+r.w {
				above = append(above, r)
			}
		}
		slices.SortFunc(above, func(a, b rect) int { return cmp.Compare(a.y, b.y) })
		q, err := read(l.text)
		if err != nil || len(q) != 1 || len(q[0]) != len(above) {
			out = append(out, fmt.Sprintf("frames: %q is not the sum of the frames above it", l.text))
			continue
		}
		for i, r := range above {
			got := len(slices.DeleteFunc(slices.Clone(f.dots), func(d dot) bool {
				return !r.holds(d.x, d.y) || d.class == "ring" || d.class == "unknown"
			}))
			if got != q[0][i].n {
				out = append(out, fmt.Sprintf("frames: %d dots lie where %q says %d", got, l.text, q[0][i].n))
			}
		}
		v, _ := q[0].value()
		results = append(results, v)
	}
	if moved := f.ofClass("unknown"); f.arrows != 2*moved || f.ofClass("ring") != 2*moved {
		out = append(out, fmt.Sprintf("frames: %d places are filled by %d arrows", moved, f.arrows/2))
	}
	if len(unique(results)) != 1 {
		out = append(out, fmt.Sprintf("frames: before and after are not the same: %v", results))
	}
	return out
}

func (f *figure) ofClass(class string) int {
	n := 0
	for _, d := range f.dots {
		if d.class == class {
			n++
		}
	}
	return n
}

// dotFaults counts drawings: lists of pairs, rows and blocks with their number
// at the left, groups with their number below.
func (f *figure) dotFaults() []string {
	switch {
	case f.pairList():
		return f.pairFaults()
	case f.isBands():
		return f.bandFaults()
	}
	return f.groupFaults()
}

// groupFaults counts groups of dots.
func (f *figure) groupFaults() []string {
	counted, legends, rest := f.split()
	var out []string
	for _, l := range legends {
		a := l.label.amount()
		if l.sample.class == "unknown" || !a.known {
			continue
		}
		if got := f.count(counted, l); got != a.n {
			out = append(out, fmt.Sprintf("drawing: %d dots stand for %d", got, a.n))
		}
	}
	groups := map[string][]dot{}
	lowest := 0
	for _, d := range counted {
		groups[d.class] = append(groups[d.class], d)
		lowest = max(lowest, d.y)
	}
	for _, l := range rest {
		a := l.amount()
		switch {
		case !a.known:
		case l.y > lowest:
			out = append(out, labelFault(groups, l, a.n)...)
		case len(f.hidden()) == 0 && a.n != len(counted):
			out = append(out, fmt.Sprintf("drawing: there are %d dots in all, not %d", len(counted), a.n))
		}
	}
	return out
}

// hidden are the places of parts that are asked for.
func (f *figure) hidden() []rect {
	return slices.DeleteFunc(slices.Clone(f.rects), func(r rect) bool { return r.class != "unknown" && r.class != "ink" })
}

// labelFault counts the group above a number: the one that starts nearest to
// its left.
func labelFault(groups map[string][]dot, l label, want int) []string {
	best, got := 0, 0
	for _, group := range groups {
		left := slices.MinFunc(group, func(a, b dot) int { return cmp.Compare(a.x, b.x) })
		if at := left.x - left.r; at <= l.x && at >= best {
			best, got = at, len(group)
		}
	}
	if got != want {
		return []string{fmt.Sprintf("drawing: %d dots stand above %d", got, want)}
	}
	return nil
}

// pairList reports whether the picture lists pairs: "3 + 5" beside its dots.
func (f *figure) pairList() bool {
	return len(f.rects) == 0 && len(f.dots) > 0 && slices.ContainsFunc(f.labels, func(l label) bool {
		q, err := read(l.text)
		return err == nil && len(q[0]) == 2
	})
}

func (f *figure) pairWhole() int {
	v := 0
	if q, err := read(f.labels[0].text); err == nil {
		v, _ = q[0].value()
	}
	return v
}

// pairFaults counts the dots beside each pair; all pairs have the same whole.
func (f *figure) pairFaults() []string {
	var out []string
	for _, l := range f.labels {
		q, err := read(l.text)
		if err != nil {
			out = append(out, err.Error())
			continue
		}
		got := [2]int{}
		for _, d := range f.dots {
			if y := l.y - 6; max(d.y-y, y-d.y) < d.r+2 {
				if d.class == "part-b" {
					got[1]++
				} else {
					got[0]++
				}
			}
		}
		if want := q.numbers(); len(want) != 2 || got[0] != want[0] || got[1] != want[1] {
			out = append(out, fmt.Sprintf("pairs: %q has %d and %d dots", l.text, got[0], got[1]))
		}
		if v, _ := q[0].value(); v != f.pairWhole() {
			out = append(out, fmt.Sprintf("pairs: %q is another whole than %d", l.text, f.pairWhole()))
		}
	}
	return out
}
