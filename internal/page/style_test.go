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
	learn, own := theme.styles[learnKind.class].css, theme.styles[inventKind.class].css
	for _, step := range walkSteps {
		if want := ".walk:has(#" + step.id; !strings.Contains(learn, want) {
			t.Errorf("learn.css has no %q: the row of steps would not fill", want)
		}
	}
	for _, card := range append(cards.Characters(), cards.Settings()...) {
		name := theme.deck.names[card]
		if want := "main:has(#" + name + ":checked) ." + name; !strings.Contains(own, want) {
			t.Errorf("own.css has no %q: %s would not show when picked", want, card)
		}
	}
}
