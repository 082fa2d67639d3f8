package main

import (
	"os"
	"runtime/debug"
)

// A build may take this much before what it has thrown away is collected more
// often: enough for the plan of a hundred thousand pages beside those that are
// being made. A larger site's plan takes more, by the page.
const (
	mostMemory  = 240 << 20 // bytes
	pagesInMost = 100_000
)

// tuneMemory trades memory for time: a build makes much that is thrown away at
// once, and collecting it seldom saves a quarter of the work. A person's own
// GOGC and GOMEMLIMIT come first.
func tuneMemory(pages int) {
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(400)
	}
	if os.Getenv("GOMEMLIMIT") == "" {
		debug.SetMemoryLimit(mostMemory / pagesInMost * int64(max(pages, pagesInMost)))
	}
}
