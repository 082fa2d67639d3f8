package page

import (
	"bytes"
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// The sheet is read again: its tables have a head for every row and column, and
// its counts in their places.
func TestPlan(t *testing.T) {
	var b bytes.Buffer
	err := RenderPlan(&b, Plan{
		Title:      "Pebble <Lane>",
		Kinds:      PlanGrid{Title: "Stories", Columns: []string{"1", "2"}, Rows: []PlanRow{{"Add to", []int{2, 0}}, {"Take from", []int{0, 5}}}},
		Work:       PlanGrid{Title: "Work", Columns: []string{"1", "2"}, Rows: []PlanRow{{"add to 20", []int{7, 0}}}},
		Facts:      PlanGrid{Title: "Facts", Columns: []string{"1"}, Rows: []PlanRow{{"1 +", []int{0}}}},
		LacksTitle: "Lacks", Lacks: []string{"one & two"}, WeeksTitle: "Weeks", Weeks: []string{"2026-09-14", "2026-09-21"},
	})
	if err != nil {
		t.Fatal(err)
	}
	doc, err := html.Parse(&b)
	if err != nil {
		t.Fatal(err)
	}
	var cells, heads, items []string
	for n := range doc.Descendants() {
		text := ""
		if n.FirstChild != nil {
			text = n.FirstChild.Data
		}
		switch n.Data {
		case "td":
			cells = append(cells, text)
		case "th":
			heads = append(heads, text)
		case "li", "h1":
			items = append(items, text)
		case "script":
			t.Error("want no script")
		}
	}
	if got, want := strings.Join(cells, "|"), "|2|||5||7|||"; got != want {
		t.Errorf("cells: want %q, got %q", want, got)
	}
	if got, want := strings.Join(heads, "|"), "1|2|Add to|Take from|1|2|add to 20|1|1 +"; got != want {
		t.Errorf("heads: want %q, got %q", want, got)
	}
	if got, want := strings.Join(items, "|"), "Pebble <Lane>|one & two|2026-09-14|2026-09-21"; got != want {
		t.Errorf("items: want %q, got %q", want, got)
	}
}
