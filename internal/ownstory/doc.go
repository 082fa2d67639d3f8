// Package ownstory is what can be known for sure about a story that a teacher
// wrote, and what she has to say herself.
//
// Sure are the numbers: which stand in the text, in digits of any script or in
// words that the language knows, and where. Sure is also which kinds of story
// such numbers can tell: 8 and 6 can be 8 + 6 = ? in four kinds of story, 8 - 6
// = ? in three, 6 + ? = 8 in four. Which of them the story does tell is not in
// its numbers, and not in single words either: "more" stands in stories that add
// and in stories that compare. So nobody guesses, and every language is alike.
// The teacher says two things: what happens (a [Happening]), and what is asked.
// [Text.Offer] lists all that fits, a [Choice] with its equation, its picture and
// its sentence; once it is said what happens, at most [MostShown].
//
// The way of a story, where somebody taps:
//
//	lang := ownstory.NewLanguage("en", words)
//	text, err := lang.Read("Lina has 8 shells. She finds 6 more. How many now?")
//	text.Label(0)                          // "8 shells"; a tap leaves it out: text.OfferOf
//	offer := text.Offer()
//	offer.Happenings()                     // what happens?
//	shown := offer.Of(ownstory.Joins)      // what is asked? shown.Choices
//	line := shown.Choices[0].Line()        // kind = "add-to-result 8 + 6 = ?"
//	words := text.Mark(offer.Counted)      // text = "Lina has [8] shells. …"
//
// and in files, at every build:
//
//	choice, err := text.Choose(ownstory.Wish{Kind: line})
//
// whose error asks what is not said yet, with the lines to write.
//
// A choice holds the problem, which is a kind with the role of every number and
// its equation, and where in the text the numbers stand that it needs. A
// translation has to tell the same numbers ([Text.Match]), and an answer in the
// teacher's words the right one ([Text.Answers]).
//
// Marks in a text say what the words leave open; they are not published:
//
//	[6 kites]       this number counts, and those without a mark do not
//	[a dozen = 12]  these words say a number
//	[Room 4 =]      this number is part of a name
//
// What is wrong is an [*Error] for the person who wrote the line.
package ownstory
