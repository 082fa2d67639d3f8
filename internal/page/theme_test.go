package page

import (
	"fmt"
	"io/fs"
	"math"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"homebuild/internal/diag"
	"homebuild/themes"
)

// luminance and contrast are the formulas of WCAG 2.2 ("relative luminance",
// "contrast ratio"), with the threshold of sRGB, 0.04045.
func luminance(t *testing.T, color string) float64 {
	t.Helper()
	var sum float64
	for i, weight := range []float64{0.2126, 0.7152, 0.0722} {
		n, err := strconv.ParseUint(color[1+2*i:3+2*i], 16, 8)
		if err != nil {
			t.Fatalf("%q is not a color", color)
		}
		c := float64(n) / 255
		if c <= 0.04045 {
			c /= 12.92
		} else {
			c = math.Pow((c+0.055)/1.055, 2.4)
		}
		sum += weight * c
	}
	return sum
}

func contrast(t *testing.T, a, b string) float64 {
	t.Helper()
	x, y := luminance(t, a), luminance(t, b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

func TestContrastFormula(t *testing.T) {
	// Worked out from the W3C formula outside of this project, to 3 decimals.
	tests := []struct {
		color string
		want  string
	}{
		{"#000000", "21.000"}, {"#767676", "4.542"}, {"#777777", "4.478"}, {"#949494", "3.033"},
		{"#959595", "2.995"}, {"#ff0000", "3.998"}, {"#d55e00", "3.867"}, {"#0072b2", "5.185"},
	}
	for _, tt := range tests {
		if got := fmt.Sprintf("%.3f", contrast(t, tt.color, "#ffffff")); got != tt.want {
			t.Errorf("contrast of %s on white is %s, want %s", tt.color, got, tt.want)
		}
	}
}

// TestThemes measures every theme there is.
func TestThemes(t *testing.T) {
	entries, err := fs.ReadDir(themes.Files, ".")
	if err != nil {
		t.Fatal(err)
	}
	measured := 0
	for _, e := range entries {
		if e.Name() == "base" {
			continue
		}
		theme, err := ReadTheme(folder(t, "base"), folder(t, e.Name()))
		if err != nil {
			t.Errorf("%s: %v", e.Name(), err)
			continue
		}
		for table, c := range map[string]map[string]string{"light": theme.Light, "dark": theme.Dark} {
			measure(t, e.Name()+" "+table, c)
			measured++
		}
	}
	if measured == 0 {
		t.Error("no theme was measured")
	}
}

// measure: WCAG 2.2, 1.4.3 (text 4.5) and 1.4.11 (graphics 3).
func measure(t *testing.T, name string, c map[string]string) {
	t.Helper()
	pairs := []struct {
		on, colors string
		least      float64
		why        string
	}{
		{"paper sheet first-wash second-wash third-wash", "ink", 4.5, "text"},
		{"paper sheet", "soft", 4.5, "smaller text"},
		{"paper sheet", "line", 3, "borders of controls"},
		{"sheet", "first second third", 3, "outlines of parts, and the mark of the right answer"},
		{"first-wash", "first", 3, "the dots of the first part"},
		{"second-wash", "second", 3, "the stripes of the second part"},
		{"third-wash", "third", 3, "the grid of the third part"},
	}
	for _, p := range pairs {
		for ground := range strings.FieldsSeq(p.on) {
			for color := range strings.FieldsSeq(p.colors) {
				if got := contrast(t, c[color], c[ground]); got < p.least {
					t.Errorf("%s: %s on %s has a contrast of %.2f, want %.1f (%s)", name, color, ground, got, p.least, p.why)
				}
			}
		}
	}
}

func TestReadThemeRefuses(t *testing.T) {
	good, err := fs.ReadFile(themes.Files, "paper/colours.toml")
	if err != nil {
		t.Fatal(err)
	}
	tests := []struct {
		name, toml, css, want, why string
	}{
		{"markup", "", "p { } </style><script>", `theme.css:1: "<"`, "it would leave the style element"},
		{"url", "", "p { }\nb { background: url(https://example.org/x.png) }", "theme.css:2: ", "a page asks for nothing"},
		{"quoted url", "", `p { background: url("x.png") }`, `theme.css:1: "url(`, "quoted or not"},
		{"import", "", `@IMPORT "x.css";`, "@IMPORT", "in any case"},
		{"font", "", "@font-face { }", "@font-face", "no font is fetched"},
		{"escape", "", `p { background: u\72l(x) }`, `"\\"`, "an escape could spell url("},
		{"rule that is not closed", "", "p { }\nb { color: red\n", `theme.css:2: "{" is not closed`, "what follows would be lost"},
		{"bracket too many", "", "p { }\nb { color: red } }\n", `theme.css:2: "}" closes nothing`, "so it would be here"},
		{"wrong bracket", "", "p { width: calc(1px} }", `theme.css:1: "}" closes nothing`, "and here"},
		{"quotation that is not closed", "", "p::after {\n content: \"ab;\n}", "theme.css:2: a quotation is not closed", "and here"},
		{"quotation at the end", "", "p::after { content: 'ab", "theme.css:1: a quotation is not closed", "and here"},
		{"remark that is not closed", "", "p { }\n/* b", "theme.css:2: a remark is not closed", "and here"},
		{"sign of direction", "", "p { }\n/* \u202e */", "theme.css:2: an invisible sign", "the file does not say what it seems to"},
		{"page that is not there", "", "p { }\nbody {\n color: red;\n display: none }", `theme.css:4: display:none of "body" hides the whole page`, "families would see nothing"},
		{"page that is not there, among others", "", "p, main{visibility:hidden !important}", `theme.css:1: visibility:hidden of "main"`, "so it would be here"},
		{"paper that is empty", "", "@media print { html, p { opacity: 0 } }", `opacity:0 of "html"`, "nothing would be printed"},
		{"color that is code", strings.Replace(string(good), "#f4ecdd", "red;} p{", 1), "", "colours.toml:16: light.paper is \"red;} p{\"", "a value goes into the page as it stands"},
		{"color missing", strings.Replace(string(good), "\nink ", "\n#ink ", 1), "", "[light] has no ink", "a look without ink shows nothing"},
		{"color of nobody", string(good) + "\nsky = \"#000000\"\n", "", "colours.toml:41: \"sky\" is not a setting of the colors of [dark]", "a slip would go unseen"},
		{"table of nobody", string(good) + "\n[night]\n", "", "colours.toml:41: \"night\" is not a setting", "a slip would go unseen"},
	}
	for _, tt := range tests {
		files := fstest.MapFS{"colours.toml": {Data: good}, "theme.css": {Data: []byte(tt.css)}}
		if tt.toml != "" {
			files["colours.toml"] = &fstest.MapFile{Data: []byte(tt.toml)}
		}
		_, err := ReadTheme(folder(t, "base"), files)
		if _, ok := err.(diag.Diagnostics); !ok || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("%s: ReadTheme gave %v, want problems with %q (%s)", tt.name, err, tt.want, tt.why)
		}
	}
}

// docs/themes.md promises it: whoever mends a look is told of both files at once.
func TestReadThemeTellsAllProblems(t *testing.T) {
	good, err := fs.ReadFile(themes.Files, "paper/colours.toml")
	if err != nil {
		t.Fatal(err)
	}
	_, err = ReadTheme(folder(t, "base"), fstest.MapFS{
		"colours.toml": {Data: []byte(strings.Replace(string(good), "#f4ecdd", "blak", 1))},
		"theme.css":    {Data: []byte("p { }\nb { background: url(x.png) }")},
	})
	problems, _ := err.(diag.Diagnostics)
	var got []string
	for _, p := range problems {
		got = append(got, fmt.Sprintf("%s:%d: %s", p.File, p.Line, p.Text))
	}
	want := []string{`colours.toml:16: light.paper is "blak"`, `theme.css:2: "url(" is not for a theme`}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("problems (-want +got):\n%s", diff)
	}
}
