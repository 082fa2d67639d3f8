// Command homebuild makes a school's pages for families from a folder of short
// files. The words of the command line are here, and nothing else.
package main

import (
	"io"
	"os"
	"runtime/debug"
)

func main() {
	tuneMemory()
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

// tuneMemory trades memory for time while there is plenty: a build makes much
// that is thrown away at once. A person's own GOGC or GOMEMLIMIT comes first.
func tuneMemory() {
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(400)
	}
	if os.Getenv("GOMEMLIMIT") == "" {
		debug.SetMemoryLimit(200 << 20) // then it is collected more often
	}
}

// Exit codes.
const (
	exitFine     = 0
	exitProblems = 1 // something in the files, or on the disk, needs a person
	exitWrongUse = 2 // the command line cannot be understood
)

// run is the whole program but for its end.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	s := newStreams(stdin, stdout, stderr)
	root := newRootCmd(s)
	root.SetArgs(args)
	return s.report(root.Execute())
}
