package week

import (
	"fmt"
	"strings"

	"homebuild/internal/tomlfile"
)

// fence stands alone on the line before and after the settings.
const fence = "+++"

// front is a week file parted in two.
type front struct {
	settings string // TOML
	first    int    // the line that settings begin on
	note     string // Markdown
	noteLine int    // the line that the note begins on
}

// front parts a week file into settings and note.
func (r *reader) front(file, text string) (front, bool) {
	all := strings.Split(text, "\n")
	open := 0
	for strings.TrimSpace(all[open]) == "" {
		open++
	}
	if strings.TrimSpace(all[open]) != fence {
		r.noFence(file, open+1, all[open])
		return front{}, false
	}
	for i := open + 1; i < len(all); i++ {
		if strings.TrimSpace(all[i]) == fence {
			return front{
				settings: strings.Join(all[open+1:i], "\n"), first: open + 2,
				note: strings.Join(all[i+1:], "\n"), noteLine: i + 2,
			}, true
		}
	}
	r.add(file, open+1, "the settings begin here and never end", `write a second line "+++" after the last setting`)
	return front{}, false
}

// settingsBelow finds settings and stories of one's own in the note, where they
// would be shown to families and do nothing.
func (r *reader) settingsBelow(file string, f front, settings *tomlfile.Section) {
	const hint = `move it above the second "+++"`
	for number, line := range lines(f.note) {
		switch key, what := settings.Sets(line); {
		case what != "":
			r.add(file, f.noteLine+number-1, what+" stands in the note", hint+", with the lines that belong to it")
		case key != "":
			r.add(file, f.noteLine+number-1, fmt.Sprintf("%q is a setting, and stands in the note", key), hint)
		}
	}
}

// noFence says how a week file begins instead of with a fence.
func (r *reader) noFence(file string, line int, typed string) {
	typed = strings.TrimSpace(typed)
	switch {
	case len(typed) >= 2 && strings.Trim(typed, "+-=~*") == "":
		r.add(file, line, fmt.Sprintf("%q does not open the settings", typed), `write three plus signs, "+++", before and after the settings`)
	case strings.Contains(typed, "="):
		r.add(file, line, `the line "+++" is missing before the settings`, `write three plus signs, "+++", before and after the settings`)
	default:
		r.add(file, line, "the file begins with the note and has no settings", "begin with these lines: +++, target = \"add-within-20\", +++")
	}
}
