package weight

import (
	"bytes"
	"fmt"
	"testing"
)

// gzip 1.12 of Debian: yes story | head -c N | gzip -9 -n | wc -c. Another
// writer of the format comes to nearly the same.
func TestOf(t *testing.T) {
	for _, row := range []struct{ size, want int }{{0, 20}, {6000, 51}, {60_000, 129}} {
		got := Of(bytes.Repeat([]byte("story\n"), row.size/6))
		if got < row.want-10 || got > row.want+10 {
			t.Errorf("%d bytes: want about %d, got %d", row.size, row.want, got)
		}
	}
}

// A page fits where it weighs no more than a page may, however hard it had to be
// compressed for that.
func TestFits(t *testing.T) {
	var page []byte
	hard, weight := 0, 0
	for n := 0; weight <= Page+500; n++ {
		page = fmt.Appendf(page, "%d + %d = %d\n", n, n*n%89, n+n*n%89)
		if n%100 != 0 || n < 2000 {
			continue
		}
		weight = Of(page)
		if got := Fits(page); got != (weight <= Page) {
			t.Errorf("%d bytes that weigh %d: fits %v", len(page), weight, got)
		}
		if weight <= Page && packed(page, quick) > Page {
			hard++
		}
	}
	if hard == 0 || Fits(page) {
		t.Errorf("of %d bytes, %d pages fit when compressed best alone", len(page), hard)
	}
}

func TestWeekOf(t *testing.T) {
	for name, want := range map[string]string{
		"es/2026-09-14.html": "es/2026-09-14", "es/2026-09-14-try.html": "es/2026-09-14", "zh-Hans/2026-09-14-print.html": "zh-Hans/2026-09-14",
		"2026-09-14.html": "", "es/index.html": "", "es/check/7.html": "", "es/2026-09-14x.html": "",
	} {
		if got, ok := WeekOf(name); got != want || ok != (want != "") {
			t.Errorf("%s: want %q, got %q", name, want, got)
		}
	}
}
