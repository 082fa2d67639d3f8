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
	Order        order                          `toml:"order"`
	Endings      map[string][]string            `toml:"endings"`
	Numbers      map[string]int                 `toml:"numbers"`
	Joined       joined                         `toml:"joined"`
	Elisions     map[string]string              `toml:"elisions"`
	Enclitics    map[string]string              `toml:"enclitics"`
	Rewrite      map[string]string              `toml:"rewrite"`
	Conjugations map[string]map[person][]string `toml:"conjugations"`
	Verbs        map[class][]string             `toml:"verbs"`
	Particles    map[string]class               `toml:"particles"`
	Words        map[string][]string            `toml:"words"`
	Grammar      map[string][]string            `toml:"grammar"`
	Units        map[string][]string            `toml:"units"`
	Plurals      map[string]string              `toml:"plurals"`
	Groups       map[string][]string            `toml:"groups"`

	forms  map[string]form
	stems  map[string]map[string]bool // of the lists of things: containers, adjectives, ...
	groups map[string]map[string]bool
	rules  []rule
}

// order is how a language orders its sentences where that differs from one to
// another.
type order struct {
	Adjectives string `toml:"adjectives"`  // "before" or "after" the noun
	LeftOut    bool   `toml:"left-out"`    // a subject may be left out: "Tiene 6"
	ThanUnsaid bool   `toml:"than-unsaid"` // than whom may be left out: "Hugo tiene 6 menos"
}

// loadCues reads the cues of a language; false where there are none.
func loadCues(tag string) (*cues, bool) {
	data, err := cueFiles.ReadFile(tag + ".toml")
	if err != nil {
		return nil, false
	}
	c := &cues{}
	if err := toml.NewDecoder(strings.NewReader(string(data))).DisallowUnknownFields().Decode(c); err != nil {
		panic(fmt.Sprintf("reading: %s.toml: %v", tag, err)) // a file of this package, proved by its tests
	}
	c.forms = c.conjugate()
	c.rules = rules(c.Rewrite)
	c.stems, c.groups = map[string]map[string]bool{}, map[string]map[string]bool{}
	for _, list := range []string{"containers", "adjectives"} {
		c.stems[list] = c.stemmed(c.Grammar[list])
	}
	c.stems["seldom"] = c.stemmed(c.Units["seldom"])
	for group, members := range c.Groups {
		c.groups[c.stem(group)] = c.stemmed(members)
	}
	return c, true
}

func (c *cues) stemmed(words []string) map[string]bool {
	out := map[string]bool{}
	for _, w := range words {
		out[c.stem(w)] = true
	}
	return out
}

// has reports whether a list of words holds one.
func (c *cues) has(list, word string) bool {
	words, ok := c.Words[list]
	if !ok {
		words = c.Grammar[list]
	}
	return slices.Contains(words, word)
}

// is reports whether a form is one of a verb with a part of its own in grammar.
func (c *cues) is(list string, f form) bool {
	return f.base != "" && slices.Contains(c.Grammar[list], f.base)
}

// ends reports whether a word has one of several endings.
func (c *cues) ends(endings, word string) bool {
	return slices.ContainsFunc(c.Endings[endings], func(end string) bool { return strings.HasSuffix(word, end) })
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
