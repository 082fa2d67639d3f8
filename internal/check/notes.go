package check

import (
	"fmt"
	"path"

	"homebuild/internal/diag"
	"homebuild/internal/week"
)

// notes finds weeks without a note, and notes that a language shows in the
// class's language, for want of its own.
func notes(l looked) []Finding {
	var out []Finding
	var none []string
	without := map[string][]string{}
	for _, w := range l.in.Site.Weeks {
		if len(w.Notes) == 0 {
			none = append(none, w.Date)
			continue
		}
		for _, tag := range l.in.Site.Languages {
			if w.Notes[tag] == "" {
				without[tag] = append(without[tag], w.Date)
			}
		}
	}
	if len(none) > 0 {
		out = append(out, Finding{About: Notes, Problem: diag.Problem{
			File: week.Folder, Text: "no note to families for " + some(newestFirst(none)), Hint: "write it below the second +++ line of the week",
		}})
	}
	for _, tag := range l.in.Site.Languages {
		dates := without[tag]
		if len(dates) == 0 {
			continue
		}
		newest := dates[len(dates)-1]
		p := diag.Problem{
			File: week.Folder, Text: fmt.Sprintf("no note in %s for %s; the page shows the one in %s", tag, some(newestFirst(dates)), l.in.Site.School),
			Hint: fmt.Sprintf("write it into %s", path.Join(week.Folder, newest+"."+tag+".md")),
		}
		if tag == l.in.Site.School {
			p.Text = fmt.Sprintf("no note in %s, the class's own language, for %s", tag, some(newestFirst(dates)))
			p.Hint = "write it below the second +++ line of the week"
		}
		out = append(out, Finding{About: Notes, Problem: p})
	}
	return out
}

func newestFirst(dates []string) []string {
	out := make([]string, len(dates))
	for i, d := range dates {
		out[len(dates)-1-i] = d
	}
	return out
}
