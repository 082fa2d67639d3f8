//go:build bench

package main

import (
	"fmt"
	"io/fs"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"homebuild/internal/i18n"
	"homebuild/locales"
	example "homebuild/site"
)

// languagesMeasured is how many languages a district has.
const languagesMeasured = 12

// firstTags are the languages of the smallest school, the last first.
var firstTags = []string{"ar", "es", "en"}

// generatedSchool writes a school of so many weeks, those of the example over and over,
// and gives the file of the newest.
func generatedSchool(t *testing.T, folder string, weeks, languages int) (newest string) {
	t.Helper()
	var tags []string
	for _, tag := range i18n.Tags(locales.Files) {
		if c, problems := i18n.Load([]string{tag}, locales.Files); len(problems) == 0 && len(c.Languages()) == 1 {
			tags = append(tags, tag)
		}
	}
	// English, Spanish and Arabic first, as in the example school.
	slices.SortStableFunc(tags, func(a, b string) int { return slices.Index(firstTags, b) - slices.Index(firstTags, a) })
	tags = tags[:languages]
	putFile(t, filepath.Join(folder, "site.toml"), fmt.Sprintf(
		"name = \"Pebble Lane School\"\naddress = \"https://pebblelane.example/home/\"\nlanguages = [\"%s\"]\nkey = \"puddle\"\n", strings.Join(tags, `", "`)))
	var texts []string
	entries, err := fs.ReadDir(example.Files, "weeks")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		english, _, _ := strings.Cut(readFile(t, example.Files, "weeks/"+e.Name()), "\nar = ")
		texts = append(texts, english+"\n")
	}
	monday := time.Date(2000, 1, 3, 0, 0, 0, 0, time.UTC)
	for i := range weeks {
		newest = filepath.Join(folder, "weeks", monday.AddDate(0, 0, 7*i).Format(time.DateOnly)+".toml")
		putFile(t, newest, texts[i%len(texts)])
	}
	return newest
}
