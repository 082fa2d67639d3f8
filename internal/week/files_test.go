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
		{"misspelled language", "name = \"Pebble\"\nlanguages = [\"en\", \"spanish\"]\n", `site.toml:2: "spanish" is not a language there is a file for
  hint: did you mean "es" for Spanish? there are: en (English), es (Spanish), ar (Arabic), pt-BR (Brazilian Portuguese)`},
		{"language twice", "name = \"Pebble\"\nlanguages = [\"en\", \"EN\"]\n", `site.toml:2: "en" is in the list twice
  hint: keep one of the two`},
		{"school language elsewhere", "name = \"Pebble\"\nschool-language = \"ar\"\n" + rest, `site.toml:2: "ar" is not one of this site's languages
  hint: there are: en, es`},
		{"misspelled theme", "name = \"Pebble\"\ntheme = \"papper\"\n" + rest, `site.toml:2: "papper" is not a theme
  hint: did you mean "paper"? there are: paper, slate`},
		{"misspelled answers", "name = \"Pebble\"\nanswers = \"feet\"\n" + rest, `site.toml:2: "feet" is not a place for the answers
  hint: did you mean "foot"? there are: foot, link`},
		{"answers nowhere", "name = \"Pebble\"\nanswers = \"link\"\n" + rest, `site.toml:2: answers = "link" needs an address: the code on the paper leads there
  hint: write address = "https://..." as well, or answers = "foot"`},
		{"answers in bare words", "name = \"Pebble\"\nanswers = false\n" + rest, `site.toml:2: answers cannot be false
  hint: write a word in quotes: answers = "..."`},
		{"plain address", "name = \"Pebble\"\naddress = \"school.example\"\n" + rest, `site.toml:2: "school.example" is not where a site can live
  hint: write the whole address, with https:// and without spaces, "?" or "#": "https://school.example/families/"`},
		{"script for an address", "name = \"Pebble\"\naddress = \"javascript:alert(1)\"\n" + rest, `site.toml:2: "javascript:alert(1)" is not where a site can live
  hint: write the whole address, with https:// and without spaces, "?" or "#": "https://school.example/families/"`},
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
			checkProblems(t, folder(SiteFile, test.text, "weeks/2026-09-14.toml", goodWeek), test.want)
		})
	}
}

