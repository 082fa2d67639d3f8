// Package activity chooses what a class practices: it turns a week's target
// into story problems with their numbers, ways of working, estimate and extra
// number, and carries from week to week what the class has met.
//
// Choosing is by rule, never by accident: every set of numbers that a target
// allows is as likely as any other, a hash of the site's key, the week's date and
// the story's place says in which order they are looked at, and the first set
// that meets every wish is taken, or the nearest to that among many. There is no
// clock and no random source, so an edited note or a new language never
// reshuffles the numbers. Where a wish cannot be met, the week carries a warning
// with the count.
//
// A year goes from easy to hard in the order of the targets; what was learned
// comes back after two, four and eight weeks; facts that the class has not met
// come first. docs/mathematics.md shows what becomes of that.
//
// The package knows no words that families read.
package activity
