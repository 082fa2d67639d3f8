package main

import (
	"bytes"
	"fmt"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/problem"
	"homebuild/internal/publish"
	"homebuild/internal/site"
)

// planOptions is what a person asks of the plan.
type planOptions struct {
	*streams
	folder string // empty for the example school
	json   bool
}

func newPlanCmd(s *streams) *cobra.Command {
	opts := planOptions{streams: s}
	cmd := &cobra.Command{
		Use:   "plan [folder]",
		Short: "see the year: what the class has met, and what is missing",
		Long: `Plan shows how often each kind of story stands in each week, which addition facts
were met, as a sum or as a difference, and what the grade of the newest week
still lacks. The kinds are those of the published table of addition and
subtraction situations (CCSS-M 2010, Glossary, Table 1).

The same goes on a sheet to print, "desk/plan.html". "homebuild week" proposes a
week that fills a gap.

` + exampleFolder,
		Example: `  homebuild plan my-class
  homebuild plan my-class --json      the same for another program; writes no sheet`,
		Args: atMostOneFolder,
		RunE: func(cmd *cobra.Command, args []string) error {
			folder, err := schoolOrExample(cmd, args)
			if err != nil {
				return err
			}
			opts.folder = folder
			return runPlan(opts)
		},
		ValidArgsFunction: folders,
	}
	cmd.Flags().BoolVar(&opts.json, "json", false, "write JSON")
	return cmd
}

// year is a school's year, ready to be shown.
type year struct {
	activity.Coverage
	name    string
	grade   problem.Grade
	kinds   []activity.KindRow // those that matter to the grade
	names   []string           // of the kinds
	targets []string           // of the weeks
	cans    []string
}

// runPlan shows the plan and puts it on the desk.
func runPlan(opts planOptions) error {
	from, err := openOne(opts.folder)
	if err != nil {
		return err
	}
	if opts.folder == "" {
		opts.tellExample()
	}
	defer from.close()
	in, weeks, err := from.yearSoFar()
	if err != nil {
		return err
	}
	english, err := englishWords()
	if err != nil {
		return err
	}
	y := newYear(in, weeks, english)
	if opts.json {
		return opts.planJSON(y)
	}
	opts.show(y)
	place := opts.folder
	if place == "" {
		place = "."
	}
	desk := filepath.Join(place, deskFolder)
	report, err := publish.Write(desk, []publish.File{{Path: "plan.html", Render: func() ([]byte, error) {
		var b bytes.Buffer
		err := page.RenderPlan(&b, y.sheet())
		return b.Bytes(), err
	}}}, publish.Options{Manifest: "plan"})
	if err != nil {
		return err
	}
	opts.say("\nto print  %s", filepath.Join(desk, "plan.html"))
	return buildOptions{streams: opts.streams}.inTheWay(desk, report)
}

func newYear(in site.Input, weeks []activity.WeekPlan, english *i18n.Language) year {
	y := year{name: in.Site.Name.In(in.Site.School, in.Site.School), grade: weeks[len(weeks)-1].Request.Target.Grade}
	y.Coverage = activity.Cover(weeks, y.grade)
	for _, row := range y.Kinds {
		if row.Total > 0 || row.Kind.FirstGrade() <= y.grade {
			y.kinds = append(y.kinds, row)
			y.names = append(y.names, english.Plain(activity.KindName(row.Kind)))
		}
	}
	for _, w := range weeks {
		y.targets = append(y.targets, w.Request.Target.ID)
		can := ""
		if w.Request.Target.ID != activity.OwnID {
			can = english.Plain(w.Request.Target.CanLine())
		}
		y.cans = append(y.cans, can)
	}
	return y
}

// A terminal has 80 letters in a line: so many for a name, three for a count.
const (
	kindWidth   = 28
	factWidth   = 6
	weeksAcross = 17
)

