package school

import (
	"fmt"

	"homebuild/internal/activity"
	"homebuild/internal/picture"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
)

// Habits are wishes of a week that the next one takes over. Its place is not among
// them: places take turns.
type Habits struct {
	Stories, Minutes           int
	ExtraSentence, NumberWords bool
	WarmUp                     string // empty for none
	Review                     bool
	Ladder                     bool // easier and harder stories beside the week's own
}

// habits are those of the newest week, or of a week without wishes.
func (y *Year) habits() Habits {
	h := Habits{Stories: week.DefaultStories, Minutes: week.DefaultMinutes, Review: y.Site.Review}
	if n := len(y.Site.Weeks); n > 0 {
		w := y.Site.Weeks[n-1]
		h = Habits{w.Stories, w.Minutes, w.ExtraSentence, w.NumberWords, w.WarmUp, w.Review, w.Ladder}
	}
	return h
}

// Settings are the habits that are not the usual ones, as a week file writes them.
func (y *Year) Settings(h Habits) []string {
	var out []string
	add := func(unusual bool, format string, value any) {
		if unusual {
			out = append(out, fmt.Sprintf(format, value))
		}
	}
	add(h.Stories != week.DefaultStories, "stories = %d", h.Stories)
	add(h.Ladder, "ladder = %t", h.Ladder)
	add(h.ExtraSentence, "extra-sentence = %t", h.ExtraSentence)
	add(h.NumberWords, "number-words = %t", h.NumberWords)
	add(h.Review != y.Site.Review, "review = %t", h.Review)
	add(h.Minutes != week.DefaultMinutes, "minutes = %d", h.Minutes)
	add(h.WarmUp != "", "warm-up = %q", h.WarmUp)
	return out
}

// ownWays are the way of working and the picture of the newest week where they are
// not those that were proposed for it: the class's own, which come first among equals.
func ownWays(plan *activity.Planner, weeks []activity.Request) (focus strategy.Name, drawn picture.Kind) {
	if len(weeks) == 0 {
		return 0, 0
	}
	earlier, last := weeks[:len(weeks)-1], weeks[len(weeks)-1]
	plain := last
	plain.Focus, plain.Picture = 0, 0
	if best, _, _ := plan.BestFocus(earlier, plain); best != last.Focus {
		focus = last.Focus
	}
	plain.Focus = last.Focus
	if best, _, _ := plan.BestPicture(earlier, plain); best != last.Picture {
		drawn = last.Picture
	}
	return focus, drawn
}
