package translate

import (
	"fmt"
	"slices"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// Summary is a status as people and other programs read it.
type Summary struct {
	Status
	Missing int      `json:"missing"`
	Untold  []string `json:"untold"` // kinds of stories that it cannot tell
	Review  string   `json:"review"` // "source", "draft", or who signed it and when
}

// Summary says a status in the words of the answer key.
func (s Status) Summary(english *i18n.Language) Summary {
	s.LeftOut = append([]string{}, s.LeftOut...) // [] in JSON
	return Summary{s, s.Missing(), untold(s.Lost, english), s.review()}
}

func (s Status) review() string {
	switch {
	case s.Source:
		return "source"
	case s.Unread > 0:
		return fmt.Sprintf("%s (%d not read)", s.Reviewed, s.Unread)
	case s.Reviewed != "":
		return s.Reviewed
	}
	return "draft"
}

// untold says what a language cannot tell for the events that it leaves out.
func untold(lost []story.Loss, english *i18n.Language) []string {
	if len(lost) == len(problem.Kinds()) && !slices.ContainsFunc(lost, func(l story.Loss) bool { return l.Beyond > 0 }) {
		return []string{"every kind of story"}
	}
	out := []string{} // [] in JSON
	for _, l := range lost {
		name := english.Plain(phrase.Say("kind." + l.Kind.String() + ".name"))
		if l.Beyond > 0 {
			name += fmt.Sprintf(" beyond %d", l.Beyond)
		}
		out = append(out, name)
	}
	return out
}

// Summary is one line about a draft.
func (d *Draft) Summary() string {
	st := d.Status
	line := fmt.Sprintf("%-8s %d of %d messages", st.Tag, st.Done, st.Total)
	if len(st.LeftOut) > 0 {
		line += ", " + diag.Amount(len(st.LeftOut), "story or thing", "stories and things") + " left out"
	}
	if n := len(d.Stale) + len(d.Unread); n > 0 {
		line += fmt.Sprintf(", %d to read again", n)
	}
	if len(d.Advice) > 0 {
		line += ", " + diag.Amount(len(d.Advice), "note", "notes")
	}
	switch {
	case len(d.Problems) > 0:
		line += fmt.Sprintf("; %s to write and %s to mend before it can be used", diag.Amount(len(d.Missing), "text", "texts"), diag.Amount(len(d.Problems), "thing", "things"))
	case len(d.Missing) > 0:
		line += fmt.Sprintf("; %s to write; pages that need none of them can be made", diag.Amount(len(d.Missing), "text", "texts"))
	case st.Source:
		line += "; the source"
	case st.Reviewed != "":
		line += "; signed by " + st.Reviewed
	default:
		line += "; a draft, ready for pages"
	}
	return line
}
