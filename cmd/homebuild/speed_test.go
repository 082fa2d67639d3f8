//go:build bench

package main

import (
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"

	"homebuild/internal/diag"
)

var (
	largeWeeks  = flag.Int("large", 2000, "weeks of the largest generated site")
	benchOn     = flag.String("on", "", "folders to measure in, one on each disk, with commas; empty for a disk of memory, where there is one, and the usual place of temporary files")
	benchRounds = flag.Int("rounds", 5, "how often all is measured; the largest site once for two of them")
)

// diskOfMemory is where Linux has one.
const diskOfMemory = "/dev/shm"

// TestSpeed measures the program as a person runs it, and beside it, in the same round,
// what the computer can do at best. It prints a table of each size of school: the middle
// of the rounds, and in brackets the least and the most.
func TestSpeed(t *testing.T) {
	began := time.Now()
	program := filepath.Join(t.TempDir(), "homebuild")
	if out, err := exec.Command("go", "build", "-trimpath", "-o", program, ".").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	for _, size := range []struct{ weeks, languages, rounds int }{
		{1, 3, *benchRounds}, {40, languagesMeasured, *benchRounds}, {*largeWeeks, languagesMeasured, (*benchRounds + 1) / 2},
	} {
		var disks []string
		var results [][]round
		for _, disk := range benchDisks(t) {
			results = append(results, measure(t, program, disk, size.weeks, size.languages, size.rounds))
			disks = append(disks, disk)
		}
		printTable(diag.Amount(size.weeks, "week", "weeks")+", "+diag.Amount(size.languages, "language", "languages"), disks, results)
	}
	fmt.Printf("\nmeasured in %v, on %d processors, %s\n", time.Since(began).Round(time.Second), runtime.GOMAXPROCS(0), runtime.Version())
}

// benchDisks are the folders to measure in, the quickest disk first.
func benchDisks(t *testing.T) []string {
	if *benchOn != "" {
		return strings.Split(*benchOn, ",")
	}
	var disks []string
	if isFolder(diskOfMemory) {
		disks = append(disks, diskOfMemory)
	}
	return append(disks, os.TempDir())
}

// row is a line of a table: what a round has measured, or the ratio of two of its costs.
type row struct {
	name string
	of   func(r round) float64
	form string // of fmt, for one figure
}

func rows() []row {
	against := func(what, beside func(round) cost) func(round) float64 {
		return func(r round) float64 { return what(r).wall.Seconds() / beside(r).wall.Seconds() }
	}
	full := func(r round) cost { return r.full }
	seconds := func(c func(round) cost) func(round) float64 {
		return func(r round) float64 { return c(r).wall.Seconds() }
	}
	loop := func(r round) cost { return r.loop }
	return []row{
		{"pages", func(r round) float64 { return float64(r.pages) }, "%.0f"},
		{"MB", func(r round) float64 { return float64(r.bytes) / 1e6 }, "%.1f"},
		{"full build, s", seconds(full), "%.2f"},
		{"— processors, s", func(r round) float64 { return r.full.cpu.Seconds() }, "%.2f"},
		{"— pages a second", func(r round) float64 { return float64(r.pages) / r.full.wall.Seconds() }, "%.0f"},
		{"— × plain loop", against(full, loop), "%.2f"},
		{"— × loop, and its bytes on the disk", against(full, func(r round) cost { return r.synced }), "%.2f"},
		{"— × `cp -r`", against(full, func(r round) cost { return r.copied }), "%.2f"},
		{"the pages without writing, s", seconds(func(r round) cost { return r.render }), "%.2f"},
		{"— × plain loop", against(func(r round) cost { return r.render }, loop), "%.2f"},
		{"plain loop, s", seconds(loop), "%.3f"},
		{"loop, and its bytes on the disk, s", seconds(func(r round) cost { return r.synced }), "%.3f"},
		{"`cp -r`, s", seconds(func(r round) cost { return r.copied }), "%.3f"},
		{"build again at once, nothing changed, s", seconds(func(r round) cost { return r.again }), "%.3f"},
		{"build later, nothing changed, s", seconds(func(r round) cost { return r.settled }), "%.3f"},
		{"build after a note was edited, s", seconds(func(r round) cost { return r.edit }), "%.3f"},
		{"— pages written", func(r round) float64 { return float64(r.editedPages) }, "%.0f"},
		{"allocations a page", func(r round) float64 { return float64(r.allocs) }, "%.0f"},
		{"peak of memory, MB", func(r round) float64 { return float64(r.peak >> 20) }, "%.0f"},
	}
}

// printTable prints a table with a column for each disk.
func printTable(title string, disks []string, results [][]round) {
	fmt.Printf("\n| %s | %s |\n|%s\n", title, strings.Join(disks, " | "), strings.Repeat(" --- |", len(disks)+1))
	for _, row := range rows() {
		fmt.Printf("| %s |", row.name)
		for _, rounds := range results {
			fmt.Printf(" %s |", middle(row.form, each(rounds, row.of)))
		}
		fmt.Println()
	}
}

// middle writes the middle one of some figures and, where they differ, their range.
func middle(form string, all []float64) string {
	slices.Sort(all)
	show := func(x float64) string { return fmt.Sprintf(form, x) }
	least, mid, most := show(all[0]), show(all[len(all)/2]), show(all[len(all)-1])
	if least == most {
		return mid
	}
	return fmt.Sprintf("%s (%s–%s)", mid, least, most)
}

// TestStart measures how long the program takes to tell its version, beside a program
// that prints one line, in turns.
func TestStart(t *testing.T) {
	dir := t.TempDir()
	ours, plain := filepath.Join(dir, "homebuild"), filepath.Join(dir, "plain")
	putFile(t, filepath.Join(dir, "main.go"), "package main\n\nimport \"fmt\"\n\nfunc main() { fmt.Println(\"plain 1.0\") }\n")
	for to, from := range map[string]string{ours: ".", plain: filepath.Join(dir, "main.go")} {
		build := exec.Command("go", "build", "-trimpath", "-ldflags", "-s -w", "-o", to, from)
		build.Env = append(os.Environ(), "CGO_ENABLED=0")
		if out, err := build.CombinedOutput(); err != nil {
			t.Fatalf("%v\n%s", err, out)
		}
	}
	const turns = 50
	costs := map[string][]cost{}
	for range turns {
		for _, program := range []string{plain, ours} {
			took, err := command(exec.Command(program, "--version"))
			if err != nil {
				t.Fatal(err)
			}
			costs[program] = append(costs[program], took)
		}
	}
	ms := func(program string, of func(cost) time.Duration) []float64 {
		return each(costs[program], func(c cost) float64 { return of(c).Seconds() * 1000 })
	}
	wall, cpu := func(c cost) time.Duration { return c.wall }, func(c cost) time.Duration { return c.cpu }
	fmt.Printf("\n| milliseconds, %d turns | by the clock | of processors |\n| --- | --- | --- |\n", turns)
	for _, program := range []string{plain, ours} {
		fmt.Printf("| %s --version | %s | %s |\n", filepath.Base(program), middle("%.1f", ms(program, wall)), middle("%.1f", ms(program, cpu)))
	}
	beside := make([]float64, turns)
	for i := range turns {
		beside[i] = (costs[ours][i].wall - costs[plain][i].wall).Seconds() * 1000
	}
	fmt.Printf("| beside each other | %s more | |\n", middle("%.1f", beside))
}
