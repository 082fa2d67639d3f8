package publish

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
)

// Replace gives one file that a person keeps other bytes, all at once or not at
// all. before is what was read: a file that holds something else by now is
// being written by somebody, and stays as it is.
func Replace(name string, before, after []byte) error {
	info, err := os.Lstat(name)
	if err != nil {
		return trouble(name, err)
	}
	if !info.Mode().IsRegular() {
		return &Trouble{Text: fmt.Sprintf("%q is not a plain file", name), Hint: "give the file itself"}
	}
	temp, err := os.CreateTemp(filepath.Dir(name), partPrefix+"*"+partSuffix)
	if err != nil {
		return trouble(name, err)
	}
	defer os.Remove(temp.Name()) // gone already when all went well
	defer temp.Close()
	_, err = temp.Write(after)
	if err := errors.Join(err, temp.Chmod(info.Mode().Perm()), temp.Sync(), temp.Close()); err != nil {
		return trouble(name, err)
	}
	now, err := os.ReadFile(name)
	if err != nil {
		return trouble(name, err)
	}
	if !bytes.Equal(now, before) {
		return &Trouble{Text: fmt.Sprintf("%q was saved by somebody at this very moment", name), Hint: "run the command again"}
	}
	if err := os.Rename(temp.Name(), name); err != nil {
		return trouble(name, err)
	}
	return nil
}
