// Package cards holds the drawings of the people, animals and places that a
// child picks to invent a story, and of the warm-ups. Each is an SVG file in
// art/, for an illustrator to open and change; art/README.md tells how.
//
// A drawing's id is that of its name in the language files: "character.fox" is
// art/character/fox.svg. A page holds the Symbols of the drawings it needs and
// shows them through Use and Stage, or has a single one by itself from Draw.
// All are decorations, hidden from people who listen: the words beside them
// say what they show.
package cards

import (
	"embed"
	"fmt"
	"html"
	"io/fs"
	"path"
	"slices"
	"strconv"
	"strings"
	"sync"
)

//go:embed art/*/*.svg
var files embed.FS

// Where a character stands in a setting, at full size: the feet, 112 units
// down in every character, come to 138 of 150. Settings keep what they are
// about to the right of it and leave the left to paler things behind.
const (
	standX = 8
	standY = 26
)

var (
	characters = ids("character", "fox", "hedgehog", "heron", "beetle", "tortoise", "otter",
		"grandfather", "baker", "captain", "gardener", "kite-flyer", "inventor")
	settings = ids("setting", "harbour", "market", "forest", "garden", "library", "night-train",
		"kitchen", "playground", "mountain-hut", "desert-well", "rainy-street", "reef")
)

// Characters lists the ids of the characters in the order of the page, animals
// first.
func Characters() []string { return slices.Clone(characters) }

// Settings lists the ids of the settings in the order of the page.
func Settings() []string { return slices.Clone(settings) }

func ids(group string, names ...string) []string {
	all := make([]string, len(names))
	for i, name := range names {
		all[i] = group + "." + name
	}
	return all
}

// viewBox is the one that all drawings of a group share; empty for no group.
func viewBox(group string) string {
	switch group {
	case "character", "warm-up":
		return "0 0 120 120"
	case "setting":
		return "0 0 240 150"
	}
	return ""
}

// Deck is all drawings, read and checked. It does not change.
type Deck struct {
	shapes map[string]string // markup by id
}

// Load reads the drawings. The error says file, line, and what to change.
func Load() (*Deck, error) { return shipped() }

// shipped reads the drawings, which never change, once.
var shipped = sync.OnceValues(func() (*Deck, error) { return load(files) })

func load(art fs.FS) (*Deck, error) {
	names, err := fs.Glob(art, "art/*/*.svg")
	if err != nil {
		return nil, fmt.Errorf("cards: %w", err)
	}
	d := &Deck{shapes: map[string]string{}}
	for _, name := range names {
		group := path.Base(path.Dir(name))
		shapes, err := readFile(art, name, viewBox(group))
		if err != nil {
			return nil, err
		}
		d.shapes[group+"."+strings.TrimSuffix(path.Base(name), ".svg")] = shapes
	}
	return d, nil
}

// Draw is one drawing by itself, needing no symbols.
func (d *Deck) Draw(id string) (string, error) {
	shapes, err := d.find(id)
	if err != nil {
		return "", err
	}
	return frame(id, shapes), nil
}

// Symbols holds drawings for Use and Stage. A page has each only once; the
// theme gives it display: none.
func (d *Deck) Symbols(ids ...string) (string, error) {
	var b strings.Builder
	b.WriteString(`<svg class="defs" aria-hidden="true"><defs>`)
	for _, id := range ids {
		shapes, err := d.find(id)
		if err != nil {
			return "", err
		}
		for _, part := range []string{"\n<g id=\"", symbol(id), "\">", shapes, "</g>"} {
			b.WriteString(part)
		}
	}
	b.WriteString("</defs></svg>")
	return b.String(), nil
}

// Use shows one of the page's Symbols.
func (d *Deck) Use(id string) (string, error) {
	if _, err := d.find(id); err != nil {
		return "", err
	}
	return frame(id, fmt.Sprintf(`<use href="#%s"/>`, symbol(id))), nil
}

// Stage is one picture of the page's Symbols: every setting and, before them,
// every character in each of the places where one or two can stand. Each drawing has
// the classes that a function gives for its id, so that a theme shows only what is
// picked; without a class it is left out.
func Stage(setting func(id string) string, cast ...func(id string) string) string {
	var b strings.Builder
	uses(&b, Settings(), setting)
	for i, class := range cast {
		fmt.Fprintf(&b, "<g transform=%q>", stand(i, len(cast)))
		uses(&b, Characters(), class)
		b.WriteString("</g>")
	}
	return frame("setting.", b.String())
}

// Choice is a picture of every character, of which a theme shows the picked one.
func Choice(class func(id string) string) string {
	var b strings.Builder
	uses(&b, Characters(), class)
	return frame("character.", b.String())
}

// uses shows drawings that have a class.
func uses(b *strings.Builder, ids []string, class func(id string) string) {
	for _, id := range ids {
		if names := class(id); names != "" {
			fmt.Fprintf(b, "<use href=\"#%s\" class=\"%s\"/>", symbol(id), html.EscapeString(names))
		}
	}
}

// stand is where the i-th of one or two characters stands in a setting. Two are
// smaller, so that both have room beside what the place is about.
func stand(i, of int) string {
	if of == 1 {
		return fmt.Sprintf("translate(%d %d)", standX, standY)
	}
	return fmt.Sprintf("translate(%d 56)scale(.73)", 68*i)
}

// Scene is a place with one or two characters in it, all of the page's Symbols.
func Scene(place string, cast ...string) string {
	uses := `<use href="#` + symbol(place) + `"/>`
	cast = cast[:min(2, len(cast))]
	for i, who := range cast {
		uses += `<use href="#` + symbol(who) + `" transform="` + stand(i, len(cast)) + `"/>`
	}
	// A page may show a strip of it: the ground is what stays.
	return `<svg class="k" viewBox="` + viewBox("setting") + `" preserveAspectRatio="xMidYMax slice" aria-hidden="true">` + uses + "</svg>"
}

// frame puts the <svg> element around the shapes of a drawing.
func frame(id, shapes string) string {
	group, _, _ := strings.Cut(id, ".")
	return fmt.Sprintf("<svg class=\"k\" viewBox=%q aria-hidden=\"true\">%s</svg>", viewBox(group), shapes)
}

// symbol is the id that a drawing has in a page, by its place in its list: "c1" for
// "character.fox". Names would weigh 200 bytes on a page with all of them.
func symbol(id string) string {
	if i := slices.Index(settings, id); i >= 0 {
		return "s" + strconv.Itoa(i+1)
	}
	return "c" + strconv.Itoa(slices.Index(characters, id)+1)
}

func (d *Deck) find(id string) (string, error) {
	if shapes, ok := d.shapes[id]; ok {
		return shapes, nil
	}
	return "", fmt.Errorf("cards: there is no drawing %q", id)
}
