//go:build bench

package main

import (
	"flag"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"syscall"
	"testing"
	"time"

	"homebuild/internal/i18n"
	"homebuild/internal/school"
	"homebuild/locales"
	example "homebuild/site"
)

var (
	largeWeeks = flag.Int("large", 2000, "weeks of the largest generated site")
	benchOn    = flag.String("on", "", "folder on the disk to measure; empty for the usual place of temporary files")
)

// coarsest is how long times on the disk prove nothing, and a little more.
const coarsest = 3 * time.Second

// languagesMeasured is how many languages a district has.
const languagesMeasured = 12

// spare are tags for copies of the Spanish file, where fewer than twelve
// languages have a file that is whole.
var spare = []string{"ca", "it", "gl", "eu", "sv", "da"}

// TestSpeed measures the program as a person runs it, and beside it, in the
// same run, what the computer can do at best. It prints a table.
func TestSpeed(t *testing.T) {
	program := filepath.Join(t.TempDir(), "homebuild")
	if out, err := exec.Command("go", "build", "-trimpath", "-o", program, ".").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	for _, size := range []struct{ weeks, languages int }{{1, 3}, {40, languagesMeasured}, {*largeWeeks, languagesMeasured}} {
		m := measured{t: t, program: program, dir: benchFolder(t)}
		m.school(size.weeks, size.languages)
		m.measure()
		m.print(size.weeks, size.languages)
		os.RemoveAll(m.dir)
	}
}

func benchFolder(t *testing.T) string {
	dir, err := os.MkdirTemp(*benchOn, "homebuild-speed")
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { os.RemoveAll(dir) })
	return dir
}

// school generates a school of so many weeks.
func (m *measured) school(weeks, languages int) {
	m.t.Helper()
	folder := filepath.Join(m.dir, "school")
	var tags []string
	for _, tag := range i18n.Tags(locales.Files) {
		if c, problems := i18n.Load([]string{tag}, locales.Files); len(problems) == 0 && len(c.Languages()) == 1 {
			tags = append(tags, tag)
		}
	}
	// English, Spanish and Arabic first, as in the example school.
	slices.SortStableFunc(tags, func(a, b string) int { return slices.Index(firstTags, b) - slices.Index(firstTags, a) })
	spanish := readFile(m.t, locales.Files, "es.toml")
	for len(tags) < languages {
		tag := spare[0]
		spare = spare[1:]
		putFile(m.t, filepath.Join(folder, "locales", tag+".toml"), spanish)
		tags = append(tags, tag)
	}
	tags = tags[:languages]
	putFile(m.t, filepath.Join(folder, "site.toml"), fmt.Sprintf(
		"name = \"Pebble Lane School\"\naddress = \"https://pebblelane.example/home/\"\nlanguages = %q\nkey = \"puddle\"\n", tags))
	text := readFile(m.t, os.DirFS(folder), "site.toml")
	putFile(m.t, filepath.Join(folder, "site.toml"), strings.ReplaceAll(text, `" "`, `", "`))
	var texts []string
	entries, err := fs.ReadDir(example.Files, "weeks")
	if err != nil {
		m.t.Fatal(err)
	}
	for _, e := range entries {
		english, _, _ := strings.Cut(readFile(m.t, example.Files, "weeks/"+e.Name()), "\nar = ")
		texts = append(texts, english+"\n")
	}
	monday := time.Date(2000, 1, 3, 0, 0, 0, 0, time.UTC)
	for i := range weeks {
		m.edited = filepath.Join(folder, "weeks", monday.AddDate(0, 0, 7*i).Format(time.DateOnly)+".toml")
		putFile(m.t, m.edited, texts[i%len(texts)])
	}
	m.folder = folder
}

var firstTags = []string{"ar", "es", "en"}

// measured is a site and what was measured of it.
type measured struct {
	t                            *testing.T
	program, dir, folder, edited string
	pages                        int
	bytes                        int64
	full, again, settled, edit   cost
	loop, synced, copied, render cost
	peak, peakAgain              int64 // bytes
	allocs                       uint64
	sizes                        map[string]int64
	editedPages                  int
}

// cost is what something takes: time on the clock, and of all processors.
type cost struct{ wall, cpu time.Duration }

// best runs something a few times and gives the least cost: other work on the
// computer only makes it more.
func best(times int, do func() cost) cost {
	least := do()
	for range times - 1 {
		c := do()
		least = cost{min(least.wall, c.wall), min(least.cpu, c.cpu)}
	}
	return least
}

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

