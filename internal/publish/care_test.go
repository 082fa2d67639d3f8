package publish

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// What someone else put there stays, and is reported.
func TestForeignFilesAreLeftAlone(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "public")
	put(t, filepath.Join(dir, "index.html"), "by hand")
	put(t, filepath.Join(dir, "es", "photo.txt"), "theirs")
	put(t, filepath.Join(dir, "same.html"), "same")
	put(t, filepath.Join(dir, "a.html", "inside.txt"), "a folder where a page would be")
	got := write(t, dir, text("index.html", "ours"), text("a.html", "a"), text("es/b.html", "b"), text("same.html", "same"))
	want := Report{Written: 1, Unchanged: 1, Bytes: 1, Foreign: []string{"a.html", "index.html"}}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("report mismatch (-want +got):\n%s", diff)
	}
	// The last of our files goes, theirs stays, and so does its folder.
	got = write(t, dir, text("index.html", "ours"))
	want = Report{Removed: 2, Foreign: []string{"index.html"}}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("second report mismatch (-want +got):\n%s", diff)
	}
	left := map[string]string{"index.html": "by hand", "es/photo.txt": "theirs", "a.html/inside.txt": "a folder where a page would be"}
	if diff := cmp.Diff(left, disk(t, dir)); diff != "" {
		t.Errorf("folder mismatch (-want +got):\n%s", diff)
	}
}

// Nothing that a person typed into a page of ours is lost.
func TestEditedFilesAreKeptAsCopies(t *testing.T) {
	parent := t.TempDir()
	dir := filepath.Join(parent, "public")
	write(t, dir, text("es/a.html", "a"), text("es/b.html", "b"), text("c.html", "c"))
	put(t, filepath.Join(dir, "es", "a.html"), "a, by hand")
	put(t, filepath.Join(dir, "es", "b.html"), "b, by hand")
	got := write(t, dir, text("es/a.html", "a"), text("c.html", "c"))
	copyOf := func(name, bytes string) string {
		return filepath.Join(parent, stateFolder, "edited", "public", "es", name+"."+sumOf([]byte(bytes)).String()[:8])
	}
	want := Report{Written: 1, Unchanged: 1, Removed: 1, Bytes: 1, Edited: []Edited{
		{"es/a.html", copyOf("a.html", "a, by hand")}, {"es/b.html", copyOf("b.html", "b, by hand")},
	}}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("report mismatch (-want +got):\n%s", diff)
	}
	for _, e := range got.Edited {
		data, err := os.ReadFile(e.Copy)
		if want := strings.TrimSuffix(filepath.Base(e.Path), ".html") + ", by hand"; string(data) != want {
			t.Errorf("copy of %s: want %q, got %q, error %v", e.Path, want, data, err)
		}
	}
	if diff := cmp.Diff(map[string]string{"es/a.html": "a", "c.html": "c"}, disk(t, dir)); diff != "" {
		t.Errorf("folder mismatch (-want +got):\n%s", diff)
	}
}

// A page that is missing is made again.
func TestMissingFilesComeBack(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "public")
	write(t, dir, text("es/a.html", "a"), text("b.html", "b"))
	if err := os.RemoveAll(filepath.Join(dir, "es")); err != nil {
		t.Fatal(err)
	}
	if got, want := write(t, dir, text("es/a.html", "a"), text("b.html", "b")), (Report{Written: 1, Unchanged: 1, Bytes: 1}); !cmp.Equal(want, got) {
		t.Errorf("report: want %+v, got %+v", want, got)
	}
}

// A page that cannot be made leaves the site as it was, whichever page it is
// and however many processors work.
func TestPagesThatCannotBeMade(t *testing.T) {
	bad := errors.New("no story fits")
	failing := func(name string) File { return File{Path: name, Render: func() ([]byte, error) { return nil, bad }} }
	for _, workers := range []int{1, 8} {
		parent := t.TempDir()
		dir := filepath.Join(parent, "public")
		write(t, dir, text("a.html", "a"), text("index.html", "1"))
		before := disk(t, parent)
		files := []File{text("a.html", "A"), text("es/new.html", "n"), failing("b.html"), text("index.html", "2"), failing("es/c.html")}
		for i := range 20 {
			files = append(files, text(fmt.Sprintf("more/%d.html", i), "m"))
		}
		files = append(files, File{Path: "d.html", Render: func() ([]byte, error) { panic("index out of range") }})
		_, err := Write(dir, files, Options{Workers: workers})
		want := `the page "b.html" cannot be made: no story fits
the page "es/c.html" cannot be made: no story fits
the page "d.html" cannot be made: bug: index out of range`
		if err == nil || err.Error() != want || !errors.Is(err, bad) {
			t.Errorf("%d workers: want error\n%s\ngot\n%v", workers, want, err)
		}
		if diff := cmp.Diff(before, disk(t, parent)); diff != "" {
			t.Errorf("%d workers: the site changed (-before +after):\n%s", workers, diff)
		}
		if _, err := os.Stat(filepath.Join(dir, "more")); err == nil {
			t.Errorf("%d workers: an empty folder was left behind", workers)
		}
	}
}

