package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"strconv"
	"time"

	"homebuild/cmd/mutate/switched"
)

// kilobytes are what the tests may use of the memory: a change may make a loop that
// fills it.
const kilobytes = 8_000_000

// program is the quick tests of a package, compiled with all changes inside.
type program struct {
	file    string
	folder  string // of the package, where go test runs them too
	seconds int    // of the processor, that a run may use
}

// build compiles the tests of a package, with the changed files in the place of those
// in its folder. What it writes is in a folder of the caller.
func build(ctx context.Context, temporary, folder string, changed map[string][]byte) (file string, err error) {
	replace := map[string]string{}
	for name, text := range changed {
		replace[name] = filepath.Join(temporary, filepath.Base(name))
		if err := os.WriteFile(replace[name], text, 0o644); err != nil {
			return "", err
		}
	}
	data, err := json.Marshal(map[string]any{"Replace": replace})
	if err != nil {
		return "", err
	}
	overlay := filepath.Join(temporary, "overlay.json")
	if err := os.WriteFile(overlay, data, 0o644); err != nil {
		return "", err
	}
	file = filepath.Join(temporary, path.Base(folder)+".test")
	cmd := exec.CommandContext(ctx, "go", "test", "-c", "-vet=off", "-ldflags=-w", "-overlay", overlay, "-o", file, "./"+folder)
	if report, err := cmd.CombinedOutput(); err != nil {
		return "", fmt.Errorf("the changed code of %s does not compile; mend cmd/mutate/rewrite.go: %w\n%s", folder, err, report)
	}
	return file, nil
}

// result is what came of running the tests once.
type result struct {
	outcome outcome
	used    time.Duration // of the processor
	report  []byte        // what the tests printed
}

// run runs the tests with one change switched on, or with none: 0. The limit counts
// what they work, and not how long they take, so that a busy computer changes nothing;
// the clock ends only tests that wait and do not work.
func (p program) run(ctx context.Context, number int) (r result, err error) {
	const limited = `ulimit -v "$1" 2>/dev/null; ulimit -t "$2" && shift 2 && exec "$@"`
	cmd := exec.CommandContext(ctx, "sh", "-c", limited, "sh", strconv.Itoa(kilobytes), strconv.Itoa(p.seconds),
		p.file, "-test.short", "-test.failfast", "-test.timeout=5m")
	cmd.Dir = p.folder
	cmd.Env = append(os.Environ(), "GOGC=400", "GOMAXPROCS=1", switched.Variable+"="+strconv.Itoa(number),
		"RAPID_NOFAILFILE=true") // else what failed is kept in the folder, and tried with the next change
	r.report, err = cmd.CombinedOutput()
	if ctx.Err() != nil {
		return r, ctx.Err()
	}
	if cmd.ProcessState == nil {
		return r, err
	}
	r.used = cmd.ProcessState.UserTime() + cmd.ProcessState.SystemTime()
	full := time.Duration(p.seconds)*time.Second - time.Second/2 // the kernel counts roughly
	switch {
	case err == nil:
		r.outcome = lived
	case r.used >= full, bytes.Contains(r.report, []byte("panic: test timed out")):
		r.outcome = endless
	default:
		r.outcome = noticed
	}
	return r, nil
}

// times is how much longer than all tests need those of a change may work: a test that
// fails may look for a reason.
const times = 5

// prove runs the tests with nothing switched on: they must pass. A change may then use
// at least several times what they used.
func (p *program) prove(ctx context.Context) error {
	r, err := p.run(ctx, 0)
	switch {
	case err != nil:
		return err
	case r.outcome == endless:
		return fmt.Errorf("the quick tests of %s need more than %d seconds of the processor with nothing changed; allow more (-cpu %d)", p.folder, p.seconds, times*p.seconds)
	case r.outcome != lived:
		return fmt.Errorf("the quick tests of %s fail with nothing changed; mend them first (go test -short ./%s)\n%s", p.folder, p.folder, r.report)
	}
	p.seconds = max(p.seconds, int(times*r.used.Seconds())+1)
	return nil
}
