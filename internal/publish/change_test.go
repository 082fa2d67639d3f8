package publish

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestChangeFiles(t *testing.T) {
	dir := t.TempDir()
	write := func(name, text string) {
		if err := os.MkdirAll(filepath.Dir(filepath.Join(dir, name)), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	write("site.toml", "old")
	write("weeks/a.toml", "a")
	outside := t.TempDir()
	if err := os.Symlink(outside, filepath.Join(dir, "link")); err != nil {
		t.Fatal(err)
	}
	fine := []Change{{"site.toml", []byte("old"), []byte("new")}, {"weeks/a.toml", []byte("a"), nil}, {"deep/er/b.toml", nil, []byte("b")}}
	if err := ChangeFiles(dir, fine); err != nil {
		t.Fatal(err)
	}
	if got, _ := os.ReadFile(filepath.Join(dir, "site.toml")); string(got) != "new" {
		t.Errorf("site.toml holds %q", got)
	}
	if _, err := os.Stat(filepath.Join(dir, "weeks/a.toml")); err == nil {
		t.Error("weeks/a.toml is still there")
	}
	if got, _ := os.ReadFile(filepath.Join(dir, "deep/er/b.toml")); string(got) != "b" {
		t.Errorf("deep/er/b.toml holds %q", got)
	}
	for name, refused := range map[string][]Change{
		"another by now":    {{"deep/er/b.toml", []byte("b"), []byte("c")}, {"site.toml", []byte("old"), []byte("x")}},
		"there by now":      {{"site.toml", nil, []byte("x")}},
		"gone by now":       {{"weeks/a.toml", []byte("a"), []byte("x")}},
		"longer by now":     {{"site.toml", []byte("ne"), []byte("x")}},
		"out of the folder": {{"../x", nil, []byte("x")}},
		"an absolute path":  {{"/tmp/x", nil, []byte("x")}},
		"through a link":    {{"link/x", nil, []byte("x")}},
	} {
		err := ChangeFiles(dir, refused)
		if err == nil {
			t.Errorf("%s: it was written", name)
		}
		if changed := (*Changed)(nil); strings.HasSuffix(name, "by now") != errors.As(err, &changed) {
			t.Errorf("%s: %v", name, err)
		}
	}
	if err := ChangeFiles(dir, []Change{{"weeks/new.toml", nil, []byte("n")}, {"weeks/none.toml", nil, nil}}); err != nil {
		t.Errorf("a new file beside others, and one that is to stay away: %v", err)
	}
	if _, err := os.Stat(filepath.Join(dir, "weeks/none.toml")); err == nil {
		t.Error("a file that is to stay away was made")
	}
	if got, _ := os.ReadFile(filepath.Join(dir, "deep/er/b.toml")); string(got) != "b" {
		t.Error("one file of a refused change was written")
	}
	if left, _ := os.ReadDir(outside); len(left) > 0 {
		t.Error("a link was followed")
	}
}
