package textfile

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
)

func TestRead(t *testing.T) {
	tests := []struct{ name, data, text, problem string }{
		{"plain", "señor\n", "señor\n", ""},
		{"windows line ends", "a\r\nb\r\n", "a\nb\n", ""},
		{"old line ends", "a\rb", "a\nb", ""},
		{"byte order mark", "\ufeffa", "a", ""},
		{"empty", "", "", ""},
		{"largest", strings.Repeat("x", MaxSize), strings.Repeat("x", MaxSize), ""},
		{"too large", strings.Repeat("x", MaxSize+1), "", "f.txt: the file is larger than 1 MB"},
		{"utf-16", "\xff\xfea\x00", "", "f.txt: the file is saved as UTF-16, not as plain UTF-8 text"},
		{"latin-1", "a\nni\xf1o", "", "f.txt:2: a letter here is not saved as UTF-8"},
		{"word processor", "PK\x03\x04\x00", "", "f.txt: this is not a text file"},
		{"rich text", `{\rtf1 Dear}`, "", "f.txt:1: this is not a plain text file"},
	}
	for _, test := range tests {
		text, problem := Read(fstest.MapFS{"f.txt": {Data: []byte(test.data)}}, "f.txt")
		said := ""
		if problem != nil {
			said, _, _ = strings.Cut(problem.String(), "\n")
		}
		if text != test.text || said != test.problem {
			t.Errorf("%s: want %.40q and %q, got %.40q and %q", test.name, test.text, test.problem, text, said)
		}
	}
}

func TestReadNoFile(t *testing.T) {
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "real.txt"), []byte("x"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink("real.txt", filepath.Join(dir, "link.txt")); err != nil {
		t.Skip("this system makes no links: ", err)
	}
	for name, want := range map[string]string{
		"gone.txt": "gone.txt: the file is missing", "link.txt": "link.txt: this is a link to another place", ".": ".: this is not a file",
	} {
		_, problem := Read(os.DirFS(dir), name)
		if problem == nil || !strings.HasPrefix(problem.String(), want) {
			t.Errorf("%s: want %q, got %v", name, want, problem)
		}
		if IsMissing(os.DirFS(dir), name) != (name == "gone.txt") {
			t.Errorf("%s: IsMissing is wrong", name)
		}
	}
}
