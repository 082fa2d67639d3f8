package desk

import (
	"cmp"
	"slices"
	"strings"

	"homebuild/internal/check"
	"homebuild/internal/diag"
	"homebuild/internal/pattern"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
)

// Codes of the desk's own findings, beside those of [diag].
const (
	codeNoWeek = "no-week" // nothing can be laid out on that Monday
	codeFewest = "fewest"  // a week has no fewer stories
	codeNoPage = "no-page" // a language has no such page of the week
)

// findings are all that is to mend, and what is good to know, each at the thing it
// is about.
func (s sheets) findings() []Finding {
	var out []Finding
	for _, p := range s.problems {
		out = append(out, s.finding(p, true))
	}
	for _, p := range s.notices {
		out = append(out, s.finding(p, false))
	}
	return out
}

// advice is what is good to know of the date and the letters of a week, each thing
// once.
func (s *sheet) advice() []Finding {
	var out []Finding
	for _, p := range check.Week(s.Input, s.Date) {
		found := s.finding(p, false)
		same := func(o Finding) bool { return o.Key == found.Key && o.Code == found.Code }
		if !slices.ContainsFunc(out, same) {
			out = append(out, found)
		}
	}
	return out
}

// of are those about one week.
func of(all []Finding, date string) []Finding {
	return slices.DeleteFunc(slices.Clone(all), func(f Finding) bool { return f.Date != date })
}

var dateIn = pattern.Of(`\d{4}-\d{2}-\d{2}`)

func (s sheets) finding(p diag.Diagnostic, mend bool) Finding {
	f := Finding{Story: -1, Text: p.Text, Hint: p.Hint, Code: p.Code, Quote: p.Value, File: p.File, Line: p.Line, Mend: mend}
	if strings.HasPrefix(p.File, week.Folder+"/") {
		f.Date = dateIn().FindString(p.File)
	}
	key, at := tomlfile.At(s.text(p.File), p.Line)
	switch {
	case p.File == week.StoriesPath(f.Date): // such a story is left out: no number is its
		f.Key, f.Code = "stories", diag.Misfit
	case strings.HasPrefix(key, "own-story"):
		f.Key, f.Story = "stories", at+1
		if _, tag, ok := strings.Cut(key, ".in."); ok {
			f.Tag = tag
		}
	default:
		f.Key = key
		if tag, ok := strings.CutPrefix(key, "note."); ok {
			f.Tag = tag
		}
	}
	switch f.Code {
	case diag.Unmet:
		f.Key = cmp.Or(f.Key, f.Quote)
	case diag.Missing:
		f.Key = LineTarget
	case diag.Renamed:
		f.Key = f.Quote
	case diag.HeavyPage, diag.HeavyWeek:
		f.Key, f.Tag = LineStories, f.Quote
	}
	return f
}

// heldBack says what families of each language get otherwise than the others.
func (s sheets) heldBack() []Finding {
	var out []Finding
	for _, lang := range s.Catalog.Languages() {
		for _, code := range check.Language(s.Input, lang.Tag()) {
			out = append(out, Finding{Story: -1, Tag: lang.Tag(), Code: code, Quote: lang.Name()})
		}
	}
	return out
}
