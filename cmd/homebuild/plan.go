package main

import (
	"fmt"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/output"
	"homebuild/internal/publish"
	"homebuild/internal/school"
)

func newPlanCmd(s *streams) *cobra.Command {
	var asJSON bool
	cmd := s.schoolCommand("plan [folder]", "see the year: what the class has met, and what is missing", orExample, func(_ *cobra.Command, from *folder) error {
		return runPlan(s, from, asJSON)
	})
	cmd.Flags().BoolVar(&asJSON, "json", false, "write JSON")
	return cmd
}

// runPlan shows the year and puts it on the desk.
func runPlan(s *streams, from *folder, asJSON bool) error {
	year, problems := from.Year()
	if len(problems) == 0 && len(year.Weeks) == 0 {
		_, problems = from.Load() // says so
	}
	if len(problems) > 0 {
		return problems
	}
	overview := year.Overview()
	if asJSON {
		return s.writeJSON(overview)
	}
	s.overview(overview)
	desk := filepath.Join(from.place(), deskFolder)
	report, err := publish.Write(desk, []output.File{{Path: "plan.html", Render: overview.Sheet}}, publish.Options{Manifest: "plan"})
	if err != nil {
		return err
	}
	s.say("\nto print  %s", filepath.Join(desk, "plan.html"))
	return s.foreign(desk, report)
}

// A terminal has 80 letters in a line: so many for a name, three for a count.
const (
	kindWidth   = 28
	factWidth   = 6
	weeksAcross = 17
)

// overview writes the year for a terminal.
func (s *streams) overview(o school.Overview) {
	grade := school.GradeName(o.Grade)
	s.say("%s: %s, %s", o.Name, amount(len(o.Weeks), "week", "weeks"), grade)
	for first := 0; first < len(o.Weeks); first += weeksAcross {
		last := min(first+weeksAcross, len(o.Weeks))
		s.say("\n%s", row("stories by week", kindWidth, counting(first+1, last)))
		for _, k := range o.Kinds {
			s.say("%s", row("  "+k.ID, kindWidth, each(k.ByWeek[first:last], cell)))
		}
		s.say("%s", row("added and subtracted", kindWidth, nil))
		for _, w := range o.Work {
			s.say("%s", row("  "+w.Name, kindWidth, each(w.ByWeek[first:last], cell)))
		}
	}
	if len(o.Facts) > 0 {
		s.say("\naddition facts, met as a sum or a difference (. is not met yet)")
		s.say("%s", row("", factWidth, counting(1, len(o.Facts))))
	}
	for i, counts := range o.Facts {
		s.say("%s", row("  "+strconv.Itoa(i+1)+" +", factWidth, each(counts, cell)))
	}
	s.say("\nwhat %s still lacks", grade)
	for _, l := range o.Missed() {
		if l.ID == "" {
			s.say("  %s", l.Words)
			continue
		}
		s.say("  %-*s%s", kindWidth-2, l.ID, l.Words)
	}
	s.say("\nweeks")
	for i, w := range o.Weeks {
		s.say("  %2d  %s  %-30s %s", i+1, w.Date, w.Target, w.Can)
	}
}

// counting are the numbers from one to another.
func counting(from, to int) []string {
	var numbers []string
	for n := from; n <= to; n++ {
		numbers = append(numbers, strconv.Itoa(n))
	}
	return numbers
}

func cell(n int) string {
	if n == 0 {
		return "."
	}
	return strconv.Itoa(n)
}

// row sets a name and cells of a table for a terminal.
func row(name string, width int, cells []string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%-*s", width, name)
	for _, c := range cells {
		fmt.Fprintf(&b, "%3s", c)
	}
	return strings.TrimRight(b.String(), " ")
}
