package main

import (
	"bytes"
	"encoding/json"
	"os"
	"strings"
	"testing"

	"homebuild/internal/diag"
)

func TestColourOnlyHelpsTheEye(t *testing.T) {
	problems := diag.Problems{{File: "site.toml", Line: 2, Text: `"x" is not a theme`, Hint: "there are: paper"}}
	var plain, painted bytes.Buffer
	(&streams{err: &plain}).problems(problems)
	(&streams{err: &painted, colour: true}).problems(problems)
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
	if newStreams(nil, nil, file).colour || newStreams(nil, nil, &plain).colour {
		t.Error("colour without a terminal: want none")
	}
}

func TestManyProblemsOfAFile(t *testing.T) {
	var problems diag.Problems
	for line := range maxOfAFile + 5 {
		problems = append(problems, diag.Problem{File: "a.md", Line: line + 1, Text: "wrong"})
	}
	problems = append(problems, diag.Problem{File: "b.md", Line: 1, Text: "wrong"})
	var out bytes.Buffer
	(&streams{err: &out}).problems(problems)
	lines := strings.Split(strings.TrimSpace(out.String()), "\n")
	if len(lines) != maxOfAFile+2 || lines[maxOfAFile] != "a.md: and 5 more" || lines[maxOfAFile+1] != "b.md:1: wrong" {
		t.Errorf("want %d lines, the last two for the rest and for b.md, got %d: %q", maxOfAFile+2, len(lines), lines[max(0, len(lines)-2):])
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

// Every target can be written into a week file and says what a child can do.
func TestTargetsAsJSON(t *testing.T) {
	var out, errs bytes.Buffer
	if code := run([]string{"targets", "--json"}, nil, &out, &errs); code != exitFine {
		t.Fatalf("exit code %d: %s", code, errs.String())
	}
	var entries []targetEntry
	if err := json.Unmarshal(out.Bytes(), &entries); err != nil {
		t.Fatal(err)
	}
	seen := map[string]bool{}
	for _, e := range entries {
		if seen[e.ID] || !strings.HasPrefix(e.Can, "I can ") || len(e.Standards) == 0 || len(e.Kinds) == 0 || e.Within < 5 {
			t.Errorf("target %+v: want a new id, \"I can\", standards, kinds and a range", e)
		}
		seen[e.ID] = true
	}
	if !seen["add-within-20"] {
		t.Error("want add-within-20, which the documentation names")
	}
}
