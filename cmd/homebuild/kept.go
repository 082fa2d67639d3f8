package main

import (
	"crypto/sha256"
	"fmt"
	"io/fs"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/page"
)

// kept is what is slow to read, from one reading of a school to the next: the
// languages and the look. They are read again when the site asks for others, or
// when the school's own files of them change.
type kept struct {
	languages keptAs[*i18n.Catalog]
	look      keptAs[*page.Theme]
}

// keptAs is a value with what it was read from.
type keptAs[T any] struct {
	from     string
	value    T
	problems diag.Problems
}

// get reads the value unless it was read from the same before.
func (k *keptAs[T]) get(from string, read func() (T, diag.Problems)) (T, diag.Problems) {
	if k.from != from {
		value, problems := read()
		*k = keptAs[T]{from, value, problems}
	}
	return k.value, k.problems
}

// catalog reads the site's languages.
func (s *school) catalog(tags []string) (*i18n.Catalog, diag.Problems) {
	return s.kept.languages.get(strings.Join(tags, " ")+s.sum(localesFolder), func() (*i18n.Catalog, diag.Problems) {
		return i18n.Load(tags, s.languages()...)
	})
}

// look reads the site's theme.
func (s *school) look(name string) (*page.Theme, diag.Problems) {
	return s.kept.look.get(name+s.sum(themesFolder), func() (*page.Theme, diag.Problems) { return s.theme(name) })
}

// sum names the bytes of a folder of the school's own.
func (s *school) sum(folder string) string {
	sum := sha256.New()
	_ = fs.WalkDir(s.files, folder, func(name string, entry fs.DirEntry, err error) error {
		if err != nil || !entry.Type().IsRegular() {
			return nil
		}
		data, _ := fs.ReadFile(s.files, name) // a file that cannot be read is told by its reader
		fmt.Fprintf(sum, " %s %d ", name, len(data))
		sum.Write(data)
		return nil
	})
	return " " + string(sum.Sum(nil))
}
