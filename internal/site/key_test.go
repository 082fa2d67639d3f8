package site

import (
	"bytes"
	"io/fs"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/week"
	"homebuild/locales"
	"homebuild/themes"
)

// The weeks that keys are tested with.
const (
	changedWeek = 4 // the one that changes are made to
	testedWeeks = 8
)

// keyChange changes one thing that pages are made from.
type keyChange struct {
	name  string
	field string // the field of Input, Site or Week that it is about
	make  func(t *testing.T, in *Input)
	only  func(path, date string) bool // the files that it may touch, for the date of the changed week
	quiet bool                         // no byte of the site depends on it
}

var keyChanges = []keyChange{
	{"another program", "Input.Program", func(_ *testing.T, in *Input) { in.Program = "next" }, everything, true},
	{"a planner that planned another year before", "Input.Planner", func(_ *testing.T, in *Input) {
		in.Planner = &activity.Planner{}
		other := *in
		other.Site.Weeks = slices.Delete(slices.Clone(in.Site.Weeks), changedWeek, changedWeek+1)
		Plan(other)
	}, anyOf(), true},
	{"a color", "Input.Theme", func(t *testing.T, in *Input) { in.Theme = themeWith(t, "#fffcf5", "#fffcf6") }, pages, false},
	{"every message of the class's language", "Input.Catalog", spoken("es"), anyOf(in("es"), learnOrPrint, shared, desk), false},
	{"every message of another language", "Input.Catalog", spoken("ar"), anyOf(in("ar"), shared, ofAll, messageOf("ar")), false},
	{"every message of English", "Input.Catalog", spoken("en"), everything, false},
	{"what a warm-up counts", "Input.WarmUps", func(_ *testing.T, in *Input) {
		for i := range in.WarmUps {
			in.WarmUps[i].Least, in.WarmUps[i].Most = 4, 4
		}
	}, learn, false},
	{"a target's strategies", "Input.Targets", func(_ *testing.T, in *Input) {
		for i := range in.Targets {
			slices.Reverse(in.Targets[i].Strategies)
			in.Targets[i].Strategies = in.Targets[i].Strategies[:1]
		}
	}, lessons, false},
	{"an event less", "Input.Places", func(_ *testing.T, in *Input) {
		in.Places = in.Places.Only(func(id string) bool { return id != "event.harbour.gulls" })
	}, lessons, false},

	{"the name", "Site.Name", func(_ *testing.T, in *Input) { in.Site.Name.Plain = "Harbour School" }, anyOf(pages, feed, messages), false},
	{"the name in one language", "Site.Name", func(_ *testing.T, in *Input) { in.Site.Name.By = map[string]string{"ar": "مدرسة"} }, anyOf(in("ar"), shared, ofAll, messageOf("ar")), false},
	{"the class", "Site.Class", func(_ *testing.T, in *Input) { in.Site.Class.Plain = "Room 4" }, nothing, true},
	{"the address", "Site.Address", func(_ *testing.T, in *Input) { in.Site.Address = "https://harbour.example/" }, everything, false},
	{"a language less", "Site.Languages", func(_ *testing.T, in *Input) { in.Site.Languages = []string{"es", "en"} }, pages, false},
	{"another class language", "Site.School", func(_ *testing.T, in *Input) { in.Site.School = "en" }, pages, false},
	{"another theme of the same bytes", "Site.Theme", func(_ *testing.T, in *Input) { in.Site.Theme = "" }, nothing, true},
	{"the key", "Site.Key", func(_ *testing.T, in *Input) { in.Site.Key = "pond" }, lessons, false},
	{"where the answers are", "Site.Answers", func(_ *testing.T, in *Input) { in.Site.Answers = week.AnswersLink }, print, false},
	{"search engines", "Site.Index", func(_ *testing.T, in *Input) { in.Site.Index = !in.Site.Index }, pages, false},
	{"the day", "Input.On", func(_ *testing.T, in *Input) { in.On = "2026-10-20" }, anyOf(home, feed, front), false},
	{"the grade", "Site.Grade", func(_ *testing.T, in *Input) {
		in.Site.Grade = new(problem.Grade)
	}, nothing, true},
	{"days off", "Site.DaysOff", func(_ *testing.T, in *Input) {
		in.Site.DaysOff = []week.Days{{First: "2026-12-21", Last: "2026-12-31"}}
	}, nothing, true},
	{"the grade", "Site.Grade", func(_ *testing.T, in *Input) { in.Site.Grade = new(problem.Grade) }, nothing, true}, // commands ask it
	{"what the class calls its picture", "Site.Words", func(_ *testing.T, in *Input) { in.Site.Words = map[string]string{"bar-model": "long bars"} }, learnOrPrint, false},
	{"what weeks bring back", "Site.Review", func(_ *testing.T, in *Input) { in.Site.Review = !in.Site.Review }, nothing, true}, // each week knows
	{"a week less", "Site.Weeks", func(_ *testing.T, in *Input) { in.Site.Weeks = in.Site.Weeks[:testedWeeks-1] }, anyOf(home, feed, front), false},

	{"the date", "Week.Date", changed(func(w *week.Week) { w.Date = "2026-10-07" }), anyOf(lessons, home, feed, front, weekly, desk), false},
	{"the day from which it shows", "Week.ShowFrom", changed(func(w *week.Week) { w.ShowFrom = "2026-10-01" }), feed, false},
	{"the kept stories", "Week.Kept", func(t *testing.T, in *Input) {
		for _, numbers := range [][2]int{{9, 6}, {8, 6}} {
			p, err := problem.New(problem.AddToResult, numbers[0], numbers[1])
			if err != nil {
				t.Fatal(err)
			}
			w := &in.Site.Weeks[changedWeek]
			w.Kept = append(w.Kept, week.KeptStory{Choice: story.Choice{Event: "harbour.board", Problem: p}})
		}
	}, fromThen, false},
	{"what the plan proposed", "Week.Proposed", changed(func(w *week.Week) { w.Proposed = []string{"target"} }), nothing, true}, // the desk asks it
	{"whether the date is meant", "Week.OddDate", changed(func(w *week.Week) { w.OddDate = true }), nothing, true},
	{"the target", "Week.Target", changed(func(w *week.Week) { w.Target = "compare-within-20" }), anyOf(fromThen, home, feed, front, weekly, messages), false},
	{"a target of its own", "Week.Spec", changed(func(w *week.Week) {
		w.Target, w.Spec = "", &activity.Spec{Operation: "both", Largest: 20, Parts: 2, Crossing: "either", Steps: 1}
	}), anyOf(fromThen, home, feed, front, weekly, messages), false},
	{"the strategy", "Week.Focus", changed(func(w *week.Week) { w.Focus = "think-addition" }), fromThen, false},
	{"the picture", "Week.Picture", changed(func(w *week.Week) { w.Picture = "number-line" }), thisWeek, false},
	{"the number of stories", "Week.Stories", changed(func(w *week.Week) { w.Stories = 7 }), fromThen, false},
	{"the place", "Week.Place", changed(func(w *week.Week) { w.Place = "harbour" }), fromThen, false},
	{"an extra sentence", "Week.ExtraSentence", changed(func(w *week.Week) { w.ExtraSentence = !w.ExtraSentence }), fromThen, false},
	{"numbers as words", "Week.NumberWords", changed(func(w *week.Week) { w.NumberWords = !w.NumberWords }), thisWeek, false},
	{"the ladder", "Week.Ladder", changed(func(w *week.Week) { w.Ladder = true }), thisWeek, false},
	{"a warm-up", "Week.WarmUp", changed(func(w *week.Week) { w.WarmUp = "tiptoe" }), both(learn, thisWeek), false},
	{"no review", "Week.Review", changed(func(w *week.Week) { w.Review = !w.Review }), fromThen, false},
	{"the minutes", "Week.Minutes", changed(func(w *week.Week) { w.Minutes++ }), both(anyOf(learn, messages), thisWeek), false},
	{"what a note may show", "Week.Allow", changed(func(w *week.Week) { w.Allow = []string{"https://harbour.example/"} }), nothing, true},
	{"a story of the teacher's own", "Week.OwnStories", changed(func(w *week.Week) {
		w.OwnStories = []week.OwnStory{{Text: "Lina tiene 8 conchas. Encuentra 6. ¿Cuántas tiene ahora?", Kind: "add-to-result"}}
	}), fromThen, false},
	{"a note in one language", "Week.Notes", changed(func(w *week.Week) { w.HasNote, w.Notes = true, map[string]string{"es": "Hola.", "ar": "سلام"} }), both(learn, thisWeek), false},
	{"a greeting for a note", "Week.HasNote", changed(func(w *week.Week) { w.HasNote = !w.HasNote }), both(learn, thisWeek), false},
}

