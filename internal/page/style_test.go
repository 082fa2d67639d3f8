package page

import (
	"strings"
	"testing"

	"homebuild/internal/cards"
	"homebuild/internal/picture"
)

// TestStyleKnows: some ids of the pages stand in the shared CSS too; it must
// know all of them.
func TestStyleKnows(t *testing.T) {
	theme := paper(t)
	learn, own := theme.styles[kindLearn].css, theme.styles[kindOwn].css
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

// TestSharing: a picture that replies have in common is drawn once, another
// one stays with its reply.
func TestSharing(t *testing.T) {
	f := newStock(t).in("en")
	open, solved, first := f.bar(picture.Open), f.bar(picture.Solved), f.bar(picture.FirstPart)
	story := &TryStory{Replies: []Reply{
		{Right: true, Picture: solved}, {Picture: open}, {Picture: first}, {}, {Picture: f.bar(picture.Open)},
	}}
	want := []string{"reply right uses", "reply help uses", "reply help", "reply help", "reply help uses"}
	for i := range story.Replies {
		if got := story.replyClass(i); got != want[i] {
			t.Errorf("reply %d is %q, want %q", i, got, want[i])
		}
	}
}
