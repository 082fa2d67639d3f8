package desk

import (
	"regexp"
	"slices"
	"strings"

	"homebuild/internal/check"
	"homebuild/internal/diag"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
)

// Codes of the desk's own findings, beside those of [diag].
const (
	codeNoWeek = "no-week" // nothing can be laid out on that Monday
	codeFewest = "fewest"  // a week has no fewer stories
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

// advice is what is good to know of the letters of a week, each thing once.
func (s *sheet) advice() []Finding {
	var out []Finding
	for _, p := range check.Letters(s.Input, s.Date) {
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

var dateIn = regexp.MustCompile(`\d{4}-\d{2}-\d{2}`)

func (s sheets) finding(p diag.Diagnostic, mend bool) Finding {
	f := Finding{Story: -1, Text: p.Text, Hint: p.Hint, Code: p.Code, Quote: p.Value, File: p.File, Line: p.Line, Mend: mend}
	if strings.HasPrefix(p.File, week.Folder+"/") {
		f.Date = dateIn.FindString(p.File)
	}
	key, at := tomlfile.At(s.text(p.File), p.Line)
	switch {
	case p.File == week.StoriesPath(f.Date):
		f.Key, f.Story = "stories", max(0, at)
		if at > 0 {
			f.Story = at + s.own(f.Date)
		}
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
	return f
}

// own is how many stories of her own a week has.
func (s sheets) own(date string) int {
	for _, w := range s.Site.Weeks {
		if w.Date == date {
			return len(w.OwnStories)
		}
	}
	return 0
}