// The files that a change may touch.
func everything(_, _ string) bool { return true }
func nothing(_, _ string) bool    { return false }
func desk(path, _ string) bool    { return strings.HasPrefix(path, "desk/") }
func pages(path, _ string) bool   { return strings.HasSuffix(path, ".html") }
func feed(path, _ string) bool    { return strings.HasSuffix(path, "feed.xml") }
func home(path, _ string) bool {
	return strings.Count(path, "/") == 1 && strings.HasSuffix(path, "/index.html")
}
func front(path, _ string) bool       { return path == "index.html" }
func sheets(path string) bool         { return strings.HasSuffix(path, "/sheets.html") }
func ofAll(path, _ string) bool       { return strings.HasSuffix(path, "/slips.html") || sheets(path) }
func thisWeek(path, date string) bool { return strings.Contains(path, date) }
func fromThen(path, date string) bool { return dateIn.FindString(path) >= date && lessons(path, date) }
func weekly(path, _ string) bool      { return strings.HasPrefix(path, "20") || ofAll(path, "") }
func shared(path, _ string) bool      { return weekly(path, "") || front(path, "") || path == "404.html" }
func learnOrPrint(path, date string) bool {
	return learn(path, date) || print(path, date)
}
func print(path, _ string) bool {
	return strings.HasSuffix(path, "-print.html") || sent(path) || sheets(path)
}
func learn(path, _ string) bool { return learnPattern.MatchString(path) || sent(path) }
func messages(path, _ string) bool {
	return strings.Contains(path, "/message-")
}
func sent(path string) bool { return strings.Contains(path, "/to-send/") }
func lessons(path, _ string) bool {
	return strings.Count(path, "/") == 1 && dateIn.MatchString(path) || strings.HasSuffix(path, "answer-key.html") || sent(path) || sheets(path)
}

