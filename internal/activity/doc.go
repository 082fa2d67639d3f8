// Package activity chooses what a class practises: it turns a week's target
// into story problems with their numbers, ways of working, estimate and extra
// number, and carries from week to week what the class has met.
//
// Choosing is by rule, never by accident: every set of numbers that a target
// allows stands in one fixed order, a hash of the site's key, the week's date
// and the story's place says where to begin, and the first set that meets every
// wish is taken. There is no clock and no random source, so an edited note or a
// new language never reshuffles the numbers. Where a wish cannot be met, the
// week carries a warning with the count.
//
// The package knows no words that families read.
package activity
