package cards

import (
	"bytes"
	"compress/gzip"
	"encoding/xml"
	"flag"
	"io"
	"io/fs"
	"math"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"homebuild/themes"
)

// All stand on one ground line, fill the same height as well as they can, and
// stay inside of their card with the whole ink line.
func TestOneGround(t *testing.T) {
	d := deck(t)
	for id := range d.shapes {
		if strings.HasPrefix(id, "setting.") {
			continue
		}
		b := bounds(t, must(t)(d.Draw(id)))
		if b.bottom < 111 || b.bottom > 114 || b.top < 2 || b.left < 1 || b.right > 119 {
			t.Errorf("%s: want its feet between 111 and 114 and all of it inside its card, got %v", id, b)
		}
		if tall := b.bottom - b.top; tall < 75 {
			t.Errorf("%s: want it 75 units tall or more, got %v", id, tall)
		}
	}
}

type box struct{ left, top, right, bottom float64 }

func (b *box) add(x, y float64) {
	b.left, b.top, b.right, b.bottom = min(b.left, x), min(b.top, y), max(b.right, x), max(b.bottom, y)
}

// reaches is how far each pen's ink reaches up and down from where it goes; to the
// sides it is 1.4 times as far.
var reaches = map[string]float64{"k-ink": 1, "k-far": 1, "k-bold": 3}

