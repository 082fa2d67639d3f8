package tomlfile

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

const edited = `# The week.
target = "add" # what we learn

# focus = "..."
stories = 4
allow = [
  "a@b.example",
]

[note]
# A remark.
en = """
Dear families,

# no remark: it stands in a text
"""
es = "Hola"

[[own-story]]
text = "one"
[own-story.in]
es = "uno"

# The second.
[[own-story]]
text = "two"
`

func TestSet(t *testing.T) {
	const list = "allow = [\n  \"a@b.example\",\n]\n"
	for _, c := range []struct{ name, text, key, value, want string }{
		{"another value", "a = 1\nb = 2\n", "a", "3", "a = 3\nb = 2\n"},
		{"the place of a remark", "a = 1\n# b = \"...\"\n# c\n", "b", `"x"`, "a = 1\nb = \"x\"\n# c\n"},
		{"behind the others", "a = 1\n\n[note]\nen = \"x\"\n", "b", "2", "a = 1\nb = 2\n\n[note]\nen = \"x\"\n"},
		{"a list of lines", list + "b = 1\n", "allow", "[]", "allow = []\nb = 1\n"},
		{"a long text", "[note]\nen = \"\"\"\na\n\n# b\n\"\"\"\n\n# c\n[[x]]\ny = 1\n", "note.en", `"z"`, "[note]\nen = \"z\"\n\n# c\n[[x]]\ny = 1\n"},
		{"another language", "[note]\nen = \"a\"\n", "note.es", `"b"`, "[note]\nen = \"a\"\nes = \"b\"\n"},
		{"an empty table", "a = 1\n[note]\n", "note.es", `"b"`, "a = 1\n[note]\nes = \"b\"\n"},
		{"no table yet", "a = 1\n", "note.es", `"b"`, "a = 1\n\n[note]\nes = \"b\"\n"},
		{"a table on one line", "note = { en = \"a\" }\n", "note.es", `"b"`, "\n\n[note]\nen = \"a\"\nes = \"b\"\n"},
		{"names with dots", "note.en = \"a\"\nb = 1\n", "note.es", `"c"`, "note.en = \"a\"\nnote.es = \"c\"\nb = 1\n"},
		{"an empty file", "", "a", "1", "a = 1\n"},
	} {
		got := Set(c.text, c.key, c.value)
		if diff := cmp.Diff(c.want, got); diff != "" {
			t.Errorf("%s (- wanted, + got):\n%s", c.name, diff)
		}
		if again := Set(got, c.key, c.value); again != got {
			t.Errorf("%s: setting it twice changes more: %q", c.name, again)
		}
	}
}

func TestRemove(t *testing.T) {
	for _, c := range []struct{ key, gone string }{
		{"target", "target = \"add\" # what we learn\n"},
		{"allow", "allow = [\n  \"a@b.example\",\n]\n"},
		{"note.es", "es = \"Hola\"\n"},
		{"note.en", "en = \"\"\"\nDear families,\n\n# no remark: it stands in a text\n\"\"\"\n"},
		{"nothing", ""},
	} {
		if diff := cmp.Diff(cut(edited, c.gone), Remove(edited, c.key)); diff != "" {
			t.Errorf("%s (- wanted, + got):\n%s", c.key, diff)
		}
	}
	first := cut(edited, "[[own-story]]\ntext = \"one\"\n[own-story.in]\nes = \"uno\"\n")
	if diff := cmp.Diff(first, RemoveTable(edited, "own-story", 0)); diff != "" {
		t.Errorf("the first story (- wanted, + got):\n%s", diff)
	}
	if diff := cmp.Diff(cut(edited, "[[own-story]]\ntext = \"two\"\n"), RemoveTable(edited, "own-story", 1)); diff != "" {
		t.Errorf("the second story (- wanted, + got):\n%s", diff)
	}
}

func cut(text, gone string) string {
	for i := range text {
		if len(gone) > 0 && len(text) >= i+len(gone) && text[i:i+len(gone)] == gone {
			return text[:i] + text[i+len(gone):]
		}
	}
	return text
}

// TestQuote reads back what was quoted.
func TestQuote(t *testing.T) {
	for _, text := range []string{"", "plain", `with "quotes" and \`, "it's", "two\nlines", "\"\"\"\n'''\\\n\x01", "ünï 중"} {
		file := Parse("", "v = "+Quote(text)+"\n", 1)
		got := file.tree.at[place{file.Root, "v"}]
		if got == nil {
			t.Errorf("%q: %q cannot be read", text, Quote(text))
			continue
		}
		if want := text; got.Text != want && got.Text != want+"\n" {
			t.Errorf("%q came back as %q", text, got.Text)
		}
	}
}

// A text stands as a person would write it.
func TestQuoteIsPlain(t *testing.T) {
	for text, want := range map[string]string{"l'École": `"l'École"`, `The "Heron" class`: `'The "Heron" class'`, `a\b`: `'a\b'`} {
		if got := Quote(text); got != want {
			t.Errorf("Quote(%s): want %s, got %s", text, want, got)
		}
	}
}
