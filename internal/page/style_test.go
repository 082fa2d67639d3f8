package page

import (
	"strings"
	"testing"

	"homebuild/internal/cards"
)

// TestStyleKnows: some ids of the pages stand in the shared CSS too; it must
// know all of them.
func TestStyleKnows(t *testing.T) {
	theme := paper(t)
	learn, own := theme.styles[learnKind].css, theme.styles[inventKind].css
	v := newStock(t).in("en").learn()
	all := (&state{Layout: v.layout()}).screens(v)
	for i := range all {
		if want := id("main:has(#w", i+1, ":checked) .s", i+1); !strings.Contains(learn, want) {
			t.Errorf("the style has no %q: the screen would not show", want)
		}
	}
	// A walk with two calculations and a picture that grows three times has the most.
	if len(all) > mostScreens-2 {
		t.Errorf("%d screens, and the style knows %d", len(all), mostScreens)
	}
	for group, ids := range map[string][]string{who: cards.Characters(), with: cards.Characters(), where: cards.Settings()} {
		for _, card := range ids {
			name := theme.deck.name(group, card)
			if want := "main:has(#" + name + ":checked) ." + name; !strings.Contains(own, want) {
				t.Errorf("the style has no %q: %s would not show when picked", want, card)
			}
		}
	}
}
