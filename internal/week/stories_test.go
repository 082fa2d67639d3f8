package week

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

const someStory = "[[own-story]]\ntext = \"Lina has 8 shells. She finds 6 more. How many now?\"\n"

func TestOwnStories(t *testing.T) {
	site, problems := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.toml", "# ours\ntarget = \"add-within-20\"\n\n"+someStory+`
[[own-story]]
text = """
Omar has 9 kites.
He finds 4."""
kind = "add-to-result"
equation = "9 + 4 = ?"
happens = "joins"
choice = 1
answer = "He has 13 kites."
[own-story.in]
es = "Omar tiene 9 cometas."
PT-BR = "Omar tem 9 pipas."
`), someAllowed())
	if problems != nil {
		t.Fatalf("Read problems:\n%v", problems)
	}
	want := []OwnStory{
		{Text: "Lina has 8 shells. She finds 6 more. How many now?"},
		{
			Text: "Omar has 9 kites. He finds 4.", Happens: "joins", Kind: "add-to-result", Equation: "9 + 4 = ?", Choice: 1, Answer: "He has 13 kites.",
			In: map[string]string{"es": "Omar tiene 9 cometas.", "pt-BR": "Omar tem 9 pipas."},
		},
	}
	if diff := cmp.Diff(want, site.Weeks[0].OwnStories); diff != "" {
		t.Errorf("own stories mismatch (-want +got):\n%s", diff)
	}
	for setting, line := range map[string]int{
		StorySetting(0, "text"): 5, StorySetting(0, "kind"): 4, StorySetting(1, "text"): 8,
		StorySetting(1, "kind"): 11, StorySetting(1, "choice"): 14, StorySetting(1, "in.es"): 17,
	} {
		if got := site.Weeks[0].Problem(setting, "x", "").Line; got != line {
			t.Errorf("line of %s: want %d, got %d", setting, line, got)
		}
	}
}

// Slips in stories of a teacher's own, each with what is said about it.
func TestOwnStorySlips(t *testing.T) {
	tests := []struct{ name, settings, want string }{
		{"single brackets are enough for one", strings.Replace(someStory, "[[own-story]]", "[own-story]", 1), ""},
		{"single brackets twice", strings.Repeat(strings.Replace(someStory, "[[own-story]]", "[own-story]", 1), 2),
			"5: a story of your own begins with two brackets on each side|write [[own-story]] above each of them"},
		{"a space in the name", strings.Replace(someStory, "own-story", "own story", 1), "3: a story of your own begins with two brackets on each side|write [[own-story]]"},
		{"on two lines", "[[own-story]]\ntext = \"Lina has 8 shells.", `4: the quote at the end is missing|write the whole text on one line, between two quotes`},
		{"inner quotes", "[[own-story]]\ntext = \"Lina has \"8\" shells.\"", "4: there are quotes inside the quotes|write three quotes around it: text = \"\"\"Lina has \"8\" shells.\"\"\""},
		{"quotes at both ends, and commas", "[[own-story]]\ntext = \"\"I have 8,\" says Lina. \"And 6 more.\"\"", "4: there are quotes inside the quotes|write three quotes around it: text = \"\"\"\"I have 8,\" says Lina. \"And 6 more.\"\"\"\""},
		{"inner quotes in three", "[[own-story]]\ntext = \"\"\"\"I have 8,\" says Lina. \"And 6 more.\"\"\"\"", ""},
		{"inner quotes of a translation", someStory + "[own-story.in]\nes = \"\"Tengo 8\", dice, \"y 6.\"\"", "6: there are quotes inside the quotes|es = \"\"\"\"Tengo 8\", dice, \"y 6.\"\"\"\""},
		{"the hint pasted with the line", someStory + "kind = \"add-to-result\"; if not, mark", `5: something stands after "\"add-to-result\""|write kind = "add-to-result", and nothing after it`},
		{"as it was once", someStory + "reading = \"add-to-result 8 + 6 = ?\"", `5: "reading" is called "kind" now|write kind = "add-to-result 8 + 6 = ?"`},
		{"a choice in words", someStory + "choice = \"two\"", `5: own-story.choice cannot be "two"|choice = `},
		{"a choice that there is not", someStory + "choice = 24", "5: own-story.choice = 24 is not from 1 to 23|choice = "},
		{"no text", "[[own-story]]\nkind = \"add-to-result\"", "3: an own story has no text"},
		{"a word", "own-story = \"Lina\"", "3: \"own-story\" is a table and needs lines of its own|write [[own-story]] on a line"},
		{"a number", someStory + "answer = 14", `5: own-story.answer cannot be 14|write a text in quotes: answer = "..."`},
		{"unknown setting", someStory + "question = \"?\"", `5: "question" is not a setting of a story of your own`},
		{"a setting of the week", someStory + "stories = 3", "5: \"stories\" is not a setting of a story of your own|write it above [[own-story]]"},
		{"too long", "[[own-story]]\ntext = \"" + strings.Repeat("ten shells ", 40) + "\"", "4: text has 439 letters|keep it to 400"},
		{"markup", "[[own-story]]\ntext = \"Lina has <b>8</b> shells.\"", `4: the story holds HTML, "<b>"`},
		{"link", "[[own-story]]\ntext = \"See https://shells.example for 8 shells.\"", `4: the story holds a link, "https://shells.example"`},
		{"telephone", "[[own-story]]\ntext = \"Call 0151 234 5678 for 8 shells.\"", "4: the story shows a phone number"},
		{"mail in a translation", someStory + "[own-story.in]\nes = \"Lina@school.example\"", "6: the story shows an e-mail address"},
		{"language", someStory + "[own-story.in]\nxx = \"8\"", `6: "xx" is not a language there is a file for`},
		{"translation as a word", someStory + "in = \"es\"", `5: "in" is a table and needs lines of its own|write [own-story.in] on a line`},
		{"too many", strings.Repeat(someStory, 9), "20: the week has 9 stories of your own|keep 8"},
	}
	for _, test := range tests {
		_, problems := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.toml", "# ours\ntarget = \"add-within-20\"\n"+test.settings+"\n"), someAllowed())
		if test.want == "" {
			if problems != nil {
				t.Errorf("%s: want no problem, got %v", test.name, problems)
			}
			continue
		}
		text, hint, _ := strings.Cut(test.want, "|")
		if len(problems) == 0 || len(problems) > 1 && !strings.HasPrefix(test.name, "single") || !strings.Contains(problems[0].String(), ".toml:"+text) || !strings.Contains(problems[0].Hint, hint) {
			t.Errorf("%s: want %q, got\n%v", test.name, test.want, problems)
		}
	}
}
