package page

import (
	"bytes"
	"math/rand/v2"
	"strings"
	"testing"
)

// undense is what cmd/desk-engine/worker.js does.
func undense(text string) []byte {
	value := func(c byte) int {
		if c > '<' {
			c--
		}
		return int(c - '#')
	}
	var out []byte
	bits, have := 0, 0
	for i := 0; i < len(text); i += 2 {
		if i+1 == len(text) {
			bits |= value(text[i]) << have
			have += 6
		} else {
			bits |= (value(text[i])*91 + value(text[i+1])) << have
			have += 13
		}
		for ; have >= 8; have -= 8 {
			out = append(out, byte(bits))
			bits >>= 8
		}
	}
	return out
}

func TestDense(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for n := range 400 {
		data := make([]byte, n)
		for i := range data {
			data[i] = byte(random.Uint32())
		}
		text := dense(data)
		if got := undense(text); !bytes.Equal(got, data) {
			t.Fatalf("%d bytes came back as %d", n, len(got))
		}
		if strings.ContainsFunc(text, func(c rune) bool { return c < '#' || c > '~' || c == '<' }) {
			t.Fatalf("%d bytes: a letter that not everybody keeps: %q", n, text)
		}
	}
}
