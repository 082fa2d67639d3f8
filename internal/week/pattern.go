package week

import (
	"regexp"
	"sync"
)

// pattern is a regular expression that is compiled when it is first needed: most
// commands need few of them.
func pattern(expression string) func() *regexp.Regexp {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(expression) })
}
