package check

import (
	"fmt"
	"io/fs"
	"strings"
	"sync/atomic"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/picture"
	"homebuild/internal/recheck"
	"homebuild/internal/site"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
	"homebuild/internal/weight"
	"homebuild/locales"
	"homebuild/themes"
)

// school reads a school of these files in English and, if asked for, a language
// that is English but for what a test leaves out of it.
func school(t *testing.T, files map[string]string, second string) site.Input {
	t.Helper()
	in := site.Input{}
	var err error
	if in.Targets, err = activity.Targets(); err != nil {
		t.Fatal(err)
	}
	if in.Places, err = story.LoadPlaces(); err != nil {
		t.Fatal(err)
	}
	allowed := week.Allowed{Languages: []string{"en", "fr"}}
	for _, x := range in.Targets {
		allowed.Targets = append(allowed.Targets, x.ID)
	}
	for _, x := range strategy.Names() {
		allowed.Strategies = append(allowed.Strategies, x.String())
	}
	for _, x := range picture.Kinds() {
		allowed.Pictures = append(allowed.Pictures, x.String())
	}
	folder := fstest.MapFS{}
	for name, text := range files {
		folder[name] = &fstest.MapFile{Data: []byte(text)}
	}
	read, found := week.Read(folder, allowed)
	in.Site = read
	folders := []fs.FS{locales.Files}
	if second != "" {
		folders = append(folders, fstest.MapFS{"fr.toml": {Data: []byte(second)}})
	}
	catalog, more := i18n.Load(in.Site.Languages, folders...)
	in.Catalog = catalog
	if found = append(found, more...); len(found) > 0 {
		t.Fatal(found)
	}
	base, err := fs.Sub(themes.Files, "base")
	if err != nil {
		t.Fatal(err)
	}
	paper, err := fs.Sub(themes.Files, "paper")
	if err != nil {
		t.Fatal(err)
	}
	if in.Theme, err = page.ReadTheme(base, paper); err != nil {
		t.Fatal(err)
	}
	return in
}

const (
	oneLanguage = "name = \"Pebble Lane School\"\nlanguages = [\"en\"]\n"
	bothOfThem  = "name = \"Pebble Lane School\"\nlanguages = [\"en\", \"fr\"]\n"
	weekOne     = "# ours\ntarget = \"add-within-20\"\n[note]\nen = \"Dear families, ask why.\"\n"
)

// checked checks a school and gives its findings, one a line.
func checked(t *testing.T, in site.Input) (Report, string) {
	t.Helper()
	var calls atomic.Int64
	r, problems, err := Site(in, func(of int) { calls.Add(1) })
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	if int(calls.Load()) != r.Pages {
		t.Errorf("want to hear of %d pages, heard of %d", r.Pages, calls.Load())
	}
	var lines []string
	for _, f := range r.Findings {
		lines = append(lines, fmt.Sprintf("%s: %s", f.About, f.Diagnostic))
	}
	return r, strings.Join(lines, "\n")
}

func TestNothingToSay(t *testing.T) {
	r, got := checked(t, school(t, map[string]string{"site.toml": oneLanguage, "weeks/2026-09-14.toml": weekOne}, ""))
	if got != "" {
		t.Errorf("want no finding, got\n%s", got)
	}
	if r.Weeks != 1 || r.Pages < 20 || r.Heaviest.Bytes < 1000 || r.Week.Bytes <= r.Heaviest.Bytes || r.Week.Name != "en/2026-09-14" {
		t.Errorf("want a week, its pages and their weights, got %+v", r)
	}
}

