package week

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"homebuild/internal/diag"
	"homebuild/internal/textfile"
)

// Slips of site.toml.
func TestSlipsOfTheSite(t *testing.T) {
	const rest = "languages = [\"en\", \"es\"]\n"
	tests := []struct{ name, text, want string }{
		{"no name", rest, `site.toml:1: the site has no name
  hint: write name = "...", as families know the school or the class`},
		{"no language", "name = \"Pebble\"\n", `site.toml:1: the site has no language
  hint: write languages = ["en", "es"], the class's own first`},
		{"empty list", "name = \"Pebble\"\nlanguages = []\n", `site.toml:2: the site has no language
  hint: write languages = ["en", "es"], the class's own first`},
		{"misspelt language", "name = \"Pebble\"\nlanguages = [\"en\", \"spanish\"]\n", `site.toml:2: "spanish" is not a language there is a file for
  hint: did you mean "es" for Spanish? there are: en (English), es (Spanish), ar (Arabic), pt-BR (Brazilian Portuguese)`},
		{"language twice", "name = \"Pebble\"\nlanguages = [\"en\", \"EN\"]\n", `site.toml:2: "en" is in the list twice
  hint: keep one of the two`},
		{"school language elsewhere", "name = \"Pebble\"\nschool-language = \"ar\"\n" + rest, `site.toml:2: "ar" is not one of this site's languages
  hint: there are: en, es`},
		{"misspelt theme", "name = \"Pebble\"\ntheme = \"papper\"\n" + rest, `site.toml:2: "papper" is not a theme
  hint: did you mean "paper"? there are: paper, slate`},
		{"misspelt answers", "name = \"Pebble\"\nanswers = \"feet\"\n" + rest, `site.toml:2: "feet" is not a place for the answers
  hint: did you mean "foot"? there are: foot, link`},
		{"answers nowhere", "name = \"Pebble\"\nanswers = \"link\"\n" + rest, `site.toml:2: answers = "link" needs an address: the code on the paper leads there
  hint: write address = "https://..." as well, or answers = "foot"`},
		{"answers in bare words", "name = \"Pebble\"\nanswers = false\n" + rest, `site.toml:2: answers cannot be false
  hint: write a word in quotes: answers = "..."`},
		{"plain address", "name = \"Pebble\"\naddress = \"school.example\"\n" + rest, `site.toml:2: "school.example" is not where a site can live
  hint: write the whole address, such as "https://school.example/families/"`},
		{"script for an address", "name = \"Pebble\"\naddress = \"javascript:alert(1)\"\n" + rest, `site.toml:2: "javascript:alert(1)" is not where a site can live
  hint: write the whole address, such as "https://school.example/families/"`},
		{"number for a name", "name = 12\n" + rest, `site.toml:1: name cannot be 12
  hint: write a word in quotes: name = "..."`},
		{"name in another language", "name = { en = \"Pebble\", fr = \"Caillou\" }\n" + rest, `site.toml:1: "fr" is not one of this site's languages, in name
  hint: there are: en, es`},
		{"phone in a name", "name = \"Pebble, 555-010-0199\"\n" + rest, `site.toml:1: name holds a phone number, "555-010-0199", and pages are public
  hint: leave it out`},
		{"long name", "name = \"" + strings.Repeat("x", 81) + "\"\n" + rest, `site.toml:1: name has 81 letters
  hint: keep it to 80, for small screens`},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			checkProblems(t, folder(SiteFile, test.text, "weeks/2026-09-14.md", goodWeek), test.want)
		})
	}
}

