package school

import (
	"crypto/sha256"
	"fmt"
	"io/fs"
	"sync"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/site"
	"homebuild/internal/story"
)

// memory is what is slow to read, kept from one reading of a school to the next.
type memory struct {
	// shipped are the parts of the input that come with the program.
	shipped   func() site.Input
	languages cached[*i18n.Loader]
	themes    map[string]*cached[*page.Theme] // by name
}

func newMemory() *memory {
	return &memory{
		shipped: sync.OnceValue(func() site.Input {
			return site.Input{Targets: must(activity.Targets()), Places: must(story.LoadPlaces()), WarmUps: must(site.WarmUps())}
		}),
		themes: map[string]*cached[*page.Theme]{},
	}
}

// theme is where the theme of a name is kept.
func (m *memory) theme(name string) *cached[*page.Theme] {
	if m.themes[name] == nil {
		m.themes[name] = &cached[*page.Theme]{}
	}
	return m.themes[name]
}

// cached is a value with what it was read from.
type cached[T any] struct {
	from     string
	value    T
	problems diag.Diagnostics
}

// get reads the value unless it was read from the same before.
func (c *cached[T]) get(from string, read func() (T, diag.Diagnostics)) (T, diag.Diagnostics) {
	if c.from != from {
		value, problems := read()
		*c = cached[T]{from, value, problems}
	}
	return c.value, c.problems
}

// sum names the bytes of a folder of the school's own, and of those it shares.
func (s *School) sum(folder string) string {
	sum := sha256.New()
	for _, files := range s.folders(folder) {
		_ = fs.WalkDir(files, ".", func(name string, entry fs.DirEntry, err error) error {
			if err != nil || !entry.Type().IsRegular() {
				return nil
			}
			data, _ := fs.ReadFile(files, name) // its reader tells of a file that cannot be read
			fmt.Fprintf(sum, " %s %d ", name, len(data))
			sum.Write(data)
			return nil
		})
		sum.Write([]byte{0}) // one folder's end
	}
	return string(sum.Sum(nil))
}
