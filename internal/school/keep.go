package school

import (
	"homebuild/internal/output"
	"homebuild/internal/week"
)

// Keep lists the files that keep the stories of weeks as families see them from
// now on: one for each week that shows and has none yet.
func (s *Site) Keep() []output.File {
	var out []output.File
	for _, w := range s.Site.Showing(s.On) {
		if choices := s.Choices(w.Date); len(w.Kept) == 0 && len(choices) > 0 {
			out = append(out, output.Text(week.StoriesPath(w.Date), w.StoriesText(choices)))
		}
	}
	return out
}
