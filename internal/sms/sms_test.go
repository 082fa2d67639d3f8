package sms

import (
	"strings"
	"testing"
)

func TestOf(t *testing.T) {
	for _, row := range []struct {
		name, text string
		want       Count
		why        string
	}{
		{"160 units", strings.Repeat("a", 160), Count{false, 160, 1}, "3GPP TS 23.040: 160 alone (confirmed in several sources)"},
		{"161 units", strings.Repeat("a", 161), Count{false, 161, 2}, "153 a part (confirmed)"},
		{"306 units", strings.Repeat("a", 306), Count{false, 306, 2}, "2 x 153"},
		{"307 units", strings.Repeat("a", 307), Count{false, 307, 3}, "one more"},
		{"70 wide", strings.Repeat("ж", 70), Count{true, 70, 1}, "UCS-2: 70 alone (confirmed)"},
		{"71 wide", strings.Repeat("ж", 71), Count{true, 71, 2}, "67 a part (confirmed)"},
		{"134 wide", strings.Repeat("ж", 134), Count{true, 134, 2}, "2 x 67"},
		{"135 wide", strings.Repeat("ж", 135), Count{true, 135, 3}, "one more"},
		{"n with tilde", "ñ", Count{false, 1, 1}, "in the 7-bit set (3GPP TS 23.038)"},
		{"a with grave", "à", Count{false, 1, 1}, "in the 7-bit set"},
		{"a with acute", "á", Count{true, 1, 1}, "not in the 7-bit set: only a with grave is"},
		{"braces and euro", "{}€", Count{false, 6, 1}, "extension table: two units each"},
		{"beyond the basic plane", "🐚", Count{true, 2, 1}, "a surrogate pair is two UCS-2 units"},
		{"nothing", "", Count{false, 0, 1}, "an empty message is still sent"},
	} {
		t.Run(row.name, func(t *testing.T) {
			if got := Of(row.text); got != row.want {
				t.Errorf("want %+v, got %+v: %s", row.want, got, row.why)
			}
		})
	}
}

// The default alphabet has 127 characters and an escape, its extension ten
// (3GPP TS 23.038, from memory).
func TestAlphabetIsWhole(t *testing.T) {
	if n := len([]rune(basic)); n != 127 {
		t.Errorf("default alphabet: want 127 characters, got %d", n)
	}
	if n := len([]rune(extended)); n != 10 {
		t.Errorf("extension: want 10 characters, got %d", n)
	}
	seen := map[rune]bool{}
	for _, r := range basic + extended {
		if seen[r] {
			t.Errorf("%q stands twice", r)
		}
		seen[r] = true
	}
}
