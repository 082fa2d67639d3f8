package desk

import (
	"errors"
	"maps"
	"slices"
	"strings"
	"testing/fstest"

	"homebuild/internal/i18n"
	"homebuild/internal/picture/svg"
	"homebuild/internal/problem"
	"homebuild/internal/school"
	"homebuild/internal/week"
)

// Open takes up a desk: see [Calls].
func (d *Desk) Open(o Open) (Opened, error) {
	files, folder := o.Files, ""
	if d.folder != nil {
		var err error
		if files, err = d.folder.Read(); err != nil {
			return Opened{}, wrong{{Story: -1, Text: err.Error(), Code: "unreadable", Mend: true}}
		}
		folder = d.folder.Name()
	}
	clear(d.files)
	for path, text := range files {
		d.files[path] = &fstest.MapFile{Data: []byte(text)}
	}
	if d.words != o.Words {
		d.words, d.say = o.Words, nil
	}
	d.today, d.school.Today = o.Today, o.Today
	plain, _ := d.school.Palette("")
	out := Opened{Files: d.all(), New: d.files[week.SiteFile] == nil, Folder: folder, Style: plain.PictureStyle(), Patterns: svg.Defs()}
	for _, folder := range d.school.Languages() {
		for _, head := range i18n.Heads(folder) {
			out.Languages = append(out.Languages, Language(head))
		}
	}
	for _, name := range d.school.Themes() {
		if look, ok := d.school.Palette(name); ok {
			out.Looks = append(out.Looks, Choice{Value: name, Words: look.Name, Fits: true})
		}
	}
	return out, nil
}

// Behind reports whether another program changed files of the folder since they
// were read or written here.
func (d *Desk) Behind() bool {
	files, err := d.folder.Read()
	return err == nil && !maps.Equal(files, d.all())
}

// all are the files as the page keeps them.
func (d *Desk) all() Files {
	out := Files{}
	for path, f := range d.files {
		out[path] = string(f.Data)
	}
	return out
}

// Put lays files down: see [Calls].
func (d *Desk) Put(p Put) (None, error) {
	if d.folder != nil {
		switch err := d.folder.Write(p.Changes, p.Before); {
		case errors.Is(err, ErrChanged):
			return None{}, wrong{{Story: -1, Text: err.Error(), Code: "changed", Mend: true}}
		case err != nil:
			return None{}, wrong{{Story: -1, Text: err.Error(), Code: "unwritten", Mend: true}}
		}
	}
	for path, text := range p.Changes {
		if text == nil {
			delete(d.files, path)
		} else {
			d.files[path] = &fstest.MapFile{Data: []byte(*text)}
		}
	}
	return None{}, nil
}

// Begin makes the files of a new desk: see [Calls].
func (d *Desk) Begin(b Begin) (Act, error) {
	grade := problem.Grade(b.Grade)
	draft := school.Draft{Grade: &grade, Name: b.Name, Languages: b.Languages, Week: school.Wishes{Date: b.Monday, Target: school.EasiestOf(grade)}}
	if draft.Week.Date == "" {
		draft.Week.Date = school.MondayFrom(d.today)
	}
	files, diagnostic := d.school.Draft(draft)
	if diagnostic != nil {
		return Act{}, wrong{{Story: -1, Text: diagnostic.Text, Hint: diagnostic.Hint, Code: diagnostic.Code, Quote: diagnostic.Value, Mend: true}}
	}
	out := Act{Changes: Changes{}, Monday: draft.Week.Date}
	for _, f := range files {
		data, err := f.Render()
		if err != nil {
			return Act{}, err
		}
		text := string(data)
		if week.IsWeek(f.Path) {
			text = proposed(text)
		}
		out.Changes[f.Path] = &text
	}
	for path := range d.files { // whatever lay there is another desk's
		if _, ok := out.Changes[path]; !ok {
			out.Changes[path] = nil
		}
	}
	return out, nil
}

// paths are those of all files, in order.
func (d *Desk) paths() []string { return slices.Sorted(maps.Keys(d.files)) }

// unread are the paths of files that no page is made from.
func (d *Desk) unread() []string {
	var out []string
	for _, path := range d.paths() {
		if top, _, _ := strings.Cut(path, "/"); !slices.Contains(school.Sources(), top) {
			out = append(out, path)
		}
	}
	return out
}
