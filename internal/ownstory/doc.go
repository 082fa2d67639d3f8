// Package ownstory is what can be known for sure about a story that a teacher
// wrote, and what she has to say herself.
//
// Sure are the numbers: which stand in the text, in digits of any script or in
// words that the language knows, and where. Sure is also which kinds of story
// such numbers can tell: 8 and 6 can be 8 + 6 = ? in four kinds of story, 8 - 6
// = ? in three, 6 + ? = 8 in four. Which of them the story does tell is not in
// its numbers, and not in single words either: "more" stands in stories that add
// and in stories that compare. So nobody guesses. [Text.Offer] lists all that
// fits, and the teacher chooses.
//
// The way of a story:
//
//	lang := ownstory.NewLanguage("en", words)
//	text, err := lang.Read("Lina has 8 shells. She finds 6 more. How many now?")
//	offer := text.Offer()                  // to be shown: offer.Choices, offer.LeftOut
//	line := offer.Choices[0].Line()        // "add-to-result 8 + 6 = ?", kept in the week file
//	choice, err := text.Choose(line)       // held against the text at every build
//
// A choice holds the problem, which is a kind with the role of every number and
// its equation, and where in the text the numbers stand that it needs. A
// translation has to tell the same numbers ([Text.Match]), and an answer in the
// teacher's words the right one ([Text.Answers]).
//
// Two marks in a text say what the words leave open; they are not published:
//
//	[6 kites]       this number counts, and those without a mark do not
//	[a dozen = 12]  these words say a number
//
// What is wrong is an [*Error] for the person who wrote the line.
package ownstory
