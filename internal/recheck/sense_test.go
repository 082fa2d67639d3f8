package recheck

import (
	"fmt"
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// estimateHTML is an estimate as a page has it.
func estimateHTML(exact, easy string, near, low, high int) string {
	return fmt.Sprintf(`<h3>Friendly</h3><p>Think: <bdi class=eq>%s</bdi> is close to <bdi class=eq>%s</bdi>. That makes <b class=n>%d</b>.</p>`+
		`<p>Close to <b class=n>%d</b>: from <b class=n>%d</b> to <b class=n>%d</b>.</p><p class="chain"><bdi class=eq>%s = %d</bdi></p>`,
		exact, easy, near, near, low, high, easy, near)
}

// A good estimate has no problem; each fault of an estimate is found.
func TestPlantedEstimatesAreFound(t *testing.T) {
	for _, row := range []struct {
		name, html, want string // empty for none
	}{
		{"good sum", estimateHTML("38 + 27", "40 + 30", 70, 60, 80), ""},
		{"good difference", estimateHTML("64 − 29", "64 − 30", 34, 29, 39), ""},
		{"good, clipped at nothing", estimateHTML("12 − 8", "12 − 10", 2, 0, 4), ""},
		{"too far", estimateHTML("15 + 15", "20 + 30", 50, 40, 60), "the answer 30 is not from 40 to 60"},
		{"not in the middle", estimateHTML("38 + 27", "40 + 30", 70, 60, 90), "not in the middle"},
		{"close to itself", estimateHTML("15 + 25", "10 + 30", 40, 30, 50), "called close to itself"},
		{"a sum below a part", estimateHTML("73 + 11", "70 + 10", 80, 70, 90), "more than 73 + 11 allows"},
		{"a difference above the whole", estimateHTML("47 − 11", "50 − 10", 40, 30, 50), "more than 47 − 11 allows"},
		{"no easier", estimateHTML("788 − 544", "800 − 544", 256, 206, 306), "no easier"},
		{"within ten", estimateHTML("5 + 4", "5 + 5", 10, 8, 12), "need no estimate"},
	} {
		root, err := html.Parse(strings.NewReader(row.html))
		if err != nil {
			t.Fatal(err)
		}
		p := page{root: root}
		p.senses()
		found := p.problems.Error()
		if len(p.problems) == 0 {
			found = ""
		}
		if p.found.Estimates != 1 || row.want == "" && found != "" || !strings.Contains(found, row.want) {
			t.Errorf("%s: found %q, want %q", row.name, found, row.want)
		}
	}
}
