package recheck_test

import (
	"fmt"
	"hash/fnv"
	"io/fs"
	"maps"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"
	"time"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/site"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
	"homebuild/locales"
	"homebuild/themes"
)

// school is a generated site: what site.toml says, and its week files.
type school struct {
	name      string
	languages []string
	key       string
	weeks     []string // the settings of each week, oldest first
}

// files writes the school as a teacher would.
func (s school) files() fstest.MapFS {
	out := fstest.MapFS{"site.toml": &fstest.MapFile{Data: fmt.Appendf(nil,
		"name = \"Pebble Lane School\"\naddress = \"https://pebblelane.example/home/\"\nlanguages = [%s]\nkey = %q\n",
		quoted(s.languages), s.key)}}
	for i, settings := range s.weeks {
		out["weeks/"+dateOf(i)+".toml"] = &fstest.MapFile{Data: []byte(settings + "[note]\nen = \"Dear families, ten minutes are plenty.\"\n")}
	}
	return out
}

func quoted(words []string) string {
	out := make([]string, len(words))
	for i, w := range words {
		out[i] = fmt.Sprintf("%q", w)
	}
	return strings.Join(out, ", ")
}

// dateOf is the Monday of the i-th week.
func dateOf(i int) string {
	return time.Date(2026, 9, 14, 0, 0, 0, 0, time.UTC).AddDate(0, 0, 7*i).Format(time.DateOnly)
}

// workshop has what every site is made with, read once.
type workshop struct {
	base     site.Input
	allowed  week.Allowed
	catalogs sync.Map // languages to *i18n.Catalog
	checks   sync.Map // a check page's path and key to its bytes
}

func newWorkshop(t testing.TB) *workshop {
	t.Helper()
	w := &workshop{}
	must := func(err error) {
		if err != nil {
			t.Fatal(err)
		}
	}
	var err error
	w.base.Targets, err = activity.Targets()
	must(err)
	w.base.Places, err = story.LoadPlaces()
	must(err)
	w.base.WarmUps, err = site.WarmUps()
	must(err)
	base, err := fs.Sub(themes.Files, "base")
	must(err)
	look, err := fs.Sub(themes.Files, "paper")
	must(err)
	w.base.Theme, err = page.ReadTheme(base, look)
	must(err)
	w.base.Program = "space" // pages of one key are the same, and made once
	w.allowed = week.Allowed{Themes: []string{"paper"}, Languages: i18n.Tags(locales.Files)}
	for _, x := range w.base.Targets {
		w.allowed.Targets = append(w.allowed.Targets, x.ID)
	}
	for _, x := range strategy.Names() {
		w.allowed.Strategies = append(w.allowed.Strategies, x.String())
	}
	for _, x := range picture.Kinds() {
		w.allowed.Pictures = append(w.allowed.Pictures, x.String())
	}
	for _, x := range problem.Kinds() {
		w.allowed.Kinds = append(w.allowed.Kinds, x.String())
	}
	for _, p := range w.base.Places {
		w.allowed.Places = append(w.allowed.Places, p.ID)
	}
	for _, x := range w.base.WarmUps {
		w.allowed.WarmUps = append(w.allowed.WarmUps, x.ID)
	}
	return w
}

// build makes the pages of a school in memory.
func (w *workshop) build(t testing.TB, s school) fstest.MapFS {
	t.Helper()
	in := w.base
	read, problems := week.Read(s.files(), w.allowed)
	in.Site = read
	names := strings.Join(s.languages, " ")
	catalog, ok := w.catalogs.Load(names)
	if !ok {
		loaded, found := i18n.Load(s.languages, locales.Files)
		problems = append(problems, found...)
		catalog, _ = w.catalogs.LoadOrStore(names, loaded)
	}
	in.Catalog = catalog.(*i18n.Catalog)
	if len(problems) > 0 {
		t.Fatalf("%s: %v", s.name, problems)
	}
	files, _, problems := site.Assemble(in)
	if len(problems) > 0 {
		t.Fatalf("%s: %v", s.name, problems)
	}
	out := fstest.MapFS{}
	for _, f := range files {
		out[f.Path] = &fstest.MapFile{Data: w.bytes(t, f)}
	}
	return out
}

// bytes renders a file. Pages that check two numbers are the same in every
// school; they keep only two numbers each, for the test to be done in time:
// those of the example year are read whole elsewhere.
func (w *workshop) bytes(t testing.TB, f site.File) []byte {
	check := strings.Contains(f.Path, "/check/")
	if raw, ok := w.checks.Load(f.Path + f.Key); ok && check {
		return raw.([]byte)
	}
	raw, err := f.Render()
	if err != nil {
		t.Fatal(err)
	}
	if check {
		raw = tooMany.ReplaceAll(raw, nil)
		w.checks.Store(f.Path+f.Key, raw)
	}
	return raw
}

// tooMany are the pairs of a check page from the third on, and the links to them.
var tooMany = regexp.MustCompile(`(?s)<section class="reply" id="with-([2-9]|\d\d)">.*?</section>|<a [^>]*href="#with-([2-9]|\d\d)"[^>]*>.*?</a>`)

// pick chooses one of a list by a name, the same every time.
func pick(list []string, name string) string {
	h := fnv.New64a()
	h.Write([]byte(name))
	return list[h.Sum64()%uint64(len(list))]
}

// weeksOf are week files for a target: every strategy and every picture that
// suit it, with 8 stories; places and stories that return take turns.
func (w *workshop) weeksOf(target activity.Target, words, extra bool) []string {
	var out []string
	for _, focus := range target.Strategies {
		for _, kind := range target.Pictures {
			place := pick(w.allowed.Places, fmt.Sprint(target.ID, focus, kind))
			out = append(out, fmt.Sprintf("target = %q\nfocus = %q\npicture = %q\nstories = 8\nplace = %q\nextra-sentence = %t\nnumber-words = %t\nreview = %t\n",
				target.ID, focus, kind, place, extra, words, len(out)%2 == 1))
		}
	}
	return out
}

// ownTargets are week files that spell a target out, over what it can be.
func ownTargets() []string {
	var out []string
	for _, largest := range []int{5, 10, 20, 50, 100, 500, 1000} {
		for _, operation := range activity.Operations() {
			for _, crossing := range activity.Crossings() {
				for _, size := range []struct{ parts, steps int }{{2, 1}, {3, 1}, {2, 2}} {
					if size.parts == 3 && operation == "subtraction" || size.steps == 2 && (operation != "both" || largest <= 20) || largest <= 10 && (crossing == "always" || size.parts+size.steps > 3) {
						continue
					}
					out = append(out, fmt.Sprintf("stories = 8\nnumber-words = %t\n[own-target]\noperation = %q\nlargest = %d\nparts = %d\ncrossing = %q\nsteps = %d\n",
						len(out)%2 == 1, operation, largest, size.parts, crossing, size.steps))
				}
			}
		}
	}
	return out
}

// order turns a list round by a number, so that other weeks come first, when
// nothing is to be avoided yet.
func order(list []string, by int) []string {
	by %= max(len(list), 1)
	return append(slices.Clone(list[by:]), list[:by]...)
}

func sortedKeys[V any](m map[string]V) []string { return slices.Sorted(maps.Keys(m)) }
