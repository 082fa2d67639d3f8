package reading

import (
	"slices"
	"strings"
)

// counting is how a language says numbers in words.
type counting struct {
	words map[string]int // in small letters; several words with spaces
	joined
}

// joined is how number words are put together: "twenty-five", "treinta y cinco",
// "soixante et onze".
type joined struct {
	Words []string `toml:"words"` // between tens and ones: "y"
	From  int      `toml:"from"`  // the first tens that ones are put to; 20 where nothing is said
	Teens []int    `toml:"teens"` // tens that 10 to 19 are put to, too: 60 in French
}

// wordAt reads the number word that begins at a place, several words where they
// are put together.
func (c counting) wordAt(s string, at, end int) (Numeral, bool) {
	var pieces []string // words from here on, and where each ends
	var ends []int
	for at := at; len(pieces) < 9; {
		stop := endOf(s, at, func(c rune) bool { return inWord(c) && c != '-' })
		if stop == at {
			break
		}
		pieces, ends = append(pieces, lower(s[at:stop])), append(ends, stop)
		if stop >= len(s) || s[stop] != ' ' && s[stop] != '-' {
			break
		}
		at = stop + 1
	}
	for n := len(pieces); n > 0; n-- { // not a part of a word with a hyphen
		if ends[n-1] < len(s) && s[ends[n-1]] == '-' {
			continue
		}
		if value, ok := c.value(pieces[:n], 1000); ok {
			return Numeral{Value: value, Start: at, End: ends[n-1], Word: true}, true
		}
	}
	return Numeral{}, false
}

// value is the number below a limit that words say together.
func (c counting) value(words []string, below int) (int, bool) {
	for n := len(words); n > 0; n-- {
		value, ok := c.words[strings.Join(words[:n], " ")]
		if !ok {
			value, ok = c.words[strings.Join(words[:n], "-")]
		}
		if !ok || value >= below {
			continue
		}
		rest := words[n:]
		if len(rest) == 0 {
			return value, true
		}
		limit := c.room(value)
		if slices.Contains(c.Words, rest[0]) {
			rest = rest[1:]
		}
		if more, ok := c.value(rest, limit); ok && more > 0 {
			return value + more, true
		}
	}
	return 0, false
}

// room is the number that what is put to tens or hundreds must stay below.
func (c counting) room(value int) int {
	switch {
	case value >= 100 && value%100 == 0:
		return 100
	case slices.Contains(c.Teens, value):
		return 20
	case value >= max(c.From, 20) && value < 100 && value%10 == 0:
		return 10
	}
	return 0
}
