package translate

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/i18n"
	"homebuild/locales"
)

// begun is a file that "language new" begins for Polish, which has three plural forms
// for whole numbers (Unicode CLDR 48, plural rules of pl), or one of this text.
func begun(t *testing.T, text string) *Draft {
	t.Helper()
	if text == "" {
		data, err := NewFile("pl", locales.Files)
		if err != nil {
			t.Fatal(err)
		}
		text = string(data)
	}
	d, problems := Open("pl", locales.Files, fstest.MapFS{"pl.toml": {Data: []byte(text)}})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return d
}

// answer answers a question and gives the lines that are gone and those that are new.
func answer(t *testing.T, d *Draft, id string, texts ...string) (gone, come []string, after *Draft) {
	t.Helper()
	q, known := d.Ask(id)
	if !known || len(q.Asks) != len(texts) {
		t.Fatalf("%s asks for %d texts, %v; want %d", id, len(q.Asks), q.Asks, len(texts))
	}
	typed := map[string]string{}
	for i, text := range texts {
		typed[q.Asks[i].Name] = text
	}
	data, problems := d.Write(q, typed)
	if len(problems) > 0 {
		t.Fatalf("%s: %v", id, problems)
	}
	gone, come = changed(d.Text(), string(data))
	return gone, come, begun(t, string(data))
}

// changed are the lines between what two texts begin and end with.
func changed(before, after string) (gone, come []string) {
	a, b := strings.Split(before, "\n"), strings.Split(after, "\n")
	for len(a) > 0 && len(b) > 0 && a[0] == b[0] {
		a, b = a[1:], b[1:]
	}
	for len(a) > 0 && len(b) > 0 && a[len(a)-1] == b[len(b)-1] {
		a, b = a[:len(a)-1], b[:len(b)-1]
	}
	return a, b
}

// What is written stands where a person would have typed it, and all else stays.
func TestWrite(t *testing.T) {
	d := begun(t, "")
	for _, test := range []struct {
		id         string
		texts      []string
		gone, come []string
	}{
		{"page.skip", []string{" Przejdź do treści\r\n"}, []string{`other = ""`}, []string{`other = "Przejdź do treści"`}},
		{"thing.goat.count", []string{"1 koza", "{{.N}} kozy", "5 kóz"},
			[]string{`one = "" # 1`, `few = "" # 2, 3, 4, 22, 23, 24 ...`, `many = "" # 0, 5, 6, 7, 8, 9 ...`},
			[]string{`one = "{{.N}} koza" # 1`, `few = "{{.N}} kozy" # 2, 3, 4, 22, 23, 24 ...`, `many = "{{.N}} kóz" # 0, 5, 6, 7, 8, 9 ...`}},
		{"event.mountain-hut.goats.start", []string{"W stodole naliczyła { Start.accusative }."},
			[]string{`start = ""`}, []string{`start = "W stodole naliczyła {{.Start.accusative}}."`}},
		{"event.mountain-hut.goats.together-then-take.second", []string{"Za płotem: {{.Second}}."},
			[]string{`second = ""`}, []string{`second = "Za płotem: {{.Second}}."`}},
		{"thing.goat.count-accusative", []string{"1 kozę", "2 kozy", "5 kóz"}, []string{},
			[]string{"[thing.goat.count-accusative]", `hash = "ea702df768"`, `one = "{{.N}} kozę"`, `few = "{{.N}} kozy"`, `many = "{{.N}} kóz"`, ""}},
		{Head, []string{"polszczyzna", "ltr", "latn", "ltr"}, nil, []string{`name = "polszczyzna"`, `direction = "ltr"`, `digits = "latn"`, `equations = "ltr"`}},
	} {
		gone, come, _ := answer(t, d, test.id, test.texts...)
		if test.gone != nil && !slices.Equal(gone, test.gone) && len(gone)+len(test.gone) > 0 || !slices.Equal(come, test.come) {
			t.Errorf("%s: want\n%q in the place of\n%q, got\n%q in the place of\n%q", test.id, test.come, test.gone, come, gone)
		}
	}
	if _, _, after := answer(t, d, Head, "polski", "ltr", "latn", "ltr"); after.Guesses() || !d.Guesses() {
		t.Error("want the head to be a guess until it is confirmed")
	}
}

