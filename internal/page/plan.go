package page

import (
	"context"
	"io"
	"strconv"
)

// Plan is a teacher's sheet of the year: which kinds of stories, which
// numbers and which addition facts a class has met. It is for the desk, in the command line's own
// language, and so holds its words ready.
type Plan struct {
	Title      string
	Kinds      PlanGrid // kinds of stories by week
	Work       PlanGrid // what was added and subtracted, by week
	Facts      PlanGrid // addition facts by their two addends; no columns for none
	LacksTitle string
	Lacks      []string
	WeeksTitle string
	Weeks      []string // in the order of the columns of Kinds
}

// PlanGrid is a table of counts.
type PlanGrid struct {
	Title   string
	Columns []string
	Rows    []PlanRow
}

// PlanRow is a row of counts, one for each column.
type PlanRow struct {
	Name   string
	Counts []int
}

// planCSS is the sheet's whole look: it is printed, and has no theme.
const planCSS = `:root{color-scheme:light dark}` +
	`body{font:15px/1.4 system-ui,sans-serif;margin:0}main{max-width:72rem;margin:auto;padding:1rem}` +
	`h1{font-size:1.4rem}h2{font-size:1.05rem;margin:1.2rem 0 .4rem}` +
	`.wide{overflow-x:auto}table{border-collapse:collapse}` +
	`th[scope=row]{text-align:start;font-weight:400;padding-inline-end:.6rem;white-space:nowrap}` +
	`th[scope=col]{font-weight:400}td,th[scope=col]{min-width:1.7rem;text-align:center;padding:.1rem}` +
	`tbody td{border:1px solid #8886}.met{background:#7aa5;font-weight:600}` +
	`.pair{display:flex;flex-wrap:wrap;gap:2rem}ol,ul{padding-inline-start:1.6rem;margin:0}ol{columns:24rem}` +
	`@media print{@page{size:landscape;margin:10mm}body{font-size:9pt}.wide{overflow:visible}main{padding:0}` +
	`.met{background:none;border:1.6px solid #000}tr,li{break-inside:avoid}}`

// RenderPlan writes the sheet. It fails only when w does.
func RenderPlan(w io.Writer, p Plan) error {
	return planSheet(p, newStyle(planCSS)).Render(context.Background(), w)
}

// planCount leaves an empty cell empty, so that the gaps are seen.
func planCount(n int) string {
	if n == 0 {
		return ""
	}
	return strconv.Itoa(n)
}
