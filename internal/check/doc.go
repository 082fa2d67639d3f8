// Package check looks for what could go wrong before families see a week, in
// files that can be built: what the plan could not give, what a language holds
// back, notes that are in one language only, pages that are slow to arrive. It
// is pure: it makes every page, writes none, and says what it found as data.
//
// What cannot be built at all is not found here but by the reader of each file;
// a published folder is read again by internal/recheck.
package check