// show writes the plan for a terminal.
func (o planOptions) show(y year) {
	o.say("%s: %s, %s", y.name, amount(len(y.Weeks), "week", "weeks"), gradeName(int(y.grade)))
	for first := 0; first < len(y.Weeks); first += weeksAcross {
		last := min(first+weeksAcross, len(y.Weeks))
		heads := make([]string, 0, weeksAcross)
		for i := first; i < last; i++ {
			heads = append(heads, strconv.Itoa(i+1))
		}
		o.say("\n%s", row("stories by week", kindWidth, heads))
		for _, k := range y.kinds {
			o.say("%s", row("  "+k.Kind.String(), kindWidth, each(k.ByWeek[first:last], cell)))
		}
	}
	o.say("\naddition facts, met as a sum or a difference (. is not met yet)")
	heads := make([]string, len(y.Facts))
	for i := range heads {
		heads[i] = strconv.Itoa(i + 1)
	}
	o.say("%s", row("", factWidth, heads))
	for i, counts := range y.Facts {
		o.say("%s", row("  "+strconv.Itoa(i+1)+" +", factWidth, each(counts[:], cell)))
	}
	o.say("\nwhat %s still lacks", gradeName(int(y.grade)))
	for _, l := range y.lacks() {
		if l.id == "" {
			o.say("  %s", l.words)
			continue
		}
		o.say("  %-*s%s", kindWidth-2, l.id, l.words)
	}
	o.say("\nweeks")
	for i, date := range y.Weeks {
		o.say("  %2d  %s  %-30s %s", i+1, date, y.targets[i], y.cans[i])
	}
}

// lack is something that the grade has not met.
type lack struct {
	id    string // of a kind; empty for other things
	words string
}

// lacks says what the grade has not met; something in any case.
func (y year) lacks() []lack {
	var out []lack
	for i, k := range y.kinds {
		if k.Total == 0 {
			out = append(out, lack{k.Kind.String(), y.names[i]})
		}
	}
	for _, w := range y.Lacks[len(out):] { // facts; the kinds come first, and are named above
		out = append(out, lack{words: w.Text})
	}
	if len(out) == 0 {
		out = append(out, lack{words: "nothing that this grade works with"})
	}
	return out
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

// sheet is the plan on paper.
func (y year) sheet() page.Plan {
	p := page.Plan{
		Title:      fmt.Sprintf("%s: the year so far, %s", y.name, gradeName(int(y.grade))),
		Kinds:      page.PlanGrid{Title: "Stories of each kind, by week"},
		Facts:      page.PlanGrid{Title: "Addition facts, met as a sum or a difference"},
		LacksTitle: "What the grade still lacks", Lacks: each(y.lacks(), func(l lack) string { return l.words }),
		WeeksTitle: "The weeks",
	}
	for i, date := range y.Weeks {
		p.Kinds.Columns = append(p.Kinds.Columns, strconv.Itoa(i+1))
		p.Weeks = append(p.Weeks, strings.TrimSpace(date+"  "+y.targets[i]+"  "+y.cans[i]))
	}
	for i, k := range y.kinds {
		p.Kinds.Rows = append(p.Kinds.Rows, page.PlanRow{Name: y.names[i], Counts: k.ByWeek})
	}
	for i, counts := range y.Facts {
		p.Facts.Columns = append(p.Facts.Columns, strconv.Itoa(i+1))
		p.Facts.Rows = append(p.Facts.Rows, page.PlanRow{Name: strconv.Itoa(i+1) + " +", Counts: counts[:]})
	}
	return p
}

// planJSON writes the plan for another program.
func (o planOptions) planJSON(y year) error {
	type kindEntry struct {
		Kind   string `json:"kind"`
		ByWeek []int  `json:"by-week"`
		Total  int    `json:"total"`
	}
	type weekEntry struct {
		Date   string `json:"date"`
		Target string `json:"target"`
	}
	out := struct {
		Grade   int         `json:"grade"`
		Weeks   []weekEntry `json:"weeks"`
		Kinds   []kindEntry `json:"kinds"`
		Facts   [][]int     `json:"facts"`
		Missing [][2]int    `json:"facts-not-met"`
		Lacks   []string    `json:"lacks"`
	}{Grade: int(y.grade), Missing: [][2]int{}, Lacks: []string{}}
	for i, date := range y.Weeks {
		out.Weeks = append(out.Weeks, weekEntry{date, y.targets[i]})
	}
	for _, k := range y.kinds {
		out.Kinds = append(out.Kinds, kindEntry{k.Kind.String(), k.ByWeek, k.Total})
	}
	for _, counts := range y.Facts {
		out.Facts = append(out.Facts, counts[:])
	}
	for _, pair := range y.Missing {
		out.Missing = append(out.Missing, [2]int{pair.First, pair.Second})
	}
	for _, l := range y.Lacks {
		out.Lacks = append(out.Lacks, l.Text)
	}
	return writeJSON(o.out, out)
}
