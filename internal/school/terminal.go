package school

import (
	"fmt"
	"strings"
)

// A terminal has 80 letters in a line: so many for a name, three for a count.
const (
	kindWidth   = 28
	factWidth   = 6
	weeksAcross = 17
)

// Text is the overview for a terminal.
func (o Overview) Text() string {
	var b strings.Builder
	line := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
	row := func(name string, width int, cells []string) {
		line("%s", strings.TrimRight(fmt.Sprintf("%-*s%s", width, name, strings.Join(cells, "")), " "))
	}
	for first := 0; first < len(o.Weeks); first += weeksAcross {
		last := min(first+weeksAcross, len(o.Weeks))
		line("")
		row("stories by week", kindWidth, counting(first+1, last))
		for _, k := range o.Kinds {
			row("  "+k.ID, kindWidth, each(k.ByWeek[first:last], cell))
		}
		row("added and subtracted", kindWidth, nil)
		for _, w := range o.Work {
			row("  "+w.Name, kindWidth, each(w.ByWeek[first:last], cell))
		}
	}
	if len(o.Facts) > 0 {
		line("\naddition facts, met as a sum or a difference (. is not met yet)")
		row("", factWidth, counting(1, len(o.Facts)))
	}
	for i, counts := range o.Facts {
		row(fmt.Sprintf("  %d +", i+1), factWidth, each(counts, cell))
	}
	line("\nwhat %s still lacks", GradeName(o.Grade))
	for _, l := range o.Missed() {
		if l.ID != "" {
			l.ID = fmt.Sprintf("%-*s", kindWidth-2, l.ID)
		}
		line("  %s%s", l.ID, l.Words)
	}
	line("\nweeks")
	for i, w := range o.Weeks {
		line("  %2d  %s  %-30s %s", i+1, w.Date, w.Target, w.Can)
	}
	return b.String()
}

// counting are the cells from one number to another.
func counting(from, to int) (cells []string) {
	for n := from; n <= to; n++ {
		cells = append(cells, cell(n))
	}
	return cells
}

// cell is a count in three letters; none is a dot.
func cell(n int) string {
	if n == 0 {
		return "  ."
	}
	return fmt.Sprintf("%3d", n)
}
