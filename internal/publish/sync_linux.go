package publish

import (
	"os"

	"golang.org/x/sys/unix"
)

// syncFolder has everything written so far reach the disk, in one call: a
// power cut after the renames must not leave empty files behind them.
func syncFolder(root *os.Root) error {
	dir, err := root.Open(".")
	if err != nil {
		return err
	}
	defer dir.Close()
	return unix.Syncfs(int(dir.Fd()))
}
