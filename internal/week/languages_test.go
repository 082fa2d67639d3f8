package week

import (
	"slices"
	"strings"
	"testing"
)

// What is said of a language that a school has not: what was meant, what there is while
// that can be read, or how to begin it.
func TestLanguageHint(t *testing.T) {
	twelve := strings.Fields("ar en es fr ht ko pt ru so uk vi zh-Hans")
	for _, test := range []struct {
		typed     string
		tags      []string
		says, not string
	}{
		{"spanish", []string{"en", "es"}, `did you mean "es"`, "yet"},
		{"fi", []string{"en", "es"}, "there is no Finnish yet: homebuild language new fi", "did you mean"},
		{"qqzz", []string{"en", "es"}, "there are: ", "yet"},
		{"qqzz", twelve, "there are: ar (Arabic), ", "yet"},
		{"fi", slices.Concat(twelve, []string{"de"}), "no Finnish yet", "there are"},
		{"fi", nil, "no Finnish yet", "there are"},
		{"em", []string{"en", "es"}, "there are: ", "did you mean"},      // two letters are near to every tag
		{"port", []string{"en", "pt-BR"}, `did you mean "pt-BR"`, "yet"}, // two names of one language
		{"po", []string{"pl", "pt"}, "there are: ", "did you mean"},      // Polish or Portuguese
	} {
		got := languageHint(test.typed, test.tags)
		if !strings.Contains(got, test.says) || strings.Contains(got, test.not) {
			t.Errorf("%q among %d: want %q and not %q, got %q", test.typed, len(test.tags), test.says, test.not, got)
		}
	}
}
