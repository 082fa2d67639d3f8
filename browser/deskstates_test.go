//go:build browser

package browser_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
)

// Every state that the desk can be in says what it has to, in both of its languages.
func TestDeskStates(t *testing.T) {
	t.Parallel()
	bundle := filepath.Join(t.TempDir(), "states.js")
	if out, err := exec.Command("go", "tool", "esbuild", "testdata/desk-states.ts", "--bundle", "--format=iife", "--global-name=states", "--outfile="+bundle, "--log-level=warning").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	code, err := os.ReadFile(bundle)
	must(t, err)
	b := newProfile(t)
	b.visit("about:blank")
	eval[int](b, string(code)+"; globalThis.states = states; 1")
	type found struct {
		States int
		Lacks  []string
	}
	got, err := chromedp.Run(b.ctx, chromedp.Evaluate[found](`states.lacking()`, chromedp.EvalAwaitPromise))
	must(t, err)
	if got.States < 20 {
		t.Errorf("only %d states", got.States)
	}
	for _, lack := range got.Lacks {
		t.Error(lack)
	}
}
