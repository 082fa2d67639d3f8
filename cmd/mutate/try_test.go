package main

import (
	"os"
	"path"
	"slices"
	"strings"
	"testing"
)

// want has what becomes of each change of testdata/tiny, worked out by hand.
var want = []struct {
	at      string
	outcome outcome
	why     string
}{
	{"inner/inner.go:5:38: > to >=", lived, "0 is not asked for"},
	{"inner/inner.go:5:38: > to <=", noticed, ""},
	{"tiny.go:10:17: + to -", noticed, "with whole numbers, and with others"},
	{"tiny.go:17:11: + to -", notCompilable, "a text minus a text"},
	{"tiny.go:17:18: + to -", notCompilable, "the other side of the same"},
	{"tiny.go:22:11: + to -", notCompilable, "it may stand for a text"},
	{"tiny.go:27:7: > to >=", lived, "of two that are equal either will do"},
	{"tiny.go:27:7: > to <=", noticed, ""},
	{"tiny.go:35:16: > to >=", lived, "0 more is as much"},
	{"tiny.go:35:16: > to <=", noticed, ""},
	{"tiny.go:35:22: -- to ++", endless, ""},
	{"tiny.go:36:17: + to -", noticed, ""},
	{"tiny.go:42:43: - to +", lived, "0 is its own opposite"},
	{"tiny.go:46:12: < to <=", lived, "no equal numbers are asked for"},
	{"tiny.go:46:12: < to >=", noticed, "the outer condition stays as it is"},
	{"tiny.go:46:17: == to !=", noticed, ""},
	{"tiny.go:46:23: < to <=", lived, "as with the first two"},
	{"tiny.go:46:23: < to >=", noticed, ""},
	{"tiny.go:50:33: % to *", noticed, ""},
	{"tiny.go:50:36: == to !=", noticed, ""},
	{"tiny.go:54:13: - to +", noticed, ""},
	{"tiny.go:60:17: * to /", notTried, "a constant"},
	{"tiny.go:61:14: + to -", notTried, "the length of an array"},
	{"tiny.go:62:23: / to *", notTried, "a constant of a type of its own"},
	{"tiny.go:64:14: - to +", noticed, "inside another"},
	{"tiny.go:64:27: ++ to --", noticed, "the function is called once"},
	{"tiny.go:65:15: ++ to --", noticed, ""},
	{"tiny.go:66:28: - to +", noticed, ""},
	{"tiny.go:67:8: ++ to --", notTried, "no int"},
	{"tiny.go:68:35: + to -", noticed, ""},
	{"tiny.go:71:38: * to /", noticed, ""},
	{"tiny.go:74:35: ARITHMETIC_BASE", notCovered, "no test runs it, and nobody looked at its sign"},
}

func tiny(t *testing.T) []*change {
	t.Helper()
	report, err := os.ReadFile("testdata/tiny.txt")
	if err != nil {
		t.Fatal(err)
	}
	changes, err := parse(string(report))
	if err != nil {
		t.Fatal(err)
	}
	return changes
}

func TestTry(t *testing.T) {
	changes := tiny(t)
	told := map[*change]bool{}
	tell := func(c *change) { told[c] = true }
	for _, folder := range []string{".", "inner"} {
		inside := slices.DeleteFunc(slices.Clone(changes), func(c *change) bool { return path.Dir(c.file) != folder })
		if err := try(t.Context(), path.Join("testdata/tiny", folder), inside, 1, tell); err != nil {
			t.Fatal(err)
		}
	}
	if len(changes) != len(want) || len(told) != len(want) {
		t.Fatalf("%d changes are listed and %d told, want %d", len(changes), len(told), len(want))
	}
	known := map[string]outcome{}
	for _, row := range want {
		known[row.at] = row.outcome
	}
	for _, c := range changes {
		if known[c.String()] != c.outcome {
			t.Errorf("%s: want %v, got %v", c, known[c.String()], c.outcome)
		}
	}
	const sum = "24 tried: 18 noticed (1 of them as an endless loop), 6 lived; left out: 3 do not compile, 4 not tried, 1 not covered"
	if got := summary(changes); got != sum {
		t.Errorf("want %s\n got %s", sum, got)
	}
}

// With nothing switched on the changed code does what the code does, and each line is
// where it was.
func TestNothingOn(t *testing.T) {
	const folder = "testdata/tiny"
	changes := slices.DeleteFunc(tiny(t), func(c *change) bool { return path.Dir(c.file) != "." })
	code, err := load(t.Context(), folder)
	if err != nil {
		t.Fatal(err)
	}
	changed, err := code.switchable(changes)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range code.files {
		was, is := strings.Split(string(f.text), "\n"), strings.Split(string(changed[f.name]), "\n")
		if slices.Equal(was, is) || len(was) != len(is) {
			t.Fatalf("%s: %d lines, with switches %d", f.name, len(was), len(is))
		}
		for i, line := range was {
			if strings.HasPrefix(line, "func ") && !strings.HasPrefix(is[i], line[:strings.Index(line, "{")]) {
				t.Errorf("%s:%d: want %s\ngot %s", f.name, i+1, line, is[i])
			}
		}
	}
	p := program{folder: folder, seconds: 5}
	if p.file, err = build(t.Context(), t.TempDir(), folder, changed); err != nil {
		t.Fatal(err)
	}
	if err := p.prove(t.Context()); err != nil {
		t.Error(err)
	}
}
