// Package inner is a room inside a room.
package inner

// Positive is asked for 1 and -1.
func Positive(n int) bool { return n > 0 }
