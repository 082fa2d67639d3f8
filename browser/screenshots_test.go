//go:build browser

package browser_test

import (
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// shown are the languages that pictures are taken in, where they are published:
// left to right, right to left, and without spaces between words.
var shown = []string{"en", "ar", "zh-Hans"}

// TestScreenshots takes pictures of every kind of page, light and dark, and of
// the paper, for people to look at.
func TestScreenshots(t *testing.T) {
	if *screenshots == "" {
		t.Skip("no -screenshots folder is given")
	}
	b := openTab(t)
	for _, scheme := range []string{"light", "dark"} {
		b.scheme(scheme)
		for _, v := range topViews() {
			b.shoot(v, v.name+"-"+scheme)
		}
		for _, tag := range languages(t) {
			if slices.Contains(shown, tag) {
				for _, v := range views(tag) {
					b.shoot(v, tag+"-"+v.name+"-"+scheme)
				}
			}
		}
	}
	for _, tag := range languages(t) {
		if !slices.Contains(shown, tag) {
			continue
		}
		b.visit(file(tag + "/" + week + "-print.html"))
		for _, p := range papers {
			for i, picture := range pngs(t, b.print(p.size), "-r", "80") {
				raw, err := os.ReadFile(picture)
				must(t, err)
				b.keep("paper/"+tag+"-"+p.name+"-"+strconv.Itoa(i+1), raw)
			}
		}
	}
}

// shoot takes a picture of what is on the screen; the whole length of a page
// goes into a second one, where it is longer.
func (b *tab) shoot(v view, name string) {
	b.t.Helper()
	b.size(360, 740)
	b.open(v)
	raw, err := chromedp.Run(b.ctx, chromedp.CaptureScreenshot())
	must(b.t, err)
	b.keep("phone/"+name, raw)
	if !strings.Contains(v.path, "#") && eval[int](b, "document.scrollingElement.scrollHeight") > 760 {
		raw, err = chromedp.Run(b.ctx, chromedp.FullScreenshot(100))
		must(b.t, err)
		b.keep("long/"+name, raw)
	}
}

func (b *tab) keep(name string, raw []byte) {
	b.t.Helper()
	to := filepath.Join(*screenshots, filepath.FromSlash(name)+".png")
	must(b.t, os.MkdirAll(filepath.Dir(to), 0o755))
	must(b.t, os.WriteFile(to, raw, 0o644))
}
