package main

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"homebuild/internal/diag"
)

func TestColorOnlyHelpsTheEye(t *testing.T) {
	problems := diag.Diagnostics{{File: "site.toml", Line: 2, Text: `"x" is not a theme`, Hint: "there are: paper"}}
	var plain, painted bytes.Buffer
	(&streams{err: &plain}).problems(problems)
	(&streams{err: &painted, color: true}).problems(problems)
	if want := "site.toml:2: \"x\" is not a theme\n  hint: there are: paper\n"; plain.String() != want {
		t.Errorf("plain: want %q, got %q", want, plain.String())
	}
	want := "\x1b[1msite.toml:2:\x1b[0m \"x\" is not a theme\n  \x1b[2mhint:\x1b[0m there are: paper\n"
	if painted.String() != want {
		t.Errorf("painted: want %q, got %q", want, painted.String())
	}
	file, err := os.CreateTemp(t.TempDir(), "")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	if newStreams(strings.NewReader(""), nil, file).color || newStreams(strings.NewReader(""), nil, &plain).color {
		t.Error("color without a terminal: want none")
	}
}

func TestManyProblemsOfAFile(t *testing.T) {
	var problems diag.Diagnostics
	for line := range maxOfAFile + 5 {
		problems = append(problems, diag.Diagnostic{File: "a.toml", Line: line + 1, Text: "wrong"})
	}
	problems = append(problems, diag.Diagnostic{File: "b.toml", Line: 1, Text: "wrong"})
	var out bytes.Buffer
	(&streams{err: &out}).problems(problems)
	lines := strings.Split(strings.TrimSpace(out.String()), "\n")
	if len(lines) != maxOfAFile+2 || lines[maxOfAFile] != "a.toml: and 5 more" || lines[maxOfAFile+1] != "b.toml:1: wrong" {
		t.Errorf("want %d lines, the last two for the rest and for b.toml, got %d: %q", maxOfAFile+2, len(lines), lines[max(0, len(lines)-2):])
	}
}

func TestSize(t *testing.T) {
	tests := []struct {
		n    int64
		want string
	}{{0, "0 bytes"}, {1, "1 byte"}, {999, "999 bytes"}, {1000, "1 kB"}, {1499, "1 kB"}, {14_600, "15 kB"}, {1_000_000, "1.0 MB"}, {12_390_000, "12.3 MB"}}
	for _, test := range tests {
		if got := size(test.n); got != test.want {
			t.Errorf("size(%d): want %q, got %q", test.n, test.want, got)
		}
	}
}

// The program names its own bytes, the same every time.
func TestProgramSum(t *testing.T) {
	if a, b := programSum(), programSum(); len(a) != 64 || a != b {
		t.Errorf("want one SHA-256, got %q and %q", a, b)
	}
}

// A line of progress is for long work and for people alone, and is taken away.
func TestProgress(t *testing.T) {
	var out bytes.Buffer
	for _, row := range []struct {
		watched bool
		pages   int
		want    string // a part
	}{{true, fewPages, "\rmaking pages  200 of 400  50%\r"}, {true, fewPages - 1, ""}, {false, fewPages, ""}} {
		out.Reset()
		step, end := (&streams{err: &out, watched: row.watched}).progress("making pages")
		for range row.pages {
			step(row.pages)
		}
		end()
		if got := out.String(); !strings.Contains(got, row.want) || (row.want == "") != (got == "") {
			t.Errorf("%d pages, watched %t: want %q, got %q", row.pages, row.watched, row.want, got)
		} else if row.want != "" && strings.TrimSpace(got[strings.LastIndex(strings.TrimSuffix(got, "\r"), "\r"):]) != "" {
			t.Errorf("want the line taken away, got %q", got)
		}
	}
}
