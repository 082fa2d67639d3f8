package i18n

import (
	"sync"
	"unicode"
)

// runeSet is a set of signs in one bit each, since millions are asked for while
// languages are read. Those beyond the first plane of Unicode, which few languages
// write with, are in every set.
type runeSet [1 << 16 / 64]uint64

func setOf(tables ...*unicode.RangeTable) *runeSet {
	s := &runeSet{}
	for _, table := range tables {
		for _, r := range table.R16 {
			for c := rune(r.Lo); c <= rune(r.Hi); c += rune(r.Stride) {
				s.add(c)
			}
		}
	}
	return s
}

// add adds a sign of the first plane.
func (s *runeSet) add(c rune) { s[c/64] |= 1 << (c % 64) }

func (s *runeSet) has(c rune) bool { return c >= 1<<16 || s[c/64]&(1<<(c%64)) != 0 }

func (s *runeSet) hasAll(text string) bool {
	for _, c := range text {
		if !s.has(c) {
			return false
		}
	}
	return true
}

// signsOfWords are letters and the marks on them, made when they are first asked for.
var signsOfWords = sync.OnceValue(func() *runeSet { return setOf(unicode.L, unicode.M) })

func inWord(c rune) bool {
	return signsOfWords().has(c) && (c < 1<<16 || unicode.IsLetter(c) || unicode.IsMark(c))
}

func notInWord(c rune) bool { return !inWord(c) }
