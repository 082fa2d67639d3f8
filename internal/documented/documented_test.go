package documented

import (
	"flag"
	"os"
	"path/filepath"
	"testing"
)

var update = flag.Bool("update", false, "write the part anew")

func TestHold(t *testing.T) {
	page := filepath.Join(t.TempDir(), "page.md")
	text := func(table string) string { return "before\n<!-- x -->\n" + table + "<!-- end of x -->\nafter\n" }
	if err := os.WriteFile(page, []byte(text("| 1 |\n")), 0o644); err != nil {
		t.Fatal(err)
	}
	Hold(t, page, "x", "| 1 |\n") // as counted
	was := *update
	defer func() { *update = was }()
	*update = true
	Hold(t, page, "x", "| 2 |\n")
	if got, err := os.ReadFile(page); err != nil || string(got) != text("| 2 |\n") {
		t.Errorf("with -update the page is %q, %v", got, err)
	}
}
