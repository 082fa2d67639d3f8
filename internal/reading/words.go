package reading

import (
	"slices"
	"strings"
)

// stem is a noun without its plural ending: the first rule "ending>ending" that
// fits.
func (c *cues) stem(noun string) string {
	if one, ok := c.Plurals[noun]; ok {
		return one
	}
	noun = c.owner(noun)
	for _, rule := range c.Endings["plural"] {
		several, one, _ := strings.Cut(rule, ">")
		if stem, ok := strings.CutSuffix(noun, several); ok && len(stem) > 1 {
			return stem + one
		}
	}
	return noun
}

// owner is a noun without the ending of an owner: Lina for Lina's.
func (c *cues) owner(noun string) string {
	for _, end := range c.Endings["owner"] {
		noun = strings.TrimSuffix(noun, end)
	}
	return noun
}

// several reports whether a noun stands for more than one.
func (c *cues) several(noun string) bool {
	return c.ends("several", noun) || c.Plurals[noun] != ""
}

// nounPhrase tells a noun from what it is like, in the order of the language:
// "red kites", "cometas rojas". A language with the noun first knows the few
// words that stand before it, and the many that stand alone: "3 rojas".
func (c *cues) nounPhrase(words []string) (noun, adj string) {
	n := len(words)
	if n == 0 {
		return "", ""
	}
	if !c.nounFirst() {
		return c.stem(words[n-1]), strings.Join(words[:n-1], " ")
	}
	at := slices.IndexFunc(words, func(w string) bool { return !c.stems["adjectives"][c.stem(w)] })
	var like []string
	for i, w := range words {
		if i != at {
			like = append(like, c.stem(w))
		}
	}
	if at >= 0 {
		noun = c.stem(words[at])
	}
	return noun, strings.Join(like, " ")
}

// nounFirst reports whether a noun stands before what it is like.
func (c *cues) nounFirst() bool { return c.Order.Adjectives == "after" }

// quality is a word for what something is like, as nounPhrase gives it.
func (c *cues) quality(word string) string {
	if !c.nounFirst() {
		return word
	}
	return c.stem(word)
}

// member reports whether a word is one of several that another stands for.
func (c *cues) member(noun string) bool {
	for _, group := range c.groups {
		if group[noun] {
			return true
		}
	}
	return false
}

// covers reports whether a word stands for several: fruit for apple.
func (c *cues) covers(group, noun string) bool { return c.groups[group][noun] }
