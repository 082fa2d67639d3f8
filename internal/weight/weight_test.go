package weight

import (
	"bytes"
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
