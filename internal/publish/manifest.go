package publish

import (
	"bufio"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"
)

// sum is the SHA-256 of a file's bytes.
type sum [sha256.Size]byte

func sumOf(data []byte) sum { return sha256.Sum256(data) }

func (s sum) String() string { return hex.EncodeToString(s[:]) }

// manifest lists files by path with the sums they may have: one each, or two
// after a run that was cut short.
type manifest map[string][]sum

// encode writes a manifest as sha256sum does, sorted by path.
func (m manifest) encode(w *bufio.Writer) {
	for _, name := range slices.Sorted(maps.Keys(m)) {
		for _, s := range m[name] {
			writeSum(w, s, name)
		}
	}
}

func writeSum(w *bufio.Writer, s sum, name string) {
	var code [2 * sha256.Size]byte
	hex.Encode(code[:], s[:])
	_, _ = w.Write(code[:]) // w keeps its first error
	_, _ = w.WriteString("  " + name + "\n")
}

// decode adds those files of an encoded manifest that are wanted. The text may
// come from anywhere: a line that we would not write is an error.
func (m manifest) decode(from io.Reader, wanted func(path string) bool) error {
	lines := bufio.NewScanner(from)
	for number := 1; lines.Scan(); number++ {
		code, name, ok := strings.Cut(lines.Text(), "  ")
		raw, err := hex.DecodeString(code)
		if !ok || err != nil || len(raw) != sha256.Size || !validPath(name) {
			return fmt.Errorf("line %d is not one of ours", number)
		}
		if wanted(name) {
			m.add(strings.Clone(name), sum(raw)) // the line itself goes
		}
	}
	return lines.Err()
}

func (m manifest) add(name string, s sum) {
	if !slices.Contains(m[name], s) {
		m[name] = append(m[name], s)
	}
}
