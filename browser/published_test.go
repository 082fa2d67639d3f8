//go:build browser

package browser_test

import (
	"os"
	"testing"

	"homebuild/internal/recheck"
)

// The pages as they lie on the disk are rechecked.
func TestPublishedFolder(t *testing.T) {
	t.Parallel()
	report, problems := recheck.Site(os.DirFS(public))
	for _, p := range problems {
		t.Error(p)
	}
	t.Logf("%d pages", report.Pages)
}