// Slips of a week file as a whole, or of its name.
func TestSlipsOfFiles(t *testing.T) {
	const week = "weeks/2026-09-14.toml"
	tests := []struct{ name, file, text, want string }{
		{"empty", week, " \n", week + `: the file is empty
  hint: write it, or take it away`},
		{"a letter", week, "Dear families,\n", week + `:1: this line is not a setting
  hint: settings look like target = "add-within-20"; a note stands between quotes, below a line [note]
` + week + `:1: the week has no target
  hint: write target = "add-within-20", or another; "homebuild targets" lists them`},
		{"older form under the new name", week, "\n+++\ntarget = \"add-within-20\"\n+++\nDear families,\n", week + `:1: this week is in an older form
  hint: give it back its old name, weeks/2026-09-14.md, and homebuild week --from turns it into the form of today`},
		{"too large", week, noted(strings.Repeat("x", textfile.MaxSize)), week + `: the file is larger than 1 MB
  hint: ours are a few pages of text; is this another file?`},
		{"word processor", week, "PK\x03\x04\x00\x00", week + `: this is not a text file
  hint: word processors keep more than text in their files; save it as plain text`},
		{"rich text", week, `{\rtf1\ansi Dear families}`, week + `:1: this is not a plain text file
  hint: word processors keep more than text in their files; save it as plain text (in TextEdit: Format, Make Plain Text)`},
		{"setting in the note", week, noted("\nstories = 3\n"), week + `:6: "stories" is a setting, and stands in the note
  hint: move it out of the note, above the line [note]`},
		{"own story in the note", week, noted("\n[[own-story]]\ntext = \"Lina\"\n"), week + `:6: a story of your own stands in the note
  hint: move it out of the note, above the line [note], with the lines that belong to it`},
		{"utf-16", week, "\xff\xfe+\x00+\x00", week + `: the file is saved as UTF-16, not as plain UTF-8 text
  hint: choose "UTF-8" where your editor asks for the encoding, and save it again`},
		{"latin-1", week, noted("ni\xf1o"), week + `:5: a letter here is not saved as UTF-8
  hint: choose "UTF-8" where your editor asks for the encoding, and save it again`},
		{"control character", week, noted("a \x07bell"), week + `:5: a control character (U+0007) hides after "a "
  hint: delete that part of the line and type it again`},
		{"turned text", week, noted("8 + 6 \u202e41 ="), week + `:5: a mark that turns the reading direction (U+202E) hides after "8 + 6 "
  hint: delete that part of the line and type it again`},
		{"isolate", week, noted("\u20668 + 6"), week + `:5: a mark that turns the reading direction (U+2066) hides after ""
  hint: delete that part of the line and type it again`},
		{"zero-width space", week, "# ours\ntarget = \"add\u200b-within-20\"\n", week + `:2: an unseen character (U+200B) hides after "arget = \"add"
  hint: delete that part of the line and type it again`},
		{"lost letter", week, noted("ni\ufffdo"), week + `:5: a letter that was lost earlier (U+FFFD) hides after "ni"
  hint: delete that part of the line and type it again`},
		{"no such day", "weeks/2026-02-30.toml", goodWeek, `weeks/2026-02-30.toml: "2026-02-30" is not a day of the calendar
  hint: name the file year-month-day, such as 2026-09-14.toml`},
		{"day first", "weeks/14-09-2026.toml", goodWeek, `weeks/14-09-2026.toml: "14-09-2026.toml" is not the name of a week
  hint: name it 2026-09-14.toml`},
		{"short month", "weeks/2026-9-7.toml", goodWeek, `weeks/2026-9-7.toml: "2026-9-7.toml" is not the name of a week
  hint: name it 2026-09-07.toml`},
		{"a name", "weeks/week one.md", goodWeek, `weeks/week one.md: "week one.md" is not the name of a week
  hint: name the file year-month-day, such as 2026-09-14.toml`},
		{"hidden ending", "weeks/2026-09-07.toml.txt", goodWeek, `weeks/2026-09-07.toml.txt: "2026-09-07.toml.txt" is not the name of a week
  hint: name it 2026-09-07.toml, without .txt`},
		{"word processor's ending", "weeks/2026-09-07.docx", "PK", `weeks/2026-09-07.docx: "2026-09-07.docx" is not the name of a week
  hint: a word processor keeps more than text in such a file: copy the words into a plain text file named 2026-09-07.toml, and take this one away`},
		{"copy", "weeks/2026-09-14 (1).toml", goodWeek, `weeks/2026-09-14 (1).toml: "2026-09-14 (1).toml" is not the name of a week
  hint: if it is another week, name it by the Monday of that week, such as 2026-09-21.toml; if it is only a copy, take it away`},
		{"same date", "weeks/2026-09-21.TOML", goodWeek, `weeks/2026-09-21.toml: "weeks/2026-09-21.TOML" is for the same date
  hint: keep one of the two`},
		{"folder inside", "weeks/2026/2026-09-14.toml", goodWeek, `weeks/2026: folders inside weeks are not read
  hint: put the week files straight into weeks`},
		{"older form", "weeks/2026-09-14.md", "+++", `weeks/2026-09-14.md: this week is in an older form
  hint: homebuild week --from weeks/2026-09-14.md turns it, and its notes in other languages, into weeks/2026-09-14.toml`},
		{"older form, renewed", "weeks/2026-09-21.md", "+++", `weeks/2026-09-21.md: this file is not read any more: "weeks/2026-09-21.toml" has taken its place
  hint: take it away`},
		{"note of the older form, renewed", "weeks/2026-09-21.es.md", "Hola", `weeks/2026-09-21.es.md: this file is not read any more: "weeks/2026-09-21.toml" has taken its place
  hint: take it away`},
		{"note of the older form alone", "weeks/2026-10-05.es.md", "Hola", `weeks/2026-10-05.es.md: a note stands in the file of its week now
  hint: write it into weeks/2026-10-05.toml, below a line [note]: es = three quotes, the words, three quotes`},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			checkProblems(t, folder(SiteFile, goodSite, "weeks/2026-09-21.toml", goodWeek, test.file, test.text), test.want)
		})
	}
}

