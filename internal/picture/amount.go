package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// State is how a number shows in a picture.
type State uint8

const (
	Hidden State = iota // not drawn yet
	Empty               // its place is drawn, nothing is written there
	Known               // the story tells it
	Asked               // shown as "?"
	Found               // it was asked, and this is the answer
)

// Amount is a number in a picture.
type Amount struct {
	N     int
	State State
}

// Given is a known amount.
func Given(n int) Amount { return Amount{N: n, State: Known} }

// Written reports whether the number itself can be read.
func (a Amount) Written() bool { return a.State == Known || a.State == Found }

// Drawn reports whether the amount has its place in the picture.
func (a Amount) Drawn() bool { return a.State != Hidden }

// Message ids that stand in a description for a number that cannot be read.
const (
	asked  = "picture.asked"  // "a question mark"
	empty  = "picture.empty"  // "still empty"
	hidden = "picture.hidden" // "not drawn yet"
)

// value fills a place of a description with what is to be seen.
func (a Amount) value(name string) phrase.Value {
	switch a.State {
	case Asked:
		return phrase.Message(name, asked)
	case Empty:
		return phrase.Message(name, empty)
	case Hidden:
		return phrase.Message(name, hidden)
	}
	return phrase.Number(name, a.N)
}

// parts is a fact at a stage of its story.
type parts struct {
	parts []Amount
	whole Amount
}

// grown shows the parts and the whole of a one-step problem at a stage.
func grown(p problem.Problem, stage Stage) parts {
	first := firstTold(p)
	return shown(p.Fact(), func(q problem.Quantity) State { return stateAt(q, first, stage) })
}

// firstTold is what a story tells first. One that asks for a part begins with
// the whole.
func firstTold(p problem.Problem) problem.Role {
	if p.Kind() == problem.TogetherAddend {
		return problem.RoleTotal
	}
	return p.Told()[0].Role
}

// shown gives each quantity of a fact its state.
func shown(fact problem.Fact, state func(problem.Quantity) State) parts {
	at := func(q problem.Quantity) Amount { return Amount{q.Value, state(q)} }
	f := parts{whole: at(fact.Whole)}
	for _, q := range fact.Parts {
		f.parts = append(f.parts, at(q))
	}
	return f.withRest()
}

// stateAt is how q shows at a stage of a story that tells first first.
func stateAt(q problem.Quantity, first problem.Role, stage Stage) State {
	switch {
	case q.Unknown && stage == Solved:
		return Found
	case q.Unknown && stage == Open:
		return Asked
	case q.Unknown, stage == FirstPart && q.Role != first:
		return Hidden
	}
	return Known
}

// withRest gives a hidden part its empty place once the whole and another
// part are there: the rest can then be seen.
func (f parts) withRest() parts {
	if !f.whole.Drawn() || f.undivided() {
		return f
	}
	for i, a := range f.parts {
		if !a.Drawn() {
			f.parts[i].State = Empty
		}
	}
	return f
}

// undivided reports whether no part is drawn yet.
func (f parts) undivided() bool {
	for _, a := range f.parts {
		if a.Drawn() {
			return false
		}
	}
	return true
}

// only returns the one amount that is drawn, if it is the only one.
func (f parts) only() (Amount, bool) {
	var one Amount
	count := 0
	for _, a := range append([]Amount{f.whole}, f.parts...) {
		if a.Drawn() {
			one = a
			count++
		}
	}
	return one, count == 1
}

// numbers are the true numbers of amounts.
func numbers(amounts []Amount) []int {
	list := make([]int, len(amounts))
	for i, a := range amounts {
		list[i] = a.N
	}
	return list
}

var ordinals = [...]string{"First", "Second", "Third"}

// values fills First, Second, Third and Whole.
func (f parts) values() []phrase.Value {
	var out []phrase.Value
	for i, a := range f.parts {
		out = append(out, a.value(ordinals[i]))
	}
	return append(out, f.whole.value("Whole"))
}

// describe picks among the message kinds that every part-whole picture has:
// first-part, first-whole, two, three.
func (f parts) describe(kind Kind) phrase.Line {
	id := "picture." + kind.String()
	if one, ok := f.only(); ok {
		if f.whole.Drawn() {
			return phrase.Say(id+".first-whole", one.value("Whole"))
		}
		return phrase.Say(id+".first-part", one.value("Part"))
	}
	if len(f.parts) == 3 {
		return phrase.Say(id+".three", f.values()...)
	}
	return phrase.Say(id+".two", f.values()...)
}

// describeTaken says what is crossed out of a whole.
func (f parts) describeTaken(kind Kind) phrase.Line {
	if _, ok := f.only(); ok {
		return f.describe(kind)
	}
	return phrase.Say("picture."+kind.String()+".crossed",
		f.whole.value("Whole"), f.parts[0].value("Taken"), f.parts[1].value("Left"))
}
