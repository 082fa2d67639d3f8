package desk

import (
	"slices"
	"testing/fstest"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/output"
	"homebuild/internal/school"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
)

// LastYear lays the weeks of a copy on new Mondays: see [Calls]. Where there are
// weeks already, they follow the newest; an empty desk gets the copy's settings, too.
func (d *Desk) LastYear(l LastYear) (Act, error) {
	old := fstest.MapFS{}
	for name, text := range l.Files {
		old[name] = &fstest.MapFile{Data: []byte(text)}
	}
	s := d.read()
	wish := school.Reuse{Today: d.today}
	if len(s.Site.Weeks) > 0 {
		next, _ := d.next(s)
		wish.First = next.Date
	}
	for _, days := range s.Site.DaysOff {
		wish.DaysOff = append(wish.DaysOff, days.String())
	}
	reused, problems := d.school.Beside(old).Reuse(wish)
	if len(problems) > 0 {
		return Act{}, unplaced(problems)
	}
	out := Act{Changes: Changes{}, Monday: reused.Weeks[0].To}
	for _, f := range reused.Files {
		if d.files[week.SiteFile] != nil && (!isOfWeeks(reused, f.Path) || d.files[f.Path] != nil) {
			continue // settings, languages and weeks of this desk stay
		}
		text := d.forHere(s, f)
		out.Changes[f.Path] = &text
	}
	return out, nil
}

func isOfWeeks(r school.Reused, path string) bool {
	return slices.ContainsFunc(r.Weeks, func(m school.Moved) bool { return path == week.Path(m.To) || path == week.StoriesPath(m.To) })
}

// forHere is a file of a copy without letters in languages that this desk has not.
func (d *Desk) forHere(s sheets, f output.File) string {
	text := textFile(f)
	if !week.IsWeek(f.Path) || d.files[week.SiteFile] == nil {
		return text
	}
	for _, tag := range i18n.Tags(d.school.Languages()...) {
		if !slices.Contains(s.Site.Languages, tag) {
			text = tomlfile.Remove(text, LineNote+"."+tag)
		}
	}
	return text
}

// unplaced are problems of files that are not on the desk.
func unplaced(problems diag.Diagnostics) wrong {
	var out wrong
	for _, p := range problems {
		out = append(out, Finding{Story: -1, Text: p.Text, Hint: p.Hint, Code: p.Code, Quote: p.Value, File: p.File, Line: p.Line, Mend: true})
	}
	return out
}
