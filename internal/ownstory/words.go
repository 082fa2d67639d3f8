package ownstory

import (
	_ "embed"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/pelletier/go-toml/v2"

	"homebuild/internal/pattern"
)

// Language is how a language says numbers in words.
type Language struct {
	words  map[string]int // in small letters, with spaces for hyphens
	joined joined
}

// joined is how number words are put together: "twenty-five", "treinta y cinco",
// "soixante et onze".
type joined struct {
	Words  map[string]int `toml:"words"`  // beyond those of the language's file
	By     string         `toml:"by"`     // a word between tens and ones: "y"
	From   int            `toml:"from"`   // the first tens that ones are put to; 20 where nothing is said
	Teens  []int          `toml:"teens"`  // tens that 10 to 19 are put to, too: 60 in French
	After  []string       `toml:"after"`  // words that can stand behind hundreds: "and"
	Dozens []string       `toml:"dozens"` // words that make twelves of the number before them: "2 dozen"
	Glued  []glued        `toml:"glued"`  // words put together in a way of their own

	// Where words have no spaces between them, a number word is one before a
	// measure, and not behind some signs.
	Measures  string `toml:"measures"`
	NotBehind string `toml:"not-behind"`
}

// glued are words each of which stands together with each of others: "스물다섯",
// "خمسة وعشرون".
type glued struct {
	First   map[string]int `toml:"first"`
	Between string         `toml:"between"`
	Second  map[string]int `toml:"second"`
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
			l.words[strings.ReplaceAll(strings.TrimSpace(lower(word)), "-", " ")] = value
		}
	}
	for _, g := range l.joined.Glued {
		for first, a := range g.First {
			for second, b := range g.Second {
				l.words[first+g.Between+second] = a + b
			}
		}
	}
	return l
}

// longestNumber is how many words a number below 1000 takes at most: "neuf cent
// quatre vingt dix neuf" has six.
const longestNumber = 6

// pieces are words without their hyphens.
var pieces = pattern.Of(`[\p{L}\p{M}'’]+`)

// longestUnspaced is how many signs a number word takes at most that has no spaces
// around it: "二十五".
const longestUnspaced = 3

// unspacedAt reads the number word that begins at a place in a script without
// spaces.
func (l Language) unspacedAt(s string, start int) (Numeral, bool) {
	if before, _ := utf8.DecodeLastRuneInString(s[:start]); strings.ContainsRune(l.joined.NotBehind, before) {
		return Numeral{}, false
	}
	var found Numeral
	for i, c := range s[start:] {
		value, ok := l.words[s[start:start+i]]
		if ok && strings.ContainsRune(l.joined.Measures, c) {
			found = Numeral{Value: value, Start: start, End: start + i, Word: true}
		}
		if i > 0 && utf8.RuneCountInString(s[start:start+i]) >= longestUnspaced {
			break
		}
	}
	return found, found.Word
}

// wordAt reads the number word that begins at a place, several words where they
// are put together.
func (l Language) wordAt(s string, start int) (Numeral, bool) {
	var words []string // from here on, a space or a hyphen apart, and where each ends
	var ends []int
	for _, piece := range pieces().FindAllStringIndex(s[start:], longestNumber) {
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
		if rest[0] == l.joined.By || value >= 100 && slices.Contains(l.joined.After, rest[0]) {
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

// alike takes away what two good spellings of a word differ in.
var alike = strings.NewReplacer("’", "'", "ʼ", "'", "ё", "е")

func lower(s string) string { return alike.Replace(strings.ToLower(s)) }
