//go:build browser

package browser_test

import (
	"slices"
	"strings"
	"testing"
)

// Every kind of page, in every language, and each screen of the walk, is opened once,
// under its own policy, and looked at in all ways: with the keyboard, with a thumb, by
// the engine for accessibility, and where the screen is narrow or the letters are large.
//
// A quick run lets be what differs in words alone: the engine reads one language in each
// direction, and dark colors, the screens of the walk, and their order for the keyboard,
// in the class's language only.
func TestViews(t *testing.T) {
	t.Parallel()
	inEachLanguage(t, func(b *tab, tag string, views []view) {
		inClass := tag == "" || tag == "en"
		for i, v := range views {
			if i > 0 && v.path == views[i-1].path {
				b.do(v) // the walk goes on
			} else {
				b.open(v)
			}
			closer := inClass || slices.Contains(closely, tag) && (*all || !v.isScreen())
			if closer && !strings.Contains(v.name, "heavy") {
				b.isReached(v) // what is heavy is the same, only longer
			}
			b.fitsAPhone(v)
			if closer || *all {
				b.breaksNoRule(v, inClass || *all)
			}
			b.losesNothing(v)
		}
	})
}
