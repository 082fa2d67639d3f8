package site

import "testing"

func TestLink(t *testing.T) {
	for _, row := range []struct{ from, to, want string }{
		{"index.html", "es/index.html", "es/index.html"},
		{"es/index.html", "index.html", "../index.html"},
		{"es/2026-09-14.html", "es/2026-09-14-try.html", "2026-09-14-try.html"},
		{"es/2026-09-14.html", "ar/2026-09-14.html", "../ar/2026-09-14.html"},
		{"es/check/7.html", "es/check/index.html", "index.html"},
		{"es/check/7.html", "ar/check/7.html", "../../ar/check/7.html"},
		{"es/check/7.html", "es/index.html", "../index.html"},
		{"es/2026-09-14-story.html", "es/check/7.html", "check/7.html"},
		{"es/check/7.html", "2026-09-14.html", "../../2026-09-14.html"},
	} {
		if got := link(row.from, row.to); got != row.want {
			t.Errorf("link(%q, %q): want %q, got %q", row.from, row.to, row.want, got)
		}
	}
}
