package watch

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"testing"
	"time"
)

const name = "weeks/2026-09-14.toml"

// followed is a folder that is followed, and what is told of it.
func followed(t *testing.T) (folder string, told chan []string) {
	t.Helper()
	folder, told = t.TempDir(), make(chan []string, 100)
	save(t, folder, name, "one")
	ctx, stop := context.WithCancel(context.Background())
	wait := Folder(ctx, folder, []string{"site.toml", "weeks", "locales"}, func(files []string) { told <- files })
	t.Cleanup(func() {
		stop()
		wait()
	})
	return folder, told
}

func at(folder, name string) string { return filepath.Join(folder, filepath.FromSlash(name)) }

func save(t *testing.T, folder, name, words string) {
	t.Helper()
	full := at(folder, name)
	if err := errors.Join(os.MkdirAll(filepath.Dir(full), 0o755), os.WriteFile(full, []byte(words), 0o644)); err != nil {
		t.Fatal(err)
	}
}

// next waits until something is told.
func next(t *testing.T, told <-chan []string) []string {
	t.Helper()
	select {
	case files := <-told:
		return files
	case <-time.After(5 * time.Second):
		t.Fatal("nothing was told within five seconds")
	}
	panic("not reached")
}

// The fastest is the program's own; what comes on top is a busy computer.
func TestTellsWithinAMoment(t *testing.T) {
	folder, told := followed(t)
	var times []time.Duration
	for i := range 9 {
		saved := time.Now()
		save(t, folder, name, fmt.Sprintf("words %d", i))
		next(t, told)
		times = append(times, time.Since(saved))
		time.Sleep(2 * patience) // a person breathes between two saves
		for len(told) > 0 {
			<-told
		}
	}
	slices.Sort(times)
	t.Logf("fastest %v, middle %v, slowest %v", times[0], times[len(times)/2], times[len(times)-1])
	if times[0] > 100*time.Millisecond {
		t.Errorf("the fastest of nine is %v, want 100 ms at most", times[0])
	}
}

// However an editor saves, it is told, and then the file is whole.
func TestWaysToSave(t *testing.T) {
	ways := []struct {
		name string
		save func(folder, words string) error
	}{
		{"in place", func(folder, words string) error { return os.WriteFile(at(folder, name), []byte(words), 0o644) }},
		{"a new file renamed into place", func(folder, words string) error {
			part := at(folder, "weeks/.2026-09-14.toml.swp")
			return errors.Join(os.WriteFile(part, []byte(words), 0o644), os.Rename(part, at(folder, name)))
		}},
		{"the old file kept under another name", func(folder, words string) error {
			return errors.Join(os.Rename(at(folder, name), at(folder, name)+"~"), os.WriteFile(at(folder, name), []byte(words), 0o644))
		}},
		{"in pieces", func(folder, words string) error {
			file, err := os.Create(at(folder, name))
			if err != nil {
				return err
			}
			for _, c := range words {
				if _, err := file.WriteString(string(c)); err != nil {
					return err
				}
				time.Sleep(time.Millisecond)
			}
			return file.Close()
		}},
		{"the whole folder put in its place", func(folder, words string) error {
			return errors.Join(os.RemoveAll(at(folder, "weeks")), os.Mkdir(at(folder, "weeks"), 0o755), os.WriteFile(at(folder, name), []byte(words), 0o644))
		}},
		{"again in the new folder", func(folder, words string) error { return os.WriteFile(at(folder, name), []byte(words), 0o644) }},
	}
	folder, told := followed(t)
	for _, way := range ways {
		t.Run(way.name, func(t *testing.T) {
			if err := way.save(folder, way.name); err != nil {
				t.Fatal(err)
			}
			for {
				next(t, told)
				if text, err := os.ReadFile(at(folder, name)); err == nil && string(text) == way.name {
					return
				}
			}
		})
	}
}

// What stands beside the files, and what an editor leaves there, is not told.
func TestOtherFilesAreNoMatter(t *testing.T) {
	folder, told := followed(t)
	for _, name := range []string{"public/index.html", "desk/plan.html", ".homebuild/public.lock", "README.txt", "weeks/.hidden", name + "~"} {
		save(t, folder, name, "x")
	}
	time.Sleep(300 * time.Millisecond)
	if len(told) > 0 {
		t.Errorf("%v is told, want it left", <-told)
	}
	save(t, folder, name, "two")
	if files := next(t, told); !slices.Equal(files, []string{name}) {
		t.Errorf("want the week, got %v", files)
	}
}
