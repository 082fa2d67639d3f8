package activity

import (
	"testing"

	"homebuild/internal/picture"
)

// A picture that a target recommends shows a good part of the stories of a week
// that is made for it, and the usual one all of them.
func TestRecommendedPicturesShowTheStories(t *testing.T) {
	for _, target := range sample(t, 3) {
		for i, kind := range target.Pictures {
			plan := Year([]Request{{Week: "2026-09-14", Key: "pictures", Target: target, Picture: kind, Stories: MostStories}})[0]
			shown := 0
			for _, a := range plan.All() {
				if picture.Fits(kind, a.Problem) {
					shown++
				}
			}
			if all := len(plan.All()); i == 0 && shown < all || 3*shown < all {
				t.Errorf("%s: %v shows %d of %d stories", target.ID, kind, shown, all)
			}
		}
	}
}
