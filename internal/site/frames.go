package site

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// frame is a kind of story with gaps, for a child to fill in: the messages
// own.frame.* of its sentences, of its question and of its answer.
type frame struct {
	told        []string
	ask, answer string
	two         bool   // it is about two characters
	numbers     string // the message own.numbers.* that tells which numbers fit
}

// frames has the blank story of every kind.
var frames = map[problem.Kind]frame{
	problem.AddToResult:    {told: []string{"has", "finds"}, ask: "ask-now", answer: "now", numbers: "parts"},
	problem.AddToChange:    {told: []string{"has", "finds-some", "now"}, ask: "ask-found", answer: "finds", numbers: "compare"},
	problem.AddToStart:     {told: []string{"some", "finds", "now"}, ask: "ask-start", answer: "start", numbers: "compare"},
	problem.TakeFromResult: {told: []string{"has", "gives"}, ask: "ask-now", answer: "now", two: true, numbers: "take"},
	problem.TakeFromChange: {told: []string{"has", "gives-some", "now"}, ask: "ask-gave", answer: "gives", two: true, numbers: "compare"},
	problem.TakeFromStart:  {told: []string{"some", "gives", "now"}, ask: "ask-start", answer: "start", two: true, numbers: "parts"},

	problem.TogetherTotal:  {told: []string{"has", "with-has"}, ask: "ask-together", answer: "together", two: true, numbers: "parts"},
	problem.TogetherAddend: {told: []string{"both-have", "with-has"}, ask: "ask-has", answer: "has", two: true, numbers: "compare"},
	problem.TogetherBoth:   {told: []string{"both-have"}, ask: "ask-each", answer: "each", two: true, numbers: "one"},
	problem.TogetherThree:  {told: []string{"has", "with-has", "third"}, ask: "ask-all", answer: "all", two: true, numbers: "three"},

	problem.TogetherFour: {told: []string{"has", "with-has", "third", "fourth"}, ask: "ask-all", answer: "all", two: true, numbers: "four"},

	problem.DifferenceMore:  {told: []string{"has", "with-has"}, ask: "ask-more", answer: "more", two: true, numbers: "compare"},
	problem.DifferenceFewer: {told: []string{"has", "with-has"}, ask: "ask-fewer", answer: "fewer", two: true, numbers: "compare"},
	problem.BiggerMore:      {told: []string{"with-has", "more"}, ask: "ask-has", answer: "has", two: true, numbers: "parts"},
	problem.BiggerFewer:     {told: []string{"has", "fewer"}, ask: "ask-with", answer: "with-has", two: true, numbers: "parts"},
	problem.SmallerMore:     {told: []string{"has", "more"}, ask: "ask-with", answer: "with-has", two: true, numbers: "compare"},
	problem.SmallerFewer:    {told: []string{"with-has", "fewer"}, ask: "ask-has", answer: "has", two: true, numbers: "compare"},

	problem.AddThenAdd:         {told: []string{"has", "finds", "then-finds"}, ask: "ask-now", answer: "now", numbers: "steps"},
	problem.AddThenTake:        {told: []string{"has", "finds", "then-gives"}, ask: "ask-now", answer: "now", two: true, numbers: "steps"},
	problem.TakeThenAdd:        {told: []string{"has", "gives", "then-finds"}, ask: "ask-now", answer: "now", two: true, numbers: "steps"},
	problem.TakeThenTake:       {told: []string{"has", "gives", "then-gives"}, ask: "ask-now", answer: "now", two: true, numbers: "steps"},
	problem.TogetherThenTake:   {told: []string{"has", "with-has", "they-give"}, ask: "ask-together", answer: "together", two: true, numbers: "steps"},
	problem.BiggerThenTogether: {told: []string{"with-has", "more"}, ask: "ask-together", answer: "together", two: true, numbers: "steps"},
}

// frame is that of a child's own story: of the kind of the worked one.
func (l *lesson) frame() frame { return frames[l.worked.Problem.Kind()] }

// say fills a sentence of the frame; who and with are those that it is about.
func (f frame) say(part string, who, with phrase.Value) phrase.Line {
	return phrase.Say("own.frame."+part, who, with, phrase.Blank("Gap", ""))
}

// story is the blank story, a sentence each, without its answer.
func (f frame) story(who, with phrase.Value) (sentences []phrase.Line) {
	for _, part := range f.told {
		sentences = append(sentences, f.say(part, who, with))
	}
	return append(sentences, f.say(f.ask, who, with))
}

// pairs reports whether the story has two numbers, and none of them is more than
// what two others make.
func (f frame) pairs() bool {
	return f.numbers == "parts" || f.numbers == "take" || f.numbers == "compare"
}
