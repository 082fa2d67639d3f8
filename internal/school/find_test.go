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
	}
	s := Example()
	for _, test := range tests {
		found, problems := s.Find(test.tag, test.words)
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
