package desk

import (
	"encoding/json"
	"strings"
	"testing"
)

// TestOwnStoryInAnEditor follows a story of the teacher's own while she writes it in
// the week's file, and not on the page: each time the desk says at which line what
// is open, and families have the story once it is chosen.
func TestOwnStoryInAnEditor(t *testing.T) {
	const text = "# ours\ntarget = \"add-within-20\"\n\n[[own-story]]\ntext = \"Lina has 8 shells. She finds 6 more. How many shells does she have now?\"\n"
	for _, c := range []struct {
		name, lines string
		line        int
		says, hint  string
	}{
		{"nothing chosen", "", 5, "your own story waits for you to say what happens; numbers that count: 8 shells, 6 more", `happens = "joins"`},
		{"what happens", "happens = \"joins\"\n", 5, "your own story waits for you to say what it asks; numbers that count: 8 shells, 6 more", `kind = "add-to-result"`},
		{"a number that the story does not tell", "kind = \"add-to-result\"\nequation = \"8 + 7 = ?\"\n", 7, "the story does not tell what the equation needs: 7", "take the line away"},
		{"no kind of story", "kind = \"8 + 6 = ?\"\n", 6, `"8" is not a kind of story`, "take the line away"},
		{"chosen", "kind = \"add-to-result\"\n", 0, "", ""},
	} {
		d := New(nil)
		files := Files{"site.toml": "name = \"Pebble\"\nlanguages = [\"en\"]\n", "weeks/2026-09-14.toml": text + c.lines + "[note]\nen = \"We tell stories.\"\n"}
		ask[Opened](t, d, "open", Open{Files: files, Today: "2026-09-10", Words: "en"})
		var found []Finding
		for _, f := range ask[Week](t, d, "week", Monday{"2026-09-14"}).Findings {
			if f.Mend {
				found = append(found, f)
			}
		}
		page := ask[Page](t, d, "page", PageOf{Date: "2026-09-14", Tag: "en", Page: "try"}).HTML
		if has := strings.Contains(page, "Lina has <b class=n>8</b> shells"); has != (c.says == "") {
			t.Errorf("%s: families have the story: %v", c.name, has)
		}
		if c.says == "" && len(found) == 0 {
			continue
		}
		if len(found) != 1 || found[0].Text != c.says || found[0].Line != c.line || !strings.Contains(found[0].Hint, c.hint) {
			t.Errorf("%s: want %q at line %d with %q, got %+v", c.name, c.says, c.line, c.hint, found)
		}
	}
}

// TestSlipInAnEditor writes a target that there is none of: what is told first, and
// alone, is the line that is wrong.
func TestSlipInAnEditor(t *testing.T) {
	d := New(nil)
	files := Files{"site.toml": "name = \"Pebble\"\nlanguages = [\"en\"]\n", "weeks/2026-09-14.toml": "# ours\ntarget = \"ad-within-20\"\n"}
	ask[Opened](t, d, "open", Open{Files: files, Today: "2026-09-10", Words: "en"})
	for call, args := range map[string]any{"page": PageOf{Date: "2026-09-14", Tag: "en", Page: "learn"}, "week": Monday{"2026-09-14"}, "kinds": StoryOf{"2026-09-14", 1}, "check": CheckOf{"2026-09-14", "en"}} {
		reply := send(t, d, call, args)
		if call == "week" {
			var sheet Week
			if err := json.Unmarshal(reply.Value, &sheet); err != nil {
				t.Fatal(err)
			}
			reply.Wrong = sheet.Findings
		}
		if len(reply.Wrong) != 1 || reply.Wrong[0].Line != 2 || reply.Wrong[0].File != "weeks/2026-09-14.toml" || !strings.Contains(reply.Wrong[0].Hint, `"add-within-20"`) {
			t.Errorf("%s: %+v", call, reply.Wrong)
		}
	}
}
