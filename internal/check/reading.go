package check

import (
	"fmt"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/readability"
	"homebuild/internal/site"
)

// ReadingLevel is how hard the pages of one language are to read: the words to
// families, and the stories for children.
type ReadingLevel struct {
	Tag             string
	Family, Stories readability.Level
}

// String says it with the source of the formula.
func (l ReadingLevel) String() string {
	if l.Tag == "es" {
		return fmt.Sprintf("es: words to families %.0f, stories %.0f (Szigriszt 1993, INFLESZ scale: above 65 is fairly easy)",
			l.Family.Szigriszt, l.Stories.Szigriszt)
	}
	return fmt.Sprintf("%s: words to families grade %.1f (Flesch-Kincaid, Kincaid et al. 1975), stories grade %.1f (Spache 1974)",
		l.Tag, l.Family.Grade, l.Stories.Spache)
}

// readingLevels measures the languages that there is a formula for.
func readingLevels(p *site.Planned, tags []string) []ReadingLevel {
	var out []ReadingLevel
	for _, tag := range tags {
		if !readability.Known(tag) {
			continue
		}
		texts, names := p.Texts(tag)
		r := readability.Texts(tag, texts, names...)
		out = append(out, ReadingLevel{tag, r.Family, r.Stories})
	}
	return out
}

// hardNotes says which notes are harder to read than they could be, in the
// languages that there is a formula for.
func hardNotes(s subject) diag.Diagnostics {
	var out diag.Diagnostics
	for _, w := range s.in.Site.Weeks {
		for _, tag := range s.in.Site.Languages {
			note := w.Notes[tag]
			if note == "" || !readability.Known(tag) {
				continue
			}
			for _, m := range readability.Texts(tag, paragraphs(note)).Misses {
				p := w.Problem("note."+tag, "in the note, "+m.Why, "families read it on a phone, at the end of a day: shorter sentences and everyday words help")
				p.Code = diag.HardNote
				out = append(out, p)
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
