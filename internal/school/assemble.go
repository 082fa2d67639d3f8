package school

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/site"
	"homebuild/internal/week"
)

// Site is a school whose weeks are worked out, ready to be rendered.
type Site struct {
	site.Input
	*site.Planned
	Notices diag.Diagnostics // good to know; they keep nothing from being made
}

// Assemble loads the school and works every week out. With problems only the
// notices are there. The name of the program
// is asked for after the files were read, and may be nil where no file needs a
// key.
func (s *School) Assemble(program func() string) (*Site, diag.Diagnostics) {
	in, problems := s.Load()
	if len(problems) > 0 {
		return &Site{}, problems
	}
	if program != nil {
		in.Program = program()
	}
	planned, notices, problems := site.Plan(in)
	return &Site{in, planned, s.Locate(notices)}, s.Locate(problems)
}

// Newest is the week that families see first; false when they see none yet.
func (s *Site) Newest() (newest week.Week, ok bool) {
	showing := s.Site.Showing(s.On)
	if len(showing) == 0 {
		return week.Week{}, false
	}
	return showing[len(showing)-1], true
}

// Messages are the texts that send a week home, by language. The problem says
// that there is no week of the date.
func (s *Site) Messages(date string) ([]site.Message, *diag.Diagnostic) {
	if wrong := noWeek(s.Input, date); wrong != nil {
		return nil, wrong
	}
	return s.Planned.Messages(date), nil
}

// noWeek says that there is no week of a date; nil when there is.
func noWeek(in site.Input, date string) *diag.Diagnostic {
	dates := each(in.Site.Weeks, func(w week.Week) string { return w.Date })
	if slices.Contains(dates, date) {
		return nil
	}
	const shown = 6
	newest := slices.Clone(dates[max(0, len(dates)-shown):])
	slices.Reverse(newest)
	return &diag.Diagnostic{Text: fmt.Sprintf("there is no week %q", date), Hint: "the newest are: " + strings.Join(newest, ", ")}
}
