package main

import (
	"os"
	"runtime"
	"runtime/debug"
	"runtime/metrics"
)

// tuneMemory trades memory for time: a build makes much that is thrown away at once,
// and collecting it seldom saves a quarter of the work. How much may be made before
// it is collected is settled again after each collection, since nobody knows
// beforehand what the plan of a large site takes. A person's own GOGC and GOMEMLIMIT
// come first.
func tuneMemory() {
	if os.Getenv("GOGC") != "" || os.Getenv("GOMEMLIMIT") != "" {
		return
	}
	debug.SetGCPercent(roomPercent(0))
	afterCollecting(func() { debug.SetGCPercent(roomPercent(held())) })
}

// A program may make this much, in bytes, before it collects, or half of what it
// holds where that is more: with a room that does not grow, a large site would be
// collected without end.
const room = 100 << 20

// roomPercent is that room in hundredths of the bytes held.
func roomPercent(held uint64) int {
	return int(max(100*room/max(held, room/4), 50))
}

// held is how many bytes the last collection left.
func held() uint64 {
	sample := []metrics.Sample{{Name: "/gc/heap/live:bytes"}}
	metrics.Read(sample)
	return sample[0].Value.Uint64()
}

// afterCollecting calls do after this collection and each later one.
func afterCollecting(do func()) {
	runtime.AddCleanup(new(any), func(do func()) {
		do()
		afterCollecting(do)
	}, do)
}
