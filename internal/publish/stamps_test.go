package publish

import (
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// keyed is a file whose key is a version, and whose bytes follow from it. It
// counts how often it is rendered.
func keyed(name, version string, rendered *int) File {
	return File{Path: name, Key: version, Render: func() ([]byte, error) {
		if rendered != nil {
			*rendered++
		}
		return []byte(name + " of " + version), nil
	}}
}

// makeOlder makes everything that was published a minute older, as if the build
// were no news; the notes of it stay as they are.
func makeOlder(t *testing.T, dir string) {
	t.Helper()
	state := filepath.Join(filepath.Dir(dir), stateFolder, "public.seen")
	later := time.Now().Add(time.Minute)
	if err := os.Chtimes(state, later, later); err != nil {
		t.Fatal(err)
	}
}

func TestKeysSaveRendering(t *testing.T) {
	edit := func(name, bytes string) func(*testing.T, string) {
		return func(t *testing.T, dir string) { put(t, filepath.Join(dir, name), bytes) }
	}
	tests := []struct {
		name     string
		between  func(t *testing.T, dir string)
		version  string
		rendered int
		want     Report
		why      string
	}{
		{"nothing new", nil, "a", 0, Report{Unchanged: 2, Skipped: 2}, "the bytes on the disk are read and are as before"},
		{"nothing new for a while", makeOlder, "a", 0, Report{Unchanged: 2, Skipped: 2}, "size and time say so"},
		{"another key", makeOlder, "b", 2, Report{Written: 2, Bytes: 22}, "what they are made from has changed"},
		{"no key", makeOlder, "", 2, Report{Written: 2, Bytes: 20}, "nobody knows what they are made from"},
		{"a page is gone", func(t *testing.T, dir string) {
			makeOlder(t, dir)
			_ = os.Remove(filepath.Join(dir, "x.html"))
		}, "a", 1, Report{Written: 1, Unchanged: 1, Skipped: 1, Bytes: 11}, "it must come back"},
		{"a page is touched", func(t *testing.T, dir string) {
			makeOlder(t, dir)
			_ = os.Chtimes(filepath.Join(dir, "x.html"), time.Unix(1, 0), time.Unix(1, 0))
		}, "a", 0, Report{Unchanged: 2, Skipped: 2}, "another time, the same bytes"},
		{"a page is edited at once, its time and size as they were", func(t *testing.T, dir string) {
			name := filepath.Join(dir, "x.html")
			info, _ := os.Stat(name)
			edit("x.html", "x.html of z")(t, dir)
			_ = os.Chtimes(name, info.ModTime(), info.ModTime())
		}, "a", 1, Report{Written: 1, Unchanged: 1, Skipped: 1, Bytes: 11}, "a file as young as the note of it proves nothing"},
		{"a page is edited later, its size as it was", func(t *testing.T, dir string) {
			makeOlder(t, dir)
			edit("x.html", "x.html of z")(t, dir)
			later := time.Now().Add(3 * time.Second)
			_ = os.Chtimes(filepath.Join(dir, "x.html"), later, later)
		}, "a", 1, Report{Written: 1, Unchanged: 1, Skipped: 1, Bytes: 11}, "its time tells"},
		{"the clock is set back", func(t *testing.T, dir string) {
			_ = os.Chtimes(filepath.Join(filepath.Dir(dir), stateFolder, "public.seen"), time.Unix(1, 0), time.Unix(1, 0))
			edit("x.html", "x.html of z")(t, dir)
		}, "a", 1, Report{Written: 1, Unchanged: 1, Skipped: 1, Bytes: 11}, "notes from before the files prove nothing"},
		{"the notes are gone", func(t *testing.T, dir string) {
			_ = os.Remove(filepath.Join(filepath.Dir(dir), stateFolder, "public.seen"))
		}, "a", 2, Report{Unchanged: 2}, "nothing depends on them"},
		{"the notes are spoiled", func(t *testing.T, dir string) {
			put(t, filepath.Join(filepath.Dir(dir), stateFolder, "public.seen"), "a zz 1 x x.html\n\x00\n")
		}, "a", 2, Report{Unchanged: 2}, "nothing depends on them"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			dir, rendered := filepath.Join(inMemory(t), "public"), 0
			site := func(version string) []File {
				return []File{keyed("x.html", version, &rendered), keyed("y.html", version, &rendered)}
			}
			write1(t, dir, site("a")...)
			rendered = 0
			if test.between != nil {
				test.between(t, dir)
			}
			got := write1(t, dir, site(test.version)...)
			for i := range got.Edited {
				if !strings.HasPrefix(got.Edited[i].Path, "x.html") {
					t.Errorf("edited: %+v", got.Edited)
				}
			}
			got.Edited = nil // other tests look at these
			if diff := cmp.Diff(test.want, got); diff != "" || rendered != test.rendered {
				t.Errorf("want %d rendered, got %d, since %s; report (-want +got):\n%s", test.rendered, rendered, test.why, diff)
			}
			for name, data := range disk(t, dir) {
				if want := name + " of " + test.version; data != want {
					t.Errorf("%s: want %q, got %q", name, want, data)
				}
			}
		})
	}
}

