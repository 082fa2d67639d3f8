package publish

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// A folder without its record: what is ours is found by path and by its first bytes,
// and after it was adopted the next run knows it.
func TestAdopt(t *testing.T) {
	parent := inMemory(t)
	dir := filepath.Join(parent, "public")
	old := []File{text("a.html", "ours a"), text("b.html", "ours b"), text("held.html", "ours held"), text("feed.xml", "feed")}
	now := []File{text("a.html", "ours a2"), text("feed.xml", "feed")}
	isOurs := func(head []byte) bool { return strings.HasPrefix(string(head), "ours") }
	o := Options{Keep: func(path string) bool { return path == "held.html" }}
	found := func() Adoption {
		t.Helper()
		a, err := Unrecorded(dir, now, o, isOurs)
		if err != nil {
			t.Fatal(err)
		}
		return a
	}
	if a := found(); a.Len() != 0 {
		t.Errorf("in a folder that is not there: %+v", a)
	}
	write(t, dir, old...)
	put(t, filepath.Join(dir, "theirs.html"), "theirs")
	if a := found(); a.Len() != 0 {
		t.Errorf("with the record: %+v", a)
	}
	if err := os.RemoveAll(filepath.Join(parent, stateFolder)); err != nil {
		t.Fatal(err)
	}
	want := Adoption{Again: []string{"a.html", "feed.xml"}, Gone: []string{"b.html"}, Kept: []string{"held.html"}}
	if diff := cmp.Diff(want, found()); diff != "" || found().Len() != 4 {
		t.Errorf("without the record: want 4 files, got %d (-want +got):\n%s", found().Len(), diff)
	}
	if err := Adopt(dir, found()); err != nil {
		t.Fatal(err)
	}
	report, err := Write(dir, now, o)
	if err != nil || report.Foreign != nil || report.Edited != nil {
		t.Errorf("after it was adopted: %+v, %v", report, err)
	}
	if diff := cmp.Diff(map[string]string{"a.html": "ours a2", "feed.xml": "feed", "held.html": "ours held", "theirs.html": "theirs"}, disk(t, dir)); diff != "" {
		t.Errorf("folder mismatch (-want +got):\n%s", diff)
	}
}
