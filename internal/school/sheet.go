package school

import (
	"bytes"
	"fmt"
	"strconv"
	"strings"

	"homebuild/internal/page"
)

// Lack is something that the grade has not met.
type Lack struct {
	ID    string // of a kind of story; empty for other things
	Words string
}

// Missed says what the grade has not met; something in any case.
func (o Overview) Missed() []Lack {
	var out []Lack
	for _, k := range o.Kinds {
		if k.Total == 0 {
			out = append(out, Lack{k.ID, k.Name})
		}
	}
	for _, words := range o.Lacks[len(out):] { // facts; the kinds come first, and are named above
		out = append(out, Lack{Words: words})
	}
	if len(out) == 0 {
		out = append(out, Lack{Words: "nothing that this grade works with"})
	}
	return out
}

// Sheet is the overview on paper, an HTML page.
func (o Overview) Sheet() ([]byte, error) {
	p := page.Plan{
		Title:      fmt.Sprintf("%s: the year so far, %s", o.Name, GradeName(o.Grade)),
		Kinds:      page.PlanGrid{Title: "Stories of each kind, by week"},
		Work:       page.PlanGrid{Title: "What was added and subtracted, by week"},
		Facts:      page.PlanGrid{Title: "Addition facts, met as a sum or a difference"},
		LacksTitle: "What the grade still lacks", Lacks: each(o.Missed(), func(l Lack) string { return l.Words }),
		WeeksTitle: "The weeks",
	}
	for i, w := range o.Weeks {
		p.Kinds.Columns = append(p.Kinds.Columns, strconv.Itoa(i+1))
		p.Work.Columns = p.Kinds.Columns
		p.Weeks = append(p.Weeks, strings.TrimSpace(w.Date+"  "+w.Target+"  "+w.Can))
	}
	for _, k := range o.Kinds {
		p.Kinds.Rows = append(p.Kinds.Rows, page.PlanRow{Name: k.Name, Counts: k.ByWeek})
	}
	for _, w := range o.Work {
		p.Work.Rows = append(p.Work.Rows, page.PlanRow{Name: w.Name, Counts: w.ByWeek})
	}
	for i, counts := range o.Facts {
		addend := strconv.Itoa(i + 1)
		p.Facts.Columns = append(p.Facts.Columns, addend)
		p.Facts.Rows = append(p.Facts.Rows, page.PlanRow{Name: addend + " +", Counts: counts})
	}
	var b bytes.Buffer
	err := page.RenderPlan(&b, p)
	return b.Bytes(), err
}
