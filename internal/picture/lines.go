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
		// With and without a trade, with and without hundreds, in one and two steps.
		for _, numbers := range [][]int{{13, 5}, {15, 4}, {113, 105}, {123, 24}, {8, 5, 2}, {108, 105, 2}} {
			p, err := problem.New(k, numbers...)
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
