package school

import (
	"homebuild/internal/output"
	"homebuild/internal/week"
)

// Keep lists the files that keep the stories of weeks as families see them from
// now on: one for each week that shows and has none yet, or has a ladder now that
// is not in it.
func (s *Site) Keep() []output.File {
	var out []output.File
	for _, w := range s.Site.Showing(s.On) {
		choices := s.Choices(w.Date)
		if len(choices) == 0 {
			continue
		}
		text := w.StoriesText(choices)
		if len(w.Kept) > 0 {
			text = w.WithLadder(choices)
		}
		if text != "" {
			out = append(out, output.Text(week.StoriesPath(w.Date), text))
		}
	}
	return out
}
