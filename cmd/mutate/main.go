// Command mutate changes the code of rooms, one sign at a time, and lists each change
// that no test of its own room notices. It is for those who write the tests, and no
// part of the program: see make mutate, and docs/robustness.md for what it counted.
//
//	go run ./cmd/mutate internal/estimate internal/mistake
//	go run ./cmd/mutate -only borrow.go:23,slip.go internal/mistake
//
// Which changes there are, and which lines the tests run, gremlins says
// (https://github.com/go-gremlins/gremlins, unleash --dry-run). All changes of a
// package are then compiled into one program, each behind a switch, and its quick
// tests (-short) run once for each, until one fails. The folder itself stays as it is.
package main

import (
	"context"
	"flag"
	"fmt"
	"io"
	"log"
	"maps"
	"os"
	"os/signal"
	"path"
	"slices"
	"strings"
)

func main() {
	log.SetFlags(0)
	log.SetPrefix("mutate: ")
	var o options
	only := flag.String("only", "", "try only changes in these `places` of the rooms: files, or lines as file:line, with commas between")
	flag.IntVar(&o.seconds, "cpu", 20, "the `seconds` of the processor after which the tests of a change count as an endless loop; more where the tests need more")
	flag.BoolVar(&o.all, "all", false, "list what became of each change, not only what lived")
	flag.Parse()
	if flag.NArg() == 0 {
		log.Fatal("name the folders to change, from the root of the module, as in: go run ./cmd/mutate internal/estimate")
	}
	if *only != "" {
		o.only = strings.Split(*only, ",")
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	for _, room := range flag.Args() {
		if err := mutate(ctx, os.Stdout, path.Clean(room), o); err != nil {
			log.Fatal(err)
		}
	}
}

// options are what a person chose.
type options struct {
	only    []string // places; all of the room where there is none
	seconds int      // of the processor for the tests of one change, at least
	all     bool     // list each change
}

// mutate lists the changes of a room and of the rooms inside it, tries them, and tells
// what became of them.
func mutate(ctx context.Context, w io.Writer, room string, o options) error {
	changes, err := list(ctx, room)
	if err != nil {
		return err
	}
	if changes, err = chosen(changes, o.only); err != nil {
		return err
	}
	title := room
	if len(o.only) > 0 { // its figures are not those of the room
		title += ", only " + strings.Join(o.only, ", ")
	}
	fmt.Fprintln(w, title)
	packages := map[string][]*change{}
	for _, c := range changes {
		folder := path.Join(room, path.Dir(c.file))
		packages[folder] = append(packages[folder], c)
	}
	for _, folder := range slices.Sorted(maps.Keys(packages)) {
		tell := func(c *change) { fmt.Fprint(w, line(c, o.all)) }
		if err := try(ctx, folder, packages[folder], o.seconds, tell); err != nil {
			return err
		}
	}
	fmt.Fprintln(w, " ", summary(changes))
	return nil
}

// line is what a person reads of one change: nothing of one that was noticed, or is
// left out for a good reason, but where all are asked for.
func line(c *change, all bool) string {
	switch {
	case all:
		return fmt.Sprintf("  %s: %s\n", c, c.outcome)
	case c.outcome == lived:
		return fmt.Sprintf("  %s\n", c)
	case c.outcome == notTried:
		return fmt.Sprintf("  %s (not tried: no switch can stand there)\n", c)
	}
	return ""
}

// summary counts the changes by what became of them.
func summary(changes []*change) string {
	count := map[outcome]int{}
	for _, c := range changes {
		count[c.outcome]++
	}
	found := count[noticed] + count[endless]
	return fmt.Sprintf("%d tried: %d noticed (%d of them as an endless loop), %d lived; left out: %d do not compile, %d not tried, %d not covered",
		found+count[lived], found, count[endless], count[lived], count[notCompilable], count[notTried], count[notCovered])
}
