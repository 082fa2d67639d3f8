package main

import (
	"os"
	"runtime/debug"
)

// manyPages is when the plan of a site takes more room than the pages that are
// being made.
const manyPages = 20_000

// tuneMemory trades memory for time: a build makes much that is thrown away at
// once, and collecting it seldom saves a quarter of the work. Where a site of so
// many pages is itself large, it is collected often instead. A person's own
// GOGC comes first.
func tuneMemory(pages int) {
	switch {
	case os.Getenv("GOGC") != "":
	case pages > manyPages:
		debug.SetGCPercent(35)
	default:
		debug.SetGCPercent(400)
	}
}
