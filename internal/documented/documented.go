// Package documented holds the tables of docs/ against what tests count, so that a
// figure for people is never older than the program.
package documented

import (
	"flag"
	"os"
	"strings"
	"testing"
)

// Hold compares a part of a page, between the remarks "<!-- part -->" and
// "<!-- end of part -->", with what was just counted. A test that is run with
// -update writes the part anew.
func Hold(t *testing.T, page, part, want string) {
	t.Helper()
	data, err := os.ReadFile(page)
	if err != nil {
		t.Fatal(err)
	}
	begin, end := "<!-- "+part+" -->\n", "<!-- end of "+part+" -->"
	before, rest, begun := strings.Cut(string(data), begin)
	got, after, ended := strings.Cut(rest, end)
	switch {
	case !begun || !ended:
		t.Fatalf("%s has no part %q between %q and %q", page, part, begin, end)
	case got == want:
	case !asked():
		t.Errorf("%s, part %q, is\n%s\nand what is counted\n%s\ngo test -update writes it: read the difference", page, part, got, want)
	default:
		if err := os.WriteFile(page, []byte(before+begin+want+end+after), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// asked reports whether the test was run with -update, a flag that the package of
// the test defines.
func asked() bool {
	f := flag.Lookup("update")
	return f != nil && f.Value.String() == "true"
}
