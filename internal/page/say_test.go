package page

import (
	"bytes"
	"context"
	"strings"
	"testing"

	"github.com/a-h/templ"
	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"
	"rsc.io/qr"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

func written(t *testing.T, c templ.Component) string {
	t.Helper()
	var b bytes.Buffer
	if err := c.Render(context.Background(), &b); err != nil {
		t.Fatalf("Render: %v", err)
	}
	return b.String()
}

func TestSay(t *testing.T) {
	english := newStock(t).languages["en"]
	tests := []struct {
		name string
		line phrase.Line
		want string
		why  string
	}{
		{"counted", phrase.Say("fixture.start", phrase.Counted("Start", "thing.shell", 8)),
			"It has <b class=n>8\u00a0shells</b>.", "number and noun stay together, no space before the stop"},
		{"blank", phrase.Say("fixture.blank", phrase.Blank("Blank", "")),
			"There are <span class=gap><span class=hide>blank</span></span> shells.", "the line is drawn, and heard as the language says it"},
		{"equation", phrase.Say("fixture.own", phrase.Equation("Own", problem.Equal(problem.Sum(8, 6).Asking(1), problem.Number(14)))),
			"It says <bdi class=eq dir=ltr>8 + ? = 14</bdi>.", "kept left to right in every text"},
		{"two unknown", phrase.Say("fixture.own", phrase.Equation("Own", problem.Equal(problem.Number(7), problem.Sum(3, 4).Asking(0, 1)))),
			"It says <bdi class=eq dir=ltr>7 = <span class=square>?</span> + <span class=round>?</span></bdi>.", "they may differ, so their gaps do, as in the picture"},
		{"own text", phrase.Say("fixture.own", phrase.Text("Own", "<b>Ms & Mr</b>")),
			"It says <bdi>&lt;b&gt;Ms &amp; Mr&lt;/b&gt;</bdi>.", "a teacher's words are never markup"},
	}
	for _, tt := range tests {
		if got := written(t, sayIn(english, tt.line)); got != tt.want {
			t.Errorf("%s: got %s, want %s (%s)", tt.name, got, tt.want, tt.why)
		}
	}
}

// A way and its picture may have one name: it is said once, unless the class has
// words of its own for one of them.
func TestDistinct(t *testing.T) {
	stock := newStock(t)
	s := newState(&Layout{Language: stock.languages["es"]})
	for own, want := range map[string]int{"": 1, "our tens": 2} {
		words := []ClassWord{{Name: line("strategy")}, {Name: line("strategy"), Own: own}, {Name: line("strategy"), Own: own}}
		if got := s.distinct(words, stock.languages["en"]); len(got) != want {
			t.Errorf("own words %q: %d words are left, want %d", own, len(got), want)
		}
	}
}

func TestNote(t *testing.T) {
	tests := []struct{ name, markdown, want, why string }{
		{"emphasis", "We *can*.", "<p>We <em>can</em>.</p>\n", ""},
		{"list", "- one\n- two\n", "<ul>\n<li>one</li>\n<li>two</li>\n</ul>\n", ""},
		{"raw HTML", "Hello <b onclick=x>you</b>.", "<p>Hello you.</p>\n", "no markup but Markdown's"},
		{"block of HTML", "<script>alert(1)</script>\n\nHello", "<p>Hello</p>\n", ""},
		{"heading", "# Hello", "<p>Hello</p>\n", "a page has one title, its own"},
		{"picture", "![a map](https://example.org/map.png)", "<p>a map</p>\n", "a page asks for nothing"},
		{"script link", "[tap](javascript:alert(1))", "<p>tap</p>\n", ""},
		{"plain link", "[tap](http://example.org)", "<p>tap</p>\n", "only links that cannot be read on the way"},
		{"link", "[tap](https://example.org)", "<p><a href=\"https://example.org\">tap</a></p>\n", ""},
		{"picture in a link", "[![a map](x.png)](data:text/html,x)", "<p>a map</p>\n", ""},
	}
	for _, tt := range tests {
		if got := written(t, note(tt.markdown)); got != tt.want {
			t.Errorf("%s: got %q, want %q %s", tt.name, got, tt.want, tt.why)
		}
	}
}

// TestCode reads the drawn code back with another library, and checks sides
// with quiet zone: 4 modules on each side, 17 + 4 x version within (ISO/IEC
// 18004).
func TestCode(t *testing.T) {
	s := &state{Layout: &Layout{Language: newStock(t).languages["en"]}}
	tests := []struct {
		address string
		side    int
	}{
		{"https://a.org", 29},                              // version 1
		{"https://example.org/room12/2026-09-14.html", 37}, // version 3
		{"https://example.org/a-school-with-a-longer-name/room12/2026-09-14.html", 45},
	}
	for _, tt := range tests {
		svg := written(t, s.code(tt.address))
		grid, side := modules(t, svg)
		if side != tt.side {
			t.Errorf("%s: side is %d, want %d", tt.address, side, tt.side)
		}
		got, err := qrcode.NewQRCodeReader().Decode(grid, map[gozxing.DecodeHintType]any{gozxing.DecodeHintType_PURE_BARCODE: true})
		if err != nil || got.GetText() != tt.address {
			t.Errorf("%s: read back as %v (%v)", tt.address, got, err)
		}
	}
	if _, err := qr.Encode(strings.Repeat("x", 3000), qr.M); err == nil {
		t.Error("3,000 letters fit a code; want an error that leaves it out")
	}
}
