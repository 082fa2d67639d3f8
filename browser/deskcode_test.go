//go:build browser

package browser_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

const deskCode = "../internal/desk/page"

// The types of the desk's code are right, and its own tests hold.
func TestDeskCode(t *testing.T) {
	t.Parallel()
	if out, err := exec.Command("node_modules/.bin/tsc", "-p", deskCode).CombinedOutput(); err != nil {
		t.Errorf("types: %v\n%s", err, out)
	}
	tests, err := filepath.Glob(deskCode + "/*.test.ts")
	must(t, err)
	if len(tests) == 0 {
		t.Fatal("the desk's code has no tests")
	}
	dir := t.TempDir()
	args := append([]string{"tool", "esbuild", "--bundle", "--platform=node", "--format=cjs", "--out-extension:.js=.cjs", "--outdir=" + dir, "--log-level=warning"}, tests...)
	if out, err := exec.Command("go", args...).CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	code, err := filepath.Abs(deskCode)
	must(t, err)
	run := exec.Command("node", "--test", dir)
	run.Env = append(os.Environ(), "DESK_PAGE="+code)
	if out, err := run.CombinedOutput(); err != nil {
		t.Errorf("%v\n%s", err, out)
	}
}
