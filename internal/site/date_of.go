package site

import (
	"path"

	"homebuild/internal/pattern"
)

var beginsWithDate = pattern.Of(`^\d{4}-\d{2}-\d{2}`)

// DateOf is the date of the week that a published file is of, by its name:
// "2026-09-14" for "es/2026-09-14-try.html". It is empty for a file that is of none.
func DateOf(name string) string { return beginsWithDate().FindString(path.Base(name)) }
