package desk

import "testing"

// BenchmarkChange changes something of the example school's newest week and asks for
// all that the page asks for then, as she waits for it: families' page, the sheet, and
// last the year.
func BenchmarkChange(b *testing.B) {
	const date = "2027-02-15"
	set := func(key, value string) func(*Desk) Act {
		return func(d *Desk) Act { return ask[Act](b, d, "set", Set{date, key, value}) }
	}
	other := func(d *Desk) Act {
		return ask[Act](b, d, "story", StoryWish{Date: date, Story: 2, Do: "numbers"})
	}
	for _, c := range []struct {
		name string
		acts []func(*Desk) Act // by turns
	}{
		{"letter", []func(*Desk) Act{set("note.en", "One."), set("note.en", "Two.")}},
		{"place", []func(*Desk) Act{set(LinePlace, "market"), set(LinePlace, "forest"), set(LinePlace, "harbour"), set(LinePlace, "garden"), set(LinePlace, "kitchen")}},
		{"sentence", []func(*Desk) Act{set(LineTarget, "add-within-100"), set(LineTarget, "subtract-within-1000"), set(LineTarget, "add-within-20"), set(LineTarget, "stories-within-1000"), set(LineTarget, "subtract-within-20")}},
		{"story", []func(*Desk) Act{other}},
	} {
		for _, upTo := range []string{"page", "week", "year"} {
			b.Run(c.name+"/"+upTo, func(b *testing.B) {
				d := New(nil)
				ask[Opened](b, d, "open", Open{Files: exampleFiles(b), Today: "2027-02-16", Words: "en"})
				ask[Year](b, d, "year", None{})
				for i := 0; b.Loop(); i++ {
					lay(b, d, c.acts[i%len(c.acts)](d))
					ask[Page](b, d, "page", PageOf{Date: date, Tag: "en", Page: "learn"})
					if upTo != "page" {
						ask[Week](b, d, "week", Monday{date})
					}
					if upTo == "year" {
						ask[Year](b, d, "year", None{})
					}
				}
			})
		}
	}
}
