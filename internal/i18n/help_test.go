package i18n

import (
	"os"
	"sync"
	"testing"

	"homebuild/internal/diag"
	"homebuild/internal/story"
	"homebuild/locales"
)

// tags are the languages that a test of all of them looks at: those that come with the
// program; in a quick run, four whose grammars are far apart.
func tags() []string {
	if testing.Short() {
		return []string{"ar", "en", "ko", "ru"}
	}
	return Tags(locales.Files)
}

// What many tests look at and none changes is read once. Those called small are of
// the few messages of testdata.
var (
	loadedOnce  = sync.OnceValues(func() (*Catalog, diag.Diagnostics) { return Load(tags(), locales.Files) })
	sourceOnce  = sync.OnceValues(func() (*Source, diag.Diagnostics) { return LoadSource(locales.Files) })
	smallOnce   = sync.OnceValues(func() (*Catalog, diag.Diagnostics) { return Load(nil, fewMessages) })
	smallSource = sync.OnceValues(func() (*Source, diag.Diagnostics) { return LoadSource(fewMessages) })
	placesOnce  = sync.OnceValues(story.LoadPlaces)
	filesOnce   = sync.OnceValues(func() (map[string]*File, diag.Diagnostics) {
		all := map[string]*File{}
		for _, tag := range tags() {
			f, problems := ReadFile(tag, locales.Files)
			if len(problems) > 0 {
				return nil, problems
			}
			all[tag] = f
		}
		return all, nil
	})
)

var fewMessages = os.DirFS("testdata/locales")

// loaded are the languages of tags, read once.
func loaded(t *testing.T) *Catalog {
	t.Helper()
	c, problems := loadedOnce()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return c
}

// files are the files of tags, read once.
func files(t *testing.T) map[string]*File {
	t.Helper()
	all, problems := filesOnce()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return all
}

// english is the English that comes with the program, read once; to hold others
// against it changes nothing in it.
func english(t *testing.T) *Source {
	t.Helper()
	source, problems := sourceOnce()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return source
}

// places are those of the town, with their events.
func places(t *testing.T) story.Places {
	t.Helper()
	p, err := placesOnce()
	if err != nil {
		t.Fatal(err)
	}
	return p
}
