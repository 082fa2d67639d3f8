package i18n

import (
	"fmt"
	"slices"
	"strings"
	"sync"
	"unicode"

	"homebuild/internal/diag"
)

// fewQuotes are quotation marks that few languages have; all others are read
// everywhere. Source: Unicode CLDR 48.2, delimiters (npm cldr-misc-full 48.2.0).
var fewQuotes = []struct{ marks, languages string }{
	{"„", "agq bas be bg bs bua cs de dsb et ff hr hsb hu is ka ksh ky lb lt luy mk nds nmg os pl prg " +
		"ro ru sah sgs shi sk sl sr szl tyv uk zgh"},
	{"‚", "agq cs de dsb et ff hr hsb is ksh lb luy mk nds sk sl"},
	{"「」『』", "ja yue zh-Hant"},
}

// doubleQuotes are those that are never an apostrophe.
const doubleQuotes = "“”„«»「」『』\""

// digitsAndQuotes are the signs that are looked at more closely.
var digitsAndQuotes = sync.OnceValue(func() *runeSet {
	s := setOf(unicode.Digit)
	for _, few := range fewQuotes {
		for _, mark := range few.marks {
			s.add(mark)
		}
	}
	for _, mark := range doubleQuotes {
		s.add(mark)
	}
	return s
})

// inUse is in how many texts of a file a mark stands that its translator writes on
// purpose.
const inUse = 5

// strangeQuotes are marks that the language does not have, and that its file does not
// use again and again.
func strangeQuotes(f *File) string {
	base, _, _ := strings.Cut(f.Tag, "-")
	strange := ""
	for _, few := range fewQuotes {
		if languages := strings.Fields(few.languages); slices.Contains(languages, f.Tag) || slices.Contains(languages, base) {
			continue
		}
		for _, mark := range few.marks {
			if strings.Count(f.Text, string(mark)) < inUse {
				strange += string(mark)
			}
		}
	}
	return strange
}

// marks finds quotation marks that the language does not have, a quotation that is not
// opened or not closed, and digits that are not those of the file's pages.
func (s slips) marks(text string) *diag.Diagnostic {
	open := false
	notable := digitsAndQuotes()
	for _, c := range text {
		switch {
		case !notable.has(c):
		case unicode.IsDigit(c) && !strings.ContainsRune(s.digits, c):
			return &diag.Diagnostic{Text: fmt.Sprintf(" has the digit %c, and the pages write %s", c, s.digits), Hint: "write it in the digits of the pages"}
		case c == '"':
			open = !open
		case strings.ContainsRune(s.strange, c):
			return &diag.Diagnostic{Text: fmt.Sprintf(" has the quotation mark %c, which %s does not use", c, s.tag), Hint: "write the marks of the language's books"}
		case strings.ContainsRune(doubleQuotes, c):
			open = !open
		}
	}
	if open {
		return &diag.Diagnostic{Text: ": a quotation is not opened or not closed", Hint: "write a mark before what somebody says, and one behind it"}
	}
	return nil
}
