// Package reading reads a story that a teacher wrote, and proposes which problem
// it tells: its kind, its numbers and what is asked.
//
// It goes through the story sentence by sentence and keeps account of who has
// how many of what, what comes and goes, and who is compared with whom; then it
// looks at what the question asks of these accounts. It does not look for words
// that give an operation away: "more" stands in stories of every kind, and the
// same word can ask for the sum in one and the difference in the next.
//
// A proposal is never more than that. The reader says how certain it is, and a
// teacher confirms; what was confirmed is held against the text by
// [Text.Tells].
//
// Stories are read in English, Spanish, French and Portuguese. What the words of a
// language do in a sentence is data, in one file each, such as es.toml: its verbs,
// its small words and endings, and where it puts what a thing is like. The code
// knows the structures: a subject that stands behind its verb or is left out, a
// small word at the verb that says to whom, what is compared with what. A language
// that builds its sentences in other ways needs code, too. For one without a file
// nothing is proposed. docs/own-stories.md says how to add one, and how well each
// is read.
//
// Marks in a text lead the reader: [6 kites] is a number that counts, and the
// others then do not; [?] stands where the number that is asked for would stand;
// [a dozen = 12] says which number the words mean. They are not published.
package reading
