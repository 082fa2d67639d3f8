package picture

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// state is how a number shows in a picture.
type state uint8

const (
	hidden state = iota // not drawn yet
	empty               // its place is drawn, nothing is written there
	asked               // shown as "?"
	known               // the story tells it
	found               // it was asked, and this is the answer
)

// unread are the messages that stand in a description for a number that
// cannot be read.
var unread = [...]string{hidden: "picture.hidden", empty: "picture.empty", asked: "picture.asked"}

// gap is the shape around a "?". Two that may stand for different numbers have
// different shapes.
type gap uint8

const (
	noShape gap = iota
	square
	round
)

// amount is a number in a picture.
type amount struct {
	n     int
	state state
	gap   gap
}

// given is a known amount.
func given(n int) amount { return amount{n: n, state: known} }

// givens are known amounts.
func givens(numbers ...int) []amount {
	list := make([]amount, len(numbers))
	for i, n := range numbers {
		list[i] = given(n)
	}
	return list
}

// written reports whether the number itself can be read.
func (a amount) written() bool { return a.state >= known }

// drawn reports whether the amount has its place in the picture.
func (a amount) drawn() bool { return a.state != hidden }

// value fills a place of a description with what is to be seen.
func (a amount) value(name string) phrase.Value {
	if a.written() {
		return phrase.Number(name, a.n)
	}
	return phrase.Message(name, unread[a.state])
}

// amounts are a whole and its parts, two to four.
type amounts struct {
	parts []amount
	whole amount
}

// joined are known parts and the whole that they make.
func joined(parts ...int) amounts {
	return amounts{parts: givens(parts...), whole: given(problem.Sum(parts...).Value())}
}

// grown shows the parts and the whole of a one-step problem at a stage.
func grown(p problem.Problem, stage Stage) amounts {
	s := shown(p.Fact(), func(q problem.Quantity) state { return stateAt(q, firstTold(p), stage) })
	if s.asksAll() {
		s.parts[0].gap, s.parts[1].gap = square, round
	}
	return s
}

// firstTold is what a story tells first. One that asks for a part begins with
// the whole, one that asks how many fewer with the smaller amount.
func firstTold(p problem.Problem) problem.Role {
	switch p.Kind() {
	case problem.TogetherAddend:
		return problem.RoleTotal
	case problem.DifferenceFewer:
		return problem.RoleSmaller
	}
	return p.Given()[0].Role
}

// stateAt is how q shows at a stage of a story that tells first first.
func stateAt(q problem.Quantity, first problem.Role, stage Stage) state {
	switch {
	case q.Unknown && stage == Solved:
		return found
	case q.Unknown && stage == Open:
		return asked
	case q.Unknown, stage == FirstPart && q.Role != first:
		return hidden
	}
	return known
}

// shown gives each quantity of a fact its state. A hidden part gets its empty
// place once the whole and another part are there: the rest can then be seen.
func shown(fact problem.Fact, state func(problem.Quantity) state) amounts {
	at := func(q problem.Quantity) amount { return amount{n: q.Value, state: state(q)} }
	s := amounts{whole: at(fact.Whole)}
	for _, q := range fact.Parts {
		s.parts = append(s.parts, at(q))
	}
	if s.whole.drawn() && !s.undivided() {
		for i, a := range s.parts {
			if !a.drawn() {
				s.parts[i].state = empty
			}
		}
	}
	return s
}

// undivided reports whether no part is drawn yet.
func (s amounts) undivided() bool { return !slices.ContainsFunc(s.parts, amount.drawn) }

// asksAll reports whether no part is known: both addends unknown.
func (s amounts) asksAll() bool {
	return !slices.ContainsFunc(s.parts, func(a amount) bool { return a.state != asked })
}

// only returns the one amount that is drawn, if it is the only one.
func (s amounts) only() (one amount, ok bool) {
	count := 0
	for _, a := range append([]amount{s.whole}, s.parts...) {
		if a.drawn() {
			one = a
			count++
		}
	}
	return one, count == 1
}

// numbers are the true numbers of amounts.
func numbers(amounts []amount) []int {
	list := make([]int, len(amounts))
	for i, a := range amounts {
		list[i] = a.n
	}
	return list
}

var ordinals = [...]string{"First", "Second", "Third", "Fourth"}

// values fills First, Second, Third, Fourth and whole.
func (s amounts) values() []phrase.Value {
	var out []phrase.Value
	for i, a := range s.parts {
		out = append(out, a.value(ordinals[i]))
	}
	return append(out, s.whole.value("Whole"))
}

// describe picks among the messages that every part-whole picture has:
// first-part, first-whole, two, three, four.
func (s amounts) describe(id string) phrase.Line {
	if one, ok := s.only(); ok {
		if s.whole.drawn() {
			return phrase.Say(id+".first-whole", one.value("Whole"))
		}
		return phrase.Say(id+".first-part", one.value("Part"))
	}
	return phrase.Say(id+s.count(), s.values()...)
}

// count ends a message id with how many parts there are.
func (s amounts) count() string {
	return [...]string{2: ".two", 3: ".three", 4: ".four"}[len(s.parts)]
}

// describeTaken says what is crossed out of a whole.
func (s amounts) describeTaken(id string) phrase.Line {
	if _, ok := s.only(); ok {
		return s.describe(id)
	}
	return phrase.Say(id+".crossed",
		s.whole.value("Whole"), s.parts[0].value("Taken"), s.parts[1].value("Left"))
}
