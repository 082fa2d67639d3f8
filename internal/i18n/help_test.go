package i18n

import (
	"sync"
	"testing"

	"homebuild/internal/diag"
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

var (
	loadedOnce = sync.OnceValues(func() (*Catalog, diag.Diagnostics) { return Load(tags(), locales.Files) })
	sourceOnce = sync.OnceValues(func() (*Source, diag.Diagnostics) { return LoadSource(locales.Files) })
)

// loaded are the languages of tags, read once.
func loaded(t *testing.T) *Catalog {
	t.Helper()
	c, problems := loadedOnce()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return c
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
