package school

import (
	"strings"
	"testing"
	"testing/fstest"
)

// sound is a draft that a build takes.
func sound() Draft {
	return Draft{Name: "Pebble Lane School", Languages: []string{"en"}, Week: Wishes{Date: "2026-09-14", Target: FirstTarget}}
}

// What a build would refuse is refused before a file is written, in its words.
func TestDraftIsReadAsABuildReadsIt(t *testing.T) {
	tests := []struct {
		name       string
		spoil      func(*Draft)
		text, hint string // parts
	}{
		{"no host", func(d *Draft) { d.Address = "https://" }, `"https://" is not where a site can live`, "write the whole address"},
		{"no https", func(d *Draft) { d.Address = "pebblelane.example" }, "is not where a site can live", "write the whole address"},
		{"a long address", func(d *Draft) { d.Address = "https://pebblelane.example/" + strings.Repeat("a", 200) }, "address has 227 letters", "keep it to 200"},
		{"no name", func(d *Draft) { d.Name = "  " }, "the site has no name", "as families know the school"},
		{"a long name", func(d *Draft) { d.Name = strings.Repeat("n", 81) }, "name has 81 letters", "keep it to 80"},
		{"a telephone number", func(d *Draft) { d.Name = "Call 555 123 4567" }, `name holds a phone number, "555 123 4567"`, "leave it out"},
		{"a name with a line end", func(d *Draft) { d.Name = "Pebble\nLane" }, "name holds a control character", "leave it out"},
		{"no such language", func(d *Draft) { d.Languages = []string{"en", "qq"} }, `"qq" is not a language`, "there are: "},
		{"a language twice", func(d *Draft) { d.Languages = []string{"en", "EN"} }, `"en" is in the list twice`, "keep one"},
		{"no language", func(d *Draft) { d.Languages = nil }, "the site has no language", `"en"`},
		{"a Tuesday", func(d *Draft) { d.Week.Date = "2026-09-15" }, "2026-09-15 is a Tuesday", "2026-09-14"},
		{"no day", func(d *Draft) { d.Week.Date = "14.9.2026" }, `"14.9.2026" is not a day of the calendar`, "2026-09-14"},
		{"no such target", func(d *Draft) { d.Week.Target = "ad-within-20" }, `"ad-within-20" is not a target`, `did you mean "add-within-20"?`},
		{"no such focus", func(d *Draft) { d.Week.Focus = "make-tne" }, `"make-tne" is not a strategy`, `did you mean "make-ten"?`},
		{"no such picture", func(d *Draft) { d.Week.Picture = "bar-modle" }, `"bar-modle" is not a picture`, `did you mean "bar-model"?`},
	}
	for _, test := range tests {
		d := sound()
		test.spoil(&d)
		wrong := d.Check()
		if wrong == nil || !strings.Contains(wrong.Text, test.text) || !strings.Contains(wrong.Hint, test.hint) || wrong.File != "" || wrong.Line != 0 {
			t.Errorf("%s: want %q, %q and no place, got %v", test.name, test.text, test.hint, wrong)
		}
		if files, wrong := d.Files(); wrong == nil || files != nil {
			t.Errorf("%s: want no files, got %d", test.name, len(files))
		}
	}
	d := sound()
	if wrong := d.Check(); wrong != nil {
		t.Errorf("a sound draft: %v", wrong)
	}
}

// The files of a new school are those of a school: a reading finds nothing to
// mend, and what was typed stands in them as it was understood.
func TestDraftFiles(t *testing.T) {
	d := sound()
	d.Name, d.Languages, d.Address = `The "Heron" class`, []string{"EN", "ar"}, "https://pebblelane.example/home"
	files, wrong := d.Files()
	if wrong != nil {
		t.Fatal(wrong)
	}
	written := fstest.MapFS{}
	for _, f := range files {
		written[f.Path] = &fstest.MapFile{Data: must(f.Render())}
	}
	in, problems := Open("", written).Load()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	if in.Site.Name.Plain != d.Name || in.Site.Address != "https://pebblelane.example/home/" || strings.Join(in.Site.Languages, " ") != "en ar" || len(in.Site.Weeks) != 1 {
		t.Errorf("read again: %+v", in.Site)
	}
	text := string(written["weeks/2026-09-14.toml"].Data)
	for _, want := range []string{"stories = 4\n", "1 to 8", "# minutes = 10 ", "other language of the site, each with its three quotes: ar", "focus = \"make-ten\""} {
		if !strings.Contains(text, want) {
			t.Errorf("the week lacks %q:\n%s", want, text)
		}
	}
	if readme := string(written["README.txt"].Data); !strings.Contains(readme, "https://pebblelane.example/home/2026-09-14.html") || !strings.Contains(readme, "the-heron-class.zip") {
		t.Errorf("README.txt:\n%s", readme)
	}
}

// The same name gives the same key, another name another.
func TestKeyOf(t *testing.T) {
	if a, b := keyOf("Pebble Lane School"), keyOf("Pebble Lane"); a != "heron-mitten" || a == b {
		t.Errorf("want heron-mitten and another, got %s and %s", a, b)
	}
}
