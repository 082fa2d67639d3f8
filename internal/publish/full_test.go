//go:build long && linux

package publish

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"golang.org/x/sys/unix"
)

// A disk that fills up leaves the old site as it was, and says so.
func TestFullDisk(t *testing.T) {
	disk4M := t.TempDir()
	if err := unix.Mount("none", disk4M, "tmpfs", 0, "size=4m"); err != nil {
		t.Skip("this user may not mount a small disk: ", err)
	}
	t.Cleanup(func() { _ = unix.Unmount(disk4M, unix.MNT_DETACH) })
	dir := filepath.Join(disk4M, "public")
	site := func(version string, pages int) []File {
		var files []File
		for i := range pages {
			files = append(files, text(fmt.Sprintf("es/%d.html", i), strings.Repeat(version, 20_000)))
		}
		return append(files, text("index.html", version))
	}
	write(t, dir, site("a", 100)...)
	before := disk(t, dir)
	_, err := Write(dir, site("b", 150), Options{})
	if err == nil || !strings.HasPrefix(err.Error(), "the disk is full: no room for ") {
		t.Errorf("want the disk to be full, got %v", err)
	}
	if diff := cmp.Diff(before, disk(t, dir)); diff != "" {
		t.Errorf("the site changed (-before +after):\n%s", diff)
	}
	if got := write(t, dir, site("b", 10)...); got.Written != 11 || got.Removed != 90 {
		t.Errorf("a smaller site: want 11 written and 90 removed, got %+v", got)
	}
}

// A disk that may only be read is named.
func TestReadOnlyDisk(t *testing.T) {
	parent := t.TempDir()
	if err := unix.Mount("none", parent, "tmpfs", unix.MS_RDONLY, ""); err != nil {
		t.Skip("this user may not mount a disk: ", err)
	}
	t.Cleanup(func() { _ = unix.Unmount(parent, unix.MNT_DETACH) })
	dir := filepath.Join(parent, "public")
	_, err := Write(dir, []File{text("a.html", "a")}, Options{})
	checkError(t, err, fmt.Sprintf("%q is on a disk that cannot be written to", dir))
}