var (
	dateIn       = regexp.MustCompile(`\d{4}-\d\d-\d\d`)
	learnPattern = regexp.MustCompile(`^[a-z]+/\d{4}-\d\d-\d\d\.html$`)
)

type files = func(path, date string) bool

func in(tag string) files {
	return func(path, _ string) bool {
		return strings.HasPrefix(path, tag+"/") || sent(path) && strings.HasSuffix(path, "-"+tag+".html")
	}
}

func messageOf(tag string) files {
	return func(path, _ string) bool { return strings.HasSuffix(path, "message-"+tag+".txt") }
}

func anyOf(sets ...files) files {
	return func(path, date string) bool {
		return slices.ContainsFunc(sets, func(f files) bool { return f(path, date) })
	}
}

func both(a, b files) files {
	return func(path, date string) bool { return a(path, date) && b(path, date) }
}

func changed(change func(w *week.Week)) func(*testing.T, *Input) {
	return func(_ *testing.T, in *Input) { change(&in.Site.Weeks[changedWeek]) }
}

// spoken changes every message of a language that stands alone on its line; forms for
// numbers stay, as a check holds them against each other.
func spoken(tag string) func(*testing.T, *Input) {
	return func(t *testing.T, in *Input) {
		raw, err := fs.ReadFile(locales.Files, tag+".toml")
		if err != nil {
			t.Fatal(err)
		}
		lines := strings.Split(string(raw), "\n")
		for i, line := range lines {
			if !strings.Contains(line, "one = ") {
				lines[i] = otherText.ReplaceAllString(line, `$1 =$2"`)
			}
		}
		catalog, problems := i18n.Load([]string{"es", "en", "ar"}, locales.Files, fstest.MapFS{tag + ".toml": {Data: []byte(strings.Join(lines, "\n"))}})
		if len(problems) > 0 {
			t.Fatal(problems[:min(5, len(problems))])
		}
		in.Catalog = catalog
	}
}

var otherText = regexp.MustCompile(`(\bother = "[^"]*[^".?!:؟])([.?!:؟]?)"`)

func themeWith(t *testing.T, was, is string) *page.Theme {
	raw, err := fs.ReadFile(themes.Files, "paper/colours.toml")
	if err != nil {
		t.Fatal(err)
	}
	changed := bytes.ReplaceAll(raw, []byte(was), []byte(is))
	if bytes.Equal(raw, changed) {
		t.Fatalf("the theme has no color %s", was)
	}
	theme, err := page.ReadTheme(folder("base"), fstest.MapFS{"colours.toml": {Data: changed}})
	if err != nil {
		t.Fatal(err)
	}
	return theme
}

// keyed is a file with its key and its bytes.
type keyed struct {
	key  string
	html string
}

