package publish

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A person's file gets its new bytes whole, keeps its rights, and is left alone
// when it is not what was read.
func TestReplace(t *testing.T) {
	tests := []struct {
		name, holds, before string
		link                bool
		want, wantErr       string
	}{
		{"as it was read", "old", "old", false, "new", ""},
		{"saved meanwhile", "newer", "old", false, "newer", "at this very moment"},
		{"a link", "old", "old", true, "old", "is not a plain file"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			dir := t.TempDir()
			file := filepath.Join(dir, "xx.toml")
			name := file
			put(t, file, test.holds)
			if err := os.Chmod(file, 0o640); err != nil {
				t.Fatal(err)
			}
			if test.link {
				name = filepath.Join(dir, "link.toml")
				if err := os.Symlink(file, name); err != nil {
					t.Fatal(err)
				}
			}
			err := Replace(name, []byte(test.before), []byte("new"))
			if (err == nil) != (test.wantErr == "") || err != nil && !strings.Contains(err.Error(), test.wantErr) {
				t.Errorf("want error %q, got %v", test.wantErr, err)
			}
			data, _ := os.ReadFile(file)
			info, _ := os.Stat(file)
			if string(data) != test.want || info.Mode().Perm() != 0o640 {
				t.Errorf("want %q with rights 640, got %q with %o", test.want, data, info.Mode().Perm())
			}
			if left, _ := filepath.Glob(filepath.Join(dir, ".*")); len(left) > 0 {
				t.Errorf("left behind: %v", left)
			}
		})
	}
	if err := Replace(filepath.Join(t.TempDir(), "none.toml"), nil, nil); err == nil {
		t.Error("no file: want an error")
	}
}
