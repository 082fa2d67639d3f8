package activity

import (
	"crypto/sha256"
	"encoding/binary"
	"iter"
	"math/bits"
	"strconv"
)

// draw is a number decided by the words given.
func draw(words ...string) uint64 {
	h := sha256.New()
	for _, w := range words {
		h.Write([]byte(strconv.Itoa(len(w)) + ":" + w))
	}
	return binary.BigEndian.Uint64(h.Sum(nil))
}

// mix is the n-th number of the row that a seed begins: SplitMix64 (Steele, Lea
// and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014,
// figure 14). It is a hash of seed and n, and no source of chance.
func mix(seed, n uint64) uint64 {
	z := seed + (n+1)*0x9e3779b97f4a7c15
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	return z ^ z>>31
}

// shuffled gives the places 0 to n-1, each once, in an order that the seed
// decides, every order as likely as any other (Fisher and Yates). Only as much
// of it is worked out as is asked for.
func shuffled(n, seed uint64) iter.Seq[uint64] {
	return func(yield func(uint64) bool) {
		moved := map[uint64]uint64{} // what stands at a place that is not its own
		standing := func(at uint64) uint64 {
			if other, ok := moved[at]; ok {
				return other
			}
			return at
		}
		for i := range n {
			ahead, _ := bits.Mul64(mix(seed, i), n-i) // 0 to n-i-1
			from := i + ahead
			drawn := standing(from)
			moved[from] = standing(i)
			if !yield(drawn) {
				return
			}
		}
	}
}
