package publish

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// text is a file with fixed bytes; a path that ends in index.html is an index.
func text(name, bytes string) File {
	return File{Path: name, Index: path.Base(name) == "index.html", Render: func() ([]byte, error) { return []byte(bytes), nil }}
}

// disk reads a whole folder: path to bytes.
func disk(t *testing.T, dir string) map[string]string {
	t.Helper()
	files := map[string]string{}
	err := filepath.WalkDir(dir, func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		data, err := os.ReadFile(name)
		rel, _ := filepath.Rel(dir, name)
		files[filepath.ToSlash(rel)] = string(data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

// put writes a file by hand, as a person would.
func put(t *testing.T, name, bytes string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, []byte(bytes), 0o644); err != nil {
		t.Fatal(err)
	}
}

// write publishes and stops the test on an error.
func write(t *testing.T, dir string, files ...File) Report {
	t.Helper()
	report, err := Write(dir, files, Options{Workers: 2})
	if err != nil {
		t.Fatal(err)
	}
	return report
}

func TestWriteFromYearToYear(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "school", "public")
	steps := []struct {
		name  string
		files []File
		want  Report
	}{
		{"first build", []File{text("index.html", "1"), text("es/a.html", "aa"), text("es/b.html", "bbb")}, Report{Written: 3, Bytes: 6}},
		{"nothing new", []File{text("index.html", "1"), text("es/a.html", "aa"), text("es/b.html", "bbb")}, Report{Unchanged: 3}},
		{"a page edited", []File{text("index.html", "1"), text("es/a.html", "AA"), text("es/b.html", "bbb")}, Report{Written: 1, Unchanged: 2, Bytes: 2}},
		{"a page gone", []File{text("index.html", "2"), text("es/a.html", "AA")}, Report{Written: 1, Unchanged: 1, Removed: 1, Bytes: 1}},
		{"a language gone", []File{text("index.html", "3")}, Report{Written: 1, Removed: 1, Bytes: 1}},
	}
	for _, step := range steps {
		got := write(t, dir, step.files...)
		if diff := cmp.Diff(step.want, got); diff != "" {
			t.Errorf("%s: report mismatch (-want +got):\n%s", step.name, diff)
		}
		want := map[string]string{}
		for _, f := range step.files {
			data, _ := f.Render()
			want[f.Path] = string(data)
		}
		if diff := cmp.Diff(want, disk(t, dir)); diff != "" {
			t.Errorf("%s: folder mismatch (-want +got):\n%s", step.name, diff)
		}
	}
	if _, err := os.Stat(filepath.Join(dir, "es")); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("the empty folder es: want it gone, got %v", err)
	}
	state := disk(t, filepath.Join(filepath.Dir(dir), stateFolder))
	want := map[string]string{"public.lock": "", "public.seen": "", "public.manifest": sumOf([]byte("3")).String() + "  index.html\n"}
	if diff := cmp.Diff(want, state); diff != "" {
		t.Errorf("record mismatch (-want +got):\n%s", diff)
	}
}

func encoded(m manifest) []byte {
	var b bytes.Buffer
	w := bufio.NewWriter(&b)
	m.encode(w)
	_ = w.Flush()
	return b.Bytes()
}

// SHA-256 of "abc": FIPS 180-2, appendix B.1.
func TestManifestIsWhatSha256sumReads(t *testing.T) {
	m := manifest{"b.html": {sumOf([]byte("abc"))}, "a/c.html": {sumOf([]byte("abc"))}}
	const abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
	want := abc + "  a/c.html\n" + abc + "  b.html\n"
	if got := string(encoded(m)); got != want {
		t.Errorf("encode: want %q, got %q", want, got)
	}
	back := manifest{}
	if err := back.decode(strings.NewReader(want), Shard{}.Owns); err != nil || !maps.EqualFunc(m, back, slices.Equal) {
		t.Errorf("decode: want %v, got %v, error %v", m, back, err)
	}
	for _, line := range []string{"x", abc + " a.html", abc + "  ../a.html", abc + "  /etc/passwd", abc[2:] + "  a.html", abc + "  "} {
		err := (manifest{}).decode(strings.NewReader(want+line), Shard{}.Owns)
		if err == nil || err.Error() != "line 3 is not one of ours" {
			t.Errorf("decode(%q): want line 3 told, got %v", line, err)
		}
	}
}

