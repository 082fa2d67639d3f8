// Package estimate finds out whether an answer makes sense: a friendly
// calculation that the answer must be near, and, where none is of use, the
// part-whole test. It knows no words.
//
// An estimate is close, not right: it never says that an answer is correct,
// only that it can be, or that it cannot.
package estimate