// Slips of a week file as a whole, or of its name.
func TestSlipsOfFiles(t *testing.T) {
	const week = "weeks/2026-09-14.md"
	tests := []struct{ name, file, text, want string }{
		{"empty", week, " \n", week + `: the file is empty
  hint: write it, or take it away`},
		{"no settings", week, "Dear families,\n", week + `:1: the file begins with the note and has no settings
  hint: begin with these lines: +++, target = "add-within-20", +++`},
		{"dashes", week, "---\ntarget = \"add-within-20\"\n---\n", week + `:1: "---" does not open the settings
  hint: write three plus signs, "+++", before and after the settings`},
		{"first fence missing", week, "target = \"add-within-20\"\n+++\n", week + `:1: the line "+++" is missing before the settings
  hint: write three plus signs, "+++", before and after the settings`},
		{"last fence missing", week, "\n+++\ntarget = \"add-within-20\"\nDear families,\n", week + `:2: the settings begin here and never end
  hint: write a second line "+++" after the last setting`},
		{"too large", week, goodWeek + strings.Repeat("x", textfile.MaxSize), week + `: the file is larger than 1 MB
  hint: ours are a few pages of text; is this another file?`},
		{"word processor", week, "PK\x03\x04\x00\x00", week + `: this is not a text file
  hint: word processors keep more than text in their files; save it as plain text`},
		{"rich text", week, `{\rtf1\ansi Dear families}`, week + `:1: this is not a plain text file
  hint: word processors keep more than text in their files; save it as plain text (in TextEdit: Format, Make Plain Text)`},
		{"setting in the note", week, goodWeek + "\nstories = 3\n", week + `:6: "stories" is a setting, and stands in the note
  hint: move it above the second "+++"`},
		{"own story in the note", week, goodWeek + "\n[[own-story]]\ntext = \"Lina\"\n", week + `:6: a story of your own stands in the note
  hint: move it above the second "+++", with the lines that belong to it`},
		{"utf-16", week, "\xff\xfe+\x00+\x00", week + `: the file is saved as UTF-16, not as plain UTF-8 text
  hint: choose "UTF-8" where your editor asks for the encoding, and save it again`},
		{"latin-1", week, goodWeek + "ni\xf1o", week + `:5: a letter here is not saved as UTF-8
  hint: choose "UTF-8" where your editor asks for the encoding, and save it again`},
		{"control character", week, goodWeek + "a \x07bell", week + `:5: a control character (U+0007) hides after "a "
  hint: delete that part of the line and type it again`},
		{"turned text", week, goodWeek + "8 + 6 \u202e41 =", week + `:5: a mark that turns the reading direction (U+202E) hides after "8 + 6 "
  hint: delete that part of the line and type it again`},
		{"isolate", week, goodWeek + "\u20668 + 6", week + `:5: a mark that turns the reading direction (U+2066) hides after ""
  hint: delete that part of the line and type it again`},
		{"zero-width space", week, "+++\ntarget = \"add\u200b-within-20\"\n+++\n", week + `:2: an unseen character (U+200B) hides after "arget = \"add"
  hint: delete that part of the line and type it again`},
		{"lost letter", week, goodWeek + "ni\ufffdo", week + `:5: a letter that was lost earlier (U+FFFD) hides after "ni"
  hint: delete that part of the line and type it again`},
		{"no such day", "weeks/2026-02-30.md", goodWeek, `weeks/2026-02-30.md: "2026-02-30" is not a day of the calendar
  hint: name the file year-month-day, such as 2026-09-14.md`},
		{"day first", "weeks/14-09-2026.md", goodWeek, `weeks/14-09-2026.md: "14-09-2026.md" is not the name of a week
  hint: name it 2026-09-14.md`},
		{"short month", "weeks/2026-9-7.md", goodWeek, `weeks/2026-9-7.md: "2026-9-7.md" is not the name of a week
  hint: name it 2026-09-07.md`},
		{"a name", "weeks/week one.md", goodWeek, `weeks/week one.md: "week one.md" is not the name of a week
  hint: name the file year-month-day, such as 2026-09-14.md`},
		{"hidden ending", "weeks/2026-09-07.md.txt", goodWeek, `weeks/2026-09-07.md.txt: "2026-09-07.md.txt" is not the name of a week
  hint: name it 2026-09-07.md, without .txt`},
		{"word processor's ending", "weeks/2026-09-07.docx", "PK", `weeks/2026-09-07.docx: "2026-09-07.docx" is not the name of a week
  hint: a word processor keeps more than text in such a file: copy the words into a plain text file named 2026-09-07.md, and take this one away`},
		{"copy", "weeks/2026-09-14 (1).md", goodWeek, `weeks/2026-09-14 (1).md: "2026-09-14 (1).md" is not the name of a week
  hint: if it is another week, name it by the Monday of that week, such as 2026-09-21.md; if it is only a copy, take it away`},
		{"same date", "weeks/2026-09-21.MD", goodWeek, `weeks/2026-09-21.md: "weeks/2026-09-21.MD" is for the same date
  hint: keep one of the two`},
		{"folder inside", "weeks/2026/2026-09-14.md", goodWeek, `weeks/2026: folders inside weeks are not read
  hint: put the week files straight into weeks`},
		{"unknown language", "weeks/2026-09-21.ess.md", "Hola", `weeks/2026-09-21.ess.md: "ess" is not a language
  hint: did you mean "es" for Spanish? there are: en (English), es (Spanish), ar (Arabic), pt-BR (Brazilian Portuguese)`},
		{"language not on the site", "weeks/2026-09-21.ar.md", "أهلا", `weeks/2026-09-21.ar.md: this site is not made in "ar"
  hint: add "ar" to languages in site.toml, or take the note away`},
		{"note without a week", "weeks/2026-10-05.es.md", "Hola", `weeks/2026-10-05.es.md: there is no "weeks/2026-10-05.md" for this note to go with
  hint: write the week first, or give the note the date of its week`},
		{"settings in a note", "weeks/2026-09-21.es.md", goodWeek, `weeks/2026-09-21.es.md:1: a note in another language has no settings
  hint: keep the note alone here; settings stand in "weeks/2026-09-21.md"`},
		{"note twice", "weeks/2026-09-21.en.md", "Dear", `weeks/2026-09-21.en.md: "weeks/2026-09-21.md" has a note in this language already
  hint: keep one of the two`},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			checkProblems(t, folder(SiteFile, goodSite, "weeks/2026-09-21.md", goodWeek, test.file, test.text), test.want)
		})
	}
}

