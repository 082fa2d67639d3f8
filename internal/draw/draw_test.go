package draw

import (
	"encoding/xml"
	"errors"
	"io"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"homebuild/internal/draw/canvas"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// goldens are one picture of each sort.
var goldens = []string{
	"bar-change", "compare-3", "chain", "dots", "rows-solved", "pairs", "frame-taken", "way-make-ten-0",
	"bond", "way-friendly-jump-0", "way-split-tens-0", "columns",
}

func TestGolden(t *testing.T) {
	all := samples(t)
	for _, name := range goldens {
		i := slices.IndexFunc(all, func(s sample) bool { return s.name == name })
		if i < 0 {
			t.Errorf("no sample %q", name)
			continue
		}
		got, err := Draw(all[i].picture, Options{ID: "p", Say: say})
		if err != nil {
			t.Errorf("%s: %v", name, err)
		}
		golden(t, name+".svg", got)
	}
	defs, err := Defs()
	if err != nil {
		t.Error(err)
	}
	golden(t, "defs.svg", defs)
	strip, err := Strip(0, 20, Options{ID: "s", Say: say})
	if err != nil {
		t.Error(err)
	}
	golden(t, "strip.svg", strip)
	frames, err := Blank(picture.TenFrame, Options{ID: "b", Say: say})
	if err != nil {
		t.Error(err)
	}
	golden(t, "blank-ten-frame.svg", frames)
}

// element is an element of a drawing, as an XML parser reads it.
type element struct {
	name  string
	attrs map[string]string
	text  string
}

// parse reads a drawing with a parser that is not ours; a fault is fatal.
func parse(t *testing.T, svg string) []element {
	t.Helper()
	var all []element
	var open []int
	d := xml.NewDecoder(strings.NewReader(svg))
	for {
		token, err := d.Token()
		if err == io.EOF {
			return all
		}
		if err != nil {
			t.Fatalf("%v in\n%s", err, svg)
		}
		switch token := token.(type) {
		case xml.StartElement:
			e := element{name: token.Name.Local, attrs: map[string]string{}}
			for _, a := range token.Attr {
				e.attrs[a.Name.Local] = a.Value
			}
			open = append(open, len(all))
			all = append(all, e)
		case xml.CharData:
			if len(open) > 0 {
				all[open[len(open)-1]].text += string(token)
			}
		case xml.EndElement:
			open = open[:len(open)-1]
		}
	}
}

// TestLooks holds every sample to the rules of the house: named, no colours or
// styles of its own, and only classes that are explained.
func TestLooks(t *testing.T) {
	doc, err := os.ReadFile("../picture/doc.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range samples(t) {
		svg, err := Draw(s.picture, Options{ID: "p", Say: say})
		if err != nil {
			t.Errorf("%s: %v", s.name, err)
			continue
		}
		all := parse(t, svg)
		root := all[0].attrs
		if root["role"] != "img" || root["aria-labelledby"] != "p-t" || all[1].name != "title" || all[1].text == "" {
			t.Errorf("%s has no name: %v", s.name, all[:2])
		}
		for _, e := range all {
			for _, banned := range []string{"style", "fill", "stroke", "width%", "onload", "href"} {
				if e.attrs[banned] != "" {
					t.Errorf("%s: <%s %s=%q>", s.name, e.name, banned, e.attrs[banned])
				}
			}
			for _, class := range strings.Fields(e.attrs["class"]) {
				if !regexp.MustCompile(`\b` + class + `\b`).Match(doc) {
					t.Errorf("%s: the class %q is not explained", s.name, class)
				}
			}
		}
	}
}

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

// TestNumbersShown reads the numbers back from the drawing.
func TestNumbersShown(t *testing.T) {
	for _, tt := range []struct {
		kind  picture.Kind
		story problem.Kind
		stage picture.Stage
		a, b  int
		want  string
		why   string
	}{
		// CCSS-M 2010, Glossary, Table 1: what is given and what is asked.
		{picture.BarModel, problem.AddToResult, picture.Open, 7, 5, "? 7 5", "7 + 5 = ?"},
		{picture.BarModel, problem.AddToChange, picture.Open, 8, 6, "14 8 ?", "8 + ? = 14"},
		{picture.BarModel, problem.AddToStart, picture.Open, 9, 4, "13 ? 4", "? + 4 = 13"},
		{picture.BarModel, problem.TakeFromResult, picture.Open, 13, 4, "13 4 ?", "13 - 4 = ?"},
		{picture.BarModel, problem.TakeFromStart, picture.Open, 16, 9, "? 9 7", "? - 9 = 7"},
		{picture.BarModel, problem.TakeFromStart, picture.Solved, 16, 9, "16 9 7", "16 - 9 = 7"},
		{picture.BarModel, problem.DifferenceMore, picture.Open, 14, 9, "14 9 ?", "14 and 9, how many more"},
		{picture.BarModel, problem.SmallerMore, picture.Open, 12, 3, "12 ? 3", "12 is 3 more than ?"},
		{picture.NumberBond, problem.TogetherAddend, picture.Open, 6, 8, "14 6 ?", "6 + ? = 14"},
		{picture.NumberLine, problem.AddToChange, picture.Open, 8, 6, "? 8 14", "8 + ? = 14"},
		{picture.TenFrame, problem.AddToResult, picture.Open, 8, 6, "? 8 6", "8 + 6 = ?"},
		{picture.Drawing, problem.TakeFromResult, picture.Open, 13, 4, "13 4 ?", "13 - 4 = ?"},
		{picture.Columns, problem.TakeFromResult, picture.Open, 65, 49, "65 50 15 − 49 40 9 ?", "65 - 49 in columns"},
	} {
		p, err := problem.New(tt.story, tt.a, tt.b)
		if err != nil {
			t.Fatal(err)
		}
		pic, err := picture.OfProblem(p, tt.kind, tt.stage)
		if err != nil {
			t.Fatal(err)
		}
		svg, err := Draw(pic, Options{ID: "p", Say: say})
		if err != nil {
			t.Fatal(err)
		}
		var shown []string
		for _, e := range parse(t, svg) {
			if e.name == "text" {
				shown = append(shown, e.text)
			}
		}
		if got := strings.Join(shown, " "); got != tt.want {
			t.Errorf("%s as %v: want %q, got %q", tt.why, tt.kind, tt.want, got)
		}
	}
}

func TestOptions(t *testing.T) {
	bar := picture.Bar{Parts: []picture.Amount{picture.Given(8), picture.Given(6)}, Whole: picture.Given(14)}
	arabic := func(n int) string {
		return strings.Map(func(r rune) rune { return r - '0' + '٠' }, strconv.Itoa(n))
	}
	svg, err := Draw(bar, Options{ID: "p", Title: "Bar", Say: say, Number: arabic})
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{">١٤<", ">٨<", ">٦<", `direction="ltr"`, `<title id="p-t">Bar</title>`, `<desc id="p-d">`} {
		if !strings.Contains(svg, want) {
			t.Errorf("want %s in\n%s", want, svg)
		}
	}
	hidden, err := Draw(bar, Options{Hidden: true})
	if err != nil || !strings.Contains(hidden, `aria-hidden="true"`) || strings.Contains(hidden, "<title") {
		t.Errorf("hidden: %v\n%s", err, hidden)
	}
	if _, err := Draw(bar, Options{ID: "not good", Say: say}); !errors.Is(err, canvas.ErrID) {
		t.Errorf("want %v, got %v", canvas.ErrID, err)
	}
	if _, err := Draw(stranger{}, Options{ID: "p", Say: say}); !errors.Is(err, ErrPicture) {
		t.Errorf("want %v, got %v", ErrPicture, err)
	}
	for _, ends := range [][2]int{{-1, 5}, {5, 4}, {0, 101}} {
		if _, err := Strip(ends[0], ends[1], Options{ID: "p", Say: say}); !errors.Is(err, ErrRange) {
			t.Errorf("strip %v: want %v, got %v", ends, ErrRange, err)
		}
	}
	if _, err := Blank(0, Options{ID: "p", Say: say}); !errors.Is(err, ErrPicture) {
		t.Errorf("blank: want %v, got %v", ErrPicture, err)
	}
}

type stranger struct{}

func (stranger) Describe() phrase.Line { return phrase.Say("stranger") }
