package i18n

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// What a file can tell about itself when two of its texts were exchanged or copied:
// these are no questions of style, and none of the languages that come with the
// program breaks them.

// opposites are words in the names of messages that mean the opposite of each other.
var opposites = [][2]string{{"more", "fewer"}, {"bigger", "smaller"}, {"big", "small"}, {"first", "second"}, {"in", "out"}, {"add", "take"}, {"easier", "harder"}}

// opposite is the name that says the opposite; empty for none. A name with two such
// words has none: "bigger-more" and "smaller-more" may say the same of two.
func opposite(name string) string {
	found := ""
	for _, pair := range opposites {
		for _, from := range [2][2]string{pair, {pair[1], pair[0]}} {
			if with, ok := replaceWord(name, from[0], from[1]); ok {
				if found != "" {
					return ""
				}
				found = with
			}
		}
	}
	return found
}

// replaceWord replaces a word of a name, whose words are parted by dots and hyphens.
func replaceWord(name, old, new string) (string, bool) {
	for at := 0; ; {
		i := strings.Index(name[at:], old)
		if i < 0 {
			return "", false
		}
		i += at
		end := i + len(old)
		if (i == 0 || strings.IndexByte(".-", name[i-1]) >= 0) && (end == len(name) || strings.IndexByte(".-", name[end]) >= 0) {
			return name[:i] + new + name[end:], true
		}
		at = end
	}
}

// checkOpposites finds messages that read like the one that says the opposite.
func (b *builder) checkOpposites() {
	for _, m := range b.file.Messages {
		if m.Other == "" || !m.translated() || Counted(m.Family) {
			continue
		}
		if other := b.file.byID[opposite(m.ID)]; other != nil && other.Line > m.Line && other.Other == m.Other && other.English.Other != m.English.Other {
			b.alike(other.Line, other.ID, m.ID)
		}
	}
	keys := map[string]string{} // with their opposites: events have the same ones
	for _, e := range b.file.Events {
		for _, s := range e.Sentences {
			against, known := keys[s.Key]
			if !known {
				against = opposite(s.Key)
				keys[s.Key] = against
			}
			if against == "" {
				continue
			}
			if other := e.Sentence(s.Group, against); other != nil && other.Line > s.Line && other.Text == s.Text && s.Text != "" {
				b.alike(other.Line, e.ID+"."+other.Name(), s.Key)
			}
		}
	}
}

func (b *builder) alike(line int, id, other string) {
	b.problem(line, fmt.Sprintf("%s reads like %s, which says the opposite", id, other), "one of the two was copied; write what each of them says")
}

// checkFewMany finds things whose forms for few and many were exchanged. In languages
// that have both for whole numbers an amount that nobody knows, "blank", is said as
// many are (Slavic languages: genitive plural, from memory; Arabic says it in a way of
// its own). In those that have one and other alone it is said as other is, or all are
// alike.
func (b *builder) checkFewMany() {
	p := b.lang.plural
	pair := p.Needs(One) && p.Needs(Other) && !p.Needs(Zero) && !p.Needs(Two) && !p.Needs(Few) && !p.Needs(Many)
	for _, m := range b.file.Messages {
		key, form := formOf(m.Key)
		if key != "count" || !Counted(m.Family) || m.gone {
			continue
		}
		blank := b.file.byID[m.Block+"."+strings.TrimSuffix("blank-"+form, "-")]
		if blank == nil || blank.Other == "" {
			continue
		}
		switch {
		case m.Few != "" && m.Many != "" && m.Few != m.Many && blank.Other == m.Few:
			b.problem(m.LineOf("few"), m.ID+": the forms few and many look exchanged: where a number is not known yet you write that for few", "look at the numbers that each of them is for")
		case pair && m.One != "" && m.Other != "" && m.One != m.Other && blank.Other == m.One:
			b.problem(m.LineOf("one"), m.ID+": the forms one and other look exchanged: where a number is not known yet you write that for one", "one is the form for 1 alone")
		}
	}
}

// A few letters more or less make no translation.
const (
	fewestOfEnglish = 12 // letters of a text that is compared
	lettersApart    = 2
)

// nearlyEnglish reports whether a text is the English one but for a letter or two.
func nearlyEnglish(text, english string) bool {
	short, long := text, english
	if len(short) > len(long) {
		short, long = long, short
	}
	if len(short) < fewestOfEnglish || len(long)-len(short) > lettersApart*utf8.UTFMax {
		return false
	}
	head := 0
	for head < len(short) && short[head] == long[head] {
		head++
	}
	tail := 0
	for tail < len(short)-head && short[len(short)-1-tail] == long[len(long)-1-tail] {
		tail++
	}
	return utf8.RuneCountInString(long[head:len(long)-tail]) <= lettersApart && strings.Contains(strings.TrimSpace(WithoutPlaces(english)), " ")
}
