package school

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/site"
	"homebuild/internal/week"
)

// RemoveAll stands for everything that families had and that is no longer made.
const RemoveAll = "all"

// Stays gives the rule for pages that families had and that the site no longer
// makes, by path: those of a week, or of a language, stay where they are, so that no
// link dies by a file taken away; a teacher who wants them gone names the dates and
// the languages, or [RemoveAll]. The problem says of a word that it can be neither, or
// that its pages are still made.
func (s *Site) Stays(remove []string) (func(path string) bool, *diag.Diagnostic) {
	showing := each(s.Site.Showing(s.On), func(w week.Week) string { return w.Date })
	for _, word := range remove {
		_, notADay := week.ParseDay(word)
		switch {
		case word != "" && strings.Trim(word, "0123456789-./") == "" && notADay != nil:
			return nil, notADay
		case slices.Contains(showing, word):
			return nil, &diag.Diagnostic{Text: fmt.Sprintf("families see the week of %s", word), Hint: "take " + week.Path(word) + " away first, and the file of its kept stories"}
		case slices.Contains(s.Site.Languages, word):
			return nil, &diag.Diagnostic{Text: fmt.Sprintf("%q is among the languages of the site", word), Hint: "take it out of languages in " + week.SiteFile + " first"}
		}
	}
	return func(path string) bool {
		tag, date := site.Belongs(path)
		gone := func(word string, made []string) bool { return word != "" && !slices.Contains(made, word) }
		named := slices.Contains(remove, tag) || slices.Contains(remove, date) || slices.Contains(remove, RemoveAll)
		return !named && (gone(tag, s.Site.Languages) || gone(date, showing))
	}, nil
}

// StillThere names what pages that stay are of: the weeks in order, then the languages
// that the site no longer has; and how to name them all to [Site.Stays]. Both are empty
// for no pages.
func (s *Site) StillThere(paths []string) (names, all string) {
	var of []string
	for _, path := range paths {
		tag, date := site.Belongs(path)
		if tag != "" && !slices.Contains(s.Site.Languages, tag) {
			date = tag
		}
		of = append(of, date)
	}
	slices.Sort(of)
	of = slices.Compact(of)
	const told = 3
	if len(of) > told {
		return fmt.Sprintf("%s and %d more", strings.Join(of[:told], ", "), len(of)-told), RemoveAll
	}
	return strings.Join(of, ", "), strings.Join(of, ",")
}
