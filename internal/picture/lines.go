package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Lines lists a sample of every sentence that pictures of stories can ask for,
// so that a catalogue can be checked for all of them.
func Lines() []phrase.Line {
	lines := []phrase.Line{nameLine(someLabel)}
	for _, id := range unread[:known] {
		lines = append(lines, phrase.Say(id))
	}
	for _, k := range problem.Kinds() {
		p, err := problem.New(k, 13, 5)
		if err != nil {
			p, err = problem.New(k, 8, 5, 2)
		}
		if err != nil {
			continue
		}
		for _, kind := range Kinds() {
			lines = append(lines, linesOf(kind, p)...)
		}
		if pairs, ok := AllPairs(p); ok {
			lines = append(lines, pairs.Describe())
		}
	}
	return phrase.Distinct(lines)
}

// someLabel stands for what a story writes beside what it compares.
var someLabel = phrase.Text("", "A")

// linesOf grows a story, with and without names.
func linesOf(kind Kind, p problem.Problem) []phrase.Line {
	var lines []phrase.Line
	for _, stage := range Stages() {
		if picture, err := OfProblem(p, kind, stage); err == nil {
			lines = append(lines, picture.Describe(), WithNames(picture, someLabel, someLabel).Describe())
		}
	}
	return lines
}
