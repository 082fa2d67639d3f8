package main

import (
	"runtime"
	"sync/atomic"
	"testing"
)

// The room is 100 MB for most sites, and grows with what is held.
func TestRoomPercent(t *testing.T) {
	for _, test := range []struct {
		held uint64 // MB
		want int    // hundredths of it
	}{{0, 400}, {25, 400}, {50, 200}, {100, 100}, {200, 50}, {1000, 50}} {
		if got := roomPercent(test.held << 20); got != test.want {
			t.Errorf("%d MB: want %d, got %d", test.held, test.want, got)
		}
	}
}

// What follows a collection follows each, and knows what is held by then.
func TestAfterCollecting(t *testing.T) {
	var followed atomic.Int32
	afterCollecting(func() {
		if held() > 0 {
			followed.Add(1)
		}
	})
	for range 10_000 {
		if runtime.GC(); followed.Load() >= 3 {
			return
		}
		runtime.Gosched()
	}
	t.Errorf("%d of 10,000 collections were followed by what is held", followed.Load())
}
