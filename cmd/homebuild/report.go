package main

// How this program speaks. Lower case, no full stop, no blame. It says what is
// the matter, not that something failed, names the file, the line and the word
// that was typed, in quotes, and gives one next step on a line of its own:
//
//	weeks/2026-09-14.toml:3: "make-tne" is not a strategy
//	  hint: did you mean "make-ten"?
//
// Results go to standard output, everything for a person to mend to standard
// error. Color only helps the eye, only on a terminal, and never when NO_COLOR
// is set (no-color.org).

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"slices"
	"strings"
	"time"
	"unicode"

	"github.com/mattn/go-isatty"

	"homebuild/internal/diag"
	"homebuild/internal/publish"
)

// streams are where words come from and go to.
type streams struct {
	in       *bufio.Reader
	out, err io.Writer
	color    bool             // whether err is a terminal that shows colors
	watched  bool             // whether a person reads err as it is written, and it can be rewritten
	person   bool             // whether there is someone to ask, too
	now      func() time.Time // the clock, read once a command
	today    string           // the day that the command works with: 2026-09-14
	program  func() string    // names the bytes of the running program
}

func newStreams(in io.Reader, out, err io.Writer) *streams {
	shown := terminal(err)
	dumb := os.Getenv("TERM") == "dumb"
	return &streams{
		in: bufio.NewReader(in), out: out, err: err, now: time.Now, program: programSum,
		watched: shown && !dumb, person: shown && terminal(in), color: shown && !dumb && os.Getenv("NO_COLOR") == "",
	}
}

// silenced says nothing but what a person must act on.
func (s *streams) silenced() *streams {
	quiet := *s
	quiet.out, quiet.watched = io.Discard, false
	return &quiet
}

// terminal reports whether a stream is a person's terminal.
func terminal(stream any) bool {
	file, ok := stream.(*os.File)
	return ok && (isatty.IsTerminal(file.Fd()) || isatty.IsCygwinTerminal(file.Fd()))
}

// say writes a line of the result.
func (s *streams) say(format string, args ...any) { fmt.Fprintf(s.out, format+"\n", args...) }

// writeJSON writes a value for another program.
func (s *streams) writeJSON(value any) error {
	encoder := json.NewEncoder(s.out)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	return encoder.Encode(value)
}

// wrongUse is the error for a command line that cannot be understood: a problem that
// is in no file.
func wrongUse(text, hint string) error { return diag.Diagnostics{{Text: text, Hint: hint}} }

// refused is wrongUse for an answer or a flag that cannot stand; nil for one
// that can.
func refused(p *diag.Diagnostic) error {
	if p == nil {
		return nil
	}
	return wrongUse(p.Text, p.Hint)
}

// errReported says that the person has been told all there is.
var errReported = errors.New("reported already")

// exitCode tells an error and gives the exit code.
func (s *streams) exitCode(err error) int {
	var problems diag.Diagnostics
	var disk *publish.Error
	switch {
	case err == nil:
		return exitFine
	case errors.Is(err, errReported):
	case errors.As(err, &problems):
		if problems[0].File == "" {
			s.tell(problems[0].Text, problems[0].Hint)
			return exitWrongUse
		}
		s.problems(problems)
		s.tell(diag.Amount(len(problems), "thing", "things")+" to mend; nothing was written", "")
	case errors.As(err, &disk):
		s.tell(disk.Text, disk.Hint)
	default:
		s.tell(err.Error(), "")
	}
	return exitProblems
}

// maxOfAFile is how much of one file is told at once: more is one slip many
// times over, or the wrong file.
const maxOfAFile = 30

// problems tells each problem of the files.
func (s *streams) problems(problems diag.Diagnostics) {
	count := map[string]int{}
	for i, p := range problems {
		count[p.File]++
		if last := i+1 == len(problems) || problems[i+1].File != p.File; count[p.File] > maxOfAFile {
			if last {
				s.tell(fmt.Sprintf("%s and %d more", s.bold(p.File+":"), count[p.File]-maxOfAFile), "")
			}
			continue
		}
		place := p
		place.File = shown(p.File)
		place.Text, place.Hint = "", ""
		s.tell(s.bold(strings.TrimRight(place.String(), " "))+" "+p.Text, p.Hint)
	}
}

// notices tells what a person may want to know and need not mend.
func (s *streams) notices(notices diag.Diagnostics) {
	notes := slices.Clone(notices)
	for i := range notes {
		notes[i].Text = "note: " + notes[i].Text
	}
	s.problems(notes)
}

// tell writes one thing for a person to act on.
func (s *streams) tell(text, hint string) {
	fmt.Fprintln(s.err, clipped(text))
	if hint != "" {
		fmt.Fprintln(s.err, "  "+s.faint("hint:")+" "+clipped(hint))
	}
}

// shown is a file's name without the letters that a terminal obeys.
func shown(name string) string {
	return strings.Map(func(c rune) rune {
		if unicode.IsControl(c) || unicode.Is(unicode.Bidi_Control, c) {
			return unicode.ReplacementChar
		}
		return c
	}, name)
}

// maxText is how long a text may be, in bytes: several pages that cannot be made
// are told in one. A file can hold a word of a million letters.
const maxText = 4000

func clipped(text string) string {
	if len(text) <= maxText {
		return text
	}
	return strings.ToValidUTF8(text[:maxText], "") + " ..."
}

func (s *streams) bold(text string) string  { return s.paint("1", text) }
func (s *streams) faint(text string) string { return s.paint("2", text) }

func (s *streams) paint(code, text string) string {
	if !s.color {
		return text
	}
	return "\x1b[" + code + "m" + text + "\x1b[0m"
}

// size is a number of bytes as people read it.
func size(n int64) string {
	switch {
	case n < 1000:
		return diag.Amount(int(n), "byte", "bytes")
	case n < 1_000_000:
		return fmt.Sprintf("%d kB", (n+500)/1000)
	}
	return fmt.Sprintf("%d.%d MB", n/1_000_000, n/100_000%10)
}
