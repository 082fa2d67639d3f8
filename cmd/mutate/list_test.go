package main

import (
	"strings"
	"testing"
)

func TestParse(t *testing.T) {
	changes, err := parse("Starting...\n NOT COVERED ARITHMETIC_BASE at b.go:2:10\n    RUNNABLE ARITHMETIC_BASE at b.go:2:9\n    RUNNABLE CONDITIONALS_BOUNDARY at a/a.go:31:12\nRunnable: 2, Not covered: 1\n")
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, c := range changes {
		got = append(got, line(c, true))
	}
	const want = "  a/a.go:31:12: CONDITIONALS_BOUNDARY: to be tried\n  b.go:2:9: ARITHMETIC_BASE: to be tried\n  b.go:2:10: ARITHMETIC_BASE: not covered\n"
	if strings.Join(got, "") != want {
		t.Errorf("want\n%sgot\n%s", want, strings.Join(got, ""))
	}
	if _, err := parse("    RUNNABLE INVERT_LOGICAL at a.go:1:2\n"); err == nil || !strings.Contains(err.Error(), "a.go:1:2: gremlins lists a change of an unknown kind, INVERT_LOGICAL") {
		t.Errorf("a kind of change without its signs: got %v", err)
	}
}

func TestChosen(t *testing.T) {
	for _, row := range []struct {
		only  []string
		count int
		err   string
	}{
		{nil, 32, ""},
		{[]string{"tiny.go"}, 30, ""},
		{[]string{"inner/inner.go"}, 2, ""},
		{[]string{"tiny.go:46"}, 5, ""},
		{[]string{"tiny.go:4"}, 0, `no change is listed at "tiny.go:4"`},
		{[]string{"tiny.go:46:12", "tiny.go:50"}, 4, ""},
		{[]string{"tiny.go:46", "large.go"}, 0, `no change is listed at "large.go"`},
	} {
		changes, err := chosen(tiny(t), row.only)
		if len(changes) != row.count {
			t.Errorf("%q: want %d changes, got %d", row.only, row.count, len(changes))
		}
		if got := text(err); !strings.HasPrefix(got, row.err) || got != "" && row.err == "" {
			t.Errorf("%q: want the error %q, got %v", row.only, row.err, err)
		}
	}
}

func TestLine(t *testing.T) {
	for outcome, want := range map[outcome]string{
		lived:         "  a.go:1:2: ARITHMETIC_BASE\n",
		notTried:      "  a.go:1:2: ARITHMETIC_BASE (not tried: no switch can stand there)\n",
		noticed:       "",
		endless:       "",
		notCompilable: "",
		notCovered:    "",
	} {
		if got := line(&change{place: place{"a.go", 1, 2}, kind: "ARITHMETIC_BASE", outcome: outcome}, false); got != want {
			t.Errorf("%v: want %q, got %q", outcome, want, got)
		}
	}
}
