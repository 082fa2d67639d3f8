package school

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/site"
	"homebuild/internal/week"
)

// RemoveAll stands for every week that families had and that no longer shows.
const RemoveAll = "all"

// Stays gives the rule for pages that families had and that the site no longer
// makes, by path: those of a week stay where they are, so that no link dies by a file
// taken away; a teacher who wants them gone names the dates, or [RemoveAll]. What a
// language loses that she takes out of the settings goes, but for such weeks. The
// problem says of a word that it is no date, or that families see its week.
func (s *Site) Stays(remove []string) (func(path string) bool, *diag.Diagnostic) {
	showing := each(s.Site.Showing(s.On), func(w week.Week) string { return w.Date })
	for _, date := range remove {
		if date == RemoveAll {
			continue
		}
		if _, wrong := week.ParseDay(date); wrong != nil {
			return nil, wrong
		}
		if slices.Contains(showing, date) {
			return nil, &diag.Diagnostic{Text: fmt.Sprintf("families see the week of %s", date), Hint: "take " + week.Path(date) + " away first, and the file of its kept stories"}
		}
	}
	all := slices.Contains(remove, RemoveAll)
	return func(path string) bool {
		date := site.DateOf(path)
		return date != "" && !slices.Contains(showing, date) && !all && !slices.Contains(remove, date)
	}, nil
}

// StillThere names the weeks that pages that stay are of, in order; and how to name
// them all to [Site.Stays]. Both are empty for no pages.
func (s *Site) StillThere(paths []string) (names, all string) {
	dates := each(paths, site.DateOf)
	slices.Sort(dates)
	dates = slices.Compact(dates)
	const told = 3
	if all = RemoveAll; len(dates) <= told {
		all = strings.Join(dates, ",")
	}
	return diag.Some(dates, told), all
}
