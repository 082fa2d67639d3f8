package ownstory

import (
	_ "embed"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"github.com/pelletier/go-toml/v2"
)

// Language is how a language says numbers in words.
type Language struct {
	words  map[string]int // in small letters, with spaces for hyphens
	joined joined
}

// joined is how number words are put together: "twenty-five", "treinta y cinco",
// "soixante et onze".
type joined struct {
	Words map[string]int `toml:"words"` // beyond those of the language's file
	By    string         `toml:"by"`    // a word between tens and ones: "y"
	From  int            `toml:"from"`  // the first tens that ones are put to; 20 where nothing is said
	Teens []int          `toml:"teens"` // tens that 10 to 19 are put to, too: 60 in French
}

//go:embed words.toml
var joinedWords string

// NewLanguage knows the number words of a language's file, in small letters (a
// space after a word, as Korean has it before a counter, does not count), and how
// the language puts them together. A language without words is fine: its
// numbers are read in digits.
func NewLanguage(tag string, words map[string]int) Language {
	var languages map[string]joined
	if err := toml.Unmarshal([]byte(joinedWords), &languages); err != nil {
		panic(fmt.Sprintf("ownstory: words.toml: %v", err)) // a file of this package
	}
	l := Language{words: map[string]int{}, joined: languages[tag]}
	for _, list := range []map[string]int{words, l.joined.Words} {
		for word, value := range list {
			l.words[strings.ReplaceAll(strings.TrimSpace(word), "-", " ")] = value
		}
	}
	return l
}

// longestNumber is how many words a number below 1000 takes at most: "neuf cent
// quatre vingt dix neuf" has six.
const longestNumber = 6

// pieces are words without their hyphens.
var pieces = regexp.MustCompile(`[\p{L}\p{M}'’]+`)

// wordAt reads the number word that begins at a place, several words where they
// are put together.
func (l Language) wordAt(s string, start int) (Numeral, bool) {
	var words []string // from here on, a space or a hyphen apart, and where each ends
	var ends []int
	for _, piece := range pieces.FindAllStringIndex(s[start:], longestNumber) {
		from, end := start+piece[0], start+piece[1]
		if n := len(ends); n > 0 && s[ends[n-1]:from] != " " && s[ends[n-1]:from] != "-" {
			break
		}
		words, ends = append(words, lower(s[from:end])), append(ends, end)
	}
	for n := len(words); n > 0; n-- {
		end := ends[n-1]
		if end < len(s) && s[end] == '-' { // a part of a word with a hyphen
			continue
		}
		if value, ok := l.value(words[:n], 1000); ok {
			return Numeral{Value: value, Start: start, End: end, Word: true}, true
		}
	}
	return Numeral{}, false
}

// value is the number below a limit that words say together.
func (l Language) value(words []string, below int) (int, bool) {
	for n := len(words); n > 0; n-- {
		value, ok := l.words[strings.Join(words[:n], " ")]
		if !ok || value >= below {
			continue
		}
		rest := words[n:]
		if len(rest) == 0 {
			return value, true
		}
		if rest[0] == l.joined.By {
			rest = rest[1:]
		}
		if more, ok := l.value(rest, l.room(value)); ok && more > 0 {
			return value + more, true
		}
	}
	return 0, false
}

// room is the number that what is put to tens or hundreds stays below.
func (l Language) room(value int) int {
	switch {
	case value >= 100 && value%100 == 0:
		return 100
	case slices.Contains(l.joined.Teens, value):
		return 20
	case value >= max(l.joined.From, 20) && value < 100 && value%10 == 0:
		return 10
	}
	return 0
}

func lower(s string) string { return strings.ReplaceAll(strings.ToLower(s), "’", "'") }
