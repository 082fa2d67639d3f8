package cards

import (
	"bytes"
	"compress/gzip"
	"encoding/xml"
	"math"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// All stand on one ground line, fill the same height as well as they can, and
// stay inside of their card with the whole ink line. Checked on the places the
// pen goes through, read from the SVG by themselves and not by trace.
func TestOneGround(t *testing.T) {
	for _, id := range Characters() {
		minX, minY, maxX, maxY := bounds(t, elements(t, must(t)(Character(id))))
		if maxY < 112 || maxY > 114 {
			t.Errorf("%s: want its feet between 112 and 114, got %d", id, maxY)
		}
		if minY < 2 || minX < 1 || maxX > characterSize-1 {
			t.Errorf("%s: want it inside its card, got %d,%d to %d,%d", id, minX, minY, maxX, maxY)
		}
		if tall := maxY - minY; tall < 75 {
			t.Errorf("%s: want it 75 units tall or more, got %d", id, tall)
		}
	}
}

func bounds(t *testing.T, shapes []xml.StartElement) (minX, minY, maxX, maxY int) {
	minX, minY, maxX, maxY = math.MaxInt, math.MaxInt, math.MinInt, math.MinInt
	at := func(x, y int) {
		minX, minY, maxX, maxY = min(minX, x), min(minY, y), max(maxX, x), max(maxY, y)
	}
	for _, e := range shapes {
		n := func(name string) int {
			v, err := strconv.Atoi(attr(e, name))
			if err != nil {
				t.Fatalf("<%s %s>: %v", e.Name.Local, name, err)
			}
			return v
		}
		switch e.Name.Local {
		case "circle":
			at(n("cx")-n("r"), n("cy")-n("r"))
			at(n("cx")+n("r"), n("cy")+n("r"))
		case "ellipse":
			at(n("cx")-n("rx"), n("cy")-n("ry"))
			at(n("cx")+n("rx"), n("cy")+n("ry"))
		case "path":
			x, y := 0, 0
			for _, c := range regexp.MustCompile(`[a-zA-Z][^a-zA-Z]*`).FindAllString(attr(e, "d"), -1) {
				var v []int
				for _, w := range regexp.MustCompile(`-?\d+`).FindAllString(c, -1) {
					i, _ := strconv.Atoi(w)
					v = append(v, i)
				}
				switch {
				case c[0] == 'M':
					x, y = v[0], v[1]
				case c[0] == 'h':
					x += v[0]
				case c[0] == 'v':
					y += v[0]
				case len(v) >= 2:
					x, y = x+v[len(v)-2], y+v[len(v)-1]
				}
				at(x, y)
			}
		}
	}
	return
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

// A page weighs at most 14,000 bytes compressed (the first round trip of a
// fresh connection, RFC 6928); the cards leave room for its words.
func TestWeight(t *testing.T) {
	page := must(t)(Symbols())
	for _, id := range append(Characters(), Settings()...) {
		page += must(t)(Use(id))
	}
	page += must(t)(Stage(func(id string) string { return "who " + id[:3] }))
	if got := zipped(t, must(t)(Symbols())); got > 7000 {
		t.Errorf("want the symbols within 7000 bytes compressed, got %d", got)
	}
	if got := zipped(t, page); got > 7600 {
		t.Errorf("want symbols, cards and stage within 7600 bytes compressed, got %d", got)
	}
	t.Logf("symbols %d bytes, compressed %d; with all cards and a stage %d", len(must(t)(Symbols())), zipped(t, must(t)(Symbols())), zipped(t, page))
}

// style is testdata/cards.css: the classes it has rules for, and its values in
// light and in dark.
func style(t *testing.T) (classes map[string]bool, light, dark map[string]string) {
	css, err := os.ReadFile("testdata/cards.css")
	if err != nil {
		t.Fatal(err)
	}
	classes = map[string]bool{}
	for _, m := range regexp.MustCompile(`(?m)^\.([a-z0-9-]+) \{`).FindAllStringSubmatch(string(css), -1) {
		classes[m[1]] = true
	}
	day, evening, found := strings.Cut(string(css), "@media (prefers-color-scheme: dark)")
	if !found {
		t.Fatal("no dark values")
	}
	values := func(s string) map[string]string {
		all := map[string]string{}
		for _, m := range regexp.MustCompile(`--(k-[a-z0-9]+): #([0-9a-f]{6})`).FindAllStringSubmatch(s, -1) {
			all[m[1]] = m[2]
		}
		return all
	}
	return classes, values(day), values(evening)
}

// A theme author finds every class in testdata/cards.css, and none in vain.
func TestClasses(t *testing.T) {
	want, _, _ := style(t)
	used := map[string]bool{}
	for _, svg := range drawings(t) {
		for _, e := range elements(t, svg) {
			for _, c := range strings.Fields(attr(e, "class")) {
				used[c] = true
			}
		}
	}
	delete(used, "pick") // given by the caller of Stage
	for c := range used {
		if !want[c] {
			t.Errorf("class %s has no rule in testdata/cards.css", c)
		}
	}
	for c := range want {
		if !used[c] {
			t.Errorf("class %s has a rule in testdata/cards.css and no shape", c)
		}
	}
}

// Ink stands out from every fill it draws on, so that the pictures read
// without their colours too. Source: WCAG 2.1, 1.4.11 (3:1), and its
// definitions of contrast ratio and relative luminance.
func TestContrast(t *testing.T) {
	_, light, dark := style(t)
	for mode, values := range map[string]map[string]string{"light": light, "dark": dark} {
		if len(values) != len(light) || len(values) < 20 {
			t.Errorf("%s: want as many values as in light, got %d", mode, len(values))
		}
		for name, value := range values {
			switch name {
			case "k-ink", "k-k", "k-far", "k-rain", "k-blush": // lines themselves, and what needs no line on it
				continue
			}
			a, b := luminance(t, value), luminance(t, values["k-ink"])
			if ratio := (a + 0.05) / (b + 0.05); ratio < 3 {
				t.Errorf("%s: ink on %s: want 3, got %.2f", mode, name, ratio)
			}
		}
	}
}

func luminance(t *testing.T, hex string) float64 {
	n, err := strconv.ParseUint(hex, 16, 32)
	if err != nil {
		t.Fatal(err)
	}
	channel := func(shift uint) float64 {
		c := float64(n>>shift&0xff) / 255
		if c <= 0.04045 {
			return c / 12.92
		}
		return math.Pow((c+0.055)/1.055, 2.4)
	}
	return 0.2126*channel(16) + 0.7152*channel(8) + 0.0722*channel(0)
}
