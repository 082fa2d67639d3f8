package publish

import (
	"bytes"
	"strings"
	"testing"
	"time"
)

// A manifest may come from anywhere: whatever it holds, only paths within the
// folder come out of it, and what is read is what would be written.
func FuzzManifest(f *testing.F) {
	const abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
	for _, seed := range []string{abc + "  a/c.html\n", abc + "  ../a\n", abc + "  a\\b\n", abc + "  \n", "x", abc + "  a\r\n" + abc + "  a\r\n"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		m := manifest{}
		if m.decode(strings.NewReader(text), Shard{}.Owns) != nil {
			return
		}
		again := manifest{}
		if err := again.decode(bytes.NewReader(encoded(m)), Shard{}.Owns); err != nil || len(again) != len(m) {
			t.Errorf("written and read again: %v, %d files instead of %d", err, len(again), len(m))
		}
		for name := range m {
			if !validPath(name) || strings.Contains(name, "..") && strings.HasPrefix(name, "../") {
				t.Errorf("a path leaves the folder: %q", name)
			}
		}
		stamps{}.decode(strings.NewReader(text), time.Unix(1, 0)) // ends, whatever it holds
	})
}
