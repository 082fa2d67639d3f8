package site

import (
	"testing"

	"homebuild/internal/cards"
)

// Every warm-up that a week can have is drawn, standing and seated.
func TestWarmUpsAreDrawn(t *testing.T) {
	all, err := WarmUps()
	if err != nil || len(all) == 0 {
		t.Fatalf("%d warm-ups, error %v", len(all), err)
	}
	deck, err := cards.Load()
	if err != nil {
		t.Fatal(err)
	}
	for _, w := range all {
		for _, id := range []string{"warm-up." + w.ID, "warm-up." + w.ID + "-seated"} {
			if _, err := deck.Draw(id); err != nil {
				t.Error(err)
			}
		}
	}
}
