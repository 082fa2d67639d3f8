// Command homebuild makes a school's pages for families from a folder of short
// files. The words of the command line are here, and nothing else.
package main

import "os"

func main() {
	tuneMemory()
	s := newStreams(os.Stdin, os.Stdout, os.Stderr)
	if doubleClicked() {
		os.Exit(s.runDoubleClick())
	}
	os.Exit(s.run(os.Args[1:]))
}

// Exit codes.
const (
	exitFine     = 0
	exitProblems = 1 // something in the files, or on the disk, needs a person
	exitWrongUse = 2 // the command line cannot be understood
)

// run runs a command line and gives the exit code.
func (s *streams) run(args []string) int {
	root := newRootCmd(s)
	root.SetArgs(args)
	return s.exitCode(root.Execute())
}
