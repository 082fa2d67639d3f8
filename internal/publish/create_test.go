package publish

import (
	"archive/zip"
	"bytes"
	"errors"
	"io"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
)

func TestCreateOverwritesNothing(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "my class")
	files := []File{text("site.toml", "ours"), text("weeks/2026-09-14.toml", "week")}
	taken, err := Create(dir, files)
	if err != nil || taken != nil {
		t.Fatalf("first time: want it written, got %v taken, error %v", taken, err)
	}
	put(t, filepath.Join(dir, "site.toml"), "by hand")
	taken, err = Create(dir, append(files, text("README.txt", "new")))
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff([]string{"site.toml", "weeks/2026-09-14.toml"}, taken); diff != "" {
		t.Errorf("taken mismatch (-want +got):\n%s", diff)
	}
	if diff := cmp.Diff(map[string]string{"site.toml": "by hand", "weeks/2026-09-14.toml": "week"}, disk(t, dir)); diff != "" {
		t.Errorf("folder mismatch (-want +got):\n%s", diff)
	}
}

// A file that cannot be made leaves none of the others behind.
func TestCreateIsAllOrNothing(t *testing.T) {
	dir := t.TempDir()
	put(t, filepath.Join(dir, "weeks"), "a file where a folder is needed")
	broken := File{Path: "b", Render: func() ([]byte, error) { return nil, errors.New("no ink") }}
	for _, files := range [][]File{
		{text("a", "a"), text("weeks/2026-09-14.toml", "week")},
		{text("a", "a"), broken},
	} {
		if _, err := Create(dir, files); err == nil {
			t.Errorf("%s: want an error, got none", files[1].Path)
		}
		if diff := cmp.Diff(map[string]string{"weeks": "a file where a folder is needed"}, disk(t, dir)); diff != "" {
			t.Errorf("%s: folder mismatch (-want +got):\n%s", files[1].Path, diff)
		}
	}
}

// Two makers share a folder, and neither touches the other's files.
func TestRecordsApart(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "desk")
	for _, step := range []struct {
		manifest string
		files    []File
		want     map[string]string
	}{
		{"", []File{text("a/key.html", "key")}, map[string]string{"a/key.html": "key"}},
		{"plan", []File{text("plan.html", "plan")}, map[string]string{"a/key.html": "key", "plan.html": "plan"}},
		{"", []File{text("b/key.html", "key")}, map[string]string{"b/key.html": "key", "plan.html": "plan"}},
		{"plan", []File{text("plan.html", "newer")}, map[string]string{"b/key.html": "key", "plan.html": "newer"}},
	} {
		report, err := Write(dir, step.files, Options{Manifest: step.manifest})
		if err != nil || len(report.Foreign)+len(report.Edited) > 0 {
			t.Fatalf("manifest %q: report %+v, error %v", step.manifest, report, err)
		}
		if diff := cmp.Diff(step.want, disk(t, dir)); diff != "" {
			t.Errorf("manifest %q: folder mismatch (-want +got):\n%s", step.manifest, diff)
		}
	}
}

// The zip is read again by the standard library's reader (APPNOTE.TXT of the
// format), and the same files give the same bytes in any order.
func TestZip(t *testing.T) {
	dir := t.TempDir()
	one, two := filepath.Join(dir, "one.zip"), filepath.Join(dir, "two.zip")
	a, b := text("index.html", "front"), text("es/index.html", "inicio")
	n, err := Zip(one, "public", []File{a, b})
	if err != nil {
		t.Fatal(err)
	}
	if _, err := Zip(two, "public", []File{b, a}); err != nil {
		t.Fatal(err)
	}
	first, _ := os.ReadFile(one)
	second, _ := os.ReadFile(two)
	if !bytes.Equal(first, second) || int64(len(first)) != n {
		t.Errorf("want the same %d bytes, got %d and %d", n, len(first), len(second))
	}
	archive, err := zip.OpenReader(one)
	if err != nil {
		t.Fatal(err)
	}
	defer archive.Close()
	got, earliest := map[string]string{}, time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC) // the first that MS-DOS knows
	for _, f := range archive.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		data, err := io.ReadAll(r) // checks the sum, too
		if err != nil {
			t.Fatal(err)
		}
		got[f.Name] = string(data)
		if !f.Modified.Equal(earliest) {
			t.Errorf("%s: want the time %v, got %v", f.Name, earliest, f.Modified)
		}
	}
	if diff := cmp.Diff(map[string]string{"public/index.html": "front", "public/es/index.html": "inicio"}, got); diff != "" {
		t.Errorf("zip mismatch (-want +got):\n%s", diff)
	}
}

func TestZipReplacesOnlyZips(t *testing.T) {
	dir := t.TempDir()
	for _, row := range []struct {
		name, holds, why string
		fine             bool
	}{
		{"old.zip", "PK\x03\x04 an older zip", "it is a zip", true},
		{"empty.zip", "", "nothing is lost", true},
		{"letter.zip", "Dear families", "it is no zip, whatever its name says", false},
		{"pages.html", "", "its name does not end in .zip", false},
	} {
		name := filepath.Join(dir, row.name)
		put(t, name, row.holds)
		_, err := Zip(name, "public", []File{text("index.html", "front")})
		if (err == nil) != row.fine {
			t.Errorf("%s: want replaced %v, since %s; got error %v", row.name, row.fine, row.why, err)
		}
		if data, _ := os.ReadFile(name); !row.fine && string(data) != row.holds {
			t.Errorf("%s: want it left as it was", row.name)
		}
	}
	broken := File{Path: "b", Render: func() ([]byte, error) { return nil, errors.New("no ink") }}
	if _, err := Zip(filepath.Join(dir, "new.zip"), "public", []File{broken}); err == nil {
		t.Error("want the page that cannot be made told")
	}
	if left, _ := filepath.Glob(filepath.Join(dir, ".*")); len(left) > 0 {
		t.Errorf("left behind: %v", left)
	}
}