func TestFindings(t *testing.T) {
	french, err := fs.ReadFile(locales.Files, "fr.toml")
	if err != nil {
		t.Skip("there is no second language to try with")
	}
	tests := []struct {
		name   string
		files  map[string]string
		second string
		want   []string
		why    string
	}{
		{"a wish that cannot be met", map[string]string{"site.toml": oneLanguage, "weeks/2026-09-14.toml": "# ours\ntarget = \"subtract-within-20\"\nfocus = \"make-ten\"\n[note]\nen = \"Ask why.\"\n"}, "",
			[]string{"plan: weeks/2026-09-14.toml:3: make-ten does not help"}, "the teacher learns of it before families do"},
		{"no note at all", map[string]string{"site.toml": oneLanguage, "weeks/2026-09-14.toml": "# ours\ntarget = \"add-within-20\"\n"}, "",
			[]string{"notes: weeks: no note to families for 2026-09-14"}, "it may have been forgotten"},
		{"a long sentence in a note", map[string]string{"site.toml": oneLanguage, "weeks/2026-09-14.toml": "# ours\ntarget = \"add-within-20\"\n[note]\nen = \"\"\"\nDear families,\n\nThis week we look at *two* numbers and we put the one with the other until we have ten.\n\"\"\"\n"}, "",
			[]string{`notes: weeks/2026-09-14.toml:4: in the note, a sentence has 19 words, 15 are enough: "This week we look at two`}, "parents read it at the end of a day"},
		{"a note in one language", map[string]string{"site.toml": bothOfThem, "weeks/2026-09-14.toml": weekOne}, string(french),
			[]string{"notes: weeks: no note in French for 2026-09-14; the page shows another one, and says in which language", "write it into weeks/2026-09-14.toml, below [note]: fr = "}, "some families cannot read it"},
		{"a copied week", map[string]string{"site.toml": oneLanguage, "weeks/2026-09-14.toml": weekOne, "weeks/2026-09-21.toml": weekOne}, "",
			[]string{"notes: weeks/2026-09-21.toml:4: the note in English is that of 2026-09-14, word for word"}, "the note was forgotten"},
		{"a week on a Tuesday", map[string]string{"site.toml": oneLanguage, "weeks/2026-09-14.toml": weekOne, "weeks/2026-09-22.toml": weekOne, "weeks/2026-09-28.toml": weekOne}, "",
			[]string{"plan: weeks/2026-09-22.toml: 2026-09-22 is a Tuesday, and the week before begins on a Monday"}, "the date is a slip"},
		{"a note in both", map[string]string{"site.toml": bothOfThem, "weeks/2026-09-14.toml": weekOne + "fr = \"Demandez pourquoi.\"\n"}, string(french),
			[]string{"languages: site.toml: no fluent reader has signed the words of fr"}, "a draft stays a draft"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			_, got := checked(t, school(t, test.files, test.second))
			for _, want := range test.want {
				if !strings.Contains(got, want) {
					t.Errorf("want %q, since %s; got\n%s", want, test.why, got)
				}
			}
		})
	}
}

// Weeks may begin on any day, as long as it is the same: schools in several
// countries begin theirs on a Sunday.
func TestWeeksFromSunday(t *testing.T) {
	other := strings.Replace(weekOne, "why", "how", 1)
	if _, got := checked(t, school(t, map[string]string{"site.toml": oneLanguage, "weeks/2026-09-13.toml": weekOne, "weeks/2026-09-20.toml": other}, "")); got != "" {
		t.Errorf("want no finding, got\n%s", got)
	}
}

