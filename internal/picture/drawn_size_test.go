package picture_test

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"

	"homebuild/internal/picture/svg"
)

// TestWeight weighs the pictures of a page that shows a story grow, a strategy
// at work and a line. A page may weigh 14,000 bytes compressed, the first
// round trip of a fresh connection (RFC 6928); pictures may take a third.
func TestWeight(t *testing.T) {
	var page strings.Builder
	page.WriteString(svg.Style() + svg.Defs())
	all := samples(t)
	for i, name := range []string{
		"bar-add-1", "bar-add-2", "bar-add-3", "bar-add-4", "compare-3", "frame", "bond",
		"way-make-ten-0", "way-make-ten-1", "way-near-doubles-0",
	} {
		at := slices.IndexFunc(all, func(s sample) bool { return s.name == name })
		if at < 0 {
			t.Fatalf("no sample %q", name)
		}
		page.WriteString(svg.Draw(all[at].picture, svg.Options{ID: fmt.Sprint("p", i), Say: say, Number: strconv.Itoa}))
	}
	var packed bytes.Buffer
	w, err := gzip.NewWriterLevel(&packed, gzip.BestCompression)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := w.Write([]byte(page.String())); err != nil {
		t.Fatal(err)
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	t.Logf("ten pictures, patterns and style: %d bytes, %d compressed", page.Len(), packed.Len())
	if packed.Len() > 14000/3 {
		t.Errorf("ten pictures weigh %d bytes compressed, want at most %d", packed.Len(), 14000/3)
	}
}
