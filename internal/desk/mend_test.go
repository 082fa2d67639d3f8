package desk

import (
	"slices"
	"strings"
	"testing"

	"homebuild/internal/diag"
	"homebuild/internal/week"
)

// TestMend spoils a line of a week as an editor or an older version may leave it. The
// desk names it at its place; another tap mends it, and all else stays as it was: the
// letter, the comment, and the stories that families have.
func TestMend(t *testing.T) {
	const file = "# ours\ntarget  = \"add-within-20\"\nfocus   = \"make-ten\"\npicture = \"bar-model\"\nplace   = \"harbour\"\nwarm-up = \"reach\"\n\n[note]\nen = \"Dear families, we add.\"\n"
	for _, c := range []struct{ name, old, spoilt, code, quote, key, value string }{
		{"a sentence", `"add-within-20"`, `"ad-within-20"`, diag.Unknown, "ad-within-20", LineTarget, "add-within-20"},
		{"a sentence that several have", `"add-within-20"`, `"1.OA.C.6"`, diag.Unknown, "1.OA.C.6", LineTarget, "add-within-20"},
		{"no sentence", "target  = \"add-within-20\"\n", "", diag.Missing, "", LineTarget, "add-within-20"},
		{"a way", `"make-ten"`, `"mke-ten"`, diag.Unknown, "mke-ten", LineWay, "count-on"},
		{"a picture", `"bar-model"`, `"balance"`, diag.Unknown, "balance", LinePicture, "ten-frame"},
		{"a place", `"harbour"`, `"moon"`, diag.Unknown, "moon", LinePlace, "market"},
		{"the old name of a place", `place  `, `scene  `, diag.Renamed, LinePlace, LinePlace, "market"},
		{"a warm-up", `"reach"`, `"cartwheel"`, diag.Unknown, "cartwheel", LineWarmUp, "none"},
	} {
		d := New(nil)
		files := Files{"site.toml": "name = \"Pebble\"\nlanguages = [\"en\", \"es\"]\n", week.Path(first): file}
		ask[Opened](t, d, "open", Open{Files: files, Today: "2026-09-10", Words: "en"})
		sending := ask[Sending](t, d, "send", SendWish{Date: first, Tags: []string{"en"}})
		kept := *sending.Changes[week.StoriesPath(first)]
		files[week.StoriesPath(first)] = kept
		files[week.Path(first)] = strings.Replace(file, c.old, c.spoilt, 1)
		ask[Opened](t, d, "open", Open{Files: files, Today: "2026-09-10", Words: "es"})
		var found []Finding
		for _, f := range sheetOf(t, d).Findings {
			if f.Mend {
				found = append(found, f)
			}
		}
		if len(found) != 1 || found[0].Code != c.code || found[0].Quote != c.quote || found[0].Key != c.key || found[0].Story != -1 {
			t.Errorf("%s: want %s %q at %s, got %+v", c.name, c.code, c.quote, c.key, found)
		}
		choices := ask[[]Choice](t, d, "choices", LineOf{first, c.key})
		if offered := len(choices) > 1; !offered {
			t.Errorf("%s: nothing else is offered: %+v", c.name, choices)
		}
		set(t, d, c.key, c.value)
		w := sheetOf(t, d)
		for _, f := range w.Findings {
			if f.Mend {
				t.Errorf("%s: mended, and still %+v", c.name, f)
			}
		}
		if text := d.text(week.StoriesPath(first)); text != kept {
			t.Errorf("%s: the kept stories are others now:\n%s\nthey were\n%s", c.name, text, kept)
		}
		if text := d.text(week.Path(first)); !strings.Contains(text, "# ours\n") || !strings.Contains(text, "en = \"Dear families, we add.\"") || len(w.Stories) != 5 {
			t.Errorf("%s: something else is lost; %d stories, and\n%s", c.name, len(w.Stories), text)
		}
	}
}

// TestMendKept spoils one of the stories that families have: the others stay as they
// are, and keeping them leaves that one out.
func TestMendKept(t *testing.T) {
	for _, spoil := range []struct{ old, spoilt string }{{"event = \"", "event = \"x"}, {"kind = \"", "kind = \"x"}, {"numbers = [", "numbers = [0, "}} {
		d := newDesk(t, "en")
		lay(t, d, ask[Act](t, d, "story", StoryWish{Date: first, Story: 1, Do: "keep"}))
		lay(t, d, ask[Act](t, d, "story", StoryWish{Date: first, Story: 3, Do: "keep"}))
		before := sheetOf(t, d).Stories
		text := d.text(week.StoriesPath(first))
		at := strings.Index(text, "# Story 2")
		spoilt := text[:at] + strings.Replace(text[at:], spoil.old, spoil.spoilt, 1)
		lay(t, d, Act{Changes: Changes{week.StoriesPath(first): &spoilt}})
		w := sheetOf(t, d)
		if len(w.Findings) == 0 || w.Findings[0].Code != diag.Misfit || w.Findings[0].Key != "stories" {
			t.Errorf("%s: %+v", spoil.spoilt, w.Findings)
		}
		lay(t, d, ask[Act](t, d, "story", StoryWish{Date: first, Story: 0, Do: "keep"}))
		after := sheetOf(t, d)
		if slices.ContainsFunc(after.Findings, func(f Finding) bool { return f.Mend }) || len(after.Stories) != len(before)-1 {
			t.Fatalf("%s: %d stories, %+v", spoil.spoilt, len(after.Stories), after.Findings)
		}
		for now, was := range map[int]int{1: 1, 2: 3} {
			if got, want := strings.Join(after.Stories[now].Text, " "), strings.Join(before[was].Text, " "); got != want || !after.Stories[now].Ink {
				t.Errorf("%s: story %d was %q and is %q", spoil.spoilt, was, want, got)
			}
		}
	}
}
