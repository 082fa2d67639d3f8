package school

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/output"
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
	return s.plan(in, program)
}

func (s *School) plan(in site.Input, program func() string) (*Site, diag.Diagnostics) {
	if program != nil {
		in.Program = program()
	}
	planned, notices, problems := site.Plan(in)
	if len(problems) == 0 {
		notices = append(notices, planned.Withheld()...)
	}
	return &Site{in, planned, s.Locate(notices)}, s.Locate(problems)
}

// Week loads the school and works one week out, the newest that families see for an
// empty date; as a site that has no other. Only for a week without kept stories those
// before it are worked out as well, since its own depend on them. The problem has no
// file where there is no such week.
func (s *School) Week(date string, program func() string) (*Site, diag.Diagnostics) {
	in, problems := s.Load()
	if len(problems) > 0 {
		return &Site{}, problems
	}
	if date == "" {
		date = in.Site.Weeks[0].Date
		if showing := in.Site.Showing(in.On); len(showing) > 0 {
			date = showing[len(showing)-1].Date
		}
	}
	if wrong := noWeek(in, date); wrong != nil {
		return &Site{}, diag.Diagnostics{*wrong}
	}
	at := slices.IndexFunc(in.Site.Weeks, func(w week.Week) bool { return w.Date == date })
	in.Site.Weeks = in.Site.Weeks[:at+1]
	if len(in.Site.Weeks[at].Kept) > 0 {
		in.Site.Weeks = in.Site.Weeks[at:]
	}
	return s.plan(in, program)
}

// Newest is the week that families see first; false when they see none yet.
func (s *Site) Newest() (newest week.Week, ok bool) {
	showing := s.Site.Showing(s.On)
	if len(showing) == 0 {
		return week.Week{}, false
	}
	return showing[len(showing)-1], true
}

// Send lists what sends the last week home: its messages, by language, and the files
// of its folder on the desk.
func (s *Site) Send() (date string, messages []site.Message, files []output.File) {
	date = s.Site.Weeks[len(s.Site.Weeks)-1].Date
	files = slices.DeleteFunc(s.Desk(date), func(f output.File) bool { return !InWeekFolder(f.Path, date) })
	return date, s.Planned.Messages(date), files
}

// InWeekFolder reports whether a file on the desk is in the folder of a week.
func InWeekFolder(path, date string) bool { return strings.HasPrefix(path, date+"/") }

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
