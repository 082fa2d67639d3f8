package desk

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
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

// of are those about one week.
func of(all []Finding, date string) []Finding {
	return slices.DeleteFunc(slices.Clone(all), func(f Finding) bool { return f.Date != date })
}

var (
	dateIn   = regexp.MustCompile(`\d{4}-\d{2}-\d{2}`)
	quotedIn = regexp.MustCompile(`"(?:[^"\\]|\\.)*"`)
)

func (s sheets) finding(p diag.Diagnostic, mend bool) Finding {
	f := Finding{Story: -1, Text: p.Text, Hint: p.Hint, Code: p.Code, File: p.File, Line: p.Line, Mend: mend}
	if quoted, err := strconv.Unquote(quotedIn.FindString(p.Text)); err == nil {
		f.Quote = quoted
	}
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
