package desk

import (
	"homebuild/internal/activity"
	"homebuild/internal/school"
)

// Steps says where an easier and a harder story would lead: see [Calls].
func (d *Desk) Steps(of StoryOf) (Steps, error) {
	s, err := d.open(of.Date)
	if err != nil {
		return Steps{}, err
	}
	return Steps{Easier: s.step(of.Story, activity.EasierNumbers), Harder: s.step(of.Story, activity.HarderNumbers)}, nil
}

// step is the size of the story that a change would put in the place of one; nil
// where there is none.
func (s *sheet) step(number int, change activity.Change) *Size {
	swapped, diagnostics := s.school().Swap(school.Swap{Date: s.Date, Story: number, Change: change})
	if len(diagnostics) > 0 {
		return nil
	}
	size := sizeOf(swapped.Now.Problem)
	return &size
}
