package site

import (
	"io/fs"
	"slices"
	"sync"
	"testing"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
	"homebuild/locales"
	example "homebuild/site"
	"homebuild/themes"
)

// exampleInput is the example school in the given languages, the first of them
// the class's.
func exampleInput(t testing.TB, tags ...string) Input {
	t.Helper()
	in := Input{}
	var err error
	if in.Targets, err = activity.Targets(); err != nil {
		t.Fatal(err)
	}
	if in.Places, err = story.LoadPlaces(); err != nil {
		t.Fatal(err)
	}
	if in.WarmUps, err = WarmUps(); err != nil {
		t.Fatal(err)
	}
	allowed := week.Allowed{Themes: []string{"paper"}, Languages: i18n.Tags(locales.Files)}
	for _, x := range in.Targets {
		allowed.Targets = append(allowed.Targets, x.ID)
	}
	for _, x := range strategy.Names() {
		allowed.Strategies = append(allowed.Strategies, x.String())
	}
	for _, x := range picture.Kinds() {
		allowed.Pictures = append(allowed.Pictures, x.String())
	}
	for _, p := range in.Places {
		allowed.Places = append(allowed.Places, p.ID)
	}
	for _, x := range in.WarmUps {
		allowed.WarmUps = append(allowed.WarmUps, x.ID)
	}
	read, problems := week.Read(example.Files, allowed)
	in.Site = read
	in.Site.Languages, in.Site.School = tags, tags[0]
	in.Catalog = catalogOf(t, tags...)
	if in.Theme, err = paper(); err != nil {
		t.Fatal(err)
	}
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return in
}

// catalogOf are languages that come with the program. What is read is not changed, so
// tests share it.
func catalogOf(t testing.TB, tags ...string) *i18n.Catalog {
	t.Helper()
	loading.Lock()
	defer loading.Unlock()
	catalog, problems := loader.Load(tags...)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return catalog
}

var (
	loader  = i18n.NewLoader(locales.Files)
	loading sync.Mutex
)

// paper is the look of the example, shared in the same way.
var paper = sync.OnceValues(func() (*page.Theme, error) { return page.ReadTheme(folder("base"), folder("paper")) })

func folder(name string) fs.FS {
	f, err := fs.Sub(themes.Files, name)
	if err != nil {
		panic(err) // the name is not one
	}
	return f
}

// The example year shows a teacher everything: every kind, picture, strategy
// and range.
func TestExampleYearUsesEverything(t *testing.T) {
	lessons, _, _, problems := plan(exampleInput(t, "en"))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	var kinds []problem.Kind
	var pictures []picture.Kind
	var strategies []strategy.Name
	var ranges []int
	for _, l := range lessons {
		ranges = append(ranges, rangeOf(l.target.Within))
		for _, x := range l.exercises() {
			kinds = append(kinds, x.Problem.Kind())
			if picture.Fits(l.picture, x.Problem) {
				pictures = append(pictures, l.picture)
			}
			for _, w := range append(x.Ways(), x.FirstWays()...) {
				strategies = append(strategies, w.Name)
			}
		}
	}
	if len(lessons) < 12 {
		t.Errorf("the year has %d weeks, want at least 12", len(lessons))
	}
	for _, k := range problem.Kinds() {
		if !slices.Contains(kinds, k) {
			t.Errorf("no story of the kind %v", k)
		}
	}
	for _, k := range picture.Kinds() {
		if !slices.Contains(pictures, k) {
			t.Errorf("no week draws with %v", k)
		}
	}
	for _, n := range strategy.Names() {
		if !slices.Contains(strategies, n) {
			t.Errorf("no story is worked out by %v", n)
		}
	}
	for _, r := range []int{10, 20, 100, 1000} {
		if !slices.Contains(ranges, r) {
			t.Errorf("no week has numbers within %d", r)
		}
	}
}

// rangeOf is the smallest of the published ranges that holds a number.
func rangeOf(within int) int {
	for _, r := range []int{10, 20, 100} {
		if within <= r {
			return r
		}
	}
	return 1000
}