func (m *measured) measure() {
	times := 3
	if len(readDir(m.t, filepath.Join(m.folder, "weeks"))) > 100 {
		times = 1
	}
	place := 0
	m.full = best(times, func() cost {
		place++
		took, peak, _ := m.build(m.out(place))
		m.peak = max(m.peak, peak)
		return took
	})
	public := filepath.Join(m.out(place), publicFolder)
	m.sizes = sizesOf(m.t, public)
	for _, n := range m.sizes {
		m.pages, m.bytes = m.pages+1, m.bytes+n
	}
	m.again, m.peakAgain, _ = m.build(m.out(place))
	time.Sleep(coarsest) // from now on times prove that nothing changed
	m.build(m.out(place))
	m.settled = best(3, func() cost { took, _, _ := m.build(m.out(place)); return took })
	note := 0
	m.edit = best(3, func() cost {
		note++
		text, _ := os.ReadFile(m.edited)
		putFile(m.t, m.edited, string(text)+fmt.Sprintf("\n\nNote %c.", 'a'+note))
		took, _, said := m.build(m.out(place))
		_, _ = fmt.Sscanf(said, "%d", &m.editedPages)
		return took
	})
	m.copied = best(times, func() cost {
		to := filepath.Join(m.dir, "copy")
		defer os.RemoveAll(to)
		took, err := command(exec.Command("cp", "-r", public, to))
		if err != nil {
			m.t.Fatal(err)
		}
		return took
	})
	m.loop = best(times, func() cost { return m.plainLoop(func() {}) })
	m.synced = best(times, func() cost { return m.plainLoop(syscall.Sync) })
	m.render = best(times, m.renderAlone)
}

func (m *measured) out(place int) string { return filepath.Join(m.dir, fmt.Sprint(place)) }

// build runs the program, and gives its time, its peak of memory and what it
// said.
func (m *measured) build(out string) (cost, int64, string) {
	m.t.Helper()
	cmd := exec.Command(m.program, "build", m.folder, "--out", out, "--on", "2199-12-30")
	var said, errs strings.Builder
	cmd.Stdout, cmd.Stderr = &said, &errs
	took, err := command(cmd)
	if err != nil {
		m.t.Fatalf("%v: %s", err, errs.String())
	}
	return took, cmd.ProcessState.SysUsage().(*syscall.Rusage).Maxrss * 1024, said.String()
}

// plainLoop writes as many bytes to as many files, with no care at all but for
// what is done at the end.
func (m *measured) plainLoop(end func()) cost {
	to := filepath.Join(m.dir, "loop")
	defer os.RemoveAll(to)
	var names []string
	var most int64
	for name, n := range m.sizes {
		names = append(names, name)
		most = max(most, n)
	}
	slices.Sort(names)
	text := []byte(strings.Repeat("once upon a time there were 7 shells ", int(most)/37+1))
	return own(func() {
		parallel(len(names), func(i int) {
			name := filepath.Join(to, names[i])
			_ = os.MkdirAll(filepath.Dir(name), 0o755)
			if err := os.WriteFile(name, text[:m.sizes[names[i]]], 0o644); err != nil {
				m.t.Error(err)
			}
		})
		end()
	})
}

// renderAlone makes every page and forgets it.
func (m *measured) renderAlone() cost {
	made, problems := school.Open(m.folder, os.DirFS(m.folder)).Assemble(nil)
	if len(problems) > 0 {
		m.t.Fatal(problems)
	}
	pages := made.Pages()
	tuneMemory(len(made.Site.Weeks), len(pages))
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	took := own(func() {
		parallel(len(pages), func(i int) {
			if _, err := pages[i].Render(); err != nil {
				m.t.Error(err)
			}
		})
	})
	runtime.ReadMemStats(&after)
	m.allocs = (after.Mallocs - before.Mallocs) / uint64(len(pages))
	return took
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

func sizesOf(t *testing.T, dir string) map[string]int64 {
	t.Helper()
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
		t.Fatal(err)
	}
	return sizes
}

func readDir(t *testing.T, dir string) []fs.DirEntry {
	t.Helper()
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	return entries
}

func (m *measured) print(weeks, languages int) {
	row := func(name string, c cost, pages int, bytes int64) {
		fmt.Printf("| %s | %s | %s | %s | %s | %.2f | %.2f |\n", name, seconds(c.wall), seconds(c.cpu), perSecond(float64(pages), c.wall),
			perSecond(float64(bytes)/1e6, c.wall), c.wall.Seconds()/m.loop.wall.Seconds(), c.wall.Seconds()/m.synced.wall.Seconds())
	}
	fmt.Printf("\n%d weeks, %d languages: %d pages, %.1f MB\n\n", weeks, languages, m.pages, float64(m.bytes)/1e6)
	fmt.Println("| what | seconds | of processors | pages/s | MB/s | × plain loop | × loop on the disk |\n| --- | --- | --- | --- | --- | --- | --- |")
	row("full build, the whole program", m.full, m.pages, m.bytes)
	row("rendering alone, nothing written", m.render, m.pages, m.bytes)
	row("plain loop that writes as much", m.loop, m.pages, m.bytes)
	row("the same, and on the disk before it ends", m.synced, m.pages, m.bytes)
	row("cp -r of the pages", m.copied, m.pages, m.bytes)
	row("build again at once, nothing changed", m.again, m.pages, m.bytes)
	row("build later, nothing changed", m.settled, m.pages, m.bytes)
	row(fmt.Sprintf("build after a note was edited (%d pages)", m.editedPages), m.edit, m.editedPages, 0)
	fmt.Printf("\nallocations a page %d; peak of memory %d MB for the full build, %d MB when nothing changed\n", m.allocs, m.peak>>20, m.peakAgain>>20)
}

func seconds(d time.Duration) string { return strconv.FormatFloat(d.Seconds(), 'f', 3, 64) }

func perSecond(n float64, took time.Duration) string {
	return strconv.FormatFloat(n/took.Seconds(), 'f', 0, 64)
}
