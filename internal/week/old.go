package week

import (
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/textfile"
)

// Weeks had another form once: settings between two lines of three plus signs,
// the note below, and the note in another language in a file of its own. Such a
// file is read only to be turned into the form of today.
const (
	fence     = "+++"
	oldEnding = ".md"
)

// oldPath is where a week of the older form stands.
func oldPath(date string) string { return path.Join(Folder, date+oldEnding) }

// OldDate is the date of a week of the older form by the name of its file; empty
// for other files, notes in other languages among them.
func OldDate(name string) string {
	m := oldName().FindStringSubmatch(path.Base(name))
	if m == nil || m[2] != "" {
		return ""
	}
	return m[1]
}

// Renewed is a week of the older form, turned into the form of today.
type Renewed struct {
	Date string
	Text string   // of the new file
	From []string // the files that it holds all of
}

// Renew turns the week of a date into the form of today, with its notes in other
// languages. The note of the old week's own file is in the language of the
// school. Nothing is judged: whoever reads the new file does that.
func Renew(fsys fs.FS, date, school string) (Renewed, *diag.Diagnostic) {
	out := Renewed{Date: date, From: []string{oldPath(date)}}
	text, problem := textfile.Read(fsys, out.From[0])
	if problem != nil {
		return out, problem
	}
	settings, note, ok := parted(text)
	if !ok {
		return out, &diag.Diagnostic{File: out.From[0], Text: "its settings do not stand between two lines of three plus signs",
			Hint: fmt.Sprintf("begin the week anew, homebuild week --monday %s, and copy what you need", date)}
	}
	notes := map[string]string{}
	if note = strings.TrimSpace(note); note != "" {
		notes[school] = note
	}
	entries, _ := fs.ReadDir(fsys, Folder) // it was read from a moment ago
	for _, entry := range entries {
		m := oldName().FindStringSubmatch(entry.Name())
		if m == nil || m[1] != date || m[2] == "" {
			continue
		}
		name := path.Join(Folder, entry.Name())
		words, problem := textfile.Read(fsys, name)
		if problem != nil {
			return out, problem
		}
		if notes[m[2]] == "" {
			notes[m[2]] = strings.TrimSpace(words)
			out.From = append(out.From, name)
		}
	}
	out.Text = settingsNow(settings) + noteTable(notes, school)
	return out, nil
}

// parted parts a file of the older form.
func parted(text string) (settings, note string, ok bool) {
	lines := strings.Split(text, "\n")
	isFence := func(line string) bool { return strings.TrimSpace(line) == fence }
	open := slices.IndexFunc(lines, isFence)
	if open < 0 {
		return "", "", false
	}
	length := slices.IndexFunc(lines[open+1:], isFence)
	if length < 0 {
		return "", "", false
	}
	end := open + 1 + length
	return strings.Join(lines[open+1:end], "\n"), strings.Join(lines[end+1:], "\n"), true
}

// settingsNow are the settings without the remarks that explained the older form.
func settingsNow(settings string) string {
	var kept []string
	about := false // a remark about the older form goes on
	for line := range strings.SplitSeq(strings.TrimSpace(settings), "\n") {
		about = strings.HasPrefix(line, "#") && (about || strings.HasPrefix(line, "# Below the next "+fence))
		if !about {
			kept = append(kept, strings.Replace(line, " The lines from here to the next "+fence+" are settings.", "", 1))
		}
	}
	return strings.TrimSpace(strings.Join(kept, "\n")) + "\n"
}

// noteTable writes notes as a table, that of the school first.
func noteTable(notes map[string]string, school string) string {
	if len(notes) == 0 {
		return ""
	}
	var b strings.Builder
	b.WriteString("\n[note]\n")
	tags := slices.Sorted(maps.Keys(notes))
	if i := slices.Index(tags, school); i > 0 {
		tags = slices.Insert(slices.Delete(tags, i, i+1), 0, school)
	}
	for _, tag := range tags {
		fmt.Fprintf(&b, "%s = \"\"\"\n%s\n\"\"\"\n", tag, Quotable(notes[tag]))
	}
	return b.String()
}

// Quotable is a text as it stands between three quotes in a TOML file.
func Quotable(text string) string {
	return strings.NewReplacer(`\`, `\\`, `"""`, `""\"`).Replace(text)
}
