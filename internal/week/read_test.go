package week

import (
	"go/parser"
	"go/token"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"homebuild/internal/activity"
)

// someAllowed is a small set of the words that other rooms know.
func someAllowed() Allowed {
	return Allowed{
		Targets:    []string{"add-within-20", "subtract-within-20", "add-three-within-20"},
		Strategies: []string{"make-ten", "doubles", "friendly-pair"},
		Pictures:   []string{"bar-model", "ten-frame", "number-line"},
		Places:     []string{"harbour", "market"},
		WarmUps:    []string{"reach", "stamp"},
		Themes:     []string{"paper", "slate"},
		Kinds:      []string{"add-to-result", "together-total"},
		Languages:  []string{"en", "es", "ar", "pt-BR"},
	}
}

const (
	goodSite = "name = \"Pebble Lane\"\nlanguages = [\"en\", \"es\"]\n"
	goodWeek = "# ours\ntarget = \"add-within-20\"\n[note]\nen = \"Dear families,\"\n"
)

// noted is a good week whose note has a text on the file's line 5.
func noted(text string) string {
	return "target = \"add-within-20\"\n[note]\nen = \"\"\"\nDear families,\n" + Quotable(text) + "\n\"\"\"\n"
}

// folder makes a school's folder from name, text, name, text.
func folder(pairs ...string) fstest.MapFS {
	fsys := fstest.MapFS{}
	for i := 0; i < len(pairs); i += 2 {
		fsys[pairs[i]] = &fstest.MapFile{Data: []byte(pairs[i+1])}
	}
	return fsys
}

func TestReadWhole(t *testing.T) {
	site, problems := Read(folder(
		SiteFile, `name = { en = "Pebble Lane", es = "Calle Guijarro" }
class = "Room 4"
address = "https://school.example/home"
languages = ["en", "es", "pt-br"]
school-language = "es"
theme = "slate"
key = "puddle"
answers = "link"
index = true
days-off = ["2026-11-26"]
`,
		"weeks/2026-09-21.toml", goodWeek,
		"weeks/2026-09-14.toml", `target = "add-within-20"
focus = "make-ten"
picture = "ten-frame"
stories = 3
place = "harbour"
extra-sentence = true
number-words = true
ladder = true
warm-up = "reach"
review = true
minutes = 15
show-from = 2026-09-10
allow = ["office@school.example"]

[note]
es = """
Queridas familias, office@school.example
"""
en = "Dear families,"
`,
		"weeks/.DS_Store", "x", "weeks/2026-09-14.toml~", "old", "weeks/plan.pdf", "x",
	), someAllowed())
	if problems != nil {
		t.Fatalf("Read problems:\n%v", problems)
	}
	want := Site{
		Name:  Localized{By: map[string]string{"en": "Pebble Lane", "es": "Calle Guijarro"}},
		Class: Localized{Plain: "Room 4"}, Address: "https://school.example/home/",
		Languages: []string{"en", "es", "pt-BR"}, School: "es", Theme: "slate", Key: "puddle", Answers: AnswersLink, Index: true, Review: true, DaysOff: []Days{{"2026-11-26", "2026-11-26"}},
		Weeks: []Week{
			{
				Date: "2026-09-14", ShowFrom: "2026-09-10", Target: "add-within-20", Focus: "make-ten", Picture: "ten-frame", Stories: 3,
				Place: "harbour", ExtraSentence: true, NumberWords: true, Ladder: true, WarmUp: "reach", Review: true, Minutes: 15,
				Allow: []string{"office@school.example"},
				Notes: map[string]string{"es": "Queridas familias, office@school.example", "en": "Dear families,"}, HasNote: true,
			},
			{
				Date: "2026-09-21", ShowFrom: "2026-09-18", Target: "add-within-20", Stories: 4, Review: true, Minutes: 10,
				Notes: map[string]string{"en": "Dear families,"}, HasNote: true,
			},
		},
	}
	if diff := cmp.Diff(want, site, cmpopts.IgnoreUnexported(Week{})); diff != "" {
		t.Errorf("Read mismatch (-want +got):\n%s", diff)
	}
}

