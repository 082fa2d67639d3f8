package week

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

// A week of the older form becomes one file: its settings and remarks as they
// stood, its notes in every language, and nothing that explained the older form.
func TestRenew(t *testing.T) {
	files := folder(SiteFile, goodSite,
		"weeks/2026-09-14.md", `+++
# The week of Monday, 2026-09-14. The lines from here to the next +++ are settings.
# A line that begins with # is a remark for you; homebuild passes over it.
target = "add-within-20"  # ours

[[own-story]]
text = "Lina has 8 shells."

# Below the next +++ stands your note to families, in English. Write what you
# like; leave an empty line between paragraphs.
+++
Dear families,

5 \* 3 and """quotes""".
`,
		"weeks/2026-09-14.es.md", "Queridas familias\n", "weeks/2026-09-21.es.md", "Otra semana")
	got, problem := Renew(files, "2026-09-14", "en")
	if problem != nil {
		t.Fatal(problem)
	}
	want := Renewed{Date: "2026-09-14", From: []string{"weeks/2026-09-14.md", "weeks/2026-09-14.es.md"}, Text: `# The week of Monday, 2026-09-14.
# A line that begins with # is a remark for you; homebuild passes over it.
target = "add-within-20"  # ours

[[own-story]]
text = "Lina has 8 shells."

[note]
en = """
Dear families,

5 \\* 3 and ""\"quotes""\".
"""
es = """
Queridas familias
"""
`}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("Renew mismatch (-want +got):\n%s", diff)
	}
	site, problems := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.toml", got.Text), someAllowed())
	if problems != nil || site.Weeks[0].Notes["en"] != "Dear families,\n\n5 \\* 3 and \"\"\"quotes\"\"\"." {
		t.Errorf("want it read as it was, got %q and\n%v", site.Weeks[0].Notes["en"], problems)
	}
}

// The language of the school comes first, whatever its letters; a week of which nothing
// was set is a week all the same.
func TestRenewOrder(t *testing.T) {
	for _, test := range []struct{ name, old, school, want string }{
		{"the school's first", "+++\ntarget = \"x\"\n+++\nHola\n", "es", "target = \"x\"\n\n[note]\nes = \"\"\"\nHola\n\"\"\"\nar = \"\"\"\nMarhaban\n\"\"\"\n"},
		{"nothing set", "+++\n+++\nHola\n", "ar", "\n\n[note]\nar = \"\"\"\nHola\n\"\"\"\n"},
		{"no note", "+++\ntarget = \"x\"\n+++\n", "es", "target = \"x\"\n\n[note]\nar = \"\"\"\nMarhaban\n\"\"\"\n"},
	} {
		got, problem := Renew(folder("weeks/2026-09-14.md", test.old, "weeks/2026-09-14.ar.md", "Marhaban\n", "weeks/2026-09-21.ar.md", "later"), "2026-09-14", test.school)
		if problem != nil || got.Text != test.want {
			t.Errorf("%s: want\n%s\ngot\n%s%v", test.name, test.want, got.Text, problem)
		}
	}
}

func TestRenewWhatIsNoWeek(t *testing.T) {
	for _, text := range []string{"Dear families", "+++\ntarget = \"x\"\n"} {
		if _, problem := Renew(folder("weeks/2026-09-14.md", text), "2026-09-14", "en"); problem == nil {
			t.Errorf("want a problem for %q", text)
		}
	}
	if _, problem := Renew(folder(), "2026-09-14", "en"); problem == nil || problem.Text != "the file is missing" {
		t.Errorf("want the file missed, got %v", problem)
	}
}
