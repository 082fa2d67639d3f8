package week

import (
	"fmt"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/tomlfile"
)

// notes reads the note of a week in each language that it is written in.
func (r *reader) notes(w *Week, site *Site) {
	s := w.settings.Section("note", "the note to families")
	for _, tag := range site.Languages {
		if s.Value(tag) == nil {
			s.Lines(tag) // so that a note that stands outside its table is told of
		}
	}
	w.Notes = map[string]string{}
	w.HasNote = s.Written
	for _, v := range s.Values() {
		if key, what := w.settings.Sets(v.Key + " ="); key+what != "" {
			continue // a setting of the week, which the file tells of
		}
		text := s.Lines(v.Key)
		tag, ok := r.noteLanguage(s, v.Key, site)
		if !ok {
			continue
		}
		if _, twice := w.Notes[tag]; twice {
			s.Add(v.Key, fmt.Sprintf("there is a note in %q already", tag), "keep one of the two")
			continue
		}
		if strings.TrimSpace(text) == "" {
			continue
		}
		first := s.FirstLine(v.Key)
		w.Notes[tag] = strings.TrimSpace(text)
		r.checkNote(w.file, first, text, w.Allow)
		r.settingsWithin(w, first, text)
	}
}

// noteLanguage finds the language that a note is in.
func (r *reader) noteLanguage(s *tomlfile.Section, typed string, site *Site) (string, bool) {
	if tag, ok := sameWord(typed, site.Languages); ok {
		return tag, true
	}
	tag, known := sameWord(typed, r.allowed.Languages)
	switch {
	case known && len(site.Languages) == 0: // what is wrong with the list is told
		return tag, true
	case known:
		s.AddCoded(diag.Unknown, tag, typed, fmt.Sprintf("this site is not made in %q", tag), fmt.Sprintf("add %q to languages in %s, or take the note away", tag, SiteFile))
	default:
		s.AddCoded(diag.Unknown, typed, typed, fmt.Sprintf("%q is not a language there is a file for", typed), languageHint(typed, r.allowed.Languages))
	}
	return "", false
}

// settingsWithin finds settings and stories of one's own in the words of a note,
// where they would be shown to families and do nothing.
func (r *reader) settingsWithin(w *Week, first int, note string) {
	const hint = "move it out of the note, above the line [note]"
	for number, line := range lines(note) {
		switch key, what := w.settings.Sets(line); {
		case what != "":
			r.add(w.file, first+number-1, what+" stands in the note", hint+", with the lines that belong to it")
		case key != "":
			r.add(w.file, first+number-1, fmt.Sprintf("%q is a setting, and stands in the note", key), hint)
		}
	}
}
