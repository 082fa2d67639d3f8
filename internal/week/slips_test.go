package week

import (
	"strings"
	"testing"
)

// weekWith is a week file with a target and one more line of settings.
func weekWith(line string) string {
	return "# ours\ntarget = \"add-within-20\"\n" + line + "\n[note]\nen = \"Dear families,\"\n"
}

// Every slip of a week's settings, with everything a teacher is told about it.
func TestSlipsOfSettings(t *testing.T) {
	const at3 = "weeks/2026-09-14.toml:3: "
	tests := []struct{ name, text, want string }{
		{"wrong key", weekWith(`focsu = "make-ten"`), at3 + `"focsu" is not a setting
  hint: did you mean "focus"?`},
		{"misspelled focus", weekWith(`focus = "make-tne"`), at3 + `"make-tne" is not a strategy
  hint: did you mean "make-ten"? there are: make-ten, doubles, friendly-pair`},
		{"misspelled picture", weekWith(`picture = "Bar-Model"`), at3 + `"Bar-Model" is not a picture
  hint: did you mean "bar-model"? there are: bar-model, ten-frame, number-line`},
		{"misspelled place", weekWith(`place = "harbor"`), at3 + `"harbor" is not a place
  hint: did you mean "harbour"? there are: harbour, market`},
		{"the old word", weekWith(`scene = "harbour"`), at3 + `"scene" is called "place" now
  hint: write place = "harbour"`},
		{"unknown place", weekWith(`place = "moon base"`), at3 + `"moon base" is not a place
  hint: there are: harbour, market`},
		{"misspelled warm-up", weekWith(`warm-up = "reech"`), at3 + `"reech" is not a warm-up
  hint: did you mean "reach"? there are: reach, stamp`},
		{"curly quotes", weekWith(`focus = “make-ten”`), at3 + `"“" is a curly quote
  hint: use straight quotes: focus = "..."`},
		{"low quotes", weekWith(`focus = „make-ten“`), at3 + `"„" is a curly quote
  hint: use straight quotes: focus = "..."`},
		{"wide equals", weekWith(`focus ＝ "make-ten"`), at3 + `"＝" is not the plain equals sign
  hint: write focus = "..." with =`},
		{"no-break space", weekWith("focus\u00a0= \"make-ten\""), at3 + `an unusual space stands in this line
  hint: delete the spaces and type them again`},
		{"colon", weekWith(`focus: "make-ten"`), at3 + `a setting is written with "=", not ":"
  hint: write focus = "make-ten"`},
		{"no quotes", weekWith(`focus = make-ten`), at3 + `"make-ten" has no quotes around it
  hint: write focus = "make-ten"`},
		{"yes", weekWith(`review = yes`), at3 + `review cannot be yes
  hint: write review = true, in small letters and without quotes`},
		{"False", weekWith(`review = False`), at3 + `review cannot be False
  hint: write review = false, in small letters and without quotes`},
		{"string for a bool", weekWith(`review = "true"`), at3 + `review cannot be "true"
  hint: write review = true, in small letters and without quotes`},
		{"number for a bool", weekWith(`review = 1`), at3 + `review cannot be 1
  hint: write review = true, in small letters and without quotes`},
		{"string for a number", weekWith(`stories = "4"`), at3 + `stories cannot be "4"
  hint: write stories = 4, a number without letters or quotes`},
		{"number for a word", weekWith(`focus = 10`), at3 + `focus cannot be 10
  hint: write a word in quotes: focus = "..."`},
		{"date for a word", weekWith(`focus = 2026-09-14`), at3 + `focus cannot be 2026-09-14
  hint: write a word in quotes: focus = "..."`},
		{"too many stories", weekWith(`stories = 9`), at3 + `stories = 9 is not from 1 to 8
  hint: write a whole number from 1 to 8: stories = 4`},
		{"no stories", weekWith(`stories = 0`), at3 + `stories = 0 is not from 1 to 8
  hint: write a whole number from 1 to 8: stories = 4`},
		{"huge number", weekWith(`stories = 99999999999999999999`), at3 + `stories = 99999999999999999999 is not from 1 to 8
  hint: write a whole number from 1 to 8: stories = 4`},
		{"comma for dot", weekWith(`stories = 3,5`), at3 + `stories cannot be 3,5
  hint: write a whole number from 1 to 8: stories = 4`},
		{"half", weekWith(`stories = 3.5`), at3 + `stories cannot be 3.5
  hint: write a whole number from 1 to 8: stories = 4`},
		{"leading zero", weekWith(`stories = 04`), at3 + `stories cannot be 04
  hint: write stories = 4, a number without letters or quotes`},
		{"too long", weekWith(`minutes = 90`), at3 + `minutes = 90 is not from 1 to 60
  hint: write a whole number from 1 to 60: minutes = 10`},
		{"nothing after equals", weekWith(`focus =`), at3 + `nothing stands after the equals sign
  hint: write a value, or take the line away`},
		{"quote open at the end", weekWith(`focus = "make-ten`), at3 + `the quote at the end is missing
  hint: write focus = "make-ten"`},
		{"single quote open at the end", weekWith(`focus = 'make-ten`), at3 + `the quote at the end is missing
  hint: write focus = "make-ten"`},
		{"quote missing in front", weekWith(`focus = make-ten"`), at3 + `the quote at the beginning is missing
  hint: write focus = "make-ten"`},
		{"two on a line", weekWith(`focus = "make-ten" stories = 4`), at3 + `something stands after "\"make-ten\""
  hint: give each setting a line of its own`},
		{"list left open", weekWith(`allow = ["office@school.example"`), at3 + `the list is not closed
  hint: write allow = ["...", "..."] on one line`},
		{"list without commas", weekWith(`allow = ["a@b.example" "c@d.example"]`), at3 + `a comma is missing in the list
  hint: write allow = ["...", "..."]`},
		{"list for a word", weekWith(`focus = ["make-ten"]`), at3 + `focus cannot be a list
  hint: write a word in quotes: focus = "..."`},
		{"word for a list", weekWith(`allow = "office@school.example"`), at3 + `allow cannot be "office@school.example"
  hint: write a list: allow = ["office@school.example"]`},
		{"number in a list", weekWith(`allow = [5550123]`), at3 + `allow holds 5550123, which is not a word
  hint: write each in quotes`},
		{"allow everything", weekWith(`allow = ["@"]`), at3 + `allow cannot hold "@"
  hint: write one e-mail address, one number or one https address in full, as it stands in the note`},
		{"written twice", weekWith("focus = \"make-ten\"\nfocus = \"doubles\""), `weeks/2026-09-14.toml:4: "focus" is written twice
  hint: keep one of the two; the first is on line 3`},
		{"note inside the settings", weekWith(`Dear families`), at3 + `this line is not a setting
  hint: settings look like target = "add-within-20"; a note stands between quotes, below a line [note]`},
		{"strange escape", weekWith(`focus = "make\-ten"`), at3 + "a backslash, \\, stands in the text\n  hint: take it away, or write two"},
		{"word for the own target", "# ours\nown-target = \"add\"\n", `weeks/2026-09-14.toml:2: "own-target" is a table and needs lines of its own
  hint: write [own-target] on a line, and its settings below`},
		{"two targets", weekWith("[own-target]\nlargest = 20"), at3 + `the week has a target and an own-target
  hint: keep one of the two`},
		{"no target", "# ours\nstories = 3\n", `weeks/2026-09-14.toml:1: the week has no target
  hint: write target = "add-within-20", or another; "homebuild targets" lists them`},
		{"empty target", "# ours\ntarget = \"\"\n", `weeks/2026-09-14.toml:2: target cannot be ""
  hint: "homebuild targets" lists what it can be`},
		{"misspelled target", "# ours\ntarget = \"ad-within-20\"\n", `weeks/2026-09-14.toml:2: "ad-within-20" is not a target
  hint: did you mean "add-within-20"? there are: add-within-20, subtract-within-20, add-three-within-20; "homebuild targets" lists them`},
		{"target in words of one's own", "# ours\ntarget = \"make a ten\"\n", `weeks/2026-09-14.toml:2: "make a ten" is not a target
  hint: homebuild targets make a ten lists those that these words may mean`},
		{"unknown kind", "# ours\n[own-target]\nkinds = [\"add-to-resutl\"]\n", at3 + `"add-to-resutl" is not a kind of story
  hint: did you mean "add-to-result"? there are: add-to-result, together-total`},
		{"wrong key of the own target", "# ours\n[own-target]\nlargets = 20\n", at3 + `"largets" is not a setting of a target of your own
  hint: did you mean "largest"? there are: operation, largest, parts, crossing, steps, kinds`},
		{"setting of the week below another", "# ours\n[own-target]\nstories = 3\n", at3 + `"stories" is not a setting of a target of your own
  hint: stories is a setting of the whole file: write it above [own-target]`},
		{"setting of the own target above it", weekWith("largest = 20"), at3 + `"largest" is not a setting
  hint: largest is a setting of a target of your own: write it below [own-target]`},
		{"unknown crossing", "# ours\n[own-target]\ncrossing = \"yes\"\n", at3 + `"yes" is not a word for crossing a ten
  hint: there are: always, never, either`},
		{"three steps", "# ours\n[own-target]\nsteps = 3\n", at3 + `own-target.steps = 3 is not from 1 to 2
  hint: write a whole number from 1 to 2: steps = 1`},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			checkProblems(t, folder(SiteFile, goodSite, "weeks/2026-09-14.toml", test.text), test.want)
		})
	}
}

