package page

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// The bundle is what its sources make: after a change, go generate.
func TestBundleIsFresh(t *testing.T) {
	out := filepath.Join(t.TempDir(), "desk.js")
	cmd := exec.Command("go", "tool", "esbuild", "main.ts", "--bundle", "--minify", "--format=iife", "--target=es2022",
		"--charset=utf8", "--legal-comments=none", "--outfile="+out, "--log-level=warning")
	if report, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, report)
	}
	want, err := os.ReadFile(out)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(want, []byte(script)) {
		t.Error("desk.js is not what its sources make: go generate ./internal/desk/page")
	}
}

func TestPageAsksForNothing(t *testing.T) {
	pages := map[string]string{"carrying": Carrying(`self.x = "</script>"`, []byte{1, 2}), "served": Served(`a"b`)}
	for name, p := range pages {
		for _, outside := range []string{`src="http`, `href="http`, "@import", "url(http", "{{"} {
			if strings.Contains(p, outside) {
				t.Errorf("%s has %q", name, outside)
			}
		}
		if got, want := strings.Count(p, "</script>"), strings.Count(p, "<script"); got != want {
			t.Errorf("%s: %d scripts begin, %d end", name, want, got)
		}
	}
	if !strings.Contains(pages["served"], `content="a&#34;b"`) {
		t.Error("the token is not escaped")
	}
}

// Files stay small enough to read at once.
func TestFilesAreSmall(t *testing.T) {
	files, err := filepath.Glob("*.ts")
	if err != nil || len(files) < 20 {
		t.Fatalf("%d files, %v", len(files), err)
	}
	for _, f := range files {
		text, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		if n := bytes.Count(text, []byte("\n")); n > 250 && f != "protocol.d.ts" {
			t.Errorf("%s has %d lines", f, n)
		}
	}
}
