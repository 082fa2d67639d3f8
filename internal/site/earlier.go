package site

import (
	"regexp"
	"strings"
)

var beginsWithDate = regexp.MustCompile(`^\d{4}-\d{2}-\d{2}`)

// Belongs tells the language and the week that a published file is of, by its path:
// "es" and "2026-09-14" for "es/2026-09-14-try.html". Either is empty where the file
// is of none or of all.
func Belongs(path string) (tag, date string) {
	name := path
	if folder, rest, ok := strings.Cut(path, "/"); ok {
		tag, name = folder, rest
	}
	return tag, beginsWithDate.FindString(name)
}
