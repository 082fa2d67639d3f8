package week

import (
	"fmt"
	"strings"
	"testing"
)

// What stands at a limit passes, and one more is told, at its line. The limits are those
// of the table in docs/robustness.md and of the reference.
func TestLimits(t *testing.T) {
	const at2 = "site.toml:2: "
	letters := func(n int) string { return strings.Repeat("x", n) }
	site := func(line string) string { return "languages = [\"en\", \"es\"]\n" + line + "\n" }
	address := func(n int) string {
		const start, end = "https://school.example/", "/"
		return site(`name = "Pebble"` + "\n" + `address = "` + start + letters(n-len(start)-len(end)) + end + `"`)
	}
	words := func(n int) string { // short lines, as a note has them
		return strings.Repeat(letters(79)+"\n", n/80-1) + letters(80+n%80)
	}
	bareNote := func(text string) string {
		return "target = \"add-within-20\"\n[note]\nen = \"\"\"\n" + text + "\n\"\"\"\n"
	}
	own := func(n int) string { return "target = \"add-within-20\"\n" + strings.Repeat(someStory, n) }
	story := func(text, answer int) string {
		return "target = \"add-within-20\"\n[[own-story]]\ntext = \"" + letters(text) + "\"\nanswer = \"" + letters(answer) + "\"\n"
	}
	nested := func(deep int) string { return bareNote(strings.Repeat("- ", deep) + "shells") }
	tests := []struct{ name, site, week, wrong string }{
		{"a name of 80 letters", site(`name = "` + letters(80) + `"`), goodWeek, ""},
		{"a name of 81", site(`name = "` + letters(81) + `"`), goodWeek, at2 + "name has 81 letters"},
		{"a class of 80 letters of two bytes", site("name = \"Pebble\"\nclass = \"" + strings.Repeat("é", 80) + `"`), goodWeek, ""},
		{"an address of 200 letters", address(200), goodWeek, ""},
		{"an address of 201", address(201), goodWeek, "site.toml:3: address has 201 letters"},
		{"a note of 4,000 letters", goodSite, bareNote(words(4000)), ""},
		{"a note of 4,001", goodSite, bareNote(words(4001)), "weeks/2026-09-14.toml:4: the note has 4001 letters"},
		{"lists 6 deep", goodSite, nested(6), ""},
		{"lists 7 deep", goodSite, nested(7), "weeks/2026-09-14.toml:4: a list or a quote stands in another, many times over"},
		{"quotes 7 deep, on the second line", goodSite, bareNote("Hello\n> > > > > > > shells"), "weeks/2026-09-14.toml:5: a list or a quote stands in another, many times over"},
		{"a line across the page", goodSite, bareNote("one\n\n- - - - - - - - -\n\ntwo"), ""},
		{"8 stories of her own", goodSite, own(MaxStories), ""},
		{"9 stories of her own", goodSite, own(MaxStories + 1), "weeks/2026-09-14.toml:19: the week has 9 stories of your own"},
		{"a story of 400 letters, its answer of 120", goodSite, story(400, 120), ""},
		{"a story of 401", goodSite, story(401, 120), "weeks/2026-09-14.toml:3: text has 401 letters"},
		{"an answer of 121", goodSite, story(400, 121), "weeks/2026-09-14.toml:4: answer has 121 letters"},
		{"60 minutes", goodSite, weekWith("minutes = 60"), ""},
		{"1 minute, 1 story", goodSite, weekWith("minutes = 1\nstories = 1"), ""},
		{"61 minutes", goodSite, weekWith("minutes = 61"), "weeks/2026-09-14.toml:3: minutes = 61 is not from 1 to 60"},
	}
	for _, test := range tests {
		_, problems := Read(folder(SiteFile, test.site, "weeks/2026-09-14.toml", test.week), someAllowed())
		got, _, _ := strings.Cut(problems.Error(), "\n")
		if got != test.wrong || len(problems) > 1 {
			t.Errorf("%s: want %q, got\n%v", test.name, test.wrong, problems)
		}
	}
}

// Numbers of a lesson may be long; those that lead to a person may not stand on a page.
// What counts as which is common practice, no published source; a telephone number has
// at most 15 digits (ITU-T E.164).
func TestNumbersThatArePrivate(t *testing.T) {
	tests := []struct{ text, what string }{
		{"12345", ""},
		{"123456", "a phone or id number"},
		{"1000 - 1000 = 0", ""},
		{"1000-1000", ""},
		{"1000-1001", "a phone number"},
		{"1001-1000", "a phone number"},
		{"555 123", ""},
		{"555 1234", "a phone number"},
		{"555 123 4567", "a phone number"},
		{"555 565 575", ""},
		{"555 555 555", "a phone number"},
		{"10 20 30 41", ""},
		{"100 20 30 41", "a phone number"},
		{"+1234567", "a phone number"},
		{"+123456", ""},
		{"(0)12 34 56", "a phone number"},
		{"123-45-6789", "an id number"},
	}
	for _, test := range tests {
		got := ""
		for _, f := range private(test.text) {
			got = f.what()
		}
		if got != test.what {
			t.Errorf("%s: want it to be %q, got %q", test.text, test.what, got)
		}
	}
}

// What a teacher allows is one address or number, whole, and nothing beside it.
func TestAllowHoldsOneThing(t *testing.T) {
	for item, fine := range map[string]bool{
		"office@school.example": true, "555-010-0199": true, "https://more.example/a": true,
		"call 555-010-0199": false, "555-010-0199 office@school.example": false, "https://more.example/a b": false,
		"http://more.example/a": false, "shells": false,
	} {
		_, problems := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.toml", weekWith(fmt.Sprintf("allow = [%q]", item))), someAllowed())
		if (len(problems) == 0) != fine {
			t.Errorf("%q: want it taken %v, got\n%v", item, fine, problems)
		}
	}
}

// Letters that nobody sees are refused, and those beside them in Unicode that people
// write are not: Unicode 16, chapter 23.
func TestUnseenLetters(t *testing.T) {
	for c, fine := range map[rune]bool{
		'\t': true, 0x08: false, 0x1f: false, ' ': true, 0x7e: true, 0x7f: false, 0x9f: false, 0xa0: true, 0xad: false,
		0x200b: false, 0x200c: true, 0x200f: true, 0x2027: true, 0x2028: false, 0x2029: false, 0x202a: false, 0x202e: false, 0x202f: true,
		0x2060: false, 0x2066: false, 0x2069: false, 0x206a: true, 0xfeff: false, 0xfff9: false, 0xfffb: false, 0xfffd: false, 0xe0000: false, 0xe0fff: false,
	} {
		if got := hidden(c, "word"); (got == "") != fine {
			t.Errorf("U+%04X: want it to pass %v, got %q", c, fine, got)
		}
	}
	// Thai, Lao, Myanmar and Khmer set their words without spaces and mark them so.
	for before, fine := range map[string]bool{"ก": true, "\u0e00": true, "\u0eff": true, "ລ": true, "\u1000": true, "\u109f": true, "\u1780": true, "\u17ff": true, "\u0dff": false, "\u0f00": false, "\u0fff": false, "\u10a0": false, "\u177f": false, "\u1800": false, "": false} {
		if got := hidden(0x200b, before); (got == "") != fine {
			t.Errorf("U+200B after %q: want it to pass %v, got %q", before, fine, got)
		}
	}
	if got := tail("a word of letters"); got != "d of letters" {
		t.Errorf("the place is found by its last 12 letters, got %q", got)
	}
	if got := tail("twelve here!"); got != "twelve here!" {
		t.Errorf("12 letters are few enough, got %q", got)
	}
}
