package main

import (
	"errors"
	"flag"
	"os"
	"os/exec"
	"strconv"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"homebuild/internal/weight"
)

var update = flag.Bool("update", false, "rewrite what the scripts expect")

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"homebuild": func() {
			tuneMemory()
			s := newStreams(os.Stdin, os.Stdout, os.Stderr)
			s.now = testDay
			if os.Getenv(oneProgram) != "" { // the same one all the time, and large
				s.program = func() string { return "under test" }
			}
			if doubleClicked() {
				os.Exit(s.runDoubleClick())
			}
			os.Exit(s.run(os.Args[1:]))
		},
	})
}

// oneProgram, set for the scripts, saves naming the program's bytes anew in each
// of their commands.
const oneProgram = "HOMEBUILD_TEST_ONE_PROGRAM"

// The scripts are what the command line promises: output, errors, exit codes.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "testdata/script",
		UpdateScripts:       *update,
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Setup: func(env *testscript.Env) error {
			env.Setenv(oneProgram, "1")
			return nil
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){"code": code, "weighs": weighs},
	})
}

// code runs a program and wants its exit code: code 2 homebuild bluid.
func code(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: code number program args...")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	got := 0
	var exit *exec.ExitError
	if err := ts.Exec(args[1], args[2:]...); errors.As(err, &exit) {
		got = exit.ExitCode()
	} else if err != nil {
		ts.Fatalf("%v", err)
	}
	if got != want {
		ts.Fatalf("exit code: want %d, got %d", want, got)
	}
}

// weighs wants files to be at most so many bytes, compressed: weighs 60000 a.html.
func weighs(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: weighs most file...")
	}
	most, err := strconv.Atoi(args[0])
	ts.Check(err)
	for _, name := range args[1:] {
		if n := weight.Of([]byte(ts.ReadFile(name))); n > most {
			ts.Fatalf("%s has %d bytes compressed, want at most %d", name, n, most)
		}
	}
}
