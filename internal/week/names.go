package week

import (
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"strings"
	"time"
)

// fileName is what the name of a file in the week folder says.
type fileName struct {
	path string // weeks/2026-09-14.es.md
	date string // 2026-09-14
	tag  string // es; empty for the week itself
}

var (
	weekName = regexp.MustCompile(`^(\d{4}-\d{2}-\d{2})(?:\.([A-Za-z0-9-]+))?\.[mM][dD]$`)
	someDate = regexp.MustCompile(`^\d{1,4}[-._ /]?\d{1,2}[-._ /]?\d{1,4}`)
)

// sortOut parts the folder's files into weeks and notes. What an editor or a
// computer leaves lying about is passed over; what looks meant is said.
func (r *reader) sortOut(entries []fs.DirEntry) (weeks, notes []fileName) {
	taken := map[string]string{}
	for _, entry := range entries {
		name, ok := r.parseName(entry)
		if !ok {
			continue
		}
		key := name.date + "." + strings.ToLower(name.tag)
		if first, ok := taken[key]; ok {
			r.add(name.path, 0, fmt.Sprintf("%q is for the same date", first), "keep one of the two")
			continue
		}
		taken[key] = name.path
		if name.tag == "" {
			weeks = append(weeks, name)
		} else {
			notes = append(notes, name)
		}
	}
	return weeks, notes
}

// parseName reads a file's name, and says what is wrong with it.
func (r *reader) parseName(entry fs.DirEntry) (fileName, bool) {
	name := entry.Name()
	full := path.Join(Folder, name)
	if leftover(name) {
		return fileName{}, false
	}
	if entry.IsDir() {
		r.add(full, 0, "folders inside weeks are not read", "put the week files straight into weeks")
		return fileName{}, false
	}
	m := weekName.FindStringSubmatch(name)
	if m == nil {
		r.badName(full, name)
		return fileName{}, false
	}
	if _, err := time.Parse(time.DateOnly, m[1]); err != nil {
		r.add(full, 0, fmt.Sprintf("%q is not a day of the calendar", m[1]), "name the file year-month-day, such as 2026-09-14.md")
		return fileName{}, false
	}
	return fileName{path: full, date: m[1], tag: m[2]}, true
}

// badName speaks up about files that were surely meant as weeks.
func (r *reader) badName(full, name string) {
	ext := strings.ToLower(path.Ext(name))
	if ext != ".md" && !someDate.MatchString(name) {
		return
	}
	r.misnamed = true
	r.add(full, 0, fmt.Sprintf("%q is not the name of a week", name), renamed(name, r.allowed.Languages))
}

// leftover reports names that computers and editors make by themselves.
func leftover(name string) bool {
	return strings.HasPrefix(name, ".") || strings.HasPrefix(name, "~") || strings.HasPrefix(name, "#") ||
		strings.HasSuffix(name, "~") || strings.EqualFold(name, "Thumbs.db") || strings.EqualFold(name, "desktop.ini")
}

// sameWord finds a word in a list, whatever its capitals.
func sameWord(typed string, list []string) (string, bool) {
	for _, word := range list {
		if strings.EqualFold(typed, word) {
			return word, true
		}
	}
	return "", false
}
