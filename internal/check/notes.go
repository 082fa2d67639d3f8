package check

import (
	"fmt"
	"slices"

	"homebuild/internal/diag"
	"homebuild/internal/site"
	"homebuild/internal/week"
)

// notes finds weeks without a note, and notes that a language shows in another,
// for want of its own.
func notes(s subject) diag.Diagnostics {
	var out diag.Diagnostics
	var none []string
	without := map[string][]string{}
	for _, w := range s.in.Site.Weeks {
		if !w.HasNote {
			none = append(none, w.Date)
		}
		for _, tag := range s.in.Site.Languages {
			if len(w.Notes) > 0 && w.Notes[tag] == "" {
				without[tag] = append(without[tag], w.Date)
			}
		}
	}
	if len(none) > 0 {
		out = append(out, diag.Diagnostic{
			File: week.Folder, Text: "no note to families for " + some(newestFirst(none)) + "; they read a greeting of ours, in their language",
			Hint: "write yours into the week, below a line [note]",
			Code: diag.NoNote,
		})
	}
	for _, tag := range s.in.Site.Languages {
		dates := without[tag]
		if len(dates) == 0 {
			continue
		}
		p := diag.Diagnostic{
			File: week.Folder, Text: fmt.Sprintf("no note in %s for %s; the page shows another one, and says in which language", week.LanguageName(tag), some(newestFirst(dates))),
			Hint: fmt.Sprintf("write it into %s, below [note]: %s = \"...\"", week.Path(dates[len(dates)-1]), tag),
			Code: diag.NoNoteIn, Value: tag,
		}
		if tag == s.in.Site.School {
			p.Text = fmt.Sprintf("no note in %s, the class's own language, for %s", week.LanguageName(tag), some(newestFirst(dates)))
		}
		out = append(out, p)
	}
	return out
}

// copied finds notes of the newest week that an earlier week has word for word:
// a copied file whose note nobody changed.
func copied(s subject) diag.Diagnostics {
	weeks := s.in.Site.Weeks
	newest := weeks[len(weeks)-1]
	var out diag.Diagnostics
	for _, tag := range s.in.Site.Languages {
		note := newest.Notes[tag]
		i := slices.IndexFunc(weeks[:len(weeks)-1], func(w week.Week) bool { return note != "" && w.Notes[tag] == note })
		if i < 0 {
			continue
		}
		p := newest.Problem("note."+tag, fmt.Sprintf("the note in %s is that of %s, word for word", week.LanguageName(tag), weeks[i].Date),
			"if the week was copied from the other, write what is new")
		p.Code, p.Value = diag.Copied, weeks[i].Date
		out = append(out, p)
	}
	return out
}

// Week says what is good to know of the date and the notes of one week, without
// making any page.
func Week(in site.Input, date string) diag.Diagnostics {
	at := slices.IndexFunc(in.Site.Weeks, func(w week.Week) bool { return w.Date == date })
	if at < 0 {
		return nil
	}
	all := in.Site.Weeks
	in.Site.Weeks = all[:at+1]
	found := copied(subject{in: in})
	found = append(found, slices.DeleteFunc(days(subject{in: in}), func(d diag.Diagnostic) bool { return d.Value != date })...)
	in.Site.Weeks = all[at : at+1]
	return append(found, hardNotes(subject{in: in})...)
}

// days finds weeks that begin on another day of the week than the one before:
// most likely a slip in the date.
func days(s subject) diag.Diagnostics {
	var out diag.Diagnostics
	weeks := s.in.Site.Weeks
	for i, w := range weeks {
		if day := w.Weekday(); i > 0 && day != weeks[i-1].Weekday() && day != weeks[0].Weekday() {
			p := w.Problem("", fmt.Sprintf("%s is a %s, and the week before begins on a %s", w.Date, day, weeks[i-1].Weekday()),
				"if the date is a slip, name the file by the day that your weeks begin on")
			p.Code, p.Value = diag.OtherDay, w.Date
			out = append(out, p)
		}
	}
	return out
}

func newestFirst(dates []string) []string {
	out := slices.Clone(dates)
	slices.Reverse(out)
	return out
}
