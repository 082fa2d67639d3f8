package draw

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"
)

var update = flag.Bool("update", false, "write the golden files anew")

// read notes which golden files a test has read.
var read sync.Map

// golden compares got with a file of testdata, or writes it with -update.
func golden(t *testing.T, name, got string) {
	t.Helper()
	path := filepath.Join("testdata", name)
	read.Store(path, true)
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("%s (-want +got):\n%s", name, diff)
	}
}

// TestMain fails a whole run that passes without reading every golden file.
func TestMain(m *testing.M) {
	code := m.Run()
	if run := flag.Lookup("test.run"); code == 0 && run.Value.String() == "" {
		files, err := filepath.Glob("testdata/*.svg")
		if err != nil || len(files) == 0 {
			fmt.Println("no golden files:", err)
			code = 1
		}
		for _, f := range files {
			if _, ok := read.Load(f); !ok {
				fmt.Println("no test reads the golden file", f)
				code = 1
			}
		}
	}
	os.Exit(code)
}
