package site

import (
	"runtime"
	"testing"
)

// What a page holds is shared with the next; what nobody holds is worked out
// anew.
func TestCached(t *testing.T) {
	var c cached[[64]byte]
	made := 0
	get := func() *[64]byte {
		return c.get(func() *[64]byte { made++; return &[64]byte{byte(made)} })
	}
	first, second := get(), get()
	if first != second || made != 1 {
		t.Errorf("held: made %d times, want once", made)
	}
	runtime.KeepAlive(first)
	runtime.GC()
	if again := get(); made != 2 || again[0] != 2 {
		t.Errorf("let go: made %d times, want twice", made)
	}
}
