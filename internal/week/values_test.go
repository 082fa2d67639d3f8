package week

import "testing"

// Numbers, and true or false, in the forms that people type: what is said, and
// that nothing else is.
func TestSlipsOfValues(t *testing.T) {
	const three = "write stories = 3, a number without letters or quotes"
	const range8 = "write a whole number from 1 to 8: stories = 4"
	const on = "write review = true, in small letters and without quotes"
	const off = "write review = false, in small letters and without quotes"
	tests := []struct{ line, text, hint, why string }{
		{`stories = three`, "stories cannot be three", three, "a number as a word"},
		{`stories = Three   # this week`, "stories cannot be Three", three, "a remark after it"},
		{`stories = "three"`, `stories cannot be "three"`, three, "a word in quotes"},
		{`stories = "3"`, `stories cannot be "3"`, three, "a number in quotes"},
		{`stories = '3'`, `stories cannot be "3"`, three, "a number in quotes"},
		{`stories = "3`, `stories cannot be "3`, three, "an open quote"},
		{`stories = 3 stories`, "stories cannot be 3 stories", three, "a number with its noun"},
		{`stories = 3,`, "stories cannot be 3,", three, "a comma after it"},
		{`stories = 3.`, "stories cannot be 3.", three, "a full stop after it"},
		{`stories = 3.0`, "stories cannot be 3.0", three, "a spreadsheet's number"},
		{`stories = ٣`, "stories cannot be ٣", three, "digits of an Arabic keyboard"},
		{`stories = ３`, "stories cannot be ３", three, "digits of a Chinese keyboard"},
		{`stories = 3-5`, "stories cannot be 3-5", range8, "two numbers are none"},
		{`stories = 3,5`, "stories cannot be 3,5", range8, "two numbers are none"},
		{`stories = yes`, "stories cannot be yes", range8, "no number at all"},
		{`stories = true`, "stories cannot be true", range8, "no number at all"},
		{`stories = "12"`, `stories cannot be "12"`, range8, "too many to propose"},
		{`stories = a few`, "stories cannot be a few", range8, "no number at all"},
		{`minutes = 15 min`, "minutes cannot be 15 min", "write minutes = 15, a number without letters or quotes", "a number with its unit"},
		{`review = yes`, "review cannot be yes", on, "yes for true"},
		{`review = on`, "review cannot be on", on, "on for true"},
		{`review = TRUE`, "review cannot be TRUE", on, "capitals"},
		{`review = “true”`, `"“" is a curly quote`, `use straight quotes: review = "..."`, "a word processor's quotes"},
		{`review = "yes"`, `review cannot be "yes"`, on, "quotes"},
		{`review = 0`, "review cannot be 0", off, "0 for false"},
		{`review = Off`, "review cannot be Off", off, "off for false"},
		{`review = ja`, "review cannot be ja", "write review = true or review = false, without quotes", "another language's yes"},
		{`focus = yes`, `"yes" has no quotes around it`, `write focus = "yes"`, "this setting takes a word"},
	}
	for _, test := range tests {
		_, problems := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.toml", weekWith(test.line)), someAllowed())
		if len(problems) != 1 || problems[0].Text != test.text || problems[0].Hint != test.hint || problems[0].Line != 3 {
			t.Errorf("%s (%s): want line 3, %q, %q, got\n%v", test.line, test.why, test.text, test.hint, problems)
		}
	}
	_, problems := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.toml", "# ours\n[own-target]\nlargest = \"fifty\"\nsteps = two\n"), someAllowed())
	if len(problems) != 2 || problems[0].Hint != "write a whole number from 5 to 1000: largest = 20" || problems[1].Hint != "write steps = 2, a number without letters or quotes" {
		t.Errorf("below [own-target]: got\n%v", problems)
	}
}

// Lists, dashes and quotes as word processors and tired hands leave them.
func TestSlipsOfLines(t *testing.T) {
	const site = `name = "Pebble"` + "\n"
	tests := []struct{ text, want, hint, why string }{
		{site + `languages = ["en", “es”]`, `site.toml:2: "“" is a curly quote`, `use straight quotes: languages = ["...", "..."]`, "curly quotes later in a list"},
		{site + `languages = ["en", es]`, `site.toml:2: "es" has no quotes around it`, `write each word of the list in quotes: languages = ["...", "..."]`, "one word bare"},
		{site + `languages = "en", "es"`, "site.toml:2: the brackets around the list are missing", `write languages = ["en", "es"]`, "no brackets"},
		{site + `languages = "en, es"`, `site.toml:2: languages cannot be "en, es"`, `write a list: languages = ["en", "es"]`, "one text for a list"},
		{"languages = [\"en\", \"es\"\n# the name\n" + site, "site.toml:1: the list is not closed", `write languages = ["...", "..."] on one line`, "no bracket at the end"},
		{"languages = [\"en\"]\nname = 'St Mary's'", "site.toml:2: an apostrophe ends the text too early", `write name = "St Mary's"`, "an apostrophe in single quotes"},
		{"languages = [\"en\"]\nname = \"The \"Heron\" class\"", "site.toml:2: there are quotes inside the quotes", `write three quotes around it: name = """The "Heron" class"""`, "quotes in quotes"},
		{site + "school–language = \"en\"\nlanguages = [\"en\"]", `site.toml:2: "–" is not the plain dash`, `write school-language = "en"`, "a word processor's dash"},
		{site + "school language = \"en\"\nlanguages = [\"en\"]", `site.toml:2: the name of a setting has no spaces in it`, `write school-language = "en"`, "the dash left out"},
	}
	for _, test := range tests {
		_, problems := Read(folder(SiteFile, test.text+"\n", "weeks/2026-09-14.toml", goodWeek), someAllowed())
		if len(problems) != 1 || problems[0].String() != test.want+"\n  hint: "+test.hint {
			t.Errorf("%s: want only %q with %q, got\n%v", test.why, test.want, test.hint, problems)
		}
	}
}
