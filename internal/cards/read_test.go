package cards

import (
	"strings"
	"testing"
	"testing/fstest"
)

const (
	open  = `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 120 120">`
	shut  = "</svg>"
	shape = `<path class="k-ink" d="M1 2h3"/>`
)

func draw(text string) (string, error) {
	d, err := load(fstest.MapFS{"art/character/test.svg": {Data: []byte(text)}})
	if err != nil {
		return "", err
	}
	return d.shapes["character.test"], nil
}

func TestRead(t *testing.T) {
	mirror := `transform="matrix(-1 0 0 1 120 0)"`
	for name, tt := range map[string]struct{ text, want string }{
		"every shape": {
			open + `<rect x="1" y="2" width="3" height="4" rx="1"/><circle cx="1.5" cy="-2" r="3"/><ellipse cx="1" cy="2" rx="3" ry="4"/>` + shape + shut,
			`<rect x="1" y="2" width="3" height="4" rx="1"/><circle cx="1.5" cy="-2" r="3"/><ellipse cx="1" cy="2" rx="3" ry="4"/>` + shape},
		"a mirror": {
			open + `<path id="ear" class="k-ink" d="M1 2h3"/><use xlink:href="#ear" ` + mirror + `/>` + shut,
			shape + `<g ` + mirror + `>` + shape + `</g>`},
		"a group and its mirror": {
			open + `<g id="arm">` + shape + shape + `</g><use href="#arm" ` + mirror + `/>` + shut,
			shape + shape + `<g ` + mirror + `>` + shape + shape + `</g>`},
		"a group that is moved": {
			open + `<g transform="translate(3, 4)">` + shape + `</g>` + shut,
			`<g transform="translate(3, 4)">` + shape + `</g>`},
		// As a program for drawing saved it as plain SVG.
		"with a program's own marks": {
			`<?xml version="1.0" encoding="UTF-8" standalone="no"?>
<svg class="k" viewBox="0 0 120 120" version="1.1" id="svg35" xmlns="http://www.w3.org/2000/svg" xmlns:svg="http://www.w3.org/2000/svg">
  <defs id="defs39" />
  <style id="style2">@import &quot;../../../../themes/base/cards.css&quot;;</style>
  <!-- tail -->
  <path
     class="k-ink"
     d="M1 2h3"
     id="path4" />
</svg>
`, shape},
	} {
		if got, err := draw(tt.text); err != nil || got != tt.want {
			t.Errorf("%s: want\n%s\ngot\n%s\n%v", name, tt.want, got, err)
		}
	}
}

// What could do harm in a page, or would not show there, is refused with the
// line and what to do.
func TestReadRefuses(t *testing.T) {
	double := `<g id="a">` + shape + shape + `</g>`
	for i := range 12 { // a few lines that would be a hundred thousand shapes
		double += `<g id="` + string(rune('b'+i)) + `"><use href="#` + string(rune('a'+i)) + `"/><use href="#` + string(rune('a'+i)) + `"/></g>`
	}
	for text, want := range map[string]string{
		"":                     "test.svg:1: EOF",
		open:                   "unexpected EOF",
		open + "<path>" + shut: "closed by </svg>",
		`<html xmlns="http://www.w3.org/1999/xhtml"></html>`:                      `<html>: want <svg`,
		strings.Replace(open, "120 120", "240 150", 1) + shut:                     `want "0 0 120 120"`,
		open + shut + open + shut:                                                 "nothing after </svg>",
		open + "\n\n<script>alert(1)</script>" + shut:                             "test.svg:3: <script>: want a path",
		open + `<foreignObject/>` + shut:                                          "<foreignObject>",
		open + `<image href="https://example.org/a.png"/>` + shut:                 "<image>",
		open + `<a href="https://example.org/">` + shape + `</a>` + shut:          "<a>",
		open + `<text>fox</text>` + shut:                                          "<text>",
		open + "fox" + shut:                                                       `"fox": a drawing has no text`,
		open + `<path d="M1 2" onclick="alert(1)"/>` + shut:                       "onclick",
		open + `<path d="M1 2" style="fill:url(//example.org/a)"/>` + shut:        "style",
		open + `<path d="M1 2" fill="url(#a)"/>` + shut:                           "fill",
		open + `<path d="M1 2&quot;&gt;"/>` + shut:                                `want a value like`,
		open + `<path d="M1 2" xlink:class="k-ink"/>` + shut:                      "leave it out",
		open + `<path d="M1 2" class="top"/>` + shut:                              "class",
		open + `<path d="M1 2" transform="none; x"/>` + shut:                      "transform",
		open + `<circle r="1e9"/>` + shut:                                         `r="1e9"`,
		open + `<path d="M1 2"><g/></path>` + shut:                                "outside of the shape",
		open + `<defs>` + shape + `</defs>` + shut:                                "<path>",
		open + `<style>@import "https://example.org/a.css";</style>` + shut:       "colors are classes",
		open + `<style>` + palette + ` path { fill: url(//a) }</style>` + shut:    "colors are classes",
		open + `<use href="https://example.org/a.svg#b"/>` + shut:                 "a shape above it",
		open + `<use href="#later"/><path id="later" d="M1 2"/>` + shut:           "a shape above it",
		open + `<path id="a" d="M1 2"/><use href="#a"><script/></use>` + shut:     "<script>",
		open + `<path id="1" d="M1 2"/>` + shut:                                   "id",
		`<!DOCTYPE svg [<!ENTITY a "b">]>` + open + shut:                          "leave it out",
		open + `&a;` + shut:                                                       "entity",
		open + `<path d="M1 2` + strings.Repeat("l1 2", largest/4) + `"/>` + shut: "more than 4000 bytes",
		open + double + shut:                                                      "more than 4000 bytes",
	} {
		if got, err := draw(text); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%.200s\nwant an error with %q, got %v and %.200s", text, want, err, got)
		}
	}
}
