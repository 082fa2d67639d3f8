package story

import (
	"cmp"
	"errors"
	"fmt"
	"hash/fnv"
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// ErrNoFrame says that the stock has no sentences for a kind, no thing for its
// numbers, or too few people; the teacher is told which language holds it back.
var ErrNoFrame = errors.New("no story can be told")

// Request asks for one story.
type Request struct {
	Problem     problem.Problem
	ExtraNumber int    // 0: every number is needed
	Setting     string // "" lets the teller choose
	InWords     bool   // numbers as words where the language has them
	Week        string // the week's date and the story's place in it decide,
	Place       int    // with the site's key, which people and things are met
}

// Teller tells problems as stories and remembers what it has told, so that
// frames, people and things take turns. It is a pure function of its key and
// of the requests so far; it is not safe for concurrent use.
type Teller struct {
	stock Stock
	key   string
	told  map[string]int
}

// NewTeller makes a teller for a site with the given key.
func NewTeller(stock Stock, key string) *Teller {
	return &Teller{stock: stock, key: key, told: map[string]int{}}
}

// Tell chooses frame, people, thing and setting, and writes the sentences. The
// error wraps ErrNoFrame.
func (t *Teller) Tell(r Request) (Story, error) {
	frame, ok := choose(t, r, t.framesFor(r), func(f Frame) string { return "story." + f.ID })
	if !ok {
		return Story{}, fmt.Errorf("%w: kind %v has no frame", ErrNoFrame, r.Problem.Kind())
	}
	setting, thing, ok := t.place(r)
	if !ok {
		return Story{}, fmt.Errorf("%w: nothing to count up to %d in %q", ErrNoFrame, largest(r.Problem), r.Setting)
	}
	s := Story{
		Frame: frame.ID, Problem: r.Problem, ExtraNumber: r.ExtraNumber,
		Thing: thing.ID, Setting: setting, People: frame.People,
	}
	people := t.stock.People
	a, okA := choose(t, r, people, func(id string) string { return id })
	b, okB := choose(t, r, without(people, a), func(id string) string { return id })
	if !okA || !okB {
		return Story{}, fmt.Errorf("%w: a story needs two people", ErrNoFrame)
	}
	s.A, s.B = a, b
	if err := t.write(&s, frame, r); err != nil {
		return Story{}, err
	}
	return s, nil
}

func (t *Teller) framesFor(r Request) []Frame {
	var fit []Frame
	for _, f := range t.stock.Frames {
		if kind, ok := f.Kind(); ok && kind == r.Problem.Kind() {
			fit = append(fit, f)
		}
	}
	return fit
}

// place chooses where the story happens and what is counted there.
func (t *Teller) place(r Request) (string, Thing, bool) {
	settings := []string{r.Setting}
	if r.Setting == "" {
		settings = t.stock.Settings()
	}
	most := largest(r.Problem)
	type spot struct {
		setting string
		thing   Thing
	}
	var fit []spot
	for _, setting := range settings {
		for _, thing := range t.stock.Things {
			if thing.Most >= most && slices.Contains(thing.Settings, setting) {
				fit = append(fit, spot{setting, thing})
			}
		}
	}
	if len(fit) == 0 && r.Setting != "" { // the setting has nothing for such numbers: anything may lie about
		for _, thing := range t.stock.Things {
			if thing.Most >= most {
				fit = append(fit, spot{r.Setting, thing})
			}
		}
	}
	least, ok := choose(t, r, fit, func(s spot) string { return s.thing.ID })
	if ok && r.Setting == "" {
		t.told[least.setting]++
	}
	return least.setting, least.thing, ok
}

func largest(p problem.Problem) int {
	most := 0
	for _, q := range p.Quantities() {
		most = max(most, q.Value)
	}
	return most
}

func without(ids []string, id string) []string {
	return slices.DeleteFunc(slices.Clone(ids), func(s string) bool { return s == id })
}

// choose takes the candidate told least often so far; among equals the hash of
// site key, week, place and id decides, so that an added candidate or an edited
// note does not reshuffle the rest.
func choose[T any](t *Teller, r Request, from []T, id func(T) string) (T, bool) {
	var none T
	if len(from) == 0 {
		return none, false
	}
	best := slices.MinFunc(from, func(a, b T) int {
		return cmp.Or(
			cmp.Compare(t.told[id(a)], t.told[id(b)]),
			cmp.Compare(t.hash(r, id(a)), t.hash(r, id(b))),
			cmp.Compare(id(a), id(b)))
	})
	t.told[id(best)]++
	return best, true
}

func (t *Teller) hash(r Request, id string) uint64 {
	h := fnv.New64a()
	fmt.Fprintf(h, "%s\x00%s\x00%d\x00%s", t.key, r.Week, r.Place, id)
	return h.Sum64()
}

// write fills in the sentences.
func (t *Teller) write(s *Story, f Frame, r Request) error {
	w := writer{story: s, inWords: r.InWords}
	s.Sentences = append(s.Sentences, Sentence{Role: Scene, Line: phrase.Say(s.Setting + ".scene")})
	for _, fs := range f.Sentences {
		if fs.Asks != "" && s.ExtraNumber > 0 {
			extra, err := t.extra(w, f, r)
			if err != nil {
				return err
			}
			s.Sentences = append(s.Sentences, extra)
		}
		s.Sentences = append(s.Sentences, w.sentence(f, fs))
	}
	answer := "story." + f.ID + ".answer"
	s.Answer = w.line(answer, f.AnswerSubject, w.answers(false)...)
	s.AnswerFrame = w.line(answer, f.AnswerSubject, w.answers(true)...)
	return nil
}

// extra writes the sentence that is not needed.
func (t *Teller) extra(w writer, f Frame, r Request) (Sentence, error) {
	s := w.story
	var fit []ExtraSentence
	for _, e := range t.stock.Extras {
		if e.About == f.About && (e.Counts == "" || s.ExtraNumber >= e.Least && s.ExtraNumber <= e.Most) {
			fit = append(fit, e)
		}
	}
	e, ok := choose(t, r, fit, func(e ExtraSentence) string { return "story.extra." + e.ID })
	if !ok {
		return Sentence{}, fmt.Errorf("%w: no extra sentence fits a story about %s", ErrNoFrame, f.About)
	}
	counts := e.Counts
	if counts == "" {
		var others []Thing
		for _, thing := range t.stock.Things {
			if thing.ID != s.Thing && thing.Most >= s.ExtraNumber && (thing.Small || !e.Small) {
				others = append(others, thing)
			}
		}
		other, ok := choose(t, r, others, func(t Thing) string { return t.ID })
		if !ok {
			return Sentence{}, fmt.Errorf("%w: no second thing to count", ErrNoFrame)
		}
		counts = other.ID
	}
	value := w.value(phrase.Counted("Extra", counts, s.ExtraNumber))
	subject := ""
	if f.About == "people" {
		subject = "A"
	}
	return Sentence{Role: Extra, Line: w.line("story.extra."+e.ID, subject, value)}, nil
}
