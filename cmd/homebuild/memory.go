package main

import (
	"os"
	"runtime/debug"
)

// A build may take this much before what it has thrown away is collected more
// often: enough for most sites. The plan of a larger one takes more, by the week and
// by the page, and beside it there must be room for the pages that are being made,
// or collecting never ends.
const (
	usualMemory   = 200 << 20 // bytes
	beside        = 64 << 20
	memoryForWeek = 44 << 10
	memoryForPage = 1 << 10
)

// tuneMemory trades memory for time: a build makes much that is thrown away at
// once, and collecting it seldom saves a quarter of the work. A person's own
// GOGC and GOMEMLIMIT come first.
func tuneMemory(weeks, pages int) {
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(400)
	}
	if os.Getenv("GOMEMLIMIT") == "" {
		debug.SetMemoryLimit(int64(max(usualMemory, beside+weeks*memoryForWeek+pages*memoryForPage)))
	}
}
