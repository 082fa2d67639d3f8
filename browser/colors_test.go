//go:build browser

package browser_test

import (
	"fmt"
	"testing"

	"github.com/chromedp/cdproto/emulation"
)

// forcedColors puts the reader's own colors in force, few and strong, as Windows
// contrast themes do (CSS Color Adjustment Level 1, 3 "Forced Color Palettes").
func (b *tab) forcedColors(scheme string) {
	b.t.Helper()
	must(b.t, call(b, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{
		{Name: "forced-colors", Value: "active"}, {Name: "prefers-color-scheme", Value: scheme}, {Name: "prefers-reduced-motion", Value: "reduce"},
	}}))
}

// ground is a script that tells on which color an element lies, and in which it is
// written.
const ground = `(e => { const s = getComputedStyle(e); return s.backgroundColor + " " + s.color })`

// Where colors are forced, what is done looks other than what is to come: the
// screens of the walk behind the reader, an answer that was picked, a card. The
// button that leads on can be read.
func TestForcedColors(t *testing.T) {
	t.Parallel()
	for _, scheme := range []string{"light", "dark"} {
		t.Run(scheme, func(t *testing.T) {
			t.Parallel()
			b := openTab(t)
			b.forcedColors(scheme)
			for _, x := range []struct{ path, do, done, open string }{
				{week + ".html", screen(5), "label:has(> #w4)", "label:has(> #w6)"},
				{week + ".html#show", "", "label:has(> #w4)", "label:has(> #w6)"},
				{week + "-try.html", answered(1, false), "#story-1 .num:has(:checked)", "#story-1 .num:not(:has(:checked))"},
				{week + "-story.html", "document.getElementById('who-1').click();", "label:has(#who-1)", "label:has(#who-2)"},
				{week + ".html", screen(2), ".s2 .next", ".s2 .back"},
			} {
				b.open(view{path: "en/" + x.path, do: x.do})
				of := func(selector string) string {
					return eval[string](b, ground+fmt.Sprintf("(document.querySelector(%q))", selector))
				}
				if of(x.done) == of(x.open) {
					t.Errorf("%s: %s looks like %s: %s", x.path, x.done, x.open, of(x.done))
				}
			}
		})
	}
}
