package pofile

import (
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/i18n"
	"homebuild/internal/translate"
	"homebuild/locales"
)

func read(t testing.TB, tag string) string {
	t.Helper()
	data, err := fs.ReadFile(locales.Files, tag+".toml")
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// open is a language file of a school.
func open(t testing.TB, tag, text string) *translate.Draft {
	t.Helper()
	d, problems := translate.Open(tag, locales.Files, fstest.MapFS{tag + ".toml": {Data: []byte(text)}})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return d
}

func taken(t *testing.T, d *translate.Draft, text string) *Imported {
	t.Helper()
	in, problems := Import(d, "locales/xx.po", text)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return in
}

// emptied is a language file of which every text that goes out is empty, as a
// translator begins; what is not a text stays.
var (
	aText   = regexp.MustCompile(`(\b(?:zero|one|two|few|many|other) = )"(?:[^"\\]|\\.)*"`)
	ofEvent = regexp.MustCompile(`(?m)^([a-z0-9-]+ = )"(?:[^"\\]|\\.)*"`)
)

func emptied(text string) string {
	tables := strings.SplitAfter(text, "\n[")
	for i, table := range tables {
		tables[i] = aText.ReplaceAllString(table, `$1""`)
		if strings.HasPrefix(table, "event.") || strings.HasPrefix(table, "words") {
			lines := strings.SplitAfter(tables[i], "\n")
			for j, line := range lines {
				if !strings.HasPrefix(line, "source = ") && !strings.HasPrefix(line, "note = ") {
					lines[j] = ofEvent.ReplaceAllString(line, `$1""`)
				}
			}
			tables[i] = strings.Join(lines, "")
		}
	}
	return strings.Join(tables, "")
}

// All texts of all twelve files go out and come back, byte for byte: into the file as it
// is, where nothing changes, and into one from which they were taken. The same bytes go
// out each time.
func TestRoundTrip(t *testing.T) {
	for _, tag := range i18n.Tags(locales.Files) {
		t.Run(tag, func(t *testing.T) {
			text := read(t, tag)
			d := open(t, tag, text)
			file := string(Export(d))
			if file != string(Export(open(t, tag, text))) {
				t.Error("two exports are not the same bytes")
			}
			in := taken(t, d, file)
			if string(in.Text) != text || in.Changed != 0 || in.Fuzzy != 0 || len(in.Refused) > 0 {
				t.Errorf("into the same file: want nothing changed, got %d changed, %d fuzzy, %v", in.Changed, in.Fuzzy, in.Refused)
			}
			if tag == i18n.SourceTag {
				return // English without its texts is no language
			}
			bare := emptied(text)
			if n := len(d.Entries()); strings.Count(bare, `""`) < n-n/100 { // some forms of names are written in a way of their own
				t.Fatalf("only %d texts of %d entries were taken out", strings.Count(bare, `""`), n)
			}
			in = taken(t, open(t, tag, bare), file)
			if got := string(in.Text); got != text || len(in.Refused) > 0 {
				t.Errorf("into an empty file: want the file as it was, got %s, %v", difference(got, text), in.Refused)
			}
		})
	}
}

// difference is the first line in which two texts are not alike.
func difference(got, want string) string {
	a, b := strings.Split(got, "\n"), strings.Split(want, "\n")
	for i := range min(len(a), len(b)) {
		if a[i] != b[i] {
			return a[i] + " for " + b[i]
		}
	}
	return "another number of lines"
}

// GNU gettext reads the files and finds nothing to tell (msgfmt --check).
func TestFilesAreOfGNU(t *testing.T) {
	msgfmt, err := exec.LookPath("msgfmt")
	if err != nil {
		t.Skip("msgfmt of GNU gettext is not here; the entries are checked by TestEntry")
	}
	for _, tag := range i18n.Tags(locales.Files) {
		path := filepath.Join(t.TempDir(), tag+".po")
		if err := os.WriteFile(path, Export(open(t, tag, read(t, tag))), 0o644); err != nil {
			t.Fatal(err)
		}
		if out, err := exec.Command(msgfmt, "--check", "--statistics", "-o", os.DevNull, path).CombinedOutput(); err != nil || strings.Contains(string(out), "warning") {
			t.Errorf("%s: %v: %s", tag, err, out)
		} else {
			t.Logf("%s: %s", tag, out)
		}
	}
}
