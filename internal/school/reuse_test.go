package school

import (
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"
)

// lastYear is a school with weeks of the given Mondays.
func lastYear(settings string, mondays ...string) fstest.MapFS {
	files := fstest.MapFS{"site.toml": {Data: []byte("name = \"Pebble Lane School\"\nlanguages = [\"en\"]\n" + settings)}}
	for _, date := range mondays {
		files["weeks/"+date+".toml"] = &fstest.MapFile{Data: []byte("target = \"add-within-20\"\n")}
	}
	return files
}

func TestReusedWeeksFollowEachOtherAsTheyDid(t *testing.T) {
	const off = `days-off = ["2026-12-21 to 2027-01-01"]`
	tests := []struct {
		name     string
		settings string
		mondays  []string
		wish     Reuse
		want     []string
	}{
		{"week after week", "", []string{"2026-09-14", "2026-09-21"}, Reuse{First: "2027-09-06"}, []string{"2027-09-06", "2027-09-13"}},
		{"every other week", "", []string{"2026-09-14", "2026-09-28", "2026-10-12"}, Reuse{First: "2027-09-06"}, []string{"2027-09-06", "2027-09-20", "2027-10-04"}},
		{"holidays that no file names stay gaps", "", []string{"2026-12-14", "2027-01-11"}, Reuse{First: "2027-12-13"}, []string{"2027-12-13", "2028-01-10"}},
		{"holidays of the old year are no gap", off, []string{"2026-12-14", "2027-01-04"}, Reuse{First: "2027-09-06"}, []string{"2027-09-06", "2027-09-13"}},
		{"those of the new one are passed over", off, []string{"2026-12-07", "2026-12-14", "2027-01-04"}, Reuse{First: "2027-12-06", DaysOff: []string{"2027-12-13 to 2027-12-31"}},
			[]string{"2027-12-06", "2028-01-03", "2028-01-10"}},
		{"named by the new year alone: no gap twice", "", []string{"2026-12-14", "2027-01-11", "2027-01-18"}, Reuse{First: "2027-12-13", DaysOff: []string{"2027-12-20 to 2027-12-31"}},
			[]string{"2027-12-13", "2028-01-03", "2028-01-10"}},
		{"a first Monday without school", "", []string{"2026-09-14"}, Reuse{First: "2027-09-06", DaysOff: []string{"2027-09-06 to 2027-09-10"}}, []string{"2027-09-13"}},
		{"a year later, not asked", "", []string{"2026-09-14"}, Reuse{Today: "2027-06-01"}, []string{"2027-09-13"}},
		{"years later", "", []string{"2020-09-14"}, Reuse{Today: "2027-08-31"}, []string{"2027-09-06"}},
	}
	for _, test := range tests {
		made, problems := Open("last-year", lastYear(test.settings, test.mondays...)).Reuse(test.wish)
		if len(problems) > 0 {
			t.Errorf("%s: %v", test.name, problems)
			continue
		}
		if diff := cmp.Diff(test.want, each(made.Weeks, func(m Moved) string { return m.To })); diff != "" {
			t.Errorf("%s: mismatch (-want +got)\n%s", test.name, diff)
		}
	}
}

// Notes, kept stories, languages and settings come along; days and names of files
// are those of the new year.
func TestReusedFiles(t *testing.T) {
	files := lastYear("# days-off = [\"2026-11-26\"]\nkey = \"puddle\"\n", "2026-09-14")
	files["weeks/2026-09-14.toml"].Data = []byte("# The week of Monday, 2026-09-14.\nodd-date = true\nshow-from = 2026-09-10\ntarget = \"add-within-20\"\n[note]\nen = \"Ask why on 2026-09-14.\"\n")
	files["README.txt"] = &fstest.MapFile{Data: []byte("https://pebblelane.example/2026-09-14.html")}
	files["public/index.html"] = &fstest.MapFile{Data: []byte("not a source")}
	school := Open("last-year", files)
	school.Today = "2026-09-14"
	made, problems := school.Assemble(nil)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	kept := string(must(made.Keep()[0].Render()))
	files["weeks/2026-09-14.stories.toml"] = &fstest.MapFile{Data: []byte(kept)}
	reused, problems := school.Reuse(Reuse{First: "2027-09-06", DaysOff: []string{"2027-11-25"}})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	got := map[string]string{}
	for _, f := range reused.Files {
		got[f.Path] = string(must(f.Render()))
	}
	want := map[string]string{
		"site.toml":                     "name = \"Pebble Lane School\"\nlanguages = [\"en\"]\ndays-off = [\"2027-11-25\"]\nkey = \"puddle\"\n",
		"weeks/2027-09-06.toml":         "# The week of Monday, 2027-09-06.\nshow-from = 2027-09-02\ntarget = \"add-within-20\"\n[note]\nen = \"Ask why on 2026-09-14.\"\n",
		"weeks/2027-09-06.stories.toml": strings.ReplaceAll(kept, "2026-09-14", "2027-09-06"),
		"README.txt":                    "https://pebblelane.example/2027-09-06.html",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("mismatch (-want +got)\n%s", diff)
	}
}