// Folders that are left empty go, one in the other, and those with something in them stay.
func TestEmptyFoldersGo(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "public")
	write(t, dir, text("index.html", "1"), text("es/check/7/a.html", "a"), text("ar/check/b.html", "b"))
	put(t, filepath.Join(dir, "ar", "hers.txt"), "hers")
	write(t, dir, text("index.html", "1"))
	for name, there := range map[string]bool{"es": false, "ar": true, "ar/check": false} {
		if _, err := os.Stat(filepath.Join(dir, name)); (err == nil) != there {
			t.Errorf("the folder %s: want it there %v, got %v", name, there, err)
		}
	}
}

// Any number of workers gives the same folder, the same record and the same
// report.
func TestWorkersDoNotShow(t *testing.T) {
	site := func(version string, from, to int) []File {
		files := []File{text("index.html", version)}
		for i := from; i < to; i++ {
			files = append(files, text(fmt.Sprintf("lang%d/page%d.html", i%7, i), strings.Repeat(fmt.Sprint(version, i%3), 100+i)))
		}
		return files
	}
	pages := 300
	if testing.Short() {
		pages = 60
	}
	var folders [2]map[string]string
	var reports [2]Report
	for i, workers := range []int{1, 8} {
		parent := inMemory(t)
		dir := filepath.Join(parent, "public")
		for _, files := range [][]File{site("a", 0, pages), site("b", pages/3, pages+pages/3)} {
			put(t, filepath.Join(dir, "lang5", "page299.txt"), "mine")
			var err error
			if reports[i], err = Write(dir, files, Options{Workers: workers}); err != nil {
				t.Fatal(err)
			}
		}
		folders[i] = disk(t, parent)
	}
	if len(folders[0]) != pages+1+1+3 {
		t.Errorf("files: want %d pages and an index, 1 foreign file and 3 of the record, got %d", pages, len(folders[0]))
	}
	if diff := cmp.Diff(folders[0], folders[1]); diff != "" {
		t.Errorf("folders of 1 and 8 workers differ:\n%s", diff)
	}
	if diff := cmp.Diff(reports[0], reports[1]); diff != "" {
		t.Errorf("reports of 1 and 8 workers differ:\n%s", diff)
	}
}

func TestPathsThatAreRefused(t *testing.T) {
	ok := func(name string) File { return text(name, "x") }
	tests := []struct {
		name  string
		files []File
		want  string
		why   string
	}{
		{"none", nil, `there is nothing to publish`, "it would remove the whole site"},
		{"up", []File{ok("../x.html")}, `"../x.html" cannot be the path of a published file`, "it leaves the folder"},
		{"up inside", []File{ok("es/../../x.html")}, `"es/../../x.html" cannot be the path of a published file`, "it leaves the folder"},
		{"absolute", []File{ok("/etc/x")}, `"/etc/x" cannot be the path of a published file`, "it leaves the folder"},
		{"empty", []File{ok("")}, `"" cannot be the path of a published file`, "it is the folder"},
		{"dot", []File{ok(".")}, `"." cannot be the path of a published file`, "it is the folder"},
		{"backslash", []File{ok(`..\x.html`)}, `"..\\x.html" cannot be the path of a published file`, "it leaves the folder on Windows"},
		{"drive", []File{ok("c:x.html")}, `"c:x.html" cannot be the path of a published file`, "it leaves the folder on Windows"},
		{"line end", []File{ok("a\nb.html")}, `"a\nb.html" cannot be the path of a published file`, "the record has a file a line"},
		{"a part", []File{ok(".a.html.homebuild-part")}, `".a.html.homebuild-part" cannot be the path of a published file`, "it is a temporary name"},
		{"twice", []File{ok("a.html"), ok("a.html")}, `two published files are named "a.html"`, "one would be lost"},
		{"twice but for capitals", []File{ok("pt-BR/a.html"), ok("pt-br/a.html")}, `two published files are named "pt-br/a.html"`, "some disks do not tell them apart"},
		{"file and folder", []File{ok("es"), ok("es/a.html")}, `"es" is to be a file and a folder`, "no disk can hold it"},
	}
	for _, test := range tests {
		dir := filepath.Join(t.TempDir(), "public")
		_, err := Write(dir, test.files, Options{})
		if err == nil || err.Error() != test.want {
			t.Errorf("%s: want %q, got %v: %s", test.name, test.want, err, test.why)
		}
		if _, err := os.Stat(dir); err == nil {
			t.Errorf("%s: the folder was made all the same", test.name)
		}
	}
	// A name of 200 letters leaves room for the temporary one: most file systems hold 255
	// bytes (common practice, no published source).
	for name, fine := range map[string]bool{strings.Repeat("x", 200): true, strings.Repeat("x", 201): false, "a week in May.pdf": true, "tab\there": false, "delete\x7f": false} {
		if _, err := Write(filepath.Join(t.TempDir(), "public"), []File{ok(name)}, Options{}); (err == nil) != fine {
			t.Errorf("%q: want it taken %v, got %v", name, fine, err)
		}
	}
}

