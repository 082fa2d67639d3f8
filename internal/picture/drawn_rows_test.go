package picture_test

import (
	"fmt"
	"strings"
	"testing"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// row is a group of a drawing that counts dots: the number, and the dots from the left.
type row struct {
	number area
	text   string
	dots   []area
	fills  string // the first letter of each dot's part: aaab
}

// rowsOf reads the groups of a drawing in rows.
func rowsOf(drawing string) map[string]row {
	rows := map[string]row{}
	all, _ := things(drawing)
	for _, m := range all {
		r := rows[m.class]
		switch {
		case m.text():
			r.number = m.area
			_, text, _ := strings.Cut(m.line, ">")
			r.text = strings.TrimSuffix(text, "</text>")
		case strings.HasPrefix(m.line, "<path") && !m.is("ring"):
			for _, dot := range strings.Split(attr(m.line, "d"), "M")[1:] {
				r.dots = append(r.dots, pathArea("M"+dot))
				r.fills += strings.TrimPrefix(attr(m.line, "class"), "part-")
			}
		}
		rows[m.class] = r
	}
	return rows
}

// Two rows are read across: as many dots as the number to their left says and at its
// height, each dot of the shorter row below one of the longer; what the longer row has
// more is filled otherwise, or ringed, and its number stands below it.
func TestRowsAreReadAcross(t *testing.T) {
	for _, test := range []struct {
		picture         picture.Picture
		longer, shorter string // the parts that the dots belong to
		difference      string
		rings           int
		said            string
	}{
		{picture.Double(7, 7), "aaaaaaa", "bbbbbbb", "", 0, "same"},
		{picture.Double(7, 6), "aaaaaaa", "bbbbbb", "", 1, "compare"},
		{picture.Double(6, 7), "bbbbbbb", "aaaaaa", "", 1, "compare"},
		{picture.Double(20, 20), strings.Repeat("a", 20), strings.Repeat("b", 20), "", 0, "same"},
		{solved(t, picture.Drawing, problem.DifferenceMore, 9, 9), "aaaaaaaaa", "aaaaaaaaa", "", 0, "compare"},
		{solved(t, picture.Drawing, problem.DifferenceMore, 14, 9), "aaaaaaaaabbbbb", "aaaaaaaaa", "5", 0, "compare"},
		{solved(t, picture.Drawing, problem.BiggerMore, 3, 17), "aaa" + strings.Repeat("b", 17), "aaa", "17", 0, "compare"},
		{solved(t, picture.Drawing, problem.SmallerMore, 20, 1), strings.Repeat("a", 19) + "b", strings.Repeat("a", 19), "1", 0, "compare"},
		{solved(t, picture.Drawing, problem.SmallerMore, 16, 1), strings.Repeat("a", 15) + "b", strings.Repeat("a", 15), "1", 0, "compare"},
	} {
		drawing := drawn(test.picture)
		name := say(test.picture.Describe())
		inside(t, name, drawing)
		rows := rowsOf(drawing)
		longer, shorter, difference := rows["longer"], rows["shorter"], rows["difference"]
		if longer.fills != test.longer || shorter.fills != test.shorter || difference.text != test.difference {
			t.Errorf("%s: rows of %s and %s, difference %s", name, longer.fills, shorter.fills, difference.text)
			continue
		}
		for _, r := range []row{longer, shorter} {
			if r.text != fmt.Sprint(len(r.dots)) {
				t.Errorf("%s: %s stands beside %d dots", name, r.text, len(r.dots))
			}
			_, y := r.number.middle()
			for i, dot := range r.dots {
				if x, at := dot.middle(); at != y || i == 0 && (dot.x1 <= r.number.x2 || dot.x1 > r.number.x2+24) {
					t.Errorf("%s: dot %d of %s lies at %d, %d", name, i+1, r.text, x, at)
				}
			}
		}
		for i, dot := range shorter.dots {
			if partner := longer.dots[i]; partner.x1 != dot.x1 || partner.y2 >= dot.y1 || partner.y2+40 < dot.y1 {
				t.Errorf("%s: dot %d has its partner at %v", name, i+1, partner)
			}
		}
		if difference.text != "" {
			extra := longer.dots[len(shorter.dots)].with(longer.dots[len(longer.dots)-1])
			want, _ := extra.middle()
			x, y := difference.number.middle()
			if _, low := shorter.number.middle(); x < want-1 || x > want+1 || y != low {
				t.Errorf("%s: the difference stands at %d, %d, and the dots that it counts at %v", name, x, y, extra)
			}
		}
		if got := len(shapes(t, drawing, "ring")); got != test.rings {
			t.Errorf("%s: want %d dots ringed, got %d", name, test.rings, got)
		}
		if test.picture.Describe().ID != "picture.drawing."+test.said {
			t.Errorf("%s: want it said as %s", name, test.said)
		}
	}
	if got := picture.Double(21, 20).Figure().Class; got != "bar" {
		t.Errorf("41 dots to count: want a bar, got %s", got)
	}
}