// What does no harm is taken as it is meant.
func TestHarmlessForms(t *testing.T) {
	tests := []struct{ name, text, why string }{
		{"windows line ends", strings.ReplaceAll(goodWeek, "\n", "\r\n"), "some editors write them"},
		{"old line ends", strings.ReplaceAll(goodWeek, "\n", "\r"), "some editors write them"},
		{"byte order mark", "\ufeff" + goodWeek, "some editors write it"},
		{"blank lines first", "\n\n" + goodWeek, "nobody sees them"},
		{"spaces after a line", "target = 'add-within-20'  \n[note]\t\n", "nobody sees them"},
		{"tabs", "# ours\n\ttarget\t=\t\"add-within-20\"\n\t[note]\n\ten = \"Dear families\"", "they are white space"},
		{"comment", "# ours\n# ours\ntarget = \"add-within-20\" # this week\n", "notes to oneself"},
		{"joiners", noted("می\u200cخواهیم क्\u200dष"), "Persian and Hindi are written with them"},
		{"direction marks", noted("8 + 6\u200f"), "Arabic keyboards have them"},
		{"word breaks", noted("សួស្តី\u200bគ្រួសារ"), "Khmer is written with them"},
		{"no note", "# ours\ntarget = \"add-within-20\"", "a busy week"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			site, problems := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.toml", test.text), someAllowed())
			if problems != nil || len(site.Weeks) != 1 || site.Weeks[0].Target != "add-within-20" {
				t.Errorf("want it read, since %s; got %+v and problems:\n%v", test.why, site.Weeks, problems)
			}
		})
	}
}

