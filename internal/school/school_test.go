package school

import (
	"io/fs"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"homebuild/internal/diag"
	"homebuild/locales"
)

// folder is a school in memory.
func folder(files map[string]string) fstest.MapFS {
	out := fstest.MapFS{}
	for name, text := range files {
		out[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return out
}

const (
	plainSite = "name = \"Pebble Lane School\"\nlanguages = [\"en\"]\nkey = \"puddle\"\n"
	plainWeek = "# ours\ntarget = \"add-within-20\"\n"
)

// The example school is what teachers copy: its own files must be right.
func TestExample(t *testing.T) {
	site, problems := Example().Assemble(nil)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	if len(site.Site.Weeks) < 20 || len(site.Site.Languages) < 12 || len(site.Pages()) < 1000 {
		t.Errorf("only %d weeks, %d languages and %d pages", len(site.Site.Weeks), len(site.Site.Languages), len(site.Pages()))
	}
}

// Where a problem is told: the person's own file by the way to it, the
// program's own by its name.
func TestLocate(t *testing.T) {
	s := Open("my class", folder(map[string]string{"locales/es.toml": "x", "site.toml": "x"}))
	tests := []struct{ file, want, why string }{
		{"site.toml", "my class/site.toml", "it is theirs"},
		{"weeks", "my class/weeks", "it is theirs to make"},
		{"locales/es.toml", "my class/locales/es.toml", "it stands in place of ours"},
		{"locales/ar.toml", "locales/ar.toml", "it is ours"},
		{"themes/paper", "themes/paper", "it is ours"},
	}
	for _, test := range tests {
		if got := s.Locate(diag.Diagnostics{{File: test.file}})[0].File; got != test.want {
			t.Errorf("Locate(%q): want %q, got %q, since %s", test.file, test.want, got, test.why)
		}
	}
}

// A folder that several schools share is told by its own name, and links in it as those
// of a school's own.
func TestLocateShared(t *testing.T) {
	own := folder(map[string]string{"site.toml": plainSite, "weeks/2026-09-14.toml": plainWeek, "locales/es.toml": "x"})
	shared := folder(map[string]string{"locales/es.toml": "x", "locales/fr.toml": "x", "locales/ht.toml": "en.toml"})
	shared["locales/ht.toml"].Mode = fs.ModeSymlink
	s := Open("my class", own)
	s.Share("../all", shared)
	for file, want := range map[string]string{
		"locales/es.toml": "my class/locales/es.toml", "locales/fr.toml": "../all/locales/fr.toml", "locales/ht.toml": "../all/locales/ht.toml",
		"locales/ar.toml": "locales/ar.toml", "weeks": "my class/weeks",
	} {
		if got := s.Locate(diag.Diagnostics{{File: file}})[0].File; got != want {
			t.Errorf("Locate(%q): want %q, got %q", file, want, got)
		}
	}
	shared["themes"] = &fstest.MapFile{Data: []byte("elsewhere"), Mode: fs.ModeSymlink}
	if _, problems := s.Load(); !slices.ContainsFunc(problems, func(d diag.Diagnostic) bool { return d.File == "../all/themes" && strings.Contains(d.Text, "link") }) {
		t.Errorf("a linked folder of looks is not told: %v", problems)
	}
}

// A remark in a language file makes no page anew; a word does.
func TestRemarkChangesNoKey(t *testing.T) {
	spanish := string(must(locales.Files.ReadFile("es.toml")))
	keys := func(spanish string) map[string]string {
		site := strings.Replace(plainSite, `["en"]`, `["en", "es"]`, 1)
		made, problems := Open("", folder(map[string]string{"site.toml": site, "weeks/2026-09-14.toml": plainWeek, "locales/es.toml": spanish})).Assemble(func() string { return "1" })
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		out := map[string]string{}
		for _, f := range append(made.Pages(), made.Desk()...) {
			out[f.Path] = f.Key
		}
		return out
	}
	was := keys(spanish)
	if diff := cmp.Diff(was, keys("# a remark\n"+strings.Replace(spanish, "\n[index]\n", "\n# of the list\n\n[index]\n", 1))); diff != "" || len(was) < 50 {
		t.Errorf("%d keys (-before +with a remark):\n%s", len(was), diff)
	}
	if cmp.Equal(was, keys(strings.Replace(spanish, `"Siguiente"`, `"Sigamos"`, 1))) {
		t.Error("another word changes no key")
	}
}

func TestIsSchool(t *testing.T) {
	tests := []struct {
		file string
		want bool
	}{{"site.toml", true}, {"Site.toml.txt", true}, {"weeks/2026-09-14.toml", true}, {"letter.txt", false}}
	for _, test := range tests {
		if got := IsSchool(folder(map[string]string{test.file: "x"})); got != test.want {
			t.Errorf("IsSchool with %s: want %t, got %t", test.file, test.want, got)
		}
	}
}

// What is slow to read is kept while its files stay the same, and no longer.
func TestCache(t *testing.T) {
	files := folder(map[string]string{"site.toml": plainSite, "weeks/2026-09-14.toml": plainWeek})
	s := Open("my-class", files)
	first, problems := s.Load()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	if second, _ := s.Load(); first.Catalog.Source() != second.Catalog.Source() || first.Theme != second.Theme {
		t.Error("want languages and theme kept from one reading to the next")
	}
	files["locales/en.toml"] = &fstest.MapFile{Data: []byte("[language]\nname = \"English\"\n")}
	if _, problems := s.Load(); len(problems) == 0 {
		t.Error("want the school's own language file read when it comes, and its gaps told")
	}
	delete(files, "locales/en.toml")
	if _, problems := s.Load(); len(problems) > 0 {
		t.Errorf("want the school right again without the file, got\n%v", problems)
	}
}

// A message has the link, or without an address the name of the file that goes
// with it; and there is one for a week that there is.
func TestMessages(t *testing.T) {
	for address, want := range map[string]string{
		"address = \"https://pebblelane.example/home\"\n": "https://pebblelane.example/home/2026-09-14.html", "": "2026-09-14-en.html",
	} {
		s := Open("my-class", folder(map[string]string{
			"site.toml": plainSite + address, "weeks/2026-09-14.toml": plainWeek, "weeks/2026-09-21.toml": plainWeek,
		}))
		made, problems := s.Assemble(nil)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		if messages := made.Messages("2026-09-14"); len(messages) != 1 || !strings.Contains(messages[0].Text, want) {
			t.Errorf("want one message with %q, got %v", want, messages)
		}
		if _, problems = s.Week("2026-09-28", nil); len(problems) != 1 || problems[0].Hint != "the newest are: 2026-09-21, 2026-09-14" {
			t.Errorf("want the weeks there are, got %v", problems)
		}
	}
}

// A theme's colors once stood in a file of another name; that is told.
func TestOldNameOfColors(t *testing.T) {
	s := Open("my-class", folder(map[string]string{"site.toml": plainSite + "theme = \"ours\"\n", "weeks/2026-09-14.toml": plainWeek, "themes/ours/theme.toml": "name = \"Ours\""}))
	_, problems := s.Load()
	if len(problems) != 1 || problems[0].String() != "my-class/themes/ours: a theme's colors are in a file \"colours.toml\" now\n  hint: name theme.toml that" {
		t.Errorf("want the new name told, got\n%v", problems)
	}
}
