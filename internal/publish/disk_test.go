package publish

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"syscall"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// Two builds at once: the second says who is at work, and goes when told so.
func TestLock(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "public")
	inside, goOn, done := make(chan bool), make(chan bool), make(chan error)
	go func() {
		_, err := Write(dir, []File{{Path: "a.html", Render: func() ([]byte, error) {
			inside <- true
			<-goOn
			return []byte("first"), nil
		}}}, Options{})
		done <- err
	}()
	<-inside
	_, err := Write(dir, []File{text("a.html", "second")}, Options{})
	want := regexp.MustCompile(fmt.Sprintf(`^another build is writing %q \(process %d since \d{4}-\d\d-\d\d \d\d:\d\d:\d\d\)$`, dir, os.Getpid()))
	if err == nil || !want.MatchString(err.Error()) {
		t.Errorf("want an error like %q, got %v", want, err)
	}
	close(goOn)
	if err := <-done; err != nil {
		t.Errorf("the first build: %v", err)
	}
	if got := write(t, dir, text("a.html", "second")); got.Written != 1 {
		t.Errorf("the build after it: want 1 written, got %+v", got)
	}
}

func TestFoldersThatCannotBe(t *testing.T) {
	parent := t.TempDir()
	put(t, filepath.Join(parent, "file"), "x")
	put(t, filepath.Join(parent, "public", "es"), "x")
	tests := []struct{ dir, page, want string }{
		{"file", "a.html", fmt.Sprintf("%q is a file, and a folder is needed there", filepath.Join(parent, "file"))},
		{"public", "es/a.html", fmt.Sprintf("%q is a file, and a folder is needed there", filepath.Join(parent, "public", "es"))},
	}
	for _, test := range tests {
		_, err := Write(filepath.Join(parent, test.dir), []File{text(test.page, "a")}, Options{})
		checkError(t, err, test.want)
	}
}

// A folder that is taken away in the middle, as a stick is.
func TestFolderGoesAway(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "public")
	take := func() ([]byte, error) { return []byte("x"), os.RemoveAll(dir) }
	_, err := Write(dir, []File{{Path: "a.html", Render: take}}, Options{Workers: 1})
	checkError(t, err, fmt.Sprintf("%q went away while the site was written", filepath.Join(dir, "a.html")))
}

func TestFolderThatMayNotBeWritten(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "public")
	if err := os.Mkdir(dir, 0o555); err != nil {
		t.Fatal(err)
	}
	if os.WriteFile(filepath.Join(dir, "probe"), nil, 0o644) == nil {
		t.Skip("this user may write anywhere (root); TestWordsForTheDisk covers the words")
	}
	_, err := Write(dir, []File{text("a.html", "a")}, Options{})
	checkError(t, err, fmt.Sprintf("%q may not be written to by you", filepath.Join(dir, "a.html")))
}

// Kernel folders refuse new files even to root.
func TestFolderThatNobodyMayWrite(t *testing.T) {
	if _, err := os.Stat("/proc/self"); err != nil {
		t.Skip("this system has no /proc")
	}
	_, err := Write("/proc/homebuild/public", []File{text("a.html", "a")}, Options{})
	checkError(t, err, `"/proc/homebuild/public" cannot be made: no such file or directory`)
}

func TestWordsForTheDisk(t *testing.T) {
	tests := []struct {
		err  error
		want string
	}{
		{syscall.ENOSPC, `the disk is full: no room for "a.html"`},
		{syscall.EDQUOT, `the disk is full: no room for "a.html"`},
		{syscall.EROFS, `"a.html" is on a disk that cannot be written to`},
		{syscall.EACCES, `"a.html" may not be written to by you`},
		{syscall.ENOENT, `"a.html" went away while the site was written`},
	}
	for _, test := range tests {
		checkError(t, diskError("a.html", &fs.PathError{Op: "open", Path: "x", Err: test.err}), test.want)
	}
	if got, want := diskError("a.html", &fs.PathError{Op: "open", Path: "x", Err: syscall.EIO}).Error(), `"a.html" cannot be written: `+syscall.EIO.Error(); got != want {
		t.Errorf("another error: want %q, got %q", want, got)
	}
}

// A record that is not ours to read stops the build: without it nobody knows
// which files may be removed.
func TestRecordThatCannotBeRead(t *testing.T) {
	parent := t.TempDir()
	dir := filepath.Join(parent, "public")
	write(t, dir, text("a.html", "a"))
	manifest := filepath.Join(parent, stateFolder, "public.manifest")
	put(t, manifest, strings.Repeat("0", 64)+"  ../../secret\n")
	before := disk(t, dir)
	_, err := Write(dir, []File{text("a.html", "b")}, Options{})
	checkError(t, err, fmt.Sprintf("%q cannot be read: line 1 is not one of ours", manifest))
	if diff := cmp.Diff(before, disk(t, dir)); diff != "" {
		t.Errorf("the site changed (-before +after):\n%s", diff)
	}
}
