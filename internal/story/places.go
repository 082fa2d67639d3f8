package story

import (
	"embed"
	"path"
	"slices"
	"strings"

	"homebuild/internal/problem"
	"homebuild/internal/tomlfile"
)

//go:embed places/*.toml
var placeFiles embed.FS

// Places are the places of the town, in the order of their names.
type Places []Place

// Place is one of them, with what happens there.
type Place struct {
	ID     string // "harbour"; its drawing and its name are "setting.harbour"
	Next   string // the place next door, where a week goes on that has no more room here
	Events []*Event
}

// Event is a small tale: somebody wants something, amounts change or are
// compared for a reason, and the answer settles something. Its sentences are in
// the language files, under "event." and its id.
type Event struct {
	ID    string         // "harbour.board"
	Place string         // "harbour"
	Cast  []string       // "character.captain"
	Thing string         // what is counted: "thing.passenger"
	Kinds []problem.Kind // of stories that it tells
	Extra ExtraSpan

	least  int
	most   int
	part   int                  // no amount but a difference is smaller
	leasts map[problem.Kind]int // other kinds have least
}

// ExtraSpan bounds the number that nobody needs in an event's stories.
type ExtraSpan struct {
	Thing       string // "thing.minute"
	Least, Most int
}

// LoadPlaces reads the places that come with the program.
func LoadPlaces() (Places, error) {
	files, err := placeFiles.ReadDir("places")
	if err != nil {
		return nil, err
	}
	var all Places
	for _, f := range files {
		text, err := placeFiles.ReadFile(path.Join("places", f.Name()))
		if err != nil {
			return nil, err
		}
		file := tomlfile.Parse(path.Join("places", f.Name()), string(text), 1)
		p := readPlace(strings.TrimSuffix(f.Name(), ".toml"), file.Section())
		if problems := file.Problems(); len(problems) > 0 {
			return nil, problems
		}
		all = append(all, p)
	}
	return all, nil
}

func readPlace(id string, s *tomlfile.Section) Place {
	p := Place{ID: id, Next: s.Word("next")}
	for _, e := range s.Sections("event", "an event") {
		p.Events = append(p.Events, readEvent(id, e))
	}
	return p
}

func readEvent(place string, s *tomlfile.Section) *Event {
	amount := func(in *tomlfile.Section, key string, usual int) int {
		return in.Number(key, 1, problem.Largest, usual)
	}
	extra := s.Section("extra", "an extra number")
	e := &Event{
		ID: place + "." + s.Word("id"), Place: place, Thing: "thing." + s.Word("thing"),
		Extra: ExtraSpan{"thing." + extra.Word("thing"), amount(extra, "least", 0), amount(extra, "most", 0)},
		least: amount(s, "least", 0), most: amount(s, "most", 0), part: amount(s, "part", 1),
		leasts: map[problem.Kind]int{},
	}
	for _, name := range s.List("cast") {
		e.Cast = append(e.Cast, "character."+name)
	}
	leasts := s.Section("least-of", "the least of some kinds")
	for _, word := range s.List("tells") {
		kinds, ok := tellings[word]
		if !ok {
			s.Unknown("tells", "something that an event tells", word, tellingWords())
		}
		least := amount(leasts, word, 0)
		for _, k := range kinds {
			e.Kinds = append(e.Kinds, k)
			if least > 0 {
				e.leasts[k] = least
			}
		}
	}
	return e
}

// tellings are the words of the place files for what an event tells.
var tellings = map[string][]problem.Kind{
	"joins":  {problem.AddToResult, problem.AddToChange, problem.AddToStart},
	"leaves": {problem.TakeFromResult, problem.TakeFromChange, problem.TakeFromStart},
	"parts":  {problem.TogetherTotal, problem.TogetherAddend, problem.TogetherBoth},
	"three":  {problem.TogetherThree},
	"four":   {problem.TogetherFour},
	"compare": {
		problem.DifferenceMore, problem.DifferenceFewer, problem.BiggerMore, problem.BiggerFewer,
		problem.SmallerMore, problem.SmallerFewer,
	},
	"++": {problem.AddThenAdd},
	"+-": {problem.AddThenTake},
	"-+": {problem.TakeThenAdd},
	"--": {problem.TakeThenTake},
	"p-": {problem.TogetherThenTake},
	"c+": {problem.BiggerThenTogether},
}

