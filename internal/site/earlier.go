package site

import (
	"path"
	"regexp"
	"strings"
)

var beginsWithDate = regexp.MustCompile(`^\d{4}-\d{2}-\d{2}`)

// Belongs tells the language and the week that a published file is of, by its name:
// "es" and "2026-09-14" for "es/2026-09-14-try.html". Either is empty where the file
// is of none or of all.
func Belongs(name string) (tag, date string) {
	if folder, _, ok := strings.Cut(name, "/"); ok {
		tag = folder
	}
	return tag, beginsWithDate.FindString(path.Base(name))
}
