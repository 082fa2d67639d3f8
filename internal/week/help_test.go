package week

import (
	"io/fs"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// checkProblems reads a folder and compares everything a teacher is told.
func checkProblems(t *testing.T, fsys fs.FS, want string) {
	t.Helper()
	_, problems := Read(fsys, someAllowed())
	if diff := cmp.Diff(want, problems.Error()); diff != "" {
		t.Errorf("problems mismatch (-want +got):\n%s", diff)
	}
}