// Everything wrong with a folder comes in one run, in the order of places.
func TestAllAtOnce(t *testing.T) {
	checkProblems(t, folder(
		SiteFile, "nmae = \"x\"\nlanguages = en\n",
		"weeks/2026-02-31.toml", goodWeek,
		"weeks/2026-09-14.toml", "# ours\ntarget = add-within-20\nfocus = “make-ten”\nstories = 12\nbogus = 1\n[note]\nen = \"Call 555-010-0199\"\n",
	), `site.toml:1: "nmae" is not a setting
  hint: did you mean "name"? there are: address, theme, key, index, grade, days-off, review, words, shared, answers, languages, school-language, name, class
site.toml:1: the site has no name
  hint: write name = "...", as families know the school or the class
site.toml:2: "en" is not a list
  hint: write languages = ["en"]
weeks/2026-02-31.toml: "2026-02-31" is not a day of the calendar
  hint: name the file year-month-day, such as 2026-09-14.toml
weeks/2026-09-14.toml:2: "add-within-20" has no quotes around it
  hint: write target = "add-within-20"
weeks/2026-09-14.toml:3: "“" is a curly quote
  hint: use straight quotes: focus = "..."
weeks/2026-09-14.toml:4: stories = 12 is not from 1 to 8
  hint: write a whole number from 1 to 8: stories = 4
weeks/2026-09-14.toml:5: "bogus" is not a setting
  hint: did you mean "focus"?
weeks/2026-09-14.toml:7: the note shows a phone number, "555-010-0199", and pages are public
  hint: leave it out, or add allow = ["555-010-0199"] to the week's settings if everyone may see it`)
}