func tellingWords() []string {
	words := make([]string, 0, len(tellings))
	for w := range tellings {
		words = append(words, w)
	}
	slices.Sort(words)
	return words
}

// Only keeps the events that has reports as told, by their message ids,
// "event.harbour.board".
func (all Places) Only(has func(id string) bool) Places {
	kept := slices.Clone(all)
	for i, p := range kept {
		kept[i].Events = slices.DeleteFunc(slices.Clone(p.Events), func(e *Event) bool { return !has(e.Message("")) })
	}
	return kept
}

// Place finds a place by its id; nil for none.
func (all Places) Place(id string) *Place {
	for i := range all {
		if all[i].ID == id {
			return &all[i]
		}
	}
	return nil
}

// Event finds an event by its id; nil for none.
func (all Places) Event(id string) *Event {
	place, _, _ := strings.Cut(id, ".")
	if p := all.Place(place); p != nil {
		for _, e := range p.Events {
			if e.ID == id {
				return e
			}
		}
	}
	return nil
}

// Events lists all events.
func (all Places) Events() []*Event {
	var events []*Event
	for _, p := range all {
		events = append(events, p.Events...)
	}
	return events
}

// Telling lists the events that can tell a problem.
func (all Places) Telling(p problem.Problem) []*Event {
	return slices.DeleteFunc(all.Events(), func(e *Event) bool { return !e.Bears(p) })
}

// Bears reports whether some event can tell a problem.
func (all Places) Bears(p problem.Problem) bool {
	return all.any(func(e *Event) bool { return e.Bears(p) })
}

// any reports whether something holds for some event.
func (all Places) any(holds func(*Event) bool) bool {
	return slices.ContainsFunc(all, func(p Place) bool { return slices.ContainsFunc(p.Events, holds) })
}

// Tells reports whether some event tells stories of a kind.
func (all Places) Tells(k problem.Kind) bool {
	return all.any(func(e *Event) bool { return slices.Contains(e.Kinds, k) })
}

// Message is the id of a sentence of the event in the language files; without a
// key, of all of them.
func (e *Event) Message(key string) string {
	if key == "" {
		return "event." + e.ID
	}
	return "event." + e.ID + "." + key
}

// Compares reports whether the event compares two amounts, which then have
// labels.
func (e *Event) Compares() bool { return slices.Contains(e.Kinds, problem.DifferenceMore) }

// Bears reports whether the event tells problems of p's kind, and whether p's
// amounts are natural in it: the largest neither too small nor too large, on the
// way too, and none that is silly alone. An amount that is asked for is at least
// two, as its sentences speak of several.
func (e *Event) Bears(p problem.Problem) bool {
	return slices.Contains(e.Kinds, p.Kind()) && e.Span(p.Kind()).holds(p)
}

// Span is what amounts an event bears in a kind of story.
type Span struct {
	Least int // of the largest amount
	Most  int // of any amount
	Part  int // the least of the others; a difference may be smaller
}

// leastAsked is the least that an amount may be which a story asks for.
const leastAsked = 2

// Span is what amounts the event bears in stories of a kind.
func (e *Event) Span(k problem.Kind) Span {
	s := Span{e.least, e.most, e.part}
	if least := e.leasts[k]; least > 0 {
		s.Least = least
	}
	return s
}

func (s Span) holds(p problem.Problem) bool {
	largest := 0
	for _, step := range p.Steps() {
		for _, q := range step.Quantities() {
			largest = max(largest, q.Value)
			if q.Role != problem.RoleDifference && q.Value < s.Part {
				return false
			}
		}
	}
	for _, q := range p.Asked() {
		if q.Value < leastAsked && p.Kind() != problem.TogetherBoth { // where any two parts are right
			return false
		}
	}
	return s.Least <= largest && largest <= s.Most
}
