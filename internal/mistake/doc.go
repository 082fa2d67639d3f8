// Package mistake knows how children come to a wrong number: for a problem it
// lists every known way, the number it gives and whether another way gives the
// same number, and it has a kind reply to any number at all. The right answer
// is never diagnosed.
//
// Causes at the level of the story (which numbers, which operation) come from
// studies of story problems: Riley, Greeno and Heller, "Development of
// children's problem-solving ability in arithmetic" (1983); Lewis and Mayer on
// reversed comparisons (1987); Muth on extra information (1982). Causes at the
// level of columns come from Brown and Burton, "Diagnostic models for
// procedural bugs in basic mathematical skills", Cognitive Science 2 (1978),
// and VanLehn, Mind Bugs (1990). Each is named here by what the child does.
//
// The package knows no words: a reply carries message ids and numbers.
package mistake