// Each page that is too heavy is told at its week, and each week as a whole.
func TestWeight(t *testing.T) {
	in := school(t, map[string]string{"site.toml": oneLanguage, "weeks/2026-09-14.toml": "# ours\nstories = 4\ntarget = \"add-within-20\"\n[note]\nen = \"Ask why.\"\n"}, "")
	page := func(name string, n int) weighed { return weighed{Weighed: Weighed{name, n}} }
	pages := []weighed{
		page("en/2026-09-14.html", weight.Page+1), page("en/2026-09-14-try.html", weight.Page), page("en/2026-09-14-story.html", 20_000),
		page("en/2026-09-14-print.html", 24_000), page("en/check/7.html", 14_500), page("2026-09-14.html", 2_000),
	}
	var got []string
	for _, p := range weights(subject{in: in, pages: pages}) {
		p.Hint = ""
		got = append(got, p.String())
	}
	want := []string{
		"weeks/2026-09-14.toml:2: the page en/2026-09-14.html has 14001 bytes, compressed; it opens at once up to 14000",
		"weeks/2026-09-14.toml:2: the page en/2026-09-14-story.html has 20000 bytes, compressed; it opens at once up to 14000",
		"weeks/2026-09-14.toml:2: the page en/2026-09-14-print.html has 24000 bytes, compressed; it opens at once up to 14000",
		"the page en/check/7.html has 14500 bytes, compressed; it opens at once up to 14000",
		"weeks/2026-09-14.toml:2: the week in en has 72001 bytes, compressed; it should stay within 72000",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("weights mismatch (-want +got):\n%s", diff)
	}
}

// What is published is held against the files as they are now, and worked out
// again.
func TestPublished(t *testing.T) {
	in := school(t, map[string]string{"site.toml": oneLanguage, "weeks/2026-09-14.toml": weekOne}, "")
	files, _, problems := site.Assemble(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	public := fstest.MapFS{}
	for _, f := range files {
		html, err := f.Render()
		if err != nil {
			t.Fatal(err)
		}
		public[f.Path] = &fstest.MapFile{Data: html}
	}
	look := func() (Report, string) {
		r, _ := checked(t, in)
		_, again := recheck.Site(public)
		if err := r.Published(public, "public", again); err != nil {
			t.Fatal(err)
		}
		var lines []string
		for _, f := range r.Findings {
			if f.About == Published && f.Mend {
				lines = append(lines, f.String())
			}
		}
		return r, strings.Join(lines, "\n")
	}
	if _, got := look(); got != "" {
		t.Errorf("fresh pages: want nothing to mend, got\n%s", got)
	}
	page := public["en/2026-09-14.html"]
	wrong := strings.Replace(string(page.Data), " = ", " = 1", 1)
	if wrong == string(page.Data) {
		t.Fatal("no equation to spoil")
	}
	public["en/2026-09-14.html"] = &fstest.MapFile{Data: []byte(wrong)}
	_, got := look()
	for _, want := range []string{"public: 1 of ", "en/2026-09-14.html", "hint: build again", "public/en/2026-09-14.html:"} {
		if !strings.Contains(got, want) {
			t.Errorf("a spoilt page: want %q told, got\n%s", want, got)
		}
	}
	delete(public, "en/2026-09-14-try.html")
	if _, got := look(); !strings.Contains(got, "public: 2 of ") {
		t.Errorf("a missing page: want it told, got\n%s", got)
	}
}

// A language that has no words for something keeps it from every page, and the
// teacher is told which.
func TestHeldBack(t *testing.T) {
	french, err := fs.ReadFile(locales.Files, "fr.toml")
	if err != nil {
		t.Skip("there is no second language to try with")
	}
	second := without(string(french), "thing.shell")
	if second == string(french) {
		t.Skip("the language file has no block to leave out")
	}
	files := map[string]string{"site.toml": bothOfThem, "weeks/2026-09-14.toml": weekOne + "fr = \"Demandez pourquoi.\"\n"}
	_, got := checked(t, school(t, files, second))
	if want := "languages: site.toml: fr leaves out things to count: shell; so no language of this site uses them"; !strings.Contains(got, want) {
		t.Errorf("want %q, got\n%s", want, got)
	}
}

// without leaves the tables of a block out of a language file.
func without(file, block string) string {
	var out []string
	skip := false
	for line := range strings.SplitSeq(file, "\n") {
		if strings.HasPrefix(line, "[") {
			skip = strings.HasPrefix(line, "["+block+"]") || strings.HasPrefix(line, "["+block+".")
		}
		if !skip {
			out = append(out, line)
		}
	}
	return strings.Join(out, "\n")
}
