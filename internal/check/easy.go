package check

import (
	"path"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/readability"
	"homebuild/internal/week"
)

// easy says which notes are harder to read than they could be, in the languages
// that there is a formula for.
func easy(l looked) []Finding {
	var out []Finding
	for _, w := range l.in.Site.Weeks {
		for _, tag := range l.in.Site.Languages {
			note := w.Notes[tag]
			if note == "" || !readability.Known(tag) {
				continue
			}
			file := path.Join(week.Folder, w.Date+"."+tag+".md")
			if tag == l.in.Site.School {
				file = path.Join(week.Folder, w.Date+".md")
			}
			for _, m := range readability.Texts(tag, paragraphs(note)).Misses {
				out = append(out, Finding{About: Notes, Problem: diag.Problem{
					File: file, Text: "in the note, " + m.Why, Hint: "families read it on a phone, at the end of a day: shorter sentences and everyday words help",
				}})
			}
		}
	}
	return out
}

// paragraphs are the parts of a note, without the marks that make words bold.
func paragraphs(note string) []readability.Text {
	var out []readability.Text
	for part := range strings.SplitSeq(note, "\n\n") {
		text := strings.Join(strings.Fields(strings.ReplaceAll(part, "*", "")), " ")
		out = append(out, readability.Text{Text: text})
	}
	return out
}