func TestMissingFiles(t *testing.T) {
	checkProblems(t, fstest.MapFS{}, `site.toml: the file is missing
  hint: write site.toml with three lines: name = "...", languages = ["en"], key = "..."
weeks: there is no folder named weeks
  hint: "homebuild week" makes it, with a first week in it`)
	checkProblems(t, folder(SiteFile, goodSite, "weeks/.keep", ""), `weeks: there is no week yet
  hint: "homebuild week" makes one; or make a file named by the Monday of its week, such as "weeks/2026-09-14.toml"`)
}

// A settings file under another name is found.
func TestSiteFileMisnamed(t *testing.T) {
	for _, name := range []string{"site.toml.txt", "Site.txt", "site.toml.rtf"} {
		checkProblems(t, folder(name, goodSite, "weeks/2026-09-14.toml", goodWeek), `site.toml: the file is missing
  hint: there is a file "`+name+`": name it site.toml`)
	}
}

// A list of languages that cannot be read is told once, and not again at every
// note.
func TestNotesBesideAnUnreadableList(t *testing.T) {
	checkProblems(t, folder(SiteFile, "name = \"Pebble\"\nlanguages = [\"en\", “es”]\n", "weeks/2026-09-14.toml", goodWeek+"es = \"Hola\"\n"), `site.toml:2: "“" is a curly quote
  hint: use straight quotes: languages = ["...", "..."]`)
}

// A misnamed week is told once: that there is no week besides says nothing new.
func TestNoWeekButAMisnamedOne(t *testing.T) {
	checkProblems(t, folder(SiteFile, goodSite, "weeks/14.9.2026.toml", goodWeek), `weeks/14.9.2026.toml: "14.9.2026.toml" is not the name of a week
  hint: name it 2026-09-14.toml`)
}

func TestOnlyNoWeek(t *testing.T) {
	for _, files := range []fs.FS{folder(SiteFile, goodSite), folder(SiteFile, goodSite, "weeks/.keep", "")} {
		if _, problems := Read(files, someAllowed()); len(problems) != 1 || !OnlyNoWeek(problems[0]) {
			t.Errorf("want the one problem that there is no week, got\n%v", problems)
		}
	}
	_, problems := Read(folder(SiteFile, goodSite, "weeks/2026-02-30.toml", goodWeek), someAllowed())
	if i := slices.IndexFunc(problems, func(p diag.Diagnostic) bool { return !OnlyNoWeek(p) }); i < 0 {
		t.Errorf("want a week that cannot be read told as more than no week, got\n%v", problems)
	}
}

// A link must not carry a file from elsewhere onto a public page.
func TestLinksAreNotFollowed(t *testing.T) {
	dir := t.TempDir()
	secret := filepath.Join(dir, "secret.md")
	school := filepath.Join(dir, "school")
	for name, text := range map[string]string{secret: goodWeek, filepath.Join(school, SiteFile): goodSite, filepath.Join(school, "weeks/2026-09-14.toml"): goodWeek} {
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Symlink(secret, filepath.Join(school, "weeks/2026-09-21.toml")); err != nil {
		t.Skip("this system makes no links: ", err)
	}
	root, err := os.OpenRoot(school)
	if err != nil {
		t.Fatal(err)
	}
	defer root.Close()
	want := `weeks/2026-09-21.toml: this is a link to another place
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
