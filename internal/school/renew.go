package school

import (
	"fmt"
	"io/fs"
	"path"

	"homebuild/internal/diag"
	"homebuild/internal/week"
)

// Renew turns weeks of the older form into the form of today: the one in a file of
// the folder, or, for the folder of the weeks, all that have no file of today's
// form yet.
func (s *School) Renew(name string) ([]week.Renewed, *diag.Diagnostic) {
	in, _ := s.readFiles() // what is wrong with other files does not matter here
	dates := []string{week.OldDate(name)}
	if path.Clean(name) == week.Folder {
		dates = nil
		entries, _ := fs.ReadDir(s.files, week.Folder)
		for _, e := range entries {
			date := week.OldDate(e.Name())
			if _, err := fs.Lstat(s.files, week.Path(date)); date != "" && err != nil {
				dates = append(dates, date)
			}
		}
	}
	if len(dates) == 0 || dates[0] == "" {
		return nil, &diag.Diagnostic{Text: fmt.Sprintf("%q is no week of the older form", name), Hint: "give its file, such as weeks/2026-09-14.md, or weeks for all there are"}
	}
	var out []week.Renewed
	for _, date := range dates {
		renewed, wrong := week.Renew(s.files, date, in.Site.School)
		if wrong != nil {
			return nil, &s.Locate(diag.Diagnostics{*wrong})[0]
		}
		out = append(out, renewed)
	}
	return out, nil
}
