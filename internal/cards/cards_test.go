package cards

import (
	"encoding/xml"
	"io"
	"io/fs"
	"slices"
	"strings"
	"testing"
)

func deck(t *testing.T) *Deck {
	t.Helper()
	d, err := Load()
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// must returns a drawing that cannot fail.
func must(t *testing.T) func(string, error) string {
	return func(svg string, err error) string {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return svg
	}
}

// everyCard is the ids of all that a page of cards has, as it has them.
func everyCard() []string { return append(Settings(), Characters()...) }

// elements reads well-formed XML (XML 1.0, by encoding/xml) and lists its
// elements in order.
func elements(t *testing.T, svg string) []xml.StartElement {
	t.Helper()
	var all []xml.StartElement
	d := xml.NewDecoder(strings.NewReader(svg))
	for {
		token, err := d.Token()
		if err == io.EOF {
			return all
		}
		if err != nil {
			t.Fatalf("%v in\n%s", err, svg)
		}
		switch e := token.(type) {
		case xml.StartElement:
			all = append(all, e.Copy())
		case xml.ProcInst, xml.Comment, xml.Directive:
			t.Errorf("want elements only, got %#v", token)
		}
	}
}

// Every file is listed, and everything listed is drawn.
func TestEveryFileIsListed(t *testing.T) {
	names, err := fs.Glob(files, "art/*/*.svg")
	if err != nil || len(names) < 24 {
		t.Fatalf("%d files, %v", len(names), err)
	}
	d := deck(t)
	for _, id := range everyCard() {
		must(t)(d.Draw(id))
	}
	for id := range d.shapes {
		group, name, _ := strings.Cut(id, ".")
		switch {
		case group == "warm-up" && !strings.HasSuffix(name, "-seated"):
			must(t)(d.Draw(id + "-seated"))
		case group == "warm-up":
			must(t)(d.Draw(strings.TrimSuffix(id, "-seated")))
		case !slices.Contains(everyCard(), id):
			t.Errorf("%s is in no list", id)
		}
	}
}

// Symbols have ids that no other has, and the shapes in them have none.
func TestSymbols(t *testing.T) {
	d := deck(t)
	var ids []string
	for _, e := range elements(t, must(t)(d.Symbols(everyCard()...))) {
		if id := attribute(e, "id"); id != "" {
			ids = append(ids, id)
		}
	}
	if len(ids) != len(everyCard()) {
		t.Fatalf("want an id for each of the %d symbols, got %v", len(everyCard()), ids)
	}
	for i, id := range everyCard() {
		if ids[i] != symbol(id) || slices.Index(ids, ids[i]) != i {
			t.Errorf("want %s once, in its place, got %v", symbol(id), ids)
		}
		use := elements(t, must(t)(d.Use(id)))
		if len(use) != 2 || attribute(use[1], "href") != "#"+ids[i] {
			t.Errorf("Use(%s): want an svg with a use of #%s, got %v", id, ids[i], use)
		}
	}
	two := must(t)(d.Symbols("setting.reef", "character.otter"))
	if n := strings.Count(two, " id="); n != 2 || !strings.Contains(two, `"s12"`) || !strings.Contains(two, `"c6"`) {
		t.Errorf("want the two that were asked for, got\n%s", two)
	}
}

// every gives all drawings one class.
func every(class string) func(string) string { return func(string) string { return class } }

// Settings stand behind, characters in their places; what has no class is left
// out, as where a language has no word for it.
func TestStage(t *testing.T) {
	pick := func(id string) string {
		if id == "character.otter" {
			return ""
		}
		return "pick " + strings.Replace(id, ".", "-", 1)
	}
	people := slices.DeleteFunc(Characters(), func(id string) bool { return id == "character.otter" })
	for places, cast := range [][]func(string) string{nil, {pick}, {pick, pick}} {
		stage := elements(t, Stage(pick, cast...))[1:]
		want := Settings()
		for i := range places {
			want = append(append(want, stand(i, places)), people...)
		}
		if len(stage) != len(want) {
			t.Fatalf("%d places: want %d elements, got %d", places, len(want), len(stage))
		}
		for i, id := range want {
			e := stage[i]
			if e.Name.Local == "g" && attribute(e, "transform") == id {
				continue
			}
			if attribute(e, "href") != "#"+symbol(id) || attribute(e, "class") != pick(id) {
				t.Errorf("%d places: want %s with its class, got %v", places, id, e)
			}
		}
	}
}

func TestDecorations(t *testing.T) {
	d := deck(t)
	for _, svg := range []string{
		must(t)(d.Draw("warm-up.reach")), must(t)(d.Use("setting.reef")), must(t)(d.Symbols("setting.reef")),
		Stage(every("pick")), Choice(every("pick")),
	} {
		if attribute(elements(t, svg)[0], "aria-hidden") != "true" {
			t.Errorf("want it hidden from people who listen:\n%s", svg)
		}
	}
}

func TestUnknown(t *testing.T) {
	d := deck(t)
	for _, id := range []string{"character.unicorn", "fox", "", "character.reef", "art.fox"} {
		_, draw := d.Draw(id)
		_, use := d.Use(id)
		_, symbols := d.Symbols("character.fox", id)
		if draw == nil || use == nil || symbols == nil {
			t.Errorf("%q: want errors, got %v, %v, %v", id, draw, use, symbols)
		}
	}
}