func TestMissingFiles(t *testing.T) {
	checkProblems(t, fstest.MapFS{}, `site.toml: the file is missing
  hint: write site.toml with three lines: name = "...", languages = ["en"], key = "..."
weeks: there is no folder named weeks
  hint: "homebuild week" makes it, with a first week in it`)
	checkProblems(t, folder(SiteFile, goodSite, "weeks/.keep", ""), `weeks: there is no week yet
  hint: "homebuild week" makes one; or make a file named by the Monday of its week, such as "weeks/2026-09-14.md"`)
}

// A settings file under another name is found.
func TestSiteFileMisnamed(t *testing.T) {
	for _, name := range []string{"site.toml.txt", "Site.txt", "site.toml.rtf"} {
		checkProblems(t, folder(name, goodSite, "weeks/2026-09-14.md", goodWeek), `site.toml: the file is missing
  hint: there is a file "`+name+`": name it site.toml`)
	}
}

// A list of languages that cannot be read is told once, and not again at every
// note.
func TestNotesBesideAnUnreadableList(t *testing.T) {
	checkProblems(t, folder(SiteFile, "name = \"Pebble\"\nlanguages = [\"en\", “es”]\n", "weeks/2026-09-14.md", goodWeek, "weeks/2026-09-14.es.md", "Hola"), `site.toml:2: "“" is a curly quote
  hint: use straight quotes: languages = ["...", "..."]`)
}

// A misnamed week is told once: that there is no week besides says nothing new.
func TestNoWeekButAMisnamedOne(t *testing.T) {
	checkProblems(t, folder(SiteFile, goodSite, "weeks/14.9.2026.md", goodWeek), `weeks/14.9.2026.md: "14.9.2026.md" is not the name of a week
  hint: name it 2026-09-14.md`)
}

func TestOnlyNoWeek(t *testing.T) {
	for _, files := range []fs.FS{folder(SiteFile, goodSite), folder(SiteFile, goodSite, "weeks/.keep", "")} {
		if _, problems := Read(files, someAllowed()); len(problems) != 1 || !OnlyNoWeek(problems[0]) {
			t.Errorf("want the one problem that there is no week, got\n%v", problems)
		}
	}
	_, problems := Read(folder(SiteFile, goodSite, "weeks/2026-02-30.md", goodWeek), someAllowed())
	if i := slices.IndexFunc(problems, func(p diag.Problem) bool { return !OnlyNoWeek(p) }); i < 0 {
		t.Errorf("want a week that cannot be read told as more than no week, got\n%v", problems)
	}
}

// A link must not carry a file from elsewhere onto a public page.
func TestLinksAreNotFollowed(t *testing.T) {
	dir := t.TempDir()
	secret := filepath.Join(dir, "secret.md")
	school := filepath.Join(dir, "school")
	for name, text := range map[string]string{secret: goodWeek, filepath.Join(school, SiteFile): goodSite, filepath.Join(school, "weeks/2026-09-14.md"): goodWeek} {
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Symlink(secret, filepath.Join(school, "weeks/2026-09-21.md")); err != nil {
		t.Skip("this system makes no links: ", err)
	}
	root, err := os.OpenRoot(school)
	if err != nil {
		t.Fatal(err)
	}
	defer root.Close()
	want := `weeks/2026-09-21.md: this is a link to another place
  hint: put the file itself here; links are not followed`
	for name, fsys := range map[string]fs.FS{"os.DirFS": os.DirFS(school), "os.Root": root.FS()} {
		_, problems := Read(fsys, someAllowed())
		if diff := cmp.Diff(want, problems.Error()); diff != "" {
			t.Errorf("%s: problems mismatch (-want +got):\n%s", name, diff)
		}
	}
	if err := os.Rename(filepath.Join(school, "weeks"), filepath.Join(dir, "weeks")); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink("../weeks", filepath.Join(school, "weeks")); err != nil {
		t.Fatal(err)
	}
	checkProblems(t, os.DirFS(school), `weeks: this is a link to another place
  hint: put the folder itself here; links are not followed`)
}
