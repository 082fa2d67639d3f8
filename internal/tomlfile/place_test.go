package tomlfile

import "testing"

// A text is changed where it stands, in whatever way it is written; every other byte
// stays.
func TestPut(t *testing.T) {
	for _, test := range []struct{ name, text, at, value, want string }{
		{"in a table", "# a\n[learn.next]\nhash = \"5\" # of\nother = \"\" # 1, 2 ...\n", "learn.next.other", "Dalej",
			"# a\n[learn.next]\nhash = \"5\" # of\nother = \"Dalej\" # 1, 2 ...\n"},
		{"alone", "[learn]\nnext = 'x'\nback = 'y' # z\n", "learn.back", `say "b"`, "[learn]\nnext = 'x'\nback = 'say \"b\"' # z\n"},
		{"on one line", `a = { one = "x", other = "x" }`, "a.other", "y", `a = { one = "x", other = "y" }`},
		{"with dots", "[a]\nb.one = \"x\"\nb.other = \"x\"", "a.b.other", "y", "[a]\nb.one = \"x\"\nb.other = \"y\""},
		{"on lines of its own", "a = \"\"\"\nx\n\"\"\" # r\nb = \"\"", "a", "y", "a = \"y\" # r\nb = \"\""},
		{"between quotes that mean something", "a = \"\\\"x\\\" # =\" # r", "a", "ą = #", "a = \"ą = #\" # r"},
		{"one more in a table", "[a.b]\none = \"x\" # r\n\n# c\n[c]\nd = \"\"", "a.b.few", "y", "[a.b]\none = \"x\" # r\nfew = \"y\"\n\n# c\n[c]\nd = \"\""},
		{"one more on one line", `a = { one = "x" } # r`, "a.few", "y", `a = { one = "x", few = "y" } # r`},
		{"one more with dots", "[a]\nb.one = \"x\"\nc = \"\"", "a.b.few", "y", "[a]\nb.one = \"x\"\nb.few = \"y\"\nc = \"\""},
		{"behind a table on one line", "[a]\nb = { c = \"x\" } # r\n\n[d]", "a.e", "y", "[a]\nb = { c = \"x\" } # r\ne = \"y\"\n\n[d]"},
		{"below a heading", "# r\n[a]\n\n[a.b]\nc = \"x\"", "a.e", "y", "# r\n[a]\ne = \"y\"\n\n[a.b]\nc = \"x\""},
		{"in the file of Windows", "[a]\r\nb = \"x\"\r\n", "a.c", "y", "[a]\r\nb = \"x\"\r\nc = \"y\"\r\n"},
	} {
		got, ok := Put(test.text, test.at, Quote(test.value))
		if test.name == "alone" {
			test.want = "[learn]\nnext = 'x'\nback = " + Quote(test.value) + " # z\n"
		}
		if !ok || got != test.want {
			t.Errorf("%s: want %q, got %q, %v", test.name, test.want, got, ok)
		}
	}
	for _, name := range []string{"a", "b.c", "a.b.c", "x", ""} {
		if got, ok := Put("[a]\nb = \"x\"", name, "y"); ok || got != "[a]\nb = \"x\"" {
			t.Errorf("%q: want nothing changed, got %q", name, got)
		}
	}
	if got, ok := Put("a = \"x\nb = \"", "a", "y"); ok || got != "a = \"x\nb = \"" {
		t.Errorf("in what is no TOML: got %q", got)
	}
}

func TestPutTable(t *testing.T) {
	lines := []string{"[a.c]", `one = "x"`}
	for _, test := range []struct{ text, want string }{
		{"[a.b]\none = \"y\" # r\nhash = \"z\"\n\n# d\n[d]\n", "[a.b]\none = \"y\" # r\nhash = \"z\"\n\n[a.c]\none = \"x\"\n\n# d\n[d]\n"},
		{"[a]\nb = { one = \"y\" }\n\n", "[a]\nb = { one = \"y\" }\n\n[a.c]\none = \"x\"\n"},
		{"", "\n\n[a.c]\none = \"x\"\n"},
	} {
		if got := PutTable(test.text, "a.b", lines); got != test.want {
			t.Errorf("want %q, got %q", test.want, got)
		}
	}
	if !Headed("[a.b]\none = \"y\"", "a.b") || Headed("[a]\nb = { one = \"y\" }", "a.b") || Headed("", "a.b") {
		t.Error("want a table with a heading alone to be headed")
	}
}
