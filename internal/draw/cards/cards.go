// Package cards draws the characters and settings that a child picks to invent
// a story, all by one hand: the same ink line, head, face and ground. A picked
// pair stands together as one scene.
//
// A page holds Symbols once and shows them through Use and Stage, or a single
// drawing by itself through Character, Setting and Scene. All of them are
// decorations, hidden from people who listen: the words beside them tell what
// they show. A Scene may be given a name of its own.
package cards

import (
	"errors"
	"fmt"
	"strings"

	"homebuild/internal/draw/canvas"
)

// Sizes of the viewboxes. An <svg> of another shape shows what lies outside of
// them, so a theme keeps their proportions.
const (
	characterSize = 120
	settingWidth  = 240
	settingHeight = 150
)

// Where a character stands in a setting, at full size: the feet, 114 units
// down in every character, come to 140 of 150. Settings keep what they are
// about to the right of it and leave the left to paler things behind.
const (
	standX = 8
	standY = 26
)

// Classes of the <svg> elements.
const (
	pictureClass = "k"     // a drawing
	kitClass     = "k-kit" // Symbols: a theme shows none of it
)

// ErrUnknown says that there is no such card.
var ErrUnknown = errors.New("no such card")

// card is a drawing with the id of its name in the language files, such as
// "character.fox", and of its symbol in a page, such as "c-fox".
type card struct {
	id, symbol string
	drawing    drawing
}

// Characters lists the ids of the characters in the order of the page.
func Characters() []string { return ids(characters()) }

// Settings lists the ids of the settings in the order of the page.
func Settings() []string { return ids(settings()) }

// SymbolID is the id that a card's symbol has in a page: "c-fox" for
// "character.fox". The error for another id wraps ErrUnknown.
func SymbolID(id string) (string, error) {
	c, err := find(id, append(characters(), settings()...))
	return c.symbol, err
}

// Character draws one character, needing no symbols. The error for another id
// wraps ErrUnknown.
func Character(id string) (string, error) {
	c, err := find(id, characters())
	if err != nil {
		return "", err
	}
	return draw(characterFrame(), c.drawing.on)
}

// Setting draws one setting, needing no symbols. The error for another id
// wraps ErrUnknown.
func Setting(id string) (string, error) {
	s, err := find(id, settings())
	if err != nil {
		return "", err
	}
	return draw(settingFrame(), s.drawing.on)
}

// Scene draws a character standing in a setting, needing no symbols. With a
// title it is a picture with a name, and svgID must be unique in the page;
// without one it is a decoration and svgID may be empty. The error for another
// card wraps ErrUnknown, for a wrong svgID canvas.ErrID.
func Scene(character, setting, svgID, title string) (string, error) {
	c, err := find(character, characters())
	if err != nil {
		return "", err
	}
	s, err := find(setting, settings())
	if err != nil {
		return "", err
	}
	f := settingFrame()
	f.ID, f.Title = svgID, title
	return draw(f, func(on *canvas.Canvas) {
		s.drawing.on(on)
		on.Shift(standX, standY, func() { c.drawing.on(on) })
	})
}

// Symbols holds every card for Use and Stage. It is the same in every page, so
// a caller with many pages asks once; a theme gives it display: none.
func Symbols() (string, error) {
	return draw(canvas.Frame{Class: kitClass, Width: settingWidth, Height: settingHeight}, func(on *canvas.Canvas) {
		on.Defs(func() {
			for _, c := range append(settings(), characters()...) {
				on.Symbol(c.symbol, func() { c.drawing.on(on) })
			}
		})
	})
}

// Use shows one card of the page's Symbols. The error for an id that is none
// wraps ErrUnknown.
func Use(id string) (string, error) {
	f := settingFrame()
	c, err := find(id, settings())
	if err != nil {
		f = characterFrame()
		c, err = find(id, characters())
	}
	if err != nil {
		return "", err
	}
	return draw(f, func(on *canvas.Canvas) { on.Use(0, 0, c.symbol, "") })
}

// Stage is one picture with all settings and, before them, all characters of
// the page's Symbols, every one in its place. Each has the classes that class
// gives for its id, so that a theme shows only the picked pair; without a
// class it is left out. The error wraps canvas.ErrID for a symbol that has no
// usable id, which the tests rule out.
func Stage(class func(id string) string) (string, error) {
	return draw(settingFrame(), func(on *canvas.Canvas) {
		place := func(x, y int, all []card) {
			for _, c := range all {
				if names := class(c.id); names != "" {
					on.Use(x, y, c.symbol, names)
				}
			}
		}
		place(0, 0, settings())
		place(standX, standY, characters())
	})
}

func characterFrame() canvas.Frame {
	return canvas.Frame{Class: pictureClass, Width: characterSize, Height: characterSize}
}

func settingFrame() canvas.Frame {
	return canvas.Frame{Class: pictureClass, Width: settingWidth, Height: settingHeight}
}

func draw(f canvas.Frame, inside func(*canvas.Canvas)) (string, error) {
	var b strings.Builder
	c := canvas.New(&b, f)
	inside(c)
	if err := c.End(); err != nil {
		return "", fmt.Errorf("cards: %w", err)
	}
	return b.String(), nil
}

func find(id string, among []card) (card, error) {
	for _, c := range among {
		if c.id == id {
			return c, nil
		}
	}
	return card{}, fmt.Errorf("%q: %w (there are %s)", id, ErrUnknown, strings.Join(ids(among), ", "))
}

func ids(of []card) []string {
	all := make([]string, len(of))
	for i, c := range of {
		all[i] = c.id
	}
	return all
}
