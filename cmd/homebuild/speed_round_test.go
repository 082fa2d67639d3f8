//go:build bench

package main

import (
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"syscall"
	"testing"
	"time"

	"homebuild/internal/school"
	"homebuild/internal/week"
)

// coarsest is how long times on the disk prove nothing, and a little more.
const coarsest = 3 * time.Second

// cost is what something takes: time on the clock, and of all processors.
type cost struct{ wall, cpu time.Duration }

// own measures a part of this very program.
func own(do func()) cost {
	before, start := spent(syscall.RUSAGE_SELF), time.Now()
	do()
	return cost{time.Since(start), spent(syscall.RUSAGE_SELF) - before}
}

func spent(who int) time.Duration {
	var u syscall.Rusage
	_ = syscall.Getrusage(who, &u)
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}

// command runs another program.
func command(cmd *exec.Cmd) (cost, error) {
	start := time.Now()
	err := cmd.Run()
	return cost{time.Since(start), cmd.ProcessState.UserTime() + cmd.ProcessState.SystemTime()}, err
}

// round is what was measured of a site, all at nearly the same time.
type round struct {
	pages, editedPages           int
	bytes                        int64
	full, again, settled, edit   cost
	loop, synced, copied, render cost
	peak                         int64 // bytes
	allocs                       uint64
}

// measured is a generated school on a disk, and the program.
type measured struct {
	*testing.T
	program, dir, folder, newest string
}

// measure measures a school of some weeks on a disk, in rounds.
func measure(t *testing.T, program, disk string, weeks, languages, rounds int) (all []round) {
	dir, err := os.MkdirTemp(disk, "homebuild-speed")
	if err != nil {
		t.Fatal(err)
	}
	defer os.RemoveAll(dir)
	m := measured{t, program, dir, filepath.Join(dir, "school"), ""}
	m.newest = generatedSchool(t, m.folder, weeks, languages)
	for i := range rounds {
		all = append(all, m.round(i))
	}
	return all
}

// round measures all once, beginning with a school that nobody has built.
func (m *measured) round(n int) (r round) {
	kept, _ := filepath.Glob(filepath.Join(m.folder, week.Folder, "*.stories.toml"))
	for _, name := range kept {
		_ = os.Remove(name)
	}
	out := filepath.Join(m.dir, "out")
	defer os.RemoveAll(out)
	public := filepath.Join(out, publicFolder)
	r.full, r.peak, _ = m.build(out)
	sizes := m.sizes(public)
	for _, size := range sizes {
		r.pages, r.bytes = r.pages+1, r.bytes+size
	}
	r.loop = m.plainLoop(sizes, func() {})
	r.synced = m.plainLoop(sizes, syscall.Sync)
	r.copied = m.copyOf(public)
	r.render, r.allocs = m.renderAlone()
	r.again, _, _ = m.build(out)
	time.Sleep(coarsest) // from now on times prove that nothing changed
	m.build(out)
	r.settled, _, _ = m.build(out)
	text := readFile(m, os.DirFS(m.folder), week.Folder+"/"+filepath.Base(m.newest))
	putFile(m, m.newest, withNote(text, fmt.Sprintf("Note %c.", 'a'+n)))
	var said string
	r.edit, _, said = m.build(out)
	_, _ = fmt.Sscanf(said, "%d", &r.editedPages)
	putFile(m, m.newest, text)
	return r
}

// withNote is a week's file with a note of one line in English, in place of its own.
func withNote(text, note string) string {
	text, _, _ = strings.Cut(text, "\n[note]\n")
	return text + "\n[note]\nen = \"" + note + "\"\n"
}

// build runs the program, and gives its time, its peak of memory and what it said.
func (m *measured) build(out string) (cost, int64, string) {
	m.Helper()
	cmd := exec.Command(m.program, "build", m.folder, "--out", out, "--on", "2199-12-30")
	var said, errs strings.Builder
	cmd.Stdout, cmd.Stderr = &said, &errs
	took, err := command(cmd)
	if err != nil {
		m.Fatalf("%v: %s", err, errs.String())
	}
	return took, cmd.ProcessState.SysUsage().(*syscall.Rusage).Maxrss * 1024, said.String()
}

func (m *measured) copyOf(public string) cost {
	to := filepath.Join(m.dir, "copy")
	defer os.RemoveAll(to)
	took, err := command(exec.Command("cp", "-r", public, to))
	if err != nil {
		m.Fatal(err)
	}
	return took
}

// plainLoop writes as many bytes to as many files, with no care at all but for what is
// done at the end.
func (m *measured) plainLoop(sizes map[string]int64, end func()) cost {
	to := filepath.Join(m.dir, "loop")
	defer os.RemoveAll(to)
	var names []string
	var most int64
	for name, n := range sizes {
		names = append(names, name)
		most = max(most, n)
	}
	slices.Sort(names)
	text := []byte(strings.Repeat("once upon a time there were 7 shells ", int(most)/37+1))
	return own(func() {
		parallel(len(names), func(i int) {
			name := filepath.Join(to, names[i])
			_ = os.MkdirAll(filepath.Dir(name), 0o755)
			if err := os.WriteFile(name, text[:sizes[names[i]]], 0o644); err != nil {
				m.Error(err)
			}
		})
		end()
	})
}

// renderAlone makes every page and forgets it.
func (m *measured) renderAlone() (took cost, allocs uint64) {
	made, problems := school.Open(m.folder, os.DirFS(m.folder)).Assemble(nil)
	if len(problems) > 0 {
		m.Fatal(problems)
	}
	pages := made.Pages()
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	took = own(func() {
		parallel(len(pages), func(i int) {
			if _, err := pages[i].Render(); err != nil {
				m.Error(err)
			}
		})
	})
	runtime.ReadMemStats(&after)
	return took, (after.Mallocs - before.Mallocs) / uint64(len(pages))
}

// parallel calls do for 0 to n-1 on all processors.
func parallel(n int, do func(int)) {
	var next atomic.Int64
	var all sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		all.Go(func() {
			for i := int(next.Add(1)) - 1; i < n; i = int(next.Add(1)) - 1 {
				do(i)
			}
		})
	}
	all.Wait()
}

// sizes are those of the files of a folder, by path.
func (m *measured) sizes(dir string) map[string]int64 {
	m.Helper()
	sizes := map[string]int64{}
	err := filepath.WalkDir(dir, func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			return err
		}
		info, err := e.Info()
		rel, _ := filepath.Rel(dir, name)
		sizes[rel] = info.Size()
		return err
	})
	if err != nil {
		m.Fatal(err)
	}
	return sizes
}
