package desk

import "testing"

// BenchmarkLetter changes a letter and looks at its page, as typing does.
func BenchmarkLetter(b *testing.B) {
	d := New(nil)
	ask[Opened](b, d, "open", Open{Files: exampleFiles(b), Today: "2027-02-16", Words: "en"})
	const date = "2027-02-15"
	texts := []string{"One.", "Two."}
	ask[Page](b, d, "page", PageOf{Date: date, Tag: "en", Page: "learn"})
	for i := 0; b.Loop(); i++ {
		lay(b, d, ask[Act](b, d, "set", Set{date, "note.en", texts[i%2]}))
		ask[Page](b, d, "page", PageOf{Date: date, Tag: "en", Page: "learn"})
	}
}

// BenchmarkStory gives a story of a year of weeks other numbers, and looks.
func BenchmarkStory(b *testing.B) {
	d := New(nil)
	ask[Opened](b, d, "open", Open{Files: exampleFiles(b), Today: "2027-02-16", Words: "en"})
	const date = "2027-02-15"
	for b.Loop() {
		lay(b, d, ask[Act](b, d, "story", StoryWish{Date: date, Story: 2, Do: "numbers"}))
		ask[Week](b, d, "week", Monday{date})
		ask[Page](b, d, "page", PageOf{Date: date, Tag: "en", Page: "try"})
	}
}