// write1 publishes with one worker, so that renderings can be counted.
func write1(t *testing.T, dir string, files ...File) Report {
	t.Helper()
	report, err := Write(dir, files, Options{Workers: 1})
	if err != nil {
		t.Fatal(err)
	}
	return report
}

// Whatever happened to the folder and to earlier builds, a build gives the
// pages of its own keys.
func TestKeysNeverKeepAnOldPage(t *testing.T) {
	names := []string{"a.html", "b.html", "es/c.html", "es/d.html"}
	rapid.Check(t, func(rt *rapid.T) {
		dir := filepath.Join(inMemory(t), "public")
		now := map[string]string{}
		site := func() []File {
			var files []File
			for _, name := range slices.Sorted(maps.Keys(now)) {
				files = append(files, keyed(name, now[name], nil))
			}
			return files
		}
		for _, name := range names {
			now[name] = "v0"
		}
		rt.Repeat(map[string]func(*rapid.T){
			"change": func(rt *rapid.T) {
				now[rapid.SampledFrom(names).Draw(rt, "page")] = rapid.SampledFrom([]string{"v0", "v1", "v2"}).Draw(rt, "version")
			},
			"drop": func(rt *rapid.T) { delete(now, rapid.SampledFrom(names[1:]).Draw(rt, "page")) },
			"edit": func(rt *rapid.T) {
				name := filepath.Join(dir, rapid.SampledFrom(names).Draw(rt, "page"))
				if info, err := os.Stat(name); err == nil {
					data, _ := os.ReadFile(name)
					_ = os.WriteFile(name, append(data[:len(data)-1:len(data)-1], 'X'), 0o644)
					if rapid.Bool().Draw(rt, "time as it was") {
						_ = os.Chtimes(name, info.ModTime(), info.ModTime())
					}
				}
			},
			"remove": func(rt *rapid.T) { _ = os.Remove(filepath.Join(dir, rapid.SampledFrom(names).Draw(rt, "page"))) },
			"stopped build": func(rt *rapid.T) {
				r, err := open(dir, site(), Options{Workers: 1})
				if err != nil {
					rt.Fatal(err)
				}
				if r.prepare() == nil && r.writeJournal() == nil {
					for _, phase := range phases()[:rapid.IntRange(0, len(phases())).Draw(rt, "phases")] {
						_ = r.move(phase)
					}
					if rapid.Bool().Draw(rt, "with the manifest") {
						_ = r.state.write(r.state.file("manifest"), r.next)
					}
				}
				r.close()
			},
			"build": func(rt *rapid.T) {
				report, err := Write(dir, site(), Options{Workers: 1})
				if err != nil {
					rt.Fatal(err)
				}
				want := map[string]string{}
				for name, version := range now {
					want[name] = name + " of " + version
				}
				if diff := cmp.Diff(want, disk(t, dir)); diff != "" {
					rt.Fatalf("report %+v; folder (-want +got):\n%s", report, diff)
				}
			},
		})
	})
}

// inMemory is a folder in memory, where the system has one: what is tried here
// does not need a disk, and hundreds of builds would wait for it.
func inMemory(t *testing.T) string {
	t.Helper()
	dir, err := os.MkdirTemp("/dev/shm", "publish")
	if err != nil {
		return t.TempDir()
	}
	t.Cleanup(func() { os.RemoveAll(dir) })
	return dir
}
