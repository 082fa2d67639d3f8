package school

import "testing"

// Words that a parent reads out lead to their message, whatever numbers and things
// stand in it.
func TestFind(t *testing.T) {
	tests := []struct{ name, tag, words, want string }{
		{"a button", "es", "Siguiente", "learn.next"},
		{"in small letters, with a space too many", "es", " prueba otra  respuesta", "try.again"},
		{"a thing with its number", "ru", "21 письмо", "thing.letter.count"},
		{"a sentence with another number", "es", "Empieza en 47. ¿Cuánto falta para la decena siguiente?", "strategy.jump-to-ten.hint"},
		{"part of a story", "en", "the captain made hot cocoa", "event.harbour.board.open"},
		{"with the quotation marks of a keyboard", "en", `"Hush" was too loud`, "event.library.blocks.so-end"},
		{"right to left", "ar", "هذا النص مسودة أولى", "page.draft"},
		{"nowhere", "es", "qwerty uiop", ""},
		{"the name of a page: all of it", "es/2026-09-14", "", "learn.description"},
		{"words of a page by its name", "es/2026-09-14-try", "prueba otra respuesta", "try.again"},
		{"words of a page that belongs to it", "es/2026-09-14", "prueba otra respuesta", "try.again"},
		{"words that another page has", "es/2026-09-14-print", "prueba otra respuesta", ""},
	}
	s := Example()
	for _, test := range tests {
		found, problems := Find(s, test.tag, test.words)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		got := ""
		if len(found) > 0 {
			got = found[0].ID
			if found[0].Line == 0 || found[0].Text == "" {
				t.Errorf("%s: %s has no place in its file", test.name, got)
			}
		}
		if got != test.want {
			t.Errorf("%s: %q in %s: want %q, got %q", test.name, test.words, test.tag, test.want, got)
		}
	}
}

// What the foot of a page names leads to all that the page says, and to nothing else.
func TestFindPage(t *testing.T) {
	s := Example()
	found, problems := Find(s, "ru/2026-09-14.html", "")
	if len(problems) > 0 || len(found) < 20 {
		t.Fatalf("want all that the page says, got %d texts, %v", len(found), problems)
	}
	for _, f := range found {
		if f.Page != "ru/2026-09-14.html" || f.Line == 0 {
			t.Errorf("want a line of the file for what this page says, got %+v", f)
		}
	}
	_, problems = Find(s, "ru/2026-09-14-tri", "")
	if want := `did you mean "ru/2026-09-14-try"?`; len(problems) != 1 || problems[0].Hint != want {
		t.Errorf("a name that is misspelled: want %q, got %v", want, problems)
	}
}