// A file that somebody wrote by hand keeps its way, too, whatever it is.
func TestWriteByHand(t *testing.T) {
	const head = "[language]\nname = \"polski\"\ndirection = \"ltr\"\ndigits = \"latn\"\nequations = \"ltr\"\nreview = \"draft\"\n\n"
	const rest = "# the end\n[learn]\nnext = 'Dalej' # mine\n"
	for _, test := range []struct {
		name, file, id string
		texts          []string
		come           []string
	}{
		{"a message on one line", "", "learn.next", []string{"Następny"}, []string{`next = "Następny" # mine`}},
		{"a thing on one line", "[thing.goat]\ncount = { one = \"{{.N}} koza\", few = \"\", many = \"{{.N}} kóz\" } # r\n\n", "thing.goat.count",
			[]string{"{{.N}} koza", "2 kozy", "{{.N}} kóz"}, []string{`count = { one = "{{.N}} koza", few = "{{.N}} kozy", many = "{{.N}} kóz" } # r`}},
		{"a form of it", "[thing.goat]\ncount = { one = \"{{.N}} koza\", few = \"{{.N}} kozy\", many = \"{{.N}} kóz\" } # r\n\n", "thing.goat.count-accusative",
			[]string{"1 kozę", "2 kozy", "5 kóz"}, []string{`count-accusative = { hash = "ea702df768", one = "{{.N}} kozę", few = "{{.N}} kozy", many = "{{.N}} kóz" }`}},
		{"a form that it lacks", "[thing.goat.count]\none = \"{{.N}} koza\"\nmany = \"{{.N}} kóz\" # r\n\n", "thing.goat.count",
			[]string{"{{.N}} koza", "2 kozy", "{{.N}} kóz"}, []string{`few = "{{.N}} kozy"`}},
		{"a sentence that it lacks", "[event.mountain-hut.goats]\nopen = \"Nic.\" # r\n\n", "event.mountain-hut.goats.idea", []string{"Kozy wracają."}, []string{`idea = "Kozy wracają."`}},
	} {
		_, come, after := answer(t, begun(t, head+test.file+rest), test.id, test.texts...)
		if !slices.Equal(come, test.come) {
			t.Errorf("%s: want %q, got %q", test.name, test.come, come)
		}
		if q, _ := after.Ask(test.id); q.Asks[0].Text == "" {
			t.Errorf("%s is not found again", test.id)
		}
	}
	bare := begun(t, head)
	_, come, _ := answer(t, bare, "page.skip", "Do treści")
	if want := []string{"[page.skip]", fmt.Sprintf("hash = %q", bare.source.File.Message("page.skip").EnglishHash()), `other = "Do treści"`}; !slices.Equal(come, want) {
		t.Errorf("what the file lacks: want %q, got %q", want, come)
	}
}

// What a check would reject is not written, and told in its words.
func TestWriteRefuses(t *testing.T) {
	d := begun(t, "")
	for _, test := range []struct{ id, text, want string }{
		{"page.week", "Tydzień od {{.Day}} {{.Month}}", "the place {{.Year}} is missing"},
		{"page.skip", d.source.File.Message("page.skip").Other, "page.skip is still English"},
		{"page.skip", "Przejdź  dalej", "two spaces"},
		{"page.skip", "<b>Dalej</b>", "markup"},
		{"page.skip", "Da\x00lej", "invisible"},
		{"page.skip", "Dalej\xff", "not UTF-8"},
		{"page.skip", "Przejdź \u202edalej", "turns the direction"},
		{"event.mountain-hut.goats.start", "Naliczyła {{.Start}} i {{.Start}}.", "twice"},
	} {
		q, _ := d.Ask(test.id)
		data, problems := d.Write(q, map[string]string{q.Asks[0].Name: test.text})
		if data != nil || len(problems) == 0 || !strings.Contains(problems[0].Text, test.want) {
			t.Errorf("%s = %q: want %q, got %v", test.id, test.text, test.want, problems)
		}
	}
}

// A question has the English with numbers, the places, and what was said before.
func TestAsk(t *testing.T) {
	d := begun(t, "")
	_, _, d = answer(t, d, "thing.goat.count-genitive", "1 kozy", "2 kóz", "5 kóz")
	q, _ := d.Ask("thing.goat.count")
	var english []string
	for _, a := range q.Asks {
		english = append(english, a.English)
	}
	if want := []string{"1\u00a0goat", "2\u00a0goats", "5\u00a0goats"}; !slices.Equal(english, want) || !slices.Equal(q.Asks[2].Numbers, []int{0, 5, 6, 7, 8, 9, 10}) {
		t.Errorf("want to be asked for %q, got %q for %v", want, english, q.Asks)
	}
	q, _ = d.Ask("event.mountain-hut.goats.start")
	if want := []Placeholder{{"{{.Start}}", "5\u00a0goats"}, {"{{.Start.number}}", "5"}, {"{{.Start.genitive}}", "5 kóz"}}; !slices.Equal(q.Places, want) {
		t.Errorf("places: want %v, got %v", want, q.Places)
	}
	_, _, d = answer(t, d, "event.mountain-hut.goats.first", "W stodole naliczyła {{.First}}.")
	same := [2]string{"learn.back", "check.back"}
	for _, m := range d.source.File.Messages {
		for _, other := range d.source.File.Messages {
			if m.ID < other.ID && m.Needed() && other.Needed() && m.Other == other.Other && !m.Plural() && !other.Plural() && m.Other != "" {
				same = [2]string{m.ID, other.ID}
			}
		}
	}
	_, _, d = answer(t, d, same[0], "Słowo "+strings.Join(wordPlaces(d, same[0]), " "))
	if q, _ := d.Ask(same[1]); len(q.Before) != 1 || !strings.HasPrefix(q.Before[0], "Słowo") {
		t.Errorf("%s has the English of %s, and is offered %q", same[1], same[0], q.Before)
	}
	for _, id := range []string{"", "page", "page.nothing", "event.nowhere.at-all.start", "event.mountain-hut.goats.nothing", "thing.nobody.count"} {
		if q, known := d.Ask(id); known {
			t.Errorf("%q is known: %+v", id, q)
		}
	}
	if q, known := d.Ask("thing.goat.gender"); !known || !strings.Contains(q.Asks[0].Hint, i18n.Genders[2]) {
		t.Errorf("gender: %+v", q)
	}
}

func wordPlaces(d *Draft, id string) []string {
	var out []string
	for _, p := range placesIn(d.source.File.Message(id).Other) {
		out = append(out, "{{."+p+"}}")
	}
	return out
}
