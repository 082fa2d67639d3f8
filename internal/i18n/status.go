package i18n

import (
	"io/fs"

	"homebuild/internal/diag"
)

// Status is how far a language file has come.
type Status struct {
	Tag      string   `json:"tag"`
	Name     string   `json:"name"`     // own name; empty when the file cannot be read
	Total    int      `json:"total"`    // messages that the file needs with the blocks it has
	Done     int      `json:"done"`     // of Total, with a text
	Stale    int      `json:"stale"`    // of Done, made from an English text that has changed
	LeftOut  []string `json:"leftOut"`  // stories, things, people and settings that the language leaves out
	Problems int      `json:"problems"` // that keep it from being used
	Reviewed string   `json:"-"`        // who signed it and when; empty for a draft
	Source   bool     `json:"-"`        // English, which the others are made from
}

// Missing is how many messages have no text yet.
func (s Status) Missing() int { return s.Total - s.Done }

// StatusOf tells how far every language file of the folders has come. Problems
// are those of English itself, without which nothing can be told.
func StatusOf(folders ...fs.FS) ([]Status, diag.Problems) {
	_, src, problems := loadSource(folders)
	if len(problems) > 0 {
		return nil, problems
	}
	var out []Status
	for _, tag := range Tags(folders...) {
		if tag == SourceTag {
			out = append(out, statusOf(src.file, src))
			continue
		}
		f, problems := readFile(tag, folders)
		if f == nil {
			out = append(out, Status{Tag: tag, Problems: len(problems)})
			continue
		}
		out = append(out, statusOf(f, src))
	}
	return out, nil
}

func statusOf(f *file, src *source) Status {
	lang, problems := build(f, src)
	s := Status{Tag: f.tag, Problems: len(problems), Source: f.tag == SourceTag}
	if m := f.messages["language.name"]; m != nil {
		s.Name = m.Other
	}
	if lang != nil {
		s.Reviewed = lang.Reviewed()
	}
	b := &builder{file: f, source: src}
	present := b.presentBlocks()
	left := map[string]bool{}
	for _, id := range src.file.order {
		in := block(id)
		switch {
		case !src.required(id):
		case in != "" && !present[in]:
			if !left[in] {
				s.LeftOut = append(s.LeftOut, in)
			}
			left[in] = true
		default:
			s.Total++
			if b.hasText(id) {
				s.Done++
			}
		}
	}
	for id, m := range f.messages {
		if src.staleness(id, m) == stale {
			s.Stale++
		}
	}
	return s
}
