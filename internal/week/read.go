package week

import (
	"errors"
	"fmt"
	"io/fs"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/textfile"
	"homebuild/internal/tomlfile"
)

// SiteFile and Folder are where the files stand in a school's folder.
const (
	SiteFile = "site.toml"
	Folder   = "weeks"
)

// Read reads and checks every file of a school's folder. All problems come at
// once, sorted by place; the site is fit to build only when there are none.
// For a folder on disk give os.Root's file system, which keeps links inside.
func Read(fsys fs.FS, allowed Allowed) (Site, diag.Diagnostics) {
	r := &reader{fsys: fsys, allowed: allowed}
	site := r.site()
	r.weeks(&site)
	r.problems.Sort()
	return site, r.problems
}

// reader gathers the problems of one run.
type reader struct {
	fsys     fs.FS
	allowed  Allowed
	problems diag.Diagnostics
	misnamed bool // whether a file was surely meant as a week and is called otherwise
}

// addCoded is add for a problem that has a code, with its value.
func (r *reader) addCoded(code, value, file string, line int, text, hint string) {
	r.problems = append(r.problems, diag.Diagnostic{File: file, Line: line, Text: text, Hint: hint, Code: code, Value: value})
}

// add notes a problem. The hint is the next step.
func (r *reader) add(file string, line int, text, hint string) {
	r.problems = append(r.problems, diag.Diagnostic{File: file, Line: line, Text: text, Hint: hint})
}

// weeks reads the week folder.
func (r *reader) weeks(site *Site) {
	if linked := textfile.Link(r.fsys, Folder); linked != nil {
		r.problems = append(r.problems, *linked)
		return
	}
	entries, err := fs.ReadDir(r.fsys, Folder)
	if err != nil {
		r.noFolder(err)
		return
	}
	found := r.sortOut(entries)
	r.olderForm(found)
	if len(found.weeks) == 0 && !r.misnamed {
		r.problems = append(r.problems, noWeek)
	}
	for _, name := range found.weeks {
		if w := r.week(name, site); w != nil {
			site.Weeks = append(site.Weeks, *w)
		}
	}
	sortWeeks(site.Weeks)
	for _, name := range found.stories {
		r.kept(name, site.Weeks)
	}
}

// What a school without a week is told.
var (
	noWeek   = diag.Diagnostic{File: Folder, Text: "there is no week yet", Hint: `"homebuild week" makes one; or make a file named by the Monday of its week, such as "weeks/2026-09-14.toml"`}
	noFolder = diag.Diagnostic{File: Folder, Text: "there is no folder named weeks", Hint: `"homebuild week" makes it, with a first week in it`}
)

// OnlyNoWeek reports whether a problem says no more than that there is no week
// yet: whoever makes one need not be stopped by it.
func OnlyNoWeek(p diag.Diagnostic) bool { return p == noWeek || p == noFolder }

func (r *reader) noFolder(err error) {
	if errors.Is(err, fs.ErrNotExist) {
		r.problems = append(r.problems, noFolder)
		return
	}
	r.add(Folder, 0, "the folder cannot be read: "+textfile.Reason(err), "")
}

// week reads one week file; nil when nothing in it can be read.
func (r *reader) week(name fileName, site *Site) *Week {
	text, ok := r.text(name.path)
	if !ok {
		return nil
	}
	if strings.HasPrefix(strings.TrimSpace(text), fence) {
		r.add(name.path, 1, "this week is in an older form", fmt.Sprintf("give it back its old name, %s, and homebuild week --from turns it into the form of today", oldPath(name.date)))
		return nil
	}
	file := tomlfile.Parse(name.path, text, 1)
	file.Example = "settings look like target = \"add-within-20\"; a note stands between quotes, below a line [note]"
	r.spelled(file, name.path)
	w := r.settings(name, file.Section(), site.Review)
	r.notes(w, site)
	r.problems = append(r.problems, file.Problems()...)
	return w
}
