package desk

import (
	"bytes"
	"errors"
	"fmt"
	"path"
	"slices"
	"strconv"
	"strings"
	"testing/fstest"

	"homebuild/internal/archive"
	"homebuild/internal/output"
	"homebuild/internal/school"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
)

// A copy of a desk is a zip of its files, which are those of a school's folder,
// and one that says in which form they are.
const (
	copyFile = "copy.toml"
	copyForm = 1 // counts up when a file of today could not be read by an older desk
	readMe   = "README.txt"
)

// Copy is the zip of all files of the desk: see [Calls].
func (d *Desk) Copy(None) (File, error) {
	files := []output.File{output.Text(copyFile, fmt.Sprintf("# A copy of a desk, for its teacher alone. Open it on the desk, or unpack it and\n# run homebuild in the folder.\nform = %d\n", copyForm))}
	for _, name := range d.paths() {
		files = append(files, output.Text(name, d.text(name)))
	}
	var zip bytes.Buffer
	if err := archive.Write(&zip, "", files); err != nil {
		return File{}, err
	}
	return File{Name: "TEACHER-ONLY-copy-" + d.today + ".zip", Type: "application/zip", Bytes: zip.Bytes()}, nil
}

// OpenCopy looks into the zip of a copy: see [Calls].
func (d *Desk) OpenCopy(z Zip) (Copied, error) {
	texts, left, err := archive.Read(z.Bytes)
	switch {
	case errors.Is(err, archive.ErrLarge):
		return Copied{Refused: "large"}, nil
	case err != nil:
		return Copied{Refused: "broken"}, nil
	}
	root, found := rootOf(texts)
	if !found {
		return Copied{Refused: "strange"}, nil
	}
	out := Copied{Files: Files{}, LeftOut: left}
	for name, text := range texts {
		inside, ok := strings.CutPrefix(name, root)
		switch top, _, _ := strings.Cut(inside, "/"); {
		case ok && inside == copyFile:
			if form, err := strconv.Atoi(tomlfile.Get(text, "form")); err != nil || form > copyForm {
				return Copied{Refused: "newer"}, nil
			}
		case ok && (slices.Contains(school.Sources(), top) || inside == readMe):
			out.Files[inside] = text
		default:
			out.LeftOut = append(out.LeftOut, name)
		}
	}
	renew(&out)
	for name := range out.Files {
		if week.IsWeek(name) {
			out.Weeks = append(out.Weeks, strings.TrimSuffix(path.Base(name), ".toml"))
		}
	}
	slices.Sort(out.Weeks)
	slices.Sort(out.LeftOut)
	return out, nil
}

// rootOf is the folder in a zip that holds a school, "" or "my-class/".
func rootOf(texts map[string]string) (root string, found bool) {
	depth := 0
	for name := range texts {
		if path.Base(name) != week.SiteFile {
			continue
		}
		if at := strings.Count(name, "/"); !found || at < depth || at == depth && name < root {
			root, depth, found = strings.TrimSuffix(name, week.SiteFile), at, true
		}
	}
	return root, found
}

// renew brings weeks of an older form up to date.
func renew(c *Copied) {
	folder := fstest.MapFS{}
	for name, text := range c.Files {
		folder[name] = &fstest.MapFile{Data: []byte(text)}
	}
	renewed, wrong := school.Open("", folder).Renew(week.Folder)
	if wrong != nil {
		return
	}
	for _, r := range renewed {
		c.Older = true
		c.Files[week.Path(r.Date)] = r.Text
		for _, old := range r.From {
			delete(c.Files, old)
		}
	}
}
