package main

import (
	"cmp"
	"context"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"time"

	"github.com/inconshreveable/mousetrap"

	"homebuild/internal/loopback"
)

// aloneTime is how long a desk that was opened by a double click goes on without its
// page. A reload takes seconds, and a closed desk should be gone when it is opened
// again.
const aloneTime = 2 * time.Minute

// newFolder is what the folder of a new desk is called, as in all our examples.
const newFolder = "my-class"

// doubleClicked reports whether the program was started from a window of files, and
// not by a command. No system says so; each has its signs.
func doubleClicked() bool {
	if len(os.Args) > 1 {
		return false
	}
	switch runtime.GOOS {
	case "windows":
		return mousetrap.StartedByExplorer()
	case "darwin": // a terminal opens in the home folder, and the program's whole path is typed there
		home, err := os.UserHomeDir()
		now, err2 := os.Getwd()
		return err == nil && err2 == nil && home == now && filepath.IsAbs(os.Args[0])
	}
	screen := os.Getenv("DISPLAY") != "" || os.Getenv("WAYLAND_DISPLAY") != ""
	return screen && !terminal(os.Stdin) && !terminal(os.Stdout) && !terminal(os.Stderr)
}

// runDoubleClick is the whole program after a double click.
func (s *streams) runDoubleClick() int {
	code := s.exitCode(s.doubleClick())
	if code != exitFine && runtime.GOOS == "windows" { // the window closes with the program
		s.say("press enter to close this window")
		_, _ = s.in.ReadString('\n')
	}
	return code
}

// doubleClick opens the desk of the folder that the program lies in.
func (s *streams) doubleClick() error {
	program, err := os.Executable()
	if err != nil {
		return err
	}
	if real, err := filepath.EvalSymlinks(program); err == nil {
		program = real
	}
	folder := deskBeside(filepath.Dir(program))
	begun := begin(context.Background(), folder)
	defer begun()
	if s.runs(context.Background(), folder, true) {
		return nil
	}
	listener, err := loopback.Listen(0)
	if err != nil {
		return err
	}
	if !isFolder(folder) {
		if err := os.Mkdir(folder, 0o755); err != nil {
			return err
		}
		defer os.Remove(folder) // which does nothing once there is a file in it
	}
	return s.desk(context.Background(), folder, listener, deskWishes{open: true, alone: aloneTime, begun: begun})
}

// deskBeside is the folder whose desk a program opens that lies in a folder: that one
// where it is a school's, or the one above; else the school in it that was worked at
// last; else one that is still to be made.
func deskBeside(folder string) string {
	if isSchool(folder) {
		return folder
	}
	above, below := schoolsNear(folder)
	switch {
	case above != "":
		return above
	case len(below) > 0:
		return slices.MaxFunc(below, func(a, b string) int { return cmp.Compare(workedAt(a), workedAt(b)) })
	}
	return filepath.Join(folder, newFolder)
}

// workedAt is when a school's weeks were changed last, in nanoseconds.
func workedAt(folder string) int64 {
	info, err := os.Stat(filepath.Join(folder, "weeks"))
	if err != nil {
		return 0
	}
	return info.ModTime().UnixNano()
}
