//go:build browser

package browser_test

import (
	"os"
	"strings"
	"testing"

	"homebuild/internal/recheck"
)

// The pages as they lie on the disk are rechecked, and what they weigh is shown.
func TestPublishedFolder(t *testing.T) {
	t.Parallel()
	report, problems := recheck.Site(os.DirFS(public))
	for _, p := range problems {
		t.Error(p)
	}
	var table strings.Builder
	report.Table(&table)
	t.Logf("%d pages\n%s", report.Pages, table.String())
}
