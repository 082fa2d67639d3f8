package i18n

import (
	"fmt"
	"slices"
	"unicode"
)

// joinerScripts write some letters with the zero-width joiner or non-joiner.
var joinerScripts = []string{
	"Arab", "Beng", "Deva", "Gujr", "Guru", "Khmr", "Knda", "Mlym", "Mong", "Mymr", "Nkoo", "Orya", "Sinh", "Syrc", "Taml", "Telu", "Tibt",
}

// checkCharacters refuses what no sentence needs and what could change a page:
// markup, characters that turn the direction of the text around them, and
// characters that cannot be seen.
func checkCharacters(text, script string) *fault {
	for _, c := range text {
		switch {
		case unicode.IsLetter(c) || c == ' ':
		case c == '<' || c == '>':
			return &fault{fmt.Sprintf("%q is a sign of markup", string(c)), "write words only; pages add their own markup"}
		case unicode.Is(unicode.Bidi_Control, c):
			return &fault{fmt.Sprintf("%U turns the direction of the text", c), "take it out; pages set directions themselves"}
		case c == '\u200c' || c == '\u200d':
			if !slices.Contains(joinerScripts, script) {
				return &fault{fmt.Sprintf("%U is invisible and the %s script does not use it", c, script), "take it out"}
			}
		case c == '\n' || c == '\r' || c == '\t':
			return &fault{"the text has a line break or a tab", "write it in one line"}
		case c == unicode.ReplacementChar:
			return &fault{fmt.Sprintf("%U stands for a letter that was lost", c), "write the letter again"}
		case unicode.In(c, unicode.Cc, unicode.Cf, unicode.Co, unicode.Zl, unicode.Zp) || unicode.Is(unicode.Noncharacter_Code_Point, c):
			return &fault{fmt.Sprintf("%U is invisible or has no meaning", c), "take it out"}
		}
	}
	return nil
}
