package publish

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// parts builds every part of a site into one folder, all at once.
func parts(t *testing.T, dir string, n int, files []File) Report {
	t.Helper()
	var all sync.WaitGroup
	reports := make([]Report, n)
	for i := range n {
		all.Go(func() {
			var err error
			if reports[i], err = Write(dir, files, Options{Workers: 1, Shard: Shard{i + 1, n}}); err != nil {
				t.Errorf("part %d of %d: %v", i+1, n, err)
			}
		})
	}
	all.Wait()
	var sum Report
	for _, r := range reports {
		sum.Written += r.Written
		sum.Unchanged += r.Unchanged
		sum.Skipped += r.Skipped
		sum.Removed += r.Removed
		sum.Bytes += r.Bytes
		sum.Foreign = append(sum.Foreign, r.Foreign...)
		sum.Edited = append(sum.Edited, r.Edited...)
	}
	return sum
}

// The parts are the whole, byte for byte, whatever their number and whether
// they are built side by side or into folders of their own.
func TestPartsAreTheWhole(t *testing.T) {
	for _, version := range []string{"a", "b"} {
		files := linkedSite(version)
		whole := filepath.Join(inMemory(t), "public")
		write(t, whole, files...)
		for _, n := range []int{1, 3, 8} {
			together := filepath.Join(inMemory(t), "public")
			parts(t, together, n, files)
			if diff := cmp.Diff(disk(t, whole), disk(t, together)); diff != "" {
				t.Errorf("%d parts of %s in one folder (-whole +parts):\n%s", n, version, diff)
			}
			union := map[string]string{}
			for i := range n {
				apart := filepath.Join(inMemory(t), "public")
				if _, err := Write(apart, files, Options{Shard: Shard{i + 1, n}}); err != nil {
					t.Fatal(err)
				}
				for name, data := range disk(t, apart) {
					if _, twice := union[name]; twice {
						t.Errorf("%d parts: %s is in two of them", n, name)
					}
					union[name] = data
				}
			}
			if diff := cmp.Diff(disk(t, whole), union); diff != "" {
				t.Errorf("%d parts of %s in their own folders (-whole +parts):\n%s", n, version, diff)
			}
		}
	}
}

// From the whole to parts and back, nothing of ours is taken for someone
// else's, and what is no longer made goes.
func TestPartsAndWholeTakeTurns(t *testing.T) {
	parent := inMemory(t)
	dir := filepath.Join(parent, "public")
	put(t, filepath.Join(dir, "theirs.txt"), "theirs")
	write(t, dir, linkedSite("a")...)
	steps := []struct {
		name  string
		build func(files []File) Report
		site  string
	}{
		{"parts of the new site over the whole old one", func(f []File) Report { return parts(t, dir, 4, f) }, "b"},
		{"the parts again", func(f []File) Report { return parts(t, dir, 4, f) }, "b"},
		{"the parts of the old site", func(f []File) Report { return parts(t, dir, 4, f) }, "a"},
		{"the whole new site over parts", func(f []File) Report { return write(t, dir, f...) }, "b"},
		{"another number of parts", func(f []File) Report { return parts(t, dir, 3, f) }, "a"},
	}
	for _, step := range steps {
		report := step.build(linkedSite(step.site))
		if report.Foreign != nil || report.Edited != nil {
			t.Errorf("%s: want nothing foreign or edited, got %+v", step.name, report)
		}
		want := map[string]string{"theirs.txt": "theirs"}
		for _, f := range linkedSite(step.site) {
			data, _ := f.Render()
			want[f.Path] = string(data)
		}
		if diff := cmp.Diff(want, disk(t, dir)); diff != "" {
			t.Errorf("%s: folder mismatch (-want +got):\n%s", step.name, diff)
		}
	}
	_, err := Write(dir, linkedSite("a"), Options{Shard: Shard{1, 2}})
	checkError(t, err, `the site in "public" was made in 3 parts, and this is one of 2`)
	write(t, dir, linkedSite("a")...)
	for name := range disk(t, filepath.Join(parent, stateFolder)) {
		if !regexp.MustCompile(`^public\.(lock|manifest|seen)$`).MatchString(name) {
			t.Errorf("after the whole was built, the record of a part is left: %s", name)
		}
	}
}

// A file that was ours, was removed by a part and is now someone else's stays.
func TestPartsForgetWhatTheyRemoved(t *testing.T) {
	dir := filepath.Join(inMemory(t), "public")
	write(t, dir, text("a.html", "a"), text("b.html", "b"))
	parts(t, dir, 2, []File{text("a.html", "a")})
	put(t, filepath.Join(dir, "b.html"), "by hand")
	if report := parts(t, dir, 2, []File{text("a.html", "a")}); report.Removed != 0 || disk(t, dir)["b.html"] != "by hand" {
		t.Errorf("want b.html left alone, got %+v and %v", report, disk(t, dir))
	}
}

// A part that was cut short, at its first build too, knows its own files.
func TestPartsAfterAStop(t *testing.T) {
	for _, first := range []bool{true, false} {
		dir := filepath.Join(inMemory(t), "public")
		if !first {
			parts(t, dir, 2, linkedSite("a"))
		}
		r, err := open(dir, linkedSite("b"), Options{Shard: Shard{1, 2}})
		if err != nil {
			t.Fatal(err)
		}
		if err := r.prepare(); err != nil {
			t.Fatal(err)
		}
		if err := r.writeJournal(); err != nil {
			t.Fatal(err)
		}
		if err := r.move(phases()[0]); err != nil {
			t.Fatal(err)
		}
		r.close()
		if report := parts(t, dir, 2, linkedSite("b")); report.Foreign != nil || report.Edited != nil {
			t.Errorf("want nothing foreign or edited, got %+v", report)
		}
		checkWhole(t, fmt.Sprintf("first build %v", first), disk(t, dir), most())
		for name := range disk(t, dir) {
			if isTemp(filepath.Base(name)) {
				t.Errorf("a temporary file is left: %s", name)
			}
		}
	}
}

// A build of the whole keeps away from a build of a part, and the other way
// round; two different parts do not mind each other.
func TestLockOfParts(t *testing.T) {
	dir := filepath.Join(inMemory(t), "public")
	part1, err := open(dir, linkedSite("a"), Options{Shard: Shard{1, 2}})
	if err != nil {
		t.Fatal(err)
	}
	want := regexp.MustCompile(fmt.Sprintf(`^another build is writing %q \(process %d since .*\)$`, dir, os.Getpid()))
	for _, s := range []Shard{{}, {1, 2}} {
		if _, err := Write(dir, linkedSite("a"), Options{Shard: s}); err == nil || !want.MatchString(err.Error()) {
			t.Errorf("part %q beside part 1 of 2: want an error like %q, got %v", s, want, err)
		}
	}
	if _, err := Write(dir, linkedSite("a"), Options{Shard: Shard{2, 2}}); err != nil {
		t.Errorf("part 2 beside part 1: %v", err)
	}
	part1.close()
	if _, err := Write(dir, linkedSite("a"), Options{Shard: Shard{3, 2}}); err == nil || err.Error() != "there is no part 3 of 2" {
		t.Errorf("part 3 of 2: want an error, got %v", err)
	}
}
