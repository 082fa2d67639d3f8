// Package estimate finds out whether an answer makes sense: a friendly
// calculation that the answer must be near, where one is of use, the part-whole
// test, and going back. It knows no words.
//
// An estimate is close, not right: it never says that an answer is correct,
// only that it can be, or that it cannot. It stands only where it is easier than
// the calculation and finds a likely slip; what it cannot find, it says.
package estimate
