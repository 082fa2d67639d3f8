package tomlfile

import "testing"

// Texts of several lines, as word processors and tired hands leave them: each slip
// is told once, at the line where it is mended, and what stands behind it is read.
func TestSlipsOfLongTexts(t *testing.T) {
	const ends = `write three quotes, """, on a line of their own below its last line`
	tests := []struct {
		name, text string
		line       int
		want, hint string
	}{
		{"no end", "a = 1\n[note]\nen = \"\"\"\nDear families\n\nread it\n", 3, "a text begins here and never ends", ends},
		{"no end before the next", "[note]\nen = \"\"\"\nDear families\nes = \"\"\"\nHola\n\"\"\"\n", 2, "a text begins here and never ends", ends},
		{"no end before a heading", "[note]\nen = '''\nDear families\n[other]\nes = \"x\"\n", 2, "a text begins here and never ends", ends},
		{"curly", "[note]\nen = “““\nDear families\n”””\nes = \"Hola\"\n", 2, "curly quotes stand around this text", `write three straight quotes, """, above it and below it`},
		{"one curly among straight ones", "[note]\nen = \"”\"\nDear families\n\"\"\"\n", 2, "curly quotes stand around this text", `write three straight quotes, """, above it and below it`},
		{"a backslash", "[note]\nen = \"\"\"\nDear families\n5 \\* 3\n\"\"\"\n", 4, `a backslash, \, stands in the text`, "take it away, or write two"},
		{"one quote", "[note]\nen = \"Dear families\n\nread it\"\nes = \"Hola\"\n", 2, "a text of several lines has three quotes", `write en = """, the text on the lines below, and """ on a line behind it`},
		{"a heading without words", "[note]\nen = 5\n", 2, "note.en cannot be 5", `write three quotes above the text and below it: en = """`},
	}
	for _, test := range tests {
		f := Parse("f", test.text, 1)
		s := f.Section()
		s.Number("a", 1, 9, 1)
		s.Section("other", "other things").Lines("es")
		note := s.Section("note", "the note")
		note.Lines("en")
		note.Lines("es")
		p := f.Problems()
		if len(p) != 1 || p[0].Line != test.line || p[0].Text != test.want || p[0].Hint != test.hint {
			t.Errorf("%s: want only %d, %q, %q, got\n%v", test.name, test.line, test.want, test.hint, p)
		}
	}
}

func TestFirstLine(t *testing.T) {
	for text, want := range map[string]int{
		"en = \"\"\"\nDear\n\"\"\"": 5, "en = \"\"\"Dear\nfamilies\"\"\"": 4, "en = \"Dear\"": 4, "\n\nen = '''\nDear\n'''": 7,
	} {
		f := Parse("f", text, 4)
		if got := f.Section().FirstLine("en"); got != want {
			t.Errorf("%q: want line %d, got %d", text, want, got)
		}
	}
}
