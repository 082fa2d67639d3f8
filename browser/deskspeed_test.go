//go:build browser

package browser_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"sync"
	"testing"
)

// deskFile is desk.html with the real engine inside, made once for all tests.
var deskFile = sync.OnceValues(func() (string, error) {
	dir, err := os.MkdirTemp("", "desk")
	if err != nil {
		return "", err
	}
	file := filepath.Join(dir, "desk.html")
	make := exec.Command("go", "run", "./cmd/desk-file", "-o", file)
	make.Dir = ".."
	if out, err := make.CombinedOutput(); err != nil {
		return "", fmt.Errorf("%w\n%s", err, out)
	}
	return file, nil
})
