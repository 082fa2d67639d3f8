package strategy_test

import (
	"strings"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/strategy"
)

// sentences holds what ways say against Lines, which must know every sentence that
// any calculation can ask for, with the same places each time.
type sentences struct {
	known map[string]string // the places of a sentence by its id
	used  map[string]bool
}

func newSentences() sentences {
	s := sentences{known: map[string]string{}, used: map[string]bool{}}
	for _, line := range strategy.Lines() {
		s.known[line.ID] = shape(line)
	}
	return s
}

func shape(line phrase.Line) string {
	var places []string
	for _, v := range line.Values {
		places = append(places, v.Name)
	}
	return strings.Join(places, ",")
}

func (s sentences) line(t *testing.T, line phrase.Line) {
	t.Helper()
	s.used[line.ID] = true
	if want, ok := s.known[line.ID]; !ok || want != shape(line) {
		t.Fatalf("line %s has places %s; Lines has %q", line.ID, shape(line), want)
	}
}

func (s sentences) check(t *testing.T, w strategy.Way) {
	t.Helper()
	for _, step := range w.Steps {
		s.line(t, step.Say)
		if step.Picture != nil {
			s.line(t, step.Picture.Describe())
		}
	}
	s.line(t, w.Title())
	s.line(t, w.About())
	if w.Hint.ID != "" {
		s.line(t, w.Hint)
	}
	for _, slip := range w.Slips {
		s.line(t, slip.Ask)
	}
}

// checkAll wants Lines to have no sentence that nothing has asked for.
func (s sentences) checkAll(t *testing.T) {
	t.Helper()
	for _, n := range strategy.Names() {
		s.line(t, n.Title())
		s.line(t, n.About())
	}
	for _, n := range strategy.SlipNames() {
		s.line(t, n.Line())
	}
	for id := range s.known {
		if !s.used[id] {
			t.Errorf("Lines has %s, which nothing asks for", id)
		}
	}
}
