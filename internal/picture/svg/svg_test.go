package svg

import (
	"encoding/xml"
	"regexp"
	"strconv"
	"strings"
	"testing"

	svgo "github.com/ajstarks/svgo"

	"homebuild/internal/phrase"
	"homebuild/internal/picture"
)

// TestStyleHasNoColours leaves colours to themes: light, dark, print.
func TestStyleHasNoColours(t *testing.T) {
	if found := regexp.MustCompile(`#[0-9a-fA-F]{3,8}\b[^)]|rgb|hsl|\b(black|white|red|blue|green|gr[ae]y)\b`).FindString(Style()); found != "" {
		t.Errorf("the style has a colour of its own: %q", found)
	}
	for _, size := range regexp.MustCompile(`(\d+)px`).FindAllStringSubmatch(Style(), -1) {
		if n, err := strconv.Atoi(size[1]); err != nil || n < 16 {
			t.Errorf("text of %s is too small to read on a phone", size[0])
		}
	}
}

// TestWords writes what a page hands in: its digits, its words, escaped.
func TestWords(t *testing.T) {
	arabic := func(n int) string {
		return strings.Map(func(r rune) rune { return r - '0' + '٠' }, strconv.Itoa(n))
	}
	drawing := Draw(picture.Bar(8, 6), Options{ID: `p"1`, Say: func(phrase.Line) string { return "8 < 9 & more" }, Number: arabic})
	for _, want := range []string{">١٤<", ">٨<", ">٦<", ">8 &lt; 9 &amp; more</title>", `id="p&#34;1"`} {
		if !strings.Contains(drawing, want) {
			t.Errorf("want %s in\n%s", want, drawing)
		}
	}
	for _, text := range []string{drawing, Defs()} {
		if err := xml.Unmarshal([]byte(text), new(struct{})); err != nil {
			t.Errorf("%v in\n%s", err, text)
		}
	}
}

// A path without a course, a class of nobody's and a group that changes nothing are left
// out; a group that moves what is in it says where to, be it along one axis.
func TestOnlyWhatIsNeeded(t *testing.T) {
	for want, draw := range map[string]func(c canvas){
		"":                    func(c canvas) { c.Path("", "part-a") },
		`<path d="M1 2h3" />`: func(c canvas) { c.Path("M1 2h3", "") },
		`<circle cx="1" cy="2" r="3" class="part-a" />`:         func(c canvas) { c.Group("", 0, 0, func() { c.Circle(1, 2, 3, "part-a") }) },
		"<g transform=\"translate(0,7)\" >\n</g>":               func(c canvas) { c.Group("", 0, 7, func() {}) },
		"<g transform=\"translate(7,0)\" >\n</g>":               func(c canvas) { c.Group("", 7, 0, func() {}) },
		"<g class=\"hop\" transform=\"translate(7,0)\" >\n</g>": func(c canvas) { c.Group("hop", 7, 0, func() {}) },
	} {
		var out strings.Builder
		draw(canvas{svgo.New(&out)})
		if got := strings.TrimSpace(out.String()); got != want {
			t.Errorf("want %q, got %q", want, got)
		}
	}
}
