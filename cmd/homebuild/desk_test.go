package main

import (
	"archive/zip"
	"bytes"
	"encoding/json"
	"flag"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"testing"

	"homebuild/internal/desk"
	"homebuild/internal/deskfolder"
	example "homebuild/site"
)

var wholeYear = flag.Bool("whole-year", false, "TestDeskSameBytes makes every week of the example")

// TestDeskSameBytes holds the zip that the desk makes against the one that a build
// makes of the same files on the same day, in all languages of the example: its first
// weeks, or all of them in make year-test.
func TestDeskSameBytes(t *testing.T) {
	today := "2026-09-22"
	if *wholeYear {
		today = "2027-03-01"
	}
	folder := t.TempDir()
	if err := os.CopyFS(folder, example.Files); err != nil {
		t.Fatal(err)
	}
	name := filepath.Join(t.TempDir(), "all.zip")
	var out bytes.Buffer
	if code := newStreams(nil, &out, &out).run([]string{"build", folder, "--on", today, "--zip", name, "--out", t.TempDir(), "--quiet"}); code != exitFine {
		t.Fatalf("the build ended with %d:\n%s", code, &out)
	}
	built, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	d := desk.New(deskfolder.Folder(folder))
	deskAsk[desk.Opened](t, d, "open", desk.Open{Today: today, Words: "en"})
	made := deskAsk[desk.File](t, d, "site", desk.None{})
	if bytes.Equal(built, made.Bytes) {
		return
	}
	want, got := unzipped(t, built), unzipped(t, made.Bytes)
	for path := range want {
		if want[path] != got[path] {
			t.Errorf("%s is another page from the desk", path)
		}
	}
	t.Errorf("the build has %d pages, the desk %d", len(want), len(got))
}

func unzipped(t *testing.T, data []byte) map[string]string {
	t.Helper()
	r, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]string{}
	for _, f := range r.File {
		file, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		text, err := io.ReadAll(file)
		if err != nil {
			t.Fatal(err)
		}
		out[f.Name] = string(text)
	}
	return out
}

func deskAsk[T any](t *testing.T, d *desk.Desk, call string, args any) T {
	t.Helper()
	request, err := json.Marshal(desk.Request{ID: 1, Call: call, Args: args})
	if err != nil {
		t.Fatal(err)
	}
	var reply struct {
		Value T
		Wrong []desk.Finding
		Fault string
	}
	if err := json.Unmarshal(d.Answer(request), &reply); err != nil {
		t.Fatal(err)
	}
	if reply.Fault != "" || len(reply.Wrong) > 0 {
		t.Fatalf("%s: %s %+v", call, reply.Fault, reply.Wrong)
	}
	return reply.Value
}

// TestDeskFolder works on a folder: what is laid down is written there, a file of
// another program's is not written over, and nothing else is touched.
func TestDeskFolder(t *testing.T) {
	folder := t.TempDir()
	if err := os.WriteFile(filepath.Join(folder, "photo.txt"), []byte("hers"), 0o644); err != nil {
		t.Fatal(err)
	}
	d := desk.New(deskfolder.Folder(folder))
	opened := deskAsk[desk.Opened](t, d, "open", desk.Open{Today: "2026-09-10", Words: "en"})
	if !opened.New || len(opened.Files) != 0 {
		t.Errorf("an empty folder: %+v", opened.Files)
	}
	begun := deskAsk[desk.Act](t, d, "begin", desk.Begin{Name: "Quarry Hill", Grade: 2, Languages: []string{"en"}, Monday: "2026-09-14"})
	before := desk.Changes{}
	for path := range begun.Changes {
		before[path] = nil
	}
	deskAsk[desk.None](t, d, "put", desk.Put{Changes: begun.Changes, Before: before})
	const week = "weeks/2026-09-14.toml"
	name := filepath.Join(folder, filepath.FromSlash(week))
	was, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	crlf := bytes.ReplaceAll(was, []byte("\n"), []byte("\r\n")) // as another editor saves it
	if err := os.WriteFile(name, crlf, 0o644); err != nil {
		t.Fatal(err)
	}
	act := deskAsk[desk.Act](t, d, "set", desk.Set{Date: "2026-09-14", Key: "stories", Value: "5"})
	old := string(was)
	deskAsk[desk.None](t, d, "put", desk.Put{Changes: act.Changes, Before: desk.Changes{week: &old}})
	if err := os.WriteFile(name, []byte("target = \"add-within-20\"\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	put := func(path, text string, before *string) []byte {
		request, _ := json.Marshal(desk.Request{ID: 1, Call: "put", Args: desk.Put{Changes: desk.Changes{path: &text}, Before: desk.Changes{path: before}}})
		return d.Answer(request)
	}
	if reply := put(week, "x", act.Changes[week]); !bytes.Contains(reply, []byte(`"code":"changed"`)) {
		t.Errorf("a file of another program's was written over: %s", reply)
	}
	for _, path := range []string{"photo.txt", "../out.toml", "weeks/../../out.toml", "/tmp/out.toml", "weeks/a\x00b"} {
		if reply := put(path, "x", nil); !bytes.Contains(reply, []byte(`"code":"unwritten"`)) && !bytes.Contains(reply, []byte(`"code":"changed"`)) {
			t.Errorf("%q was written: %s", path, reply)
		}
	}
	mine := "target = \"add-within-10\"\n"
	deskAsk[desk.None](t, d, "put", desk.Put{Changes: desk.Changes{week: &mine}}) // keep mine
	if now, _ := os.ReadFile(name); string(now) != mine {
		t.Errorf("hers was wanted, and the file holds %q", now)
	}
	var names []string
	err = fs.WalkDir(os.DirFS(folder), ".", func(path string, entry fs.DirEntry, err error) error {
		if !entry.IsDir() {
			names = append(names, path)
		}
		return err
	})
	if err != nil || len(names) != 4 {
		t.Errorf("the folder holds %v, %v", names, err)
	}
}
