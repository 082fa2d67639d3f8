package reading

import (
	"embed"
	"fmt"
	"slices"
	"strings"

	"github.com/pelletier/go-toml/v2"
)

//go:embed *.toml
var cueFiles embed.FS

// class is what a verb does to who has how many.
type class string

const (
	hold class = "hold"
	gain class = "gain"
	lose class = "lose"
	come class = "come"
	give class = "give"
	put  class = "put"
	take class = "take"
	need class = "need"
	help class = "help"
	move class = "go"
)

// cues are the words of a language as the reader knows them.
type cues struct {
	Tens      map[string]int      `toml:"tens"`
	Verbs     map[class][]string  `toml:"verbs"`
	Particles map[string]class    `toml:"particles"`
	Words     map[string][]string `toml:"words"`
	Grammar   map[string][]string `toml:"grammar"`
	Units     map[string][]string `toml:"units"`
	Plurals   map[string]string   `toml:"plurals"`
	Groups    map[string][]string `toml:"groups"`

	forms map[string]form
}

// form is one form of a verb.
type form struct {
	class class
	base  string
	third bool // "finds": after a number this is a noun
}

// loadCues reads the cues of a language; false where there are none.
func loadCues(tag string) (*cues, bool) {
	data, err := cueFiles.ReadFile(tag + ".toml")
	if err != nil {
		return nil, false
	}
	c := &cues{forms: map[string]form{}}
	if err := toml.NewDecoder(strings.NewReader(string(data))).DisallowUnknownFields().Decode(c); err != nil {
		panic(fmt.Sprintf("reading: %s.toml: %v", tag, err)) // a file of this package, proved by its tests
	}
	for class, verbs := range c.Verbs {
		for _, verb := range verbs {
			forms := strings.Fields(verb)
			for _, f := range forms {
				c.forms[f] = form{class, forms[0], f != forms[0] && strings.HasSuffix(f, "s")}
			}
		}
	}
	return c, true
}

// has reports whether a list of words holds one.
func (c *cues) has(list, word string) bool {
	words, ok := c.Words[list]
	if !ok {
		words = c.Grammar[list]
	}
	return slices.Contains(words, word)
}

// phrase is how many tokens from i on make a phrase of a list, the longest one;
// 0 for none.
func (c *cues) phrase(list string, tokens []token, i int) int {
	longest := 0
	for _, p := range c.Words[list] {
		if n := startsWith(tokens[i:], strings.Fields(p)); n > longest {
			longest = n
		}
	}
	return longest
}

// says reports whether a phrase of a list stands anywhere in the tokens.
func (c *cues) says(list string, tokens []token) bool {
	for i := range tokens {
		if c.phrase(list, tokens, i) > 0 {
			return true
		}
	}
	return false
}

func startsWith(tokens []token, words []string) int {
	if len(tokens) < len(words) {
		return 0
	}
	for i, w := range words {
		if tokens[i].low != w {
			return 0
		}
	}
	return len(words)
}

// stem is a noun without its plural ending.
func (c *cues) stem(noun string) string {
	if one, ok := c.Plurals[noun]; ok {
		return one
	}
	noun = strings.TrimSuffix(noun, "'s")
	switch {
	case strings.HasSuffix(noun, "ies") && len(noun) > 4:
		return noun[:len(noun)-3] + "y"
	case strings.HasSuffix(noun, "ss"), strings.HasSuffix(noun, "us"):
		return noun
	case strings.HasSuffix(noun, "es") && slices.ContainsFunc([]string{"sh", "ch", "x", "s", "z", "o"}, func(end string) bool { return strings.HasSuffix(noun[:len(noun)-2], end) }):
		return noun[:len(noun)-2]
	case strings.HasSuffix(noun, "s") && len(noun) > 2:
		return noun[:len(noun)-1]
	}
	return noun
}

// member reports whether a word is one of several that another stands for.
func (c *cues) member(noun string) bool {
	for _, group := range c.Groups {
		if slices.Contains(group, noun) {
			return true
		}
	}
	return false
}

// covers reports whether a word stands for several: fruit for apple.
func (c *cues) covers(group, noun string) bool { return slices.Contains(c.Groups[group], noun) }