// bounds is what the pens and the colors cover, but for the outside of bends.
func bounds(t *testing.T, svg string) box {
	b := box{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	for _, e := range elements(t, svg)[1:] {
		if e.Name.Local != "path" {
			t.Fatalf("cannot measure <%s>", e.Name.Local)
		}
		reach, shear := reaches[pen(e)], 0.0
		if pen(e) != "" {
			shear = 1
		}
		walk(t, attribute(e, "d"), func(x, y float64) {
			x -= shear * y
			b.add(x-1.4*reach, y-reach)
			b.add(x+1.4*reach, y+reach)
		})
	}
	return b
}

// walk visits the ends of a path's steps. Source of the commands: SVG 1.1 (W3C
// 2011), section 8.3.
func walk(t *testing.T, data string, visit func(x, y float64)) {
	sizes := map[byte]int{'M': 2, 'm': 2, 'l': 2, 't': 2, 'q': 4, 'h': 1, 'v': 1}
	var x, y, startX, startY float64
	for _, c := range regexp.MustCompile(`[a-zA-Z][^a-zA-Z]*`).FindAllString(data, -1) {
		if c == "z" {
			x, y = startX, startY
			continue
		}
		var n []float64
		for _, w := range regexp.MustCompile(`-?[\d.]+`).FindAllString(c, -1) {
			v, err := strconv.ParseFloat(w, 64)
			if err != nil {
				t.Fatal(err)
			}
			n = append(n, v)
		}
		size := sizes[c[0]]
		if size == 0 || len(n) == 0 || len(n)%size > 0 {
			t.Fatalf("cannot read %q in the path %q", c, data)
		}
		for ; len(n) > 0; n = n[size:] {
			switch step := n[:size]; c[0] {
			case 'M':
				x, y = step[0], step[1]
			case 'h':
				x += step[0]
			case 'v':
				y += step[0]
			default:
				x, y = x+step[size-2], y+step[size-1]
			}
			if c[0] == 'M' || c[0] == 'm' {
				startX, startY = x, y
			}
			visit(x, y)
		}
	}
}

// Every line, and nothing else, goes through the nib: one hand drew them all. A file
// says it for programs for drawing, the style for pages.
func TestOnePen(t *testing.T) {
	names, err := fs.Glob(files, "art/*/*.svg")
	if err != nil {
		t.Fatal(err)
	}
	lines := 0
	for _, name := range names {
		text, err := files.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		for d := xml.NewDecoder(bytes.NewReader(text)); ; {
			token, err := d.Token()
			if err == io.EOF {
				break
			}
			if err != nil {
				t.Fatal(err)
			}
			e, ok := token.(xml.StartElement)
			if !ok {
				continue
			}
			if (pen(e) != "") != (attribute(e, "transform") == nib) {
				t.Errorf("%s: want transform=%q where there is a line, and only there, got %v", name, nib, e.Attr)
			}
			if pen(e) != "" {
				lines++
			}
		}
	}
	css, _, _, _ := style(t)
	if want := ".k-ink, .k-far, .k-bold { transform: skewX(-45deg) }"; lines == 0 || !strings.Contains(css, want) {
		t.Errorf("%d lines; want the style to have %s: x less y, as %s says", lines, want, nib)
	}
}

// A setting goes on far to the left, where a wide scene has its people, and
// leaves no edge open.
func TestWide(t *testing.T) {
	d := deck(t)
	for _, id := range Settings() {
		if b := bounds(t, must(t)(d.Draw(id))); b.left > -210 || b.right < 240 || b.top > 0 || b.bottom < 150 {
			t.Errorf("%s: want it to fill -210 to 240 and 0 to 150, got %v", id, b)
		}
	}
}

// A page weighs at most 14,000 bytes compressed (the first round trip of a
// fresh connection, RFC 6928); the cards leave room for its words.
func TestWeight(t *testing.T) {
	d := deck(t)
	symbols := must(t)(d.Symbols(everyCard()...))
	page := symbols + Stage(every("where"), every("who"), every("with"))
	for _, id := range everyCard() {
		page += must(t)(d.Use(id))
	}
	if got := zipped(t, symbols); got > 5450 {
		t.Errorf("want the symbols within 5450 bytes compressed, got %d", got)
	}
	if got := zipped(t, page); got > 5750 {
		t.Errorf("want symbols, cards and stage within 5750 bytes compressed, got %d", got)
	}
	t.Logf("symbols %d bytes, compressed %d; with all cards and a stage %d", len(symbols), zipped(t, symbols), zipped(t, page))
}

func zipped(t *testing.T, s string) int {
	var b bytes.Buffer
	w, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := w.Write([]byte(s)); err != nil {
		t.Fatal(err)
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Len()
}

// style is the cards' part of the themes: the color that each class gives,
// and the ink in light and in dark.
func style(t *testing.T) (css string, fills map[string]string, light, dark string) {
	text, err := themes.Files.ReadFile("base/cards.css")
	if err != nil {
		t.Fatal(err)
	}
	fills = map[string]string{}
	for _, m := range regexp.MustCompile(`(?m)^\.(k-[a-z0-9]+)(?:, \.k-bold)? \{(?: fill: #([0-9a-f]{6}))?`).FindAllStringSubmatch(string(text), -1) {
		fills[m[1]] = m[2]
	}
	inks := regexp.MustCompile(`\.k-ink, \.k-bold \{ stroke: #([0-9a-f]{6})`).FindAllStringSubmatch(string(text), -1)
	if len(inks) != 2 {
		t.Fatalf("want the ink in light and in dark, got %v", inks)
	}
	return string(text), fills, inks[0][1], inks[1][1]
}

// A theme's author finds every class in cards.css, and none in vain.
func TestClasses(t *testing.T) {
	_, rules, _, _ := style(t)
	used := map[string]bool{}
	for id := range deck(t).shapes {
		for _, e := range elements(t, must(t)(deck(t).Draw(id)))[1:] {
			for _, c := range strings.Fields(attribute(e, "class")) {
				used[c] = true
			}
		}
	}
	for c := range used {
		if _, ok := rules[c]; !ok {
			t.Errorf("class %s has no rule in themes/base/cards.css", c)
		}
	}
	for c := range rules {
		if !used[c] {
			t.Errorf("class %s has a rule in themes/base/cards.css and no shape", c)
		}
	}
}

// Ink stands out from every fill it draws on, so that the pictures read
// without their colors too; in the dark all is dimmed alike. Source: WCAG 2.1,
// 1.4.11 (3:1), and its definitions of contrast ratio and relative luminance.
func TestContrast(t *testing.T) {
	css, fills, light, dark := style(t)
	if !strings.Contains(css, "filter: brightness(.8)") {
		t.Error("want the dark pictures dimmed by .8, as is counted here")
	}
	for mode, tt := range map[string]struct {
		ink string
		dim float64
	}{"light": {light, 1}, "dark": {dark, .8}} {
		n := 0
		for class, fill := range fills {
			if fill == "" || class == "k-black" { // no line is drawn on it
				continue
			}
			n++
			a, b := luminance(t, fill, tt.dim), luminance(t, tt.ink, tt.dim)
			if ratio := (a + 0.05) / (b + 0.05); ratio < 3 {
				t.Errorf("%s: ink on %s: want 3, got %.2f", mode, class, ratio)
			}
		}
		if n < 16 {
			t.Errorf("%s: only %d colors were found", mode, n)
		}
	}
}

func luminance(t *testing.T, hex string, dim float64) float64 {
	n, err := strconv.ParseUint(hex, 16, 32)
	if err != nil {
		t.Fatal(err)
	}
	channel := func(shift uint) float64 {
		c := float64(n>>shift&0xff) / 255 * dim
		if c <= 0.04045 {
			return c / 12.92
		}
		return math.Pow((c+0.055)/1.055, 2.4)
	}
	return 0.2126*channel(16) + 0.7152*channel(8) + 0.0722*channel(0)
}

var sheet = flag.String("sheet", "", "file to write the contact sheet to")

// TestContactSheet writes all drawings and all pairs to a page to look at:
//
//	go test ./internal/cards -run ContactSheet -sheet cards.html
//
// Looking is the check; without the flag it is skipped.
func TestContactSheet(t *testing.T) {
	if *sheet == "" {
		t.Skip("no -sheet file named")
	}
	d := deck(t)
	css, _, _, _ := style(t)
	var b strings.Builder
	b.WriteString("<!DOCTYPE html><meta charset=utf-8><title>Cards</title><style>\n" + css +
		".defs { inline-size: 0; block-size: 0 } body { margin: 8px; background: #f7f1e3 }\n" +
		"@media (prefers-color-scheme: dark) { body { background: #211d1a } }\n" +
		"svg { border-radius: 10px; margin: 2px }</style>\n" + must(t)(d.Symbols(everyCard()...)))
	show := func(width, svg string) {
		b.WriteString(strings.Replace(svg, "<svg", "<svg width="+width, 1))
	}
	for _, width := range []string{"120", "230"} {
		for _, id := range everyCard() {
			show(width, must(t)(d.Use(id)))
		}
		b.WriteString("<br>")
	}
	for id := range d.shapes {
		if strings.HasPrefix(id, "warm-up.") {
			show("230", must(t)(d.Draw(id)))
		}
	}
	b.WriteString("<br>")
	for _, c := range Characters() {
		for _, s := range Settings() {
			pick := func(id string) string {
				if id == c || id == s {
					return "pick"
				}
				return ""
			}
			show("230", Stage(pick, pick))
		}
	}
	if err := os.WriteFile(*sheet, []byte(b.String()), 0o644); err != nil {
		t.Fatal(err)
	}
}
