package page

import (
	"bytes"
	"strings"
	"testing"

	"github.com/a-h/templ"
)

// TestOutlines renders each page in one language after another from the same data,
// and wants the bytes that it has from data that no other page was made from.
func TestOutlines(t *testing.T) {
	s := newStock(t)
	for name, first := range s.in("en").views() {
		render(t, first)
		for _, tag := range []string{"es", "ar", "en"} {
			alone, after := s.in(tag).views()[name], s.in(tag).views()[name]
			takeData(after, first)
			if got, want := render(t, after), render(t, alone); !bytes.Equal(got, want) {
				t.Errorf("%s in %s has other bytes after a page in English", name, tag)
			}
		}
	}
}

// takeData gives a view what pages in all languages are made from.
func takeData(to, from View) {
	switch to := to.(type) {
	case *Learn:
		to.Worked = from.(*Learn).Worked
	case *Try:
		to.Stories = from.(*Try).Stories
	case *Steps:
		to.Rungs = from.(*Steps).Rungs
	case *Print:
		to.Worked = from.(*Print).Worked
	case *Check:
		to.CheckPairs = from.(*Check).CheckPairs
	case *WeekCheck:
		to.WeekPairs = from.(*WeekCheck).WeekPairs
	case *Whole:
		of := from.(*Whole)
		takeData(to.Learn, of.Learn)
		takeData(to.Try, of.Try)
		takeData(to.Print, of.Print)
	}
}

// TestLetterOfPlaces: a text with the letters of places is told, not filled.
func TestLetterOfPlaces(t *testing.T) {
	f := newStock(t).in("en")
	layout := f.layout("en/2026-09-14.html", "")
	s := newState(&layout)
	err := s.shared(new(outlines), 0, func(*state) templ.Component { return templ.Raw("7" + placeBegin + "x" + placeEnd) }).Render(t.Context(), new(strings.Builder))
	if err == nil || !strings.Contains(err.Error(), "no text may have") {
		t.Errorf("the letter passed: %v", err)
	}
}
