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
// [Text.Tells]. What words do in a sentence is data, in en.toml; the order in
// which a sentence is read is that of English, and a language with another order
// needs code, too. For a language without a file nothing is proposed.
//
// Marks in a text lead the reader: [6 kites] is a number that counts, and the
// others then do not; [?] stands where the number that is asked for would stand;
// [a dozen = 12] says which number the words mean. They are not published.
package reading
