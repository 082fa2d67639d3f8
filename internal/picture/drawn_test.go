package picture_test

import (
	"encoding/xml"
	"flag"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"homebuild/internal/picture"
	"homebuild/internal/picture/svg"
	"homebuild/internal/problem"
)

// drawn draws a picture in no language.
func drawn(p picture.Picture) string {
	return svg.Draw(p, svg.Options{ID: "p", Say: say, Number: strconv.Itoa})
}

// The golden files are one picture of each sort, named as the samples are.
func TestGolden(t *testing.T) {
	all, update := samples(t), flag.Lookup("update").Value.String() == "true"
	files, err := filepath.Glob("testdata/*.svg")
	if err != nil || len(files) < 10 {
		t.Fatalf("only %d golden files: %v", len(files), err)
	}
	for _, file := range files {
		name := strings.TrimSuffix(filepath.Base(file), ".svg")
		i := slices.IndexFunc(all, func(s sample) bool { return s.name == name })
		if i < 0 {
			t.Errorf("%s: no sample of this name", file)
			continue
		}
		got := drawn(all[i].picture)
		if update {
			if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(string(want), got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", file, diff)
		}
	}
}

// element is an element of a drawing, as an XML parser reads it.
type element struct {
	name  string
	attrs map[string]string
	text  string
}

// parse reads a drawing with a parser that is not ours; a fault is fatal.
func parse(t *testing.T, drawing string) []element {
	t.Helper()
	var all []element
	var open []int
	d := xml.NewDecoder(strings.NewReader(drawing))
	for {
		token, err := d.Token()
		if err == io.EOF {
			return all
		}
		if err != nil {
			t.Fatalf("%v in\n%s", err, drawing)
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

// explained are the classes that the package comment of internal/picture
// explains: the first words of its lists.
func explained(t *testing.T) map[string]bool {
	t.Helper()
	doc, err := os.ReadFile("doc.go")
	if err != nil {
		t.Fatal(err)
	}
	found := map[string]bool{"picture": true}
	for _, row := range regexp.MustCompile(`(?m)^//\t(\S+(?:, \S+)*)  `).FindAllStringSubmatch(string(doc), -1) {
		for _, class := range strings.Split(row[1], ", ") {
			found[class] = true
		}
	}
	return found
}

// TestLooks holds every sample to the rules of the house: named, no colours or
// styles of its own, and only classes that are explained, all of them.
func TestLooks(t *testing.T) {
	known, used := explained(t), map[string]bool{}
	for _, s := range samples(t) {
		all := parse(t, drawn(s.picture))
		root := all[0].attrs
		if root["role"] != "img" || root["direction"] != "ltr" || root["aria-labelledby"] != "p-t" ||
			all[1].name != "title" || all[1].attrs["id"] != "p-t" || all[1].text == "" {
			t.Errorf("%s has no name: %v", s.name, all[:2])
		}
		for _, e := range all {
			for _, banned := range []string{"style", "fill", "stroke", "onload", "href"} {
				if e.attrs[banned] != "" {
					t.Errorf("%s: <%s %s=%q>", s.name, e.name, banned, e.attrs[banned])
				}
			}
			for _, class := range strings.Fields(e.attrs["class"]) {
				if used[class] = true; !known[class] {
					t.Errorf("%s: the class %q is not explained", s.name, class)
				}
			}
		}
	}
	for class := range known {
		if !used[class] {
			t.Errorf("the class %q is explained, and no picture uses it", class)
		}
	}
	for _, selector := range regexp.MustCompile(`\.picture \.([a-z0-9-]+)`).FindAllStringSubmatch(svg.Style(), -1) {
		if !known[selector[1]] {
			t.Errorf("the style has a class %q that is not explained", selector[1])
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
		{picture.Drawing, problem.DifferenceMore, picture.Open, 14, 9, "14 9 ?", "14 and 9, how many more"},
		{picture.Columns, problem.TakeFromResult, picture.Open, 65, 49, "65 60 5 − 49 40 9 ?", "65 - 49 in columns, before anything is traded"},
	} {
		p, err := problem.New(tt.story, tt.a, tt.b)
		if err != nil {
			t.Fatal(err)
		}
		pic, err := picture.OfProblem(p, tt.kind, tt.stage)
		if err != nil {
			t.Fatal(err)
		}
		var shown []string
		for _, e := range parse(t, drawn(pic)) {
			if e.name == "text" {
				shown = append(shown, e.text)
			}
		}
		if got := strings.Join(shown, " "); got != tt.want {
			t.Errorf("%s as %v: want %q, got %q", tt.why, tt.kind, tt.want, got)
		}
	}
}
