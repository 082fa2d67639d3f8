package cards

import (
	"encoding/xml"
	"errors"
	"io"
	"regexp"
	"slices"
	"strings"
	"testing"

	"homebuild/internal/draw/canvas"
)

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

func attr(e xml.StartElement, name string) string {
	for _, a := range e.Attr {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
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

// drawings are everything this package writes, by what it is.
func drawings(t *testing.T) map[string]string {
	all := map[string]string{
		"symbols": must(t)(Symbols()),
		"stage":   must(t)(Stage(func(string) string { return "pick" })),
		"scene":   must(t)(Scene("character.heron", "setting.reef", "s1", "The heron & the <reef>")),
	}
	for _, id := range Characters() {
		all[id] = must(t)(Character(id))
		all["use "+id] = must(t)(Use(id))
	}
	for _, id := range Settings() {
		all[id] = must(t)(Setting(id))
		all["use "+id] = must(t)(Use(id))
	}
	return all
}

func TestOrder(t *testing.T) {
	for name, tt := range map[string]struct{ got, want []string }{
		"characters": {Characters(), []string{
			"character.fox", "character.hedgehog", "character.heron", "character.beetle", "character.tortoise", "character.otter",
			"character.grandfather", "character.baker", "character.captain", "character.gardener", "character.kite-flyer", "character.inventor"}},
		"settings": {Settings(), []string{
			"setting.harbour", "setting.market", "setting.forest", "setting.garden", "setting.library", "setting.night-train",
			"setting.kitchen", "setting.playground", "setting.mountain-hut", "setting.desert-well", "setting.rainy-street", "setting.reef"}},
	} {
		if !slices.Equal(tt.got, tt.want) {
			t.Errorf("%s: want %v, got %v", name, tt.want, tt.got)
		}
	}
}

// Integers only, no colour but by class, and hidden from people who listen
// unless there is a title.
func TestWhatIsWritten(t *testing.T) {
	shapes := map[string]bool{"svg": true, "defs": true, "g": true, "use": true, "path": true, "circle": true, "ellipse": true, "rect": true, "title": true}
	text := map[string]bool{"id": true, "class": true, "href": true, "aria-hidden": true, "aria-labelledby": true, "role": true, "direction": true, "transform": true}
	whole := regexp.MustCompile(`^[-0-9 Mmlhvqz]+$`)
	for name, svg := range drawings(t) {
		for i, e := range elements(t, svg) {
			if !shapes[e.Name.Local] {
				t.Errorf("%s: want no <%s>", name, e.Name.Local)
			}
			if i == 0 && (attr(e, "aria-hidden") == "true") == (name == "scene") {
				t.Errorf("%s: %v: hidden unless it has a title", name, e)
			}
			for _, a := range e.Attr {
				if !text[a.Name.Local] && !whole.MatchString(a.Value) {
					t.Errorf("%s: <%s %s=%q>: want whole numbers", name, e.Name.Local, a.Name.Local, a.Value)
				}
			}
		}
		if c := regexp.MustCompile(`fill=|stroke=|style=|rgb|#[0-9a-fA-F]{3}\b|\d\.\d`).FindString(svg); c != "" {
			t.Errorf("%s: want colours by class and whole numbers, got %q", name, c)
		}
	}
}

// Ids of a page are unique, and every use finds its symbol.
func TestSymbols(t *testing.T) {
	found := map[string]int{}
	for _, e := range elements(t, must(t)(Symbols())) {
		if id := attr(e, "id"); id != "" {
			found[id]++
		}
	}
	cards := append(Characters(), Settings()...)
	if len(found) != len(cards) {
		t.Errorf("want %d symbols, got %d", len(cards), len(found))
	}
	for _, id := range cards {
		symbol := must(t)(SymbolID(id))
		if found[symbol] != 1 {
			t.Errorf("want %s once among the symbols, got %d", symbol, found[symbol])
		}
		use := elements(t, must(t)(Use(id)))
		if len(use) != 2 || attr(use[1], "href") != "#"+symbol {
			t.Errorf("Use(%s): want an svg with a use of #%s, got %v", id, symbol, use)
		}
	}
}

func TestStage(t *testing.T) {
	stage := elements(t, must(t)(Stage(func(id string) string { return "pick " + strings.Replace(id, ".", "-", 1) })))
	behind := append(Settings(), Characters()...)
	if len(stage) != 1+len(behind) {
		t.Fatalf("want %d uses, got %d elements", len(behind), len(stage))
	}
	for i, id := range behind {
		use := stage[i+1]
		if attr(use, "href") != "#"+must(t)(SymbolID(id)) || attr(use, "class") != "pick "+strings.Replace(id, ".", "-", 1) {
			t.Errorf("want the use of %s with its class, got %v", id, use)
		}
		if x, want := attr(use, "x"), map[bool]string{true: "0", false: "8"}[i < len(Settings())]; x != want {
			t.Errorf("%s: want it at x = %s, got %s", id, want, x)
		}
	}
}

// A language without a word for a card shows the others.
func TestStageLeavesOut(t *testing.T) {
	stage := must(t)(Stage(func(id string) string {
		if id == "character.otter" {
			return ""
		}
		return "pick"
	}))
	if got, want := len(elements(t, stage)), 1+len(Settings())+len(Characters())-1; got != want || strings.Contains(stage, "c-otter") {
		t.Errorf("want %d elements and no otter, got %d:\n%s", want, got, stage)
	}
}

// Any character can stand in any setting, and stands in front.
func TestEveryPair(t *testing.T) {
	shapes := func(svg string) []xml.StartElement { return elements(t, svg)[1:] }
	for _, c := range Characters() {
		front := shapes(must(t)(Character(c)))
		for _, s := range Settings() {
			back := shapes(must(t)(Setting(s)))
			scene := shapes(must(t)(Scene(c, s, "", "")))
			if len(scene) != len(back)+1+len(front) {
				t.Errorf("%s, %s: want %d + 1 + %d elements, got %d", c, s, len(back), len(front), len(scene))
			} else if got := attr(scene[len(back)], "transform"); got != "translate(8,26)" {
				t.Errorf("%s, %s: want the character moved to its place after the setting, got %v", c, s, got)
			}
		}
	}
}

func TestSceneWithTitle(t *testing.T) {
	got := elements(t, must(t)(Scene("character.fox", "setting.market", "own-scene", "The fox at the market")))
	if attr(got[0], "role") != "img" || attr(got[0], "aria-labelledby") != "own-scene-t" || attr(got[1], "id") != "own-scene-t" {
		t.Errorf("want a named picture, got %v", got[:2])
	}
}

func TestErrors(t *testing.T) {
	second := func(_ string, err error) error { return err }
	for name, tt := range map[string]struct{ got, want error }{
		"no such character":          {second(Character("character.unicorn")), ErrUnknown},
		"a setting is no character":  {second(Character("setting.market")), ErrUnknown},
		"no such setting":            {second(Setting("")), ErrUnknown},
		"no such symbol":             {second(SymbolID("fox")), ErrUnknown},
		"no such card":               {second(Use("c-fox")), ErrUnknown},
		"a scene without character":  {second(Scene("", "setting.reef", "", "")), ErrUnknown},
		"a scene without setting":    {second(Scene("character.fox", "reef", "", "")), ErrUnknown},
		"a name needs an id":         {second(Scene("character.fox", "setting.reef", "", "The fox")), canvas.ErrID},
		"an id that cannot be an id": {second(Scene("character.fox", "setting.reef", `x" y`, "")), canvas.ErrID},
	} {
		if !errors.Is(tt.got, tt.want) {
			t.Errorf("%s: want %v, got %v", name, tt.want, tt.got)
		}
	}
}
