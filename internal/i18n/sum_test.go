package i18n

import (
	"strings"
	"testing"
)

// What families read has a part in the sum of a file; remarks do not.
func TestSumOfWhatIsSaid(t *testing.T) {
	text := string(fixture(t, "es", "", ""))
	sum := func(text string) [32]byte {
		t.Helper()
		f, problems := Parse("es", text)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		return f.sum
	}
	once := func(old, new string) string {
		t.Helper()
		if !strings.Contains(text, old) {
			t.Fatalf("es.toml has no %q", old)
		}
		return strings.Replace(text, old, new, 1)
	}
	for _, test := range []struct {
		name, text string
		same       bool
	}{
		{"a remark at the head", "# a remark\n" + text, true},
		{"a remark after a text", once(`digits = "latn"`, `digits = "latn" # ours`), true},
		{"a remark and lines between messages", once("\n[page]\n", "\n# of the page\n\n\n[page]\n"), true},
		{"a text", once(`"Idioma"`, `"Lengua"`), false},
		{"a text and a space", once(`"Idioma"`, `"Idioma "`), false},
		{"a sign of a remark in a text", once(`"Idioma"`, `"Idioma # a remark"`), false},
		{"the header", once(`digits = "latn"`, `digits = "arab"`), false},
		{"a message more", text + "\n[more]\nthings = \"x\"\n", false},
		{"a description", text + "\n[more]\nthings = { other = \"x\", description = \"y\" }\n", false},
	} {
		if got := sum(test.text) == sum(text); got != test.same {
			t.Errorf("%s: the same sum %v, want %v", test.name, got, test.same)
		}
	}
	described := func(word string) string {
		return text + "\n[more]\nthings = { other = \"x\", description = \"" + word + "\" }\n"
	}
	if sum(described("y")) != sum(described("z")) {
		t.Error("a description is told to translators alone, and changes the sum")
	}
	if sum("[a.b]\nc = \"1\"\n[a]\nd = \"2\"\n") == sum("[a]\nb.c = \"1\"\nb.d = \"2\"\n") {
		t.Error("two files that say the same under other names have one sum")
	}
}
