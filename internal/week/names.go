package week

import (
	"cmp"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"homebuild/internal/pattern"
)

// Endings of the files in the week folder.
const (
	weekEnding    = ".toml"
	storiesEnding = ".stories.toml"
)

// Path is where the week of a date stands in a school's folder, and StoriesPath
// where its kept stories do.
func Path(date string) string        { return path.Join(Folder, date+weekEnding) }
func StoriesPath(date string) string { return path.Join(Folder, date+storiesEnding) }

// IsWeek reports whether a path is that of a week's file.
func IsWeek(name string) bool {
	m := weekName().FindStringSubmatch(path.Base(name))
	return path.Dir(name) == Folder && m != nil && m[2] == ""
}

// fileName is what the name of a file in the week folder says.
type fileName struct {
	path string // weeks/2026-09-14.toml
	date string // 2026-09-14
}

var (
	weekName = pattern.Of(`(?i)^(\d{4}-\d{2}-\d{2})(\.stories)?\.toml$`)
	oldName  = pattern.Of(`(?i)^(\d{4}-\d{2}-\d{2})(?:\.([a-z0-9-]+))?\.md$`)
	someDate = pattern.Of(`^\d{1,4}[-._ /]?\d{1,2}[-._ /]?\d{1,4}`)
)

// listing is the week folder's files, parted.
type listing struct {
	weeks, stories, old []fileName
}

// sortOut parts the folder's files. What an editor or a computer leaves lying
// about is passed over; what looks meant is said.
func (r *reader) sortOut(entries []fs.DirEntry) (l listing) {
	taken := map[string]string{}
	for _, entry := range entries {
		to, name, ok := r.parseName(entry, &l)
		if !ok {
			continue
		}
		key := strings.ToLower(entry.Name())
		if first, ok := taken[key]; ok {
			r.add(name.path, 0, fmt.Sprintf("%q is for the same date", first), "keep one of the two")
			continue
		}
		taken[key] = name.path
		*to = append(*to, name)
	}
	return l
}

// parseName reads a file's name, and says what is wrong with it.
func (r *reader) parseName(entry fs.DirEntry, l *listing) (to *[]fileName, name fileName, ok bool) {
	full := path.Join(Folder, entry.Name())
	if leftover(entry.Name()) {
		return nil, name, false
	}
	if entry.IsDir() {
		r.add(full, 0, "folders inside weeks are not read", "put the week files straight into weeks")
		return nil, name, false
	}
	m := weekName().FindStringSubmatch(entry.Name())
	switch {
	case m != nil && m[2] != "":
		to = &l.stories
	case m != nil:
		to = &l.weeks
	default:
		to, m = &l.old, oldName().FindStringSubmatch(entry.Name())
	}
	if m == nil {
		r.badName(full, entry.Name())
		return nil, name, false
	}
	if _, problem := ParseDay(m[1]); problem != nil {
		r.misnamed = true
		r.add(full, 0, problem.Text, "name the file year-month-day, such as 2026-09-14.toml")
		return nil, name, false
	}
	return to, fileName{full, m[1]}, true
}

// badName speaks up about files that were surely meant as weeks.
func (r *reader) badName(full, name string) {
	ext := strings.ToLower(path.Ext(name))
	if ext != weekEnding && ext != oldEnding && !someDate().MatchString(name) {
		return
	}
	r.misnamed = true
	r.add(full, 0, fmt.Sprintf("%q is not the name of a week", name), renamed(name, r.allowed.Languages))
}

// olderForm says what to do with files of the older form. The notes in other
// languages come along with their week.
func (r *reader) olderForm(l listing) {
	dates := func(names []fileName) (out []string) {
		for _, n := range names {
			out = append(out, n.date)
		}
		return out
	}
	renewed := dates(l.weeks)
	var whole []string // dates that have a week of the older form
	for _, n := range l.old {
		if n.path == oldPath(n.date) {
			whole = append(whole, n.date)
		}
	}
	for _, n := range l.old {
		r.misnamed = true
		switch now := Path(n.date); {
		case slices.Contains(renewed, n.date):
			r.add(n.path, 0, fmt.Sprintf("this file is not read any more: %q has taken its place", now), "take it away")
		case n.path == oldPath(n.date):
			r.add(n.path, 0, "this week is in an older form", fmt.Sprintf("homebuild week --from %s turns it, and its notes in other languages, into %s", n.path, now))
		case !slices.Contains(whole, n.date):
			tag := strings.TrimSuffix(strings.TrimPrefix(path.Base(n.path), n.date+"."), path.Ext(n.path))
			r.add(n.path, 0, "a note stands in the file of its week now", fmt.Sprintf("write it into %s, below a line [note]: %s = three quotes, the words, three quotes", now, cmp.Or(languageMeant(tag, r.allowed.Languages), tag, "en")))
		}
	}
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
