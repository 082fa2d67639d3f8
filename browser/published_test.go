//go:build browser

package browser_test

import (
	"os"
	"testing"

	"homebuild/internal/recheck"
)

// The pages as they lie on the disk are rechecked. Those of the example school are, in
// a quick run, by TestEveryNumberIsRight of cmd/homebuild.
func TestPublishedFolder(t *testing.T) {
	t.Parallel()
	if *published == "" && !*all {
		t.Skip("make browser-all rechecks the folder")
	}
	report, problems := recheck.Site(os.DirFS(public))
	for _, p := range problems {
		t.Error(p)
	}
	t.Logf("%d pages", report.Pages)
}
