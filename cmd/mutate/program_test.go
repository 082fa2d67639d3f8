package main

import (
	"os/exec"
	"strings"
	"testing"
	"time"
)

// Where the tests fail by themselves each change would be noticed.
func TestProve(t *testing.T) {
	for tests, want := range map[string]string{ // programs that do as they do
		"true":  "",
		"false": "the quick tests of testdata/tiny fail with nothing changed; mend them first (go test -short ./testdata/tiny)\n",
	} {
		file, err := exec.LookPath(tests)
		if err != nil {
			t.Fatal(err)
		}
		if got := text(program{file, "testdata/tiny", 1}.prove(t.Context())); got != want {
			t.Errorf("%s: want the error %q, got %q", tests, want, got)
		}
	}
}

func TestEnough(t *testing.T) {
	for used, want := range map[time.Duration]string{
		3900 * time.Millisecond: "",
		4 * time.Second:         "the quick tests of x need 4.0 seconds of the processor; a change must have five times as many (-cpu 21)",
	} {
		if got := text(program{folder: "x", seconds: 20}.enough(used)); got != want {
			t.Errorf("%v: want the error %q, got %q", used, want, got)
		}
	}
}

func text(err error) string {
	if err == nil {
		return ""
	}
	return err.Error()
}

func TestNoPackage(t *testing.T) {
	if _, err := load(t.Context(), "testdata/nothing"); err == nil || !strings.Contains(err.Error(), "go list ./testdata/nothing") {
		t.Errorf("want an error that says what to do, got %v", err)
	}
}
