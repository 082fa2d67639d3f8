package week

import (
	"strings"
	"testing"
)

// What a note may not show on a public page, with the reason.
func TestNotesThatAreStopped(t *testing.T) {
	const at5 = "weeks/2026-09-14.toml:5: "
	public := func(what, text string) string {
		return at5 + "the note shows " + what + ", \"" + text + "\", and pages are public\n  hint: leave it out, or add allow = [\"" + text + "\"] to the week's settings if everyone may see it"
	}
	tests := []struct{ name, note, want string }{
		{"e-mail", "Write to office@school.example.", public("an e-mail address", "office@school.example")},
		{"e-mail in a link of its own", "<office@school.example>", public("an e-mail address", "office@school.example")},
		{"e-mail by entity", "office&#64;school.example", public("an e-mail address", "office@school.example")},
		{"e-mail by backslash", `office\@school.example`, public("an e-mail address", "office@school.example")},
		{"e-mail spelled", "office (at) school.example", public("an e-mail address", "office (at) school.example")},
		{"phone, US form", "Call (555) 010-0199.", public("a phone number", "(555) 010-0199")},
		{"phone, local", "Call 555-0123 now", public("a phone number", "555-0123")},
		{"phone, abroad", "+44 20 7946 0123", public("a phone number", "+44 20 7946 0123")},
		{"phone, pairs", "Tel. 01 99 00 12 34", public("a phone number", "01 99 00 12 34")},
		{"phone, wide gaps", "020 - 7946 - 0123", public("a phone number", "020 - 7946 - 0123")},
		{"phone, Arabic digits", "٠٢٠ ٧٩٤٦ ٠١٢٣", public("a phone number", "٠٢٠ ٧٩٤٦ ٠١٢٣")},
		{"phone, unbroken", "5550123456", public("a phone or id number", "5550123456")},
		{"id number", "Number 000-12-3456", public("an id number", "000-12-3456")},
		{"pupil number", "Pupil 20261234", public("a phone or id number", "20261234")},
		{"raw HTML", "<b>Dear</b> families", at5 + "the note holds HTML, \"<b>\", which pages leave out\n  hint: write *slanted*, **strong**, or lines that begin with - instead"},
		{"HTML over two lines", "<img\nsrc=x>", at5 + "the note holds HTML, \"<img\", which pages leave out\n  hint: write *slanted*, **strong**, or lines that begin with - instead"},
		{"HTML comment", "<!-- secret -->", at5 + "the note holds HTML, \"<!--\", which pages leave out\n  hint: write *slanted*, **strong**, or lines that begin with - instead"},
		{"picture", "![us](https://pics.example/us.jpg)", at5 + "the note holds a picture, \"![us](https://pics.example/us.jpg)\", and pages fetch nothing\n  hint: tell in words what it shows"},
		{"link", "[more](https://more.example/a)", at5 + "the note links to \"https://more.example/a\", outside this site\n  hint: leave it out, or add allow = [\"https://more.example/a\"] to the week's settings"},
		{"plain link", "See https://more.example/a.", at5 + "the note links to \"https://more.example/a\", outside this site\n  hint: leave it out, or add allow = [\"https://more.example/a\"] to the week's settings"},
		{"two links on a line", "See https://more.example/a and https://more.example/b.", at5 + "the note links to \"https://more.example/a\", outside this site\n  hint: leave it out, or add allow = [\"https://more.example/a\"] to the week's settings\n" + at5 + "the note links to \"https://more.example/b\", outside this site\n  hint: leave it out, or add allow = [\"https://more.example/b\"] to the week's settings"},
		{"link by name", "[more]: https://more.example", at5 + "the note links to \"https://more.example\", outside this site\n  hint: leave it out, or add allow = [\"https://more.example\"] to the week's settings"},
		{"link in points", "<https://more.example>", at5 + "the note links to \"https://more.example\", outside this site\n  hint: leave it out, or add allow = [\"https://more.example\"] to the week's settings"},
		{"unsafe link", "[more](http://more.example)", at5 + "\"http://more.example\" is not a safe link\n  hint: write https:// instead of http://"},
		{"half a link", "See www.more.example", at5 + "\"www.more.example\" is not a whole link\n  hint: write \"https://www.more.example\""},
		{"script link", "[more](javascript:alert(1))", at5 + "a link cannot lead to \"javascript:alert(1\"\n  hint: links begin with https://; write addresses and numbers as plain words"},
		{"script link by entity", "[more](java&#115;cript:x)", at5 + "a link cannot lead to \"javascript:x\"\n  hint: links begin with https://; write addresses and numbers as plain words"},
		{"data link", "[more](data:text/html,x)", at5 + "a link cannot lead to \"data:text/html,x\"\n  hint: links begin with https://; write addresses and numbers as plain words"},
		{"link inside", "[last week](2026-09-07.html)", at5 + "a note cannot link to \"2026-09-07.html\"\n  hint: homebuild makes the links between pages itself; leave this one out"},
		{"link over two lines", "[more](\nhttps:x)", at5 + "a link leads nowhere\n  hint: write the link on one line: [words](https://...)"},
		{"too long", strings.Repeat("word ", 1000), "weeks/2026-09-14.toml:4: the note has 5014 letters\n  hint: keep it to 4000: families read it on a phone"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			checkProblems(t, folder(SiteFile, goodSite, "weeks/2026-09-14.toml", noted(test.note)), test.want)
		})
	}
}

