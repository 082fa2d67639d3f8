package site

import (
	"slices"
	"testing"

	"homebuild/internal/draw/cards"
)

// Every warm-up that a week can have is drawn.
func TestWarmUpsAreDrawn(t *testing.T) {
	all, err := WarmUps()
	if err != nil || len(all) == 0 {
		t.Fatalf("%d warm-ups, error %v", len(all), err)
	}
	for _, w := range all {
		if id := "warm-up." + w.ID; !slices.Contains(cards.WarmUps(), id) {
			t.Errorf("%s has no drawing; there are %v", id, cards.WarmUps())
		}
	}
}
