package story

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// write tells a choice in the words of its event.
func write(e *Event, c Choice, inWords bool) Story {
	w := writer{event: e, problem: c.Problem, groups: Groups(c.Problem.Kind()), inWords: inWords}
	recipe := recipes[c.Problem.Kind()]
	ask := recipe[len(recipe)-1]
	s := Story{
		Event: e.ID, Place: e.Place, Problem: c.Problem, ExtraNumber: c.Extra, Cast: e.Cast, Thing: e.Thing,
		Sentences:   []Sentence{{Role: Scene, Line: w.line(keyOpen)}},
		Answer:      w.line(answerTo(ask), w.answers(phrase.Counted)...),
		AnswerFrame: w.line(answerTo(ask), w.answers(blank)...),
		So:          w.line(settles(ask)),
	}
	if c.Extra > 0 {
		s.Sentences = append(s.Sentences, Sentence{Role: Extra, Line: w.line(keyExtra, w.value(phrase.Counted(string(RoleExtra), e.Extra.Thing, c.Extra)))})
	}
	for _, key := range recipe {
		s.Sentences = append(s.Sentences, w.sentence(key))
	}
	if e.Compares() && c.Problem.Kind().Situation() == problem.Compare && c.Problem.Kind().Steps() == nil {
		s.labels = [2]phrase.Value{phrase.Message("", e.Message(keyBigger)), phrase.Message("", e.Message(keySmaller))}
	}
	return s
}

// writer makes the lines of one story.
type writer struct {
	event   *Event
	problem problem.Problem
	groups  []string
	inWords bool
}

func (w writer) line(key string, values ...phrase.Value) phrase.Line {
	return phrase.Line{ID: w.event.Message(key), Groups: w.groups, Values: values}
}

func (w writer) value(v phrase.Value) phrase.Value {
	if w.inWords {
		return v.InWords()
	}
	return v
}

func (w writer) sentence(key string) Sentence {
	if asks, ok := answered[key]; ok {
		return Sentence{Role: Question, Quantity: asks[0], Line: w.line(key)}
	}
	role, ok := givenBy[key]
	if !ok {
		return Sentence{Role: Scene, Line: w.line(key)}
	}
	n := quantity(w.problem, role)
	return Sentence{Role: Known, Quantity: role, Line: w.line(key, w.value(phrase.Counted(string(role), w.event.Thing, n)))}
}

// answers fills the places of the answer sentence.
func (w writer) answers(with func(name, thing string, n int) phrase.Value) []phrase.Value {
	var out []phrase.Value
	for _, q := range w.problem.Asked() {
		out = append(out, with(string(q.Role), w.event.Thing, q.Value))
	}
	return out
}

func blank(name, thing string, _ int) phrase.Value { return phrase.Blank(name, thing) }

// quantity is the value of a role in a problem; a recipe that tells a role its
// kind does not have is a bug, found by a test.
func quantity(p problem.Problem, role problem.Role) int {
	all := p.Quantities()
	i := slices.IndexFunc(all, func(q problem.Quantity) bool { return q.Role == role })
	if i < 0 {
		panic("story: " + p.Kind().String() + " has no " + string(role))
	}
	return all[i].Value
}