func TestReadOwnTarget(t *testing.T) {
	site, problems := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.toml", `# ours
[own-target]
operation = "subtraction"
largest = 100
kinds = ["add-to-result"]
crossing = "never"
steps = 2
`), someAllowed())
	if problems != nil {
		t.Fatalf("Read problems:\n%v", problems)
	}
	want := &activity.Spec{Operation: "subtraction", Largest: 100, Kinds: []string{"add-to-result"}, Parts: 2, Crossing: "never", Steps: 2}
	if diff := cmp.Diff(want, site.Weeks[0].Spec); diff != "" {
		t.Errorf("own target mismatch (-want +got):\n%s", diff)
	}
	got := site.Weeks[0].Problem("own-target.largest", "too few stories", "").String()
	if want := "weeks/2026-09-14.toml:4: too few stories"; got != want {
		t.Errorf("Problem: want %q, got %q", want, got)
	}
}

func TestTextIn(t *testing.T) {
	tests := []struct {
		name string
		text Localized
		want string
		why  string
	}{
		{"plain", Localized{Plain: "Pebble"}, "Pebble", "one text for all"},
		{"own", Localized{By: map[string]string{"es": "Guijarro", "en": "Pebble"}}, "Guijarro", "the language's own text comes first"},
		{"school", Localized{By: map[string]string{"en": "Pebble"}}, "Pebble", "families know the school's own name"},
	}
	for _, test := range tests {
		if got := test.text.In("es", "en"); got != test.want {
			t.Errorf("%s: In(es, en): want %q, got %q: %s", test.name, test.want, got, test.why)
		}
	}
}

// The samples of the package comment are what teachers copy.
func TestSamplesOfTheDocumentation(t *testing.T) {
	file, err := parser.ParseFile(token.NewFileSet(), "doc.go", nil, parser.ParseComments)
	if err != nil {
		t.Fatal(err)
	}
	var samples []string // indented blocks
	for block := range strings.SplitSeq(file.Doc.Text(), "\n\n") {
		if strings.HasPrefix(block, "\t") {
			samples = append(samples, strings.ReplaceAll(block[1:], "\n\t", "\n"))
		}
	}
	// The samples of weeks hold blank lines.
	if len(samples) != 10 {
		t.Fatalf("samples: want 10 blocks, got %d: %q", len(samples), samples)
	}
	allowed := someAllowed()
	site, named, first, second := samples[1], samples[2], samples[3]+"\n\n"+samples[4], samples[5]+"\n\n"+samples[6]
	third := strings.Join(samples[7:], "\n\n")
	for _, s := range []string{site, strings.Replace(site, `name            = "Pebble Lane School"`, named, 1)} {
		read, problems := Read(folder(SiteFile, s, "weeks/2026-09-14.toml", first, "weeks/2026-09-21.toml", second, "weeks/2026-09-28.toml", third), allowed)
		if problems != nil {
			t.Fatalf("sample problems:\n%v", problems)
		}
		if len(read.Weeks) != 3 || len(read.Weeks[2].OwnStories) != 1 || len(read.Weeks[2].OwnStories[0].In) != 1 || read.Weeks[1].Spec == nil || read.Weeks[0].WarmUp != "reach" || len(read.Weeks[0].Notes) != 2 {
			t.Errorf("sample was read as %+v", read)
		}
	}
}

// What was learned returns unless the site or the week says no; the week has the
// last word.
func TestReview(t *testing.T) {
	for _, row := range []struct {
		site, week string
		want       bool
	}{
		{"", "", true},
		{"review = false\n", "", false},
		{"", "review = false\n", false},
		{"review = false\n", "review = true\n", true},
	} {
		site, problems := Read(folder(
			"site.toml", "name = \"Pebble Lane\"\nlanguages = [\"en\"]\n"+row.site,
			"weeks/2026-09-14.toml", "target = \"add-within-20\"\n"+row.week,
		), someAllowed())
		if len(problems) > 0 || site.Weeks[0].Review != row.want {
			t.Errorf("site %q, week %q: want review %v, got %+v, %v", row.site, row.week, row.want, site.Weeks, problems)
		}
	}
}

// A class's grade is a number or the word for the year before the first.
func TestGrade(t *testing.T) {
	for written, want := range map[string]int{"0": 0, `"K"`: 0, `"k"`: 0, `"Kindergarten"`: 0, "1": 1, "3": 3} {
		site, problems := Read(folder(SiteFile, goodSite+"grade = "+written+"\n", "weeks/2026-09-14.toml", goodWeek), someAllowed())
		if problems != nil || site.Grade == nil || int(*site.Grade) != want {
			t.Errorf("grade = %s: want %d, got %v and\n%v", written, want, site.Grade, problems)
		}
	}
	if site, _ := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.toml", goodWeek), someAllowed()); site.Grade != nil {
		t.Errorf("no grade: want none, got %d", *site.Grade)
	}
	for _, written := range []string{`"first"`, "9", "-1", "true"} {
		_, problems := Read(folder(SiteFile, goodSite+"grade = "+written+"\n", "weeks/2026-09-14.toml", goodWeek), someAllowed())
		if len(problems) != 1 || problems[0].Line != 3 {
			t.Errorf("grade = %s: want it told on line 3, got\n%v", written, problems)
		}
	}
}

// What the class calls a way or a picture, on one line; what is left empty is called as
// everywhere.
func TestClassWords(t *testing.T) {
	read := func(words string) (map[string]string, string) {
		site, problems := Read(folder(SiteFile, goodSite+"[words]\n"+words, "weeks/2026-09-14.toml", goodWeek), someAllowed())
		return site.Words, problems.Error()
	}
	got, wrong := read("make-ten = \"\"\"filling\n  the frame\"\"\"\nbar-model = \"strips\"\ndoubles = \"\"\n")
	if diff := cmp.Diff(map[string]string{"make-ten": "filling the frame", "bar-model": "strips"}, got); diff != "" || wrong != "" {
		t.Errorf("mismatch (-want +got):\n%s%s", diff, wrong)
	}
	if _, wrong := read("make-tne = \"filling\"\n"); !strings.HasPrefix(wrong, `site.toml:4: "make-tne" is not a strategy or a picture`+"\n  hint: did you mean \"make-ten\"?") {
		t.Errorf("a way that there is not: got %s", wrong)
	}
	if _, wrong := read("make-ten = \"call 555-010-0199\"\n"); !strings.HasPrefix(wrong, "site.toml:4: make-ten holds a phone number") {
		t.Errorf("a phone number: got %s", wrong)
	}
}
