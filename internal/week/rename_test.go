package week

import (
	"strings"
	"testing"
)

// Names as people save files. 14 September 2026 is a Monday, as printed on the
// calendar of that year; 7 September is one, too, and 9 July is not.
func TestRenamed(t *testing.T) {
	const rule = "name the file year-month-day, such as 2026-09-14.toml"
	tests := []struct{ name, want, why string }{
		{"2026-9-14.toml", "name it 2026-09-14.toml", "a nought left out"},
		{"2026_09_14.toml", "name it 2026-09-14.toml", "other dashes"},
		{"20260914.toml", "name it 2026-09-14.toml", "no dashes"},
		{"14.9.2026.toml", "name it 2026-09-14.toml", "the day first"},
		{"9-14-2026.toml", "name it 2026-09-14.toml", "the month first"},
		{"07-09-2026.toml", "name it 2026-09-07.toml", "of 7 September and 9 July, the Monday"},
		{"09-07-2026.toml", "name it 2026-09-07.toml", "of 9 July and 7 September, the Monday"},
		{"06-05-2026.toml", rule, "neither 6 May nor 5 June is a Monday"},
		{"14.9.2026", "name it 2026-09-14.toml", "no ending"},
		{"2026-13-14.toml", rule, "no such month"},
		{"week 2.toml", rule, "no date"},
		{"2026-09-14.txt", "name it 2026-09-14.toml, with .toml in place of .txt", "the editor's ending"},
		{"2026-09-14.toml.txt", "name it 2026-09-14.toml, without .txt", "an ending that the computer hides"},
		{"2026-09-14.es.txt", "write it into 2026-09-14.toml, below a line [note], as es", "a note"},
		{"2026-09-14-es.toml", "write it into 2026-09-14.toml, below a line [note], as es", "a note"},
		{"2026-09-14 ES.toml", "write it into 2026-09-14.toml, below a line [note], as es", "a note"},
		{"2026-09-14 spanish.toml", rule, "a word after the date"},
		{"2026-09-14-stories.toml", "name it 2026-09-14.stories.toml", "kept stories, with a dash for the dot"},
		{"2026-9-14.md", "name it 2026-09-14.md, and homebuild week --from weeks/2026-09-14.md", "the older form"},
		{"14.9.2026.docx", "copy the words into a plain text file named 2026-09-14.toml", "a word processor's file"},
		{"2026-09-14 - Copy.toml", "such as 2026-09-21.toml; if it is only a copy, take it away", "copied on Windows"},
		{"2026-09-14 copy 2.toml", "such as 2026-09-21.toml", "copied on a Mac"},
		{"2026-09-14 (copy).toml", "such as 2026-09-21.toml", "copied on Linux"},
		{"2026-09-14 (1).toml", "such as 2026-09-21.toml", "fetched twice"},
		{"Copy of 2026-12-28.toml", "such as 2027-01-04.toml", "copied on a shared disk"},
	}
	for _, test := range tests {
		got := renamed(test.name, []string{"en", "es"})
		if !strings.Contains(got, test.want) || test.want == rule && got != rule {
			t.Errorf("%s (%s): want %q, got %q", test.name, test.why, test.want, got)
		}
	}
}

// Languages as people call them. Tags and names are those of the IANA registry
// and CLDR; the language of a country is CLDR's likely one.
func TestLanguageMeant(t *testing.T) {
	tags := []string{"ar", "en", "es", "ht", "ko", "pt", "uk", "vi", "zh-Hans"}
	tests := []struct{ typed, want, why string }{
		{"Vietnamese", "vi", "the English name"},
		{"vietnamees", "vi", "a slip in it"},
		{"Español", "es", "its own name"},
		{"Chinese", "zh-Hans", "the language without its script"},
		{"zh", "zh-Hans", "the tag without its script"},
		{"zh-CN", "zh-Hans", "another tag of the language"},
		{"es-MX", "es", "a country's form of it"},
		{"vn", "vi", "the country"},
		{"ua", "uk", "the country"},
		{"sp", "es", "the beginning of one name"},
		{"xx", "", "nothing is called that"},
		{"fr", "", "another language"},
		{"", "", "nothing typed"},
	}
	for _, test := range tests {
		if got := languageMeant(test.typed, tags); got != test.want {
			t.Errorf("languageMeant(%q) (%s): want %q, got %q", test.typed, test.why, test.want, got)
		}
	}
	if got := LanguageList([]string{"ht", "zh-Hans", "x-home"}); got != "ht (Haitian Creole), zh-Hans (Simplified Chinese), x-home (x-home)" {
		t.Errorf("LanguageList: got %q", got)
	}
}
