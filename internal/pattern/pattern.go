// Package pattern has regular expressions that are compiled when they are first needed:
// most commands need few of those that there are, and none should wait for all.
package pattern

import (
	"regexp"
	"sync"
)

// Of gives the same regular expression at each call. One that is not in the syntax of
// package regexp is a bug and panics at the first.
func Of(expression string) func() *regexp.Regexp {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(expression) })
}
