package week

import (
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"homebuild/internal/diag"
)

// Whatever a week file holds, reading ends, every problem names its place, and
// a week that passes holds only words that are allowed.
func FuzzRead(f *testing.F) {
	for _, seed := range []string{goodWeek, weekWith(`focus = “make-ten”`), weekWith("allow = [[[["), "# ours\n[own-target]\nkinds = [1]\n[note]\nen = \"[a](b)\"", "[note]\nen = \"\"\"\nes = \"\"\"", "[note]\nen = “““\n”””", "show-from = 2026-13-01", "\xff\xfe"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		allowed := someAllowed()
		site, problems := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.toml", text), allowed)
		for _, p := range problems {
			if p.File != "weeks/2026-09-14.toml" || p.Text == "" || p.Line > 1+strings.Count(text, "\n")+strings.Count(text, "\r") {
				t.Errorf("problem without a true place: %+v", p)
			}
		}
		if len(problems) > 0 {
			return
		}
		w := site.Weeks[0]
		if (w.Spec == nil) == (w.Target == "") || w.Stories < 1 || w.Stories > MaxStories || !utf8.ValidString(w.Notes["en"]) {
			t.Errorf("passed: %+v", w)
		}
	})
}

// Whatever the file of a week's kept stories holds, reading ends, every problem names its
// place, and a story that passes is one that can be told.
func FuzzKept(f *testing.F) {
	const good = "[[story]]\nevent = \"harbour.board\"\nkind = \"together-total\"\nnumbers = [4, 8]\n"
	for _, seed := range []string{good + good, good + good + "[[easier]]\n" + good[10:], good + "extra = -1", "[[story]]\n[[story.story]]", "story = 3", "[[harder]]\nnumbers = [[1]]", "\xff\xfe"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		const name = "weeks/2026-09-14.stories.toml"
		site, problems := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.toml", goodWeek, name, text), someAllowed())
		checkPlaces(t, problems, name, text)
		if len(problems) > 0 {
			return
		}
		for _, c := range site.Weeks[0].Kept {
			if len(c.Problem.Equation().Sides()) != 2 || c.Extra < 0 || c.Event == "" {
				t.Errorf("passed: %+v", c)
			}
		}
	})
}

// Whatever site.toml holds, reading ends, every problem names its place, and a
// site that passes holds only words that are allowed.
func FuzzSite(f *testing.F) {
	for _, seed := range []string{
		goodSite, goodSite + "address = \"javascript:alert(1)\"", "name = { en = \"x\", es = 1 }\nlanguages = [\"en\"]", "languages = [\"../en\"]",
		goodSite + "theme = \"../../paper\"", "name = \"<b>\"\nlanguages = [[[[", "\xff\xfe", "[[name]]\n[name.x.y.z]", goodSite + "key = \"\"\"\n\n\"\"\"",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		allowed := someAllowed()
		site, problems := Read(folder(SiteFile, text, "weeks/2026-09-14.toml", goodWeek), allowed)
		checkPlaces(t, problems, SiteFile, text)
		if len(problems) > 0 {
			return
		}
		for _, tag := range append([]string{site.School}, site.Languages...) {
			if !slices.Contains(allowed.Languages, tag) {
				t.Errorf("passed: the language %q", tag)
			}
		}
		if site.Theme != "" && !slices.Contains(allowed.Themes, site.Theme) {
			t.Errorf("passed: the theme %q", site.Theme)
		}
		if a := site.Address; a != "" && (!strings.HasPrefix(a, "https://") && !strings.HasPrefix(a, "http://") || !strings.HasSuffix(a, "/") || strings.ContainsAny(a, " \"<>\n")) {
			t.Errorf("passed: the address %q", a)
		}
	})
}

// Whatever a note holds, in whatever language, reading ends and every problem
// names its place; what passes has no markup that a page would show.
func FuzzNote(f *testing.F) {
	for _, seed := range []string{
		"Hola", "<b>", "[x](javascript:x)", "![x](y)", "office@school.example", "[a]: x\n[a]", "stories = 3", "\u202e", "<https://x.example>", "[a](b\nc)", `"""`, `\`,
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, note string) {
		const name = "weeks/2026-09-14.toml"
		text := "target = \"add-within-20\"\n[note]\nes = \"\"\"\n" + Quotable(note) + "\n\"\"\"\n"
		site, problems := Read(folder(SiteFile, goodSite, name, text), someAllowed())
		checkPlaces(t, problems, name, text)
		if len(problems) == 0 && site.Weeks[0].Notes["es"] != strings.TrimSpace(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(note)) {
			t.Errorf("want the note as it was written, %q, got %q", note, site.Weeks[0].Notes["es"])
		}
	})
}

// checkPlaces wants every problem to name the file and a line of it.
func checkPlaces(t *testing.T, problems diag.Diagnostics, file, text string) {
	t.Helper()
	for _, p := range problems {
		if p.File != file || p.Text == "" || p.Line > 1+strings.Count(text, "\n")+strings.Count(text, "\r") {
			t.Errorf("problem without a true place: %+v", p)
		}
	}
}