// Of many pages that cannot be made ten are told, and how many more there are.
func TestManyPagesThatCannotBeMade(t *testing.T) {
	for n, want := range map[int]string{1: "", 10: "", 11: "and 1 more", 15: "and 5 more"} {
		var files []File
		for i := range n {
			files = append(files, File{Path: fmt.Sprintf("%02d.html", i), Render: func() ([]byte, error) { return nil, errors.New("no ink") }})
		}
		_, err := Write(filepath.Join(inMemory(t), "public"), files, Options{})
		if err == nil {
			t.Fatalf("%d pages: want an error", n)
		}
		lines := strings.Split(err.Error(), "\n")
		if want != "" && lines[len(lines)-1] == want {
			lines = lines[:len(lines)-1]
		}
		if len(lines) != min(n, maxListed) || lines[len(lines)-1] != fmt.Sprintf("the page \"%02d.html\" cannot be made: no ink", len(lines)-1) {
			t.Errorf("%d pages: want %d told and %q, got\n%v", n, min(n, maxListed), want, err)
		}
	}
}

// A page is made once, and no more pages are held than there are workers.
func TestPagesAreNotGathered(t *testing.T) {
	var inside, most, calls atomic.Int32
	files := make([]File, 500)
	for i := range files {
		files[i] = File{Path: fmt.Sprintf("%d.html", i), Render: func() ([]byte, error) {
			calls.Add(1)
			for n := inside.Add(1); ; {
				if m := most.Load(); n <= m || most.CompareAndSwap(m, n) {
					break
				}
			}
			defer inside.Add(-1)
			return []byte(strings.Repeat("x", 1000)), nil
		}}
	}
	if _, err := Write(filepath.Join(t.TempDir(), "public"), files, Options{Workers: 3}); err != nil {
		t.Fatal(err)
	}
	if calls.Load() != 500 || most.Load() > 3 {
		t.Errorf("want 500 calls and at most 3 at a time, got %d and %d", calls.Load(), most.Load())
	}
}

// No link leads our writing or our removing elsewhere.
func TestLinksInTheWay(t *testing.T) {
	link := func(t *testing.T, to, at string) {
		t.Helper()
		if err := os.Symlink(to, at); err != nil {
			t.Skip("this system makes no links: ", err)
		}
	}
	setUp := func(t *testing.T) (dir, other string) {
		parent := t.TempDir()
		dir, other = filepath.Join(parent, "school", "public"), filepath.Join(parent, "other")
		put(t, filepath.Join(other, "a.html"), "a")
		put(t, filepath.Join(dir, "keep.txt"), "theirs")
		return dir, other
	}
	t.Run("the folder", func(t *testing.T) {
		dir, other := setUp(t)
		link(t, other, dir+"2")
		_, err := Write(dir+"2", []File{text("a.html", "b")}, Options{})
		checkError(t, err, fmt.Sprintf("%q is a link to another place", dir+"2"))
	})
	t.Run("the record", func(t *testing.T) {
		dir, other := setUp(t)
		state := filepath.Join(filepath.Dir(dir), stateFolder)
		link(t, other, state)
		_, err := Write(dir, []File{text("a.html", "b")}, Options{})
		checkError(t, err, fmt.Sprintf("%q is a link to another place", state))
	})
	t.Run("a folder inside", func(t *testing.T) {
		dir, other := setUp(t)
		link(t, other, filepath.Join(dir, "es"))
		_, err := Write(dir, []File{text("es/a.html", "b")}, Options{})
		checkError(t, err, fmt.Sprintf("%q is a link to another place", filepath.Join(dir, "es")))
		if got := disk(t, other)["a.html"]; got != "a" {
			t.Errorf("the other folder: want a.html to hold %q, got %q", "a", got)
		}
	})
	t.Run("a page", func(t *testing.T) {
		dir, other := setUp(t)
		link(t, filepath.Join(other, "a.html"), filepath.Join(dir, "a.html"))
		report := write(t, dir, text("a.html", "b"))
		if got := disk(t, other)["a.html"]; got != "a" || !cmp.Equal(report.Foreign, []string{"a.html"}) {
			t.Errorf("want the other file untouched and the link reported, got %q and %+v", got, report)
		}
	})
	t.Run("a temporary name", func(t *testing.T) {
		dir, _ := setUp(t)
		link(t, "keep.txt", filepath.Join(dir, tempName("a.html")))
		_, err := Write(dir, []File{text("a.html", "b")}, Options{})
		checkError(t, err, fmt.Sprintf("%q is in the way", filepath.Join(dir, tempName("a.html"))))
		if got := disk(t, dir)["keep.txt"]; got != "theirs" {
			t.Errorf("keep.txt: want %q, got %q", "theirs", got)
		}
	})
	t.Run("removing", func(t *testing.T) {
		dir, other := setUp(t)
		write(t, dir, text("es/a.html", "a"), text("b.html", "b"))
		if err := os.RemoveAll(filepath.Join(dir, "es")); err != nil {
			t.Fatal(err)
		}
		link(t, other, filepath.Join(dir, "es"))
		report := write(t, dir, text("b.html", "b"))
		if got := disk(t, other)["a.html"]; got != "a" || !cmp.Equal(report.Foreign, []string{"es/a.html"}) {
			t.Errorf("want the other file untouched and the link reported, got %q and %+v", got, report)
		}
	})
}

// checkError wants an error with a next step.
func checkError(t *testing.T, err error, want string) {
	t.Helper()
	var trouble *Error
	if !errors.As(err, &trouble) || trouble.Text != want || trouble.Hint == "" {
		t.Errorf("want %q and a hint, got %v", want, err)
	}
}
