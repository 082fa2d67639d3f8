package i18n

import (
	"strings"
	"testing"
)

// A place is a name that begins with a big letter, alone or with a form.
func TestPlaces(t *testing.T) {
	for text, want := range map[string]bool{
		"{{.A}}": true, "{{.Z}}": true, "{{.Start2}}": true, "{{.Start.accusative}}": true, "{{.Start.more-bowl}}": true,
		"{{.a}}": false, "{{.@}}": false, "{{.[}}": false, "{{.2}}": false, "{{.}}": false, "{{.Start.}}": false, "{{.Start.-bowl}}": false,
		"{{.Start.Bowl}}": false, "{{.Start.2}}": false, "{{.Über}}": false, "{{.Start}": false, "{.Start}}": false,
	} {
		t1, wrong := parseTemplate(nil, text)
		if got := wrong == nil && len(t1) == 1 && t1[0].place != ""; got != want {
			t.Errorf("%s is a place: %v, want %v", text, got, want)
		}
	}
}

// What is no place is shown up to its closing braces, and no longer than forty letters.
func TestUntilClosed(t *testing.T) {
	forty := "{{" + strings.Repeat("é", 38)
	for text, want := range map[string]string{
		"}} more": "}}", "{{.a}} more": "{{.a}}", "{{.a more": "{{.a more", forty: forty, forty + "é": forty + "...",
	} {
		if got := untilClosed(text); got != want {
			t.Errorf("%q is shown as %q, want %q", text, got, want)
		}
	}
}

// A number stands in its place, and no line breaks behind it; a text without a place
// stays as it is.
func TestWithANumber(t *testing.T) {
	for text, want := range map[string]string{
		"{{.N}}": "7", "{{.N}} boats": "7\u00a0boats", "boats: {{.N}}": "boats: 7", "two boats": "two boats", "{{.N}}, {{.N}}": "7, 7",
	} {
		if got := sentenceOf(t, text).with("7"); got != want {
			t.Errorf("%s with 7: %q, want %q", text, got, want)
		}
		if got := sentenceOf(t, text).around(Run{RunBlank, "7"}).String(); got != want {
			t.Errorf("%s around 7: %q, want %q", text, got, want)
		}
	}
}

func TestWithoutPlaces(t *testing.T) {
	for text, want := range map[string]string{
		"{{.N}} boats": " boats", "two boats": "two boats", "{{.N}}": "", "{{.n}} boats": "{{.n}} boats", // which is no place
	} {
		if got := WithoutPlaces(text); got != want {
			t.Errorf("%s without places: %q, want %q", text, got, want)
		}
	}
}
