package story

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// writer makes the lines of one story.
type writer struct {
	story   *Story
	inWords bool
}

func (w writer) value(v phrase.Value) phrase.Value {
	if w.inWords {
		return v.InWords()
	}
	return v
}

// line is a message about the story's people; what else stands in it is given.
func (w writer) line(id, subject string, values ...phrase.Value) phrase.Line {
	people := []phrase.Value{
		phrase.Person("A", w.story.A), phrase.Person("B", w.story.B),
		phrase.Message("Some", w.story.Thing+".some"),
	}
	l := phrase.Say(id, append(people, values...)...)
	switch subject {
	case "A":
		l = l.About(w.story.A)
	case "B":
		l = l.About(w.story.B)
	}
	return l
}

func (w writer) sentence(f Frame, fs FrameSentence) Sentence {
	s := Sentence{Role: Scene}
	var values []phrase.Value
	switch {
	case fs.Asks != "":
		s.Role, s.Quantity = Question, fs.Asks
		values = append(values, phrase.Asked("Ask", w.story.Thing))
	case fs.Tells != "":
		s.Role, s.Quantity = Known, fs.Tells
		n := quantity(w.story.Problem, fs.Tells)
		values = append(values, w.value(phrase.Counted(string(fs.Tells), w.story.Thing, n)))
	}
	s.Line = w.line("story."+f.ID+"."+fs.ID, fs.Subject, values...)
	return s
}

// answers fills the places of the answer sentence, or leaves them blank.
func (w writer) answers(blank bool) []phrase.Value {
	var out []phrase.Value
	for _, q := range w.story.Problem.Asked() {
		v := phrase.Counted(string(q.Role), w.story.Thing, q.Value)
		if blank {
			v = phrase.Blank(string(q.Role), w.story.Thing)
		}
		out = append(out, v)
	}
	return out
}

// quantity is the value of a role in a problem; a frame that tells a role its
// kind does not have is a bug of the stock, found by its test.
func quantity(p problem.Problem, role problem.Role) int {
	for _, q := range p.Quantities() {
		if q.Role == role {
			return q.Value
		}
	}
	panic("story: " + p.Kind().String() + " has no " + string(role))
}
