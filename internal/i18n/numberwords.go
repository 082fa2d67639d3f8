package i18n

import (
	_ "embed"
	"fmt"
	"strconv"
	"strings"
)

//go:embed numberwords.txt
var numberWords string

// knownWords are the words of 0 to 20 that CLDR has for a language, in small letters,
// each with its number; a word that stands for two numbers is left out. It is nil for
// a language without rules: ht, so, ur.
func knownWords(tag string) map[string]int {
	base, _, _ := strings.Cut(tag, "-")
	_, line, found := strings.Cut(numberWords, "\n"+tag+";")
	if !found {
		if _, line, found = strings.Cut(numberWords, "\n"+base+";"); !found {
			return nil
		}
	}
	line, _, _ = strings.Cut(line, "\n")
	known := map[string]int{}
	var twice []string
	for n, words := range strings.Split(line, ";") {
		for _, word := range strings.Split(strings.ToLower(words), ",") {
			if _, there := known[word]; there {
				twice = append(twice, word)
			}
			known[word] = n
		}
	}
	for _, word := range twice {
		delete(known, word)
	}
	return known
}

// checkNumberWords finds number words that stand for another number: in CLDR, or in
// another table of the file.
func (b *builder) checkNumberWords() {
	var known map[string]int
	before := map[string]*Message{}
	for _, m := range b.file.Messages {
		if m.Family != "words" || m.Other == "" || checkWordID(m.ID) != nil {
			continue
		}
		if known == nil {
			known = knownWords(b.file.Tag)
		}
		word := strings.ToLower(strings.TrimSpace(m.Other))
		other := before[word]
		switch n, told := known[word]; {
		case told && strconv.Itoa(n) != m.Key:
			b.problem(m.Line, fmt.Sprintf("%s is %q, the word of %d", m.ID, m.Other, n), "write the word of each number")
		case other != nil && other.Key != m.Key:
			b.problem(m.Line, fmt.Sprintf("%s is %q, and so is %s", m.ID, m.Other, other.ID), "write the word of each number")
		}
		before[word] = m
	}
}
