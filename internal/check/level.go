package check

import (
	"homebuild/internal/readability"
	"homebuild/internal/site"
)

// ReadingLevel is how hard the pages of one language are to read: the words to
// families, and the stories for children.
type ReadingLevel struct {
	Tag             string
	Family, Stories readability.Level
}

// readingLevels measures the languages that there is a formula for.
func readingLevels(p *site.Planned, tags []string) []ReadingLevel {
	var out []ReadingLevel
	for _, tag := range tags {
		if !readability.Known(tag) {
			continue
		}
		read, names := p.Texts(tag)
		texts := make([]readability.Text, len(read))
		for i, x := range read {
			texts[i] = readability.Text(x)
		}
		r := readability.Texts(tag, texts, names...)
		out = append(out, ReadingLevel{tag, r.Family, r.Stories})
	}
	return out
}