// What a lesson's note is full of must pass without a word.
func TestNotesThatPass(t *testing.T) {
	tests := []struct{ name, note string }{
		{"dates", "From 2026-09-14 to 18.09.2026, or 9/14/2026; school year 2026-2027 and 2026/27."},
		{"times", "Come 8.30-15.45 or 8:30-15:45, best 12:15."},
		{"equations", "8 + 6 = 8 + 2 + 4 = 14, 450 + 350 = 800, 1000 - 350 = 650, 1000-350, 56 - 19 = 37"},
		{"counting", "Count 10 20 30 40 50, 100 200 300 400 500, 102 103 104 105 and 12 11 10 9 8 7"},
		{"small numbers", "8 6 14 9 5 14 7 7 14"},
		{"list with commas", "450, 350, 800, 225, 775"},
		{"heart", "We <3 numbers; 5 < 8 and 8 > 5"},
		{"at", "Meet at school @ 3"},
		{"brackets", "Take [some] shells (not all)."},
		{"Arabic digits", "٨ + ٦ = ١٤"},
		{"Markdown", "- *one*\n- **two**\n\n1. first\n2. second"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			checkProblems(t, folder(SiteFile, goodSite, "weeks/2026-09-14.toml", noted(test.note)), "")
		})
	}
}

// What the teacher allows by name passes, in every language's note, and
// nothing else does.
func TestAllow(t *testing.T) {
	const settings = "target = \"add-within-20\"\nallow = [\"Office@school.example\", \"555-010-0199\", \"https://more.example/a\"]\n[note]\n"
	const note = "office@school.example, (555) 010 0199, [more](https://more.example/a), https://more.example/a."
	in := func(tag, text string) string { return tag + " = \"\"\"\n" + text + "\n\"\"\"\n" }
	checkProblems(t, folder(SiteFile, goodSite, "weeks/2026-09-14.toml", settings+in("en", note)+in("es", note)), "")
	checkProblems(t, folder(SiteFile, goodSite, "weeks/2026-09-14.toml", settings+in("en", note)+in("es", "x.office@school.example, https://more.example/abc")),
		`weeks/2026-09-14.toml:8: the note links to "https://more.example/abc", outside this site
  hint: leave it out, or add allow = ["https://more.example/abc"] to the week's settings
weeks/2026-09-14.toml:8: the note shows an e-mail address, "x.office@school.example", and pages are public
  hint: leave it out, or add allow = ["x.office@school.example"] to the week's settings if everyone may see it`)
	checkProblems(t, folder(SiteFile, goodSite, "weeks/2026-09-14.toml", goodWeek, "weeks/2026-09-21.toml", settings+in("en", note)), "")
}

// A note is written in any of the site's languages; what else stands below [note]
// is told of.
func TestSlipsOfNotes(t *testing.T) {
	const week = "target = \"add-within-20\"\n"
	const at3 = "weeks/2026-09-14.toml:3: "
	tests := []struct{ name, text, want string }{
		{"unknown language", week + "[note]\ness = \"Hola\"", at3 + `"ess" is not a language there is a file for
  hint: did you mean "es" for Spanish? there are: en (English), es (Spanish), ar (Arabic), pt-BR (Brazilian Portuguese)`},
		{"language not on the site", week + "[note]\nar = \"أهلا\"", at3 + `this site is not made in "ar"
  hint: add "ar" to languages in site.toml, or take the note away`},
		{"twice", week + "[note]\nEN = \"Dear\"\nen = \"Dear\"", `weeks/2026-09-14.toml:4: there is a note in "en" already
  hint: keep one of the two`},
		{"without a language", week + "note = \"Dear families\"", `weeks/2026-09-14.toml:2: "note" is a table and needs lines of its own
  hint: write [note] on a line, and its settings below`},
		{"outside its table", week + "\nen = \"Dear families\"", at3 + `"en" is not a setting
  hint: en is a setting of the note to families: write it below [note]`},
		{"a setting below it", week + "[note]\nstories = 3", at3 + `"stories" is not a setting of the note to families
  hint: stories is a setting of the whole file: write it above [note]`},
		{"plain words", week + "[note]\nDear families,", at3 + `this line is not a setting
  hint: settings look like target = "add-within-20"; a note stands between quotes, below a line [note]`},
		{"a number", week + "[note]\nen = 5", at3 + `note.en cannot be 5
  hint: write three quotes above the text and below it: en = """`},
		{"spelled out", week + "[note]\nen = \"8 + 6 \\u202e41\"", at3 + `note.en holds a mark that turns the reading direction (U+202E)
  hint: leave it out`},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			checkProblems(t, folder(SiteFile, goodSite, "weeks/2026-09-14.toml", test.text), test.want)
		})
	}
}
