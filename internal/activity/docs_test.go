package activity

import (
	"flag"
	"os"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write the tables of docs/mathematics.md again")

const mathematics = "../../docs/mathematics.md"

// documented holds a part of docs/mathematics.md, between two remarks that name
// it, against what was just worked out.
func documented(t *testing.T, name, want string) {
	t.Helper()
	data, err := os.ReadFile(mathematics)
	if err != nil {
		t.Fatal(err)
	}
	begin, end := "<!-- "+name+" -->\n", "<!-- end of "+name+" -->"
	before, rest, ok := strings.Cut(string(data), begin)
	got, after, ok2 := strings.Cut(rest, end)
	if !ok || !ok2 {
		t.Fatalf("%s has no part %q between %q and %q", mathematics, name, begin, end)
	}
	if got == want {
		return
	}
	if !*update {
		t.Fatalf("%s, part %q, is not what is counted; run go test -update and read the difference", mathematics, name)
	}
	if err := os.WriteFile(mathematics, []byte(before+begin+want+end+after), 0o644); err != nil {
		t.Fatal(err)
	}
}