// alikeCheck are check pages of which another is rendered: a third of the site, each made
// of the same fields as the next. Their keys are looked at all the same.
var alikeCheck = regexp.MustCompile(`/check/\d*[^37]\.html$`)

func keyedFiles(t *testing.T, change func(*testing.T, *Input)) map[string]keyed {
	t.Helper()
	in := exampleInput(t, "es", "en", "ar")
	in.Site.Weeks, in.Program = in.Site.Weeks[:testedWeeks], "this"
	change(t, &in)
	p, _, problems := Plan(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	out := map[string]keyed{}
	for folder, files := range map[string][]File{"": p.Pages(), "desk/": p.Desk()} {
		for _, f := range files {
			if alikeCheck.MatchString(f.Path) {
				out[folder+f.Path] = keyed{key: f.Key}
				continue
			}
			html, err := f.Render()
			if err != nil {
				t.Fatal(err)
			}
			out[folder+f.Path] = keyed{f.Key, string(html)}
		}
	}
	return out
}

// A key says all that a file depends on, and little more: each thing that pages
// are made from is changed in turn, and every file is rendered before and after.
func TestKeysCoverEverything(t *testing.T) {
	before := keyedFiles(t, func(*testing.T, *Input) {})
	date := exampleInput(t, "en").Site.Weeks[changedWeek].Date
	for _, c := range keyChanges {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			after := keyedFiles(t, c.make)
			made, inVain := 0, 0
			for path, now := range after {
				was, there := before[path]
				switch {
				case !there:
				case was.key == now.key && was.html != now.html:
					t.Errorf("%s has other bytes and the same key", path)
				case was.key != now.key && !c.only(path, date):
					t.Errorf("%s is to be made anew, although nothing in it depends on %s", path, c.field)
				case was.html != now.html:
					made++
				case was.key != now.key:
					inVain++
				}
			}
			if (made == 0) != c.quiet {
				t.Errorf("%d files have other bytes, want none: %v", made, c.quiet)
			}
			t.Logf("of %d files %d are made anew, %d more are looked at in vain", len(after), made, inVain)
		})
	}
}

// A field that is added must be changed by a test above.
func TestEveryInputIsChanged(t *testing.T) {
	known := map[string]bool{"Input.Site": true} // by its fields
	for _, c := range keyChanges {
		known[c.field] = true
	}
	for _, typ := range []reflect.Type{reflect.TypeFor[Input](), reflect.TypeFor[week.Site](), reflect.TypeFor[week.Week]()} {
		for i := range typ.NumField() {
			name := typ.Name() + "." + typ.Field(i).Name
			if typ.Field(i).IsExported() && !known[name] {
				t.Errorf("no test changes %s: add a line to keyChanges", name)
			}
		}
	}
}

func TestDigestTellsApart(t *testing.T) {
	type inner struct{ hidden any }
	one, two := 1, 2
	values := []any{
		nil, "", "a", "ab", 0, 1, 12, true, false, uint8(7), []string{}, []string{""}, []string{"a", "b"}, []string{"ab"},
		[]int{1, 2}, []int{12}, map[string]int{}, map[string]int{"a": 1}, map[string]int{"a": 2}, map[int]string{1: "a"},
		inner{}, inner{1}, inner{"1"}, inner{&one}, inner{&two}, &inner{1}, struct{ a, b string }{"x", ""}, struct{ a, b string }{"", "x"},
	}
	seen := map[string]any{}
	for _, v := range values {
		sum := digest(v)
		if other, ok := seen[sum]; ok {
			t.Errorf("%#v and %#v have one digest", other, v)
		}
		seen[sum] = v
		if again := digest(v); again != sum {
			t.Errorf("%#v: digest is %s, then %s", v, sum, again)
		}
	}
	if same := 1; digest(inner{&one}) != digest(inner{&same}) {
		t.Error("two pointers to equal values: want one digest, got two")
	}
	if digest(&withSum{"a", 1}) != digest(&withSum{"a", 2}) || digest(&withSum{"a", 1}) == digest(&withSum{"b", 1}) {
		t.Error("what has a sum is not named by it")
	}
	for name, v := range map[string]any{"a function": inner{func() {}}, "a sum that cannot be asked for": struct{ n *withSum }{&withSum{"a", 1}}} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("%s: want a panic, got a digest", name)
				}
			}()
			digest(v)
		}()
	}
}

// withSum has a sum of its own.
type withSum struct {
	sum  string
	rest int
}

func (n *withSum) Sum() string { return n.sum }
