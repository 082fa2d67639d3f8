package week

import (
	"errors"
	"fmt"
	"io/fs"
	"path"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/textfile"
)

// SiteFile and Folder are where the files stand in a school's folder.
const (
	SiteFile = "site.toml"
	Folder   = "weeks"
)

// Read reads and checks every file of a school's folder. All problems come at
// once, sorted by place; the site is fit to build only when there are none.
// For a folder on disk give os.Root's file system, which keeps links inside.
func Read(fsys fs.FS, allowed Allowed) (Site, diag.Problems) {
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
	problems diag.Problems
	misnamed bool // whether a file was surely meant as a week and is called otherwise
}

// add notes a problem. The hint is the next step.
func (r *reader) add(file string, line int, text, hint string) {
	r.problems = append(r.problems, diag.Problem{File: file, Line: line, Text: text, Hint: hint})
}

// weeks reads the week folder: first the weeks, then the notes in other
// languages, which go with a week.
func (r *reader) weeks(site *Site) {
	if info, err := fs.Lstat(r.fsys, Folder); err == nil && info.Mode()&fs.ModeSymlink != 0 {
		r.add(Folder, 0, "this is a link to another place", "put the folder itself here; links are not followed")
		return
	}
	entries, err := fs.ReadDir(r.fsys, Folder)
	if err != nil {
		r.noFolder(err)
		return
	}
	main, notes := r.sortOut(entries)
	if len(main) == 0 && !r.misnamed {
		r.problems = append(r.problems, noWeek)
	}
	byDate := make(map[string]*Week, len(main))
	for _, name := range main {
		if w := r.week(name, *site); w != nil {
			byDate[w.Date] = w
		} else {
			byDate[name.date] = nil // there, but not readable: said already
		}
	}
	for _, name := range notes {
		r.note(name, site, byDate)
	}
	for _, name := range main {
		if w := byDate[name.date]; w != nil {
			site.Weeks = append(site.Weeks, *w)
		}
	}
	sortWeeks(site.Weeks)
}

// What a school without a week is told.
var (
	noWeek   = diag.Problem{File: Folder, Text: "there is no week yet", Hint: `"homebuild week" makes one; or make a file named by the Monday of its week, such as "weeks/2026-09-14.md"`}
	noFolder = diag.Problem{File: Folder, Text: "there is no folder named weeks", Hint: `"homebuild week" makes it, with a first week in it`}
)

// OnlyNoWeek reports whether a problem says no more than that there is no week
// yet: whoever makes one need not be stopped by it.
func OnlyNoWeek(p diag.Problem) bool { return p == noWeek || p == noFolder }

func (r *reader) noFolder(err error) {
	if errors.Is(err, fs.ErrNotExist) {
		r.problems = append(r.problems, noFolder)
		return
	}
	r.add(Folder, 0, "the folder cannot be read: "+textfile.Reason(err), "")
}

// week reads one week file; nil when nothing in it can be read.
func (r *reader) week(name fileName, site Site) *Week {
	text, ok := r.text(name.path)
	if !ok {
		return nil
	}
	front, ok := r.front(name.path, text)
	if !ok {
		return nil
	}
	w := r.settings(name, front, site.Review)
	if note := strings.TrimSpace(front.note); note != "" {
		w.Notes[site.School] = note
		r.checkNote(name.path, front.noteLine, front.note, w.Allow)
		r.settingsBelow(name.path, front, w.settings)
	}
	return w
}

// note reads a week's note in another language.
func (r *reader) note(name fileName, site *Site, weeks map[string]*Week) {
	tag, ok := r.noteLanguage(name, site)
	if !ok {
		return
	}
	w, known := weeks[name.date]
	if !known {
		r.add(name.path, 0, fmt.Sprintf("there is no %q for this note to go with", path.Join(Folder, name.date+".md")),
			"write the week first, or give the note the date of its week")
		return
	}
	text, ok := r.text(name.path)
	if !ok || w == nil {
		return
	}
	if strings.HasPrefix(strings.TrimSpace(text), fence) {
		r.add(name.path, 1, "a note in another language has no settings", fmt.Sprintf("keep the note alone here; settings stand in %q", w.file))
		return
	}
	if w.hasNote(tag) {
		r.add(name.path, 0, fmt.Sprintf("%q has a note in this language already", w.file), "keep one of the two")
		return
	}
	w.Notes[tag] = strings.TrimSpace(text)
	r.checkNote(name.path, 1, text, w.Allow)
}

// noteLanguage finds the language that a note's file name asks for.
func (r *reader) noteLanguage(name fileName, site *Site) (string, bool) {
	if tag, ok := sameWord(name.tag, site.Languages); ok {
		return tag, true
	}
	tag, known := sameWord(name.tag, r.allowed.Languages)
	switch {
	case known && len(site.Languages) == 0: // what is wrong with the list is said
		return "", false
	case known:
		r.add(name.path, 0, fmt.Sprintf("this site is not made in %q", tag),
			fmt.Sprintf("add %q to languages in %s, or take the note away", tag, SiteFile))
		return "", false
	}
	r.add(name.path, 0, fmt.Sprintf("%q is not a language", name.tag), languageHint(name.tag, r.allowed.Languages))
	return "", false
}