func TestWriteKeepsWhatItIsToldTo(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "public")
	week := func(name string) bool { return strings.HasPrefix(path.Base(name), "2026-") }
	a, b := text("index.html", "1"), text("es/2026-09-14.html", "w")
	b.Key = "as it was"
	for _, step := range []struct {
		name  string
		files []File
		keep  func(string) bool
		want  Report
	}{
		{"both", []File{a, b, text("es/x.html", "x")}, week, Report{Written: 3, Bytes: 3}},
		{"the week has no file any more: its page stays", []File{a}, week, Report{Unchanged: 1, Removed: 1, Kept: []string{"es/2026-09-14.html"}}},
		{"and stays ours", []File{a}, week, Report{Unchanged: 1, Kept: []string{"es/2026-09-14.html"}}},
		{"it comes back", []File{a, b}, week, Report{Unchanged: 2}},
		{"nothing keeps it", []File{a}, nil, Report{Unchanged: 1, Removed: 1}},
	} {
		got, err := Write(dir, step.files, Options{Keep: step.keep})
		if err != nil {
			t.Fatalf("%s: %v", step.name, err)
		}
		if diff := cmp.Diff(step.want, got); diff != "" {
			t.Errorf("%s: mismatch (-want +got)\n%s", step.name, diff)
		}
	}

	// What a person has taken away is not kept.
	if _, err := Write(dir, []File{a, b}, Options{}); err != nil {
		t.Fatal(err)
	}
	if err := os.Remove(filepath.Join(dir, "es", "2026-09-14.html")); err != nil {
		t.Fatal(err)
	}
	if got, err := Write(dir, []File{a}, Options{Keep: week}); err != nil || len(got.Kept) > 0 {
		t.Errorf("a page that is gone is kept: %v, %v", got.Kept, err)
	}
}

// What is published is handed on, and comes to be the other folder's own.
func TestPublishedIsTakenOver(t *testing.T) {
	year := t.TempDir()
	before, after := filepath.Join(year, "before", "public"), filepath.Join(year, "after", "public")
	if files, err := Published(before); err != nil || len(files) > 0 {
		t.Errorf("nothing was published: %d files, %v", len(files), err)
	}
	write(t, before, text("index.html", "1"), text("es/2026-09-14.html", "w"))
	put(t, filepath.Join(before, "hers.pdf"), "hers")
	files, err := Published(before)
	if err != nil {
		t.Fatal(err)
	}
	write(t, after, files...)
	want := map[string]string{"index.html": "1", "es/2026-09-14.html": "w"}
	if diff := cmp.Diff(want, disk(t, after)); diff != "" {
		t.Errorf("mismatch (-want +got)\n%s", diff)
	}
	if got := write(t, after, text("index.html", "2")); got.Written != 1 || got.Removed != 1 || len(got.Foreign) > 0 {
		t.Errorf("not its own: %+v", got)
	}
}
