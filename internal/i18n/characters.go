package i18n

import (
	"fmt"
	"slices"
	"unicode"

	"homebuild/internal/diag"
)

// joinerScripts write some letters with the zero-width joiner or non-joiner.
var joinerScripts = []string{
	"Arab", "Beng", "Deva", "Gujr", "Guru", "Khmr", "Knda", "Mlym", "Mong", "Mymr", "Nkoo", "Orya", "Sinh", "Syrc", "Taml", "Telu", "Tibt",
}

// CheckCharacters refuses what no sentence needs and what could change a page:
// markup, characters that turn the direction of the text around them, and
// characters that cannot be seen. It is nil for a text that has none of them.
func CheckCharacters(text, script string) *diag.Diagnostic {
	for _, c := range text {
		switch {
		case harmless(c):
		case c == '<' || c == '>':
			return &diag.Diagnostic{Text: fmt.Sprintf("%q is a sign of markup", string(c)), Hint: "write words only; pages add their own markup"}
		case unicode.Is(unicode.Bidi_Control, c):
			return &diag.Diagnostic{Text: fmt.Sprintf("%U turns the direction of the text", c), Hint: "take it out; pages set directions themselves"}
		case c == '\u200c' || c == '\u200d':
			if !slices.Contains(joinerScripts, script) {
				return &diag.Diagnostic{Text: fmt.Sprintf("%U is invisible and the %s script does not use it", c, script), Hint: "take it out"}
			}
		case c == '\n' || c == '\r' || c == '\t':
			return &diag.Diagnostic{Text: "the text has a line break or a tab", Hint: "write it in one line"}
		case c == unicode.ReplacementChar:
			return &diag.Diagnostic{Text: fmt.Sprintf("%U stands for a letter that was lost", c), Hint: "write the letter again"}
		case unicode.In(c, unicode.Cc, unicode.Cf, unicode.Co, unicode.Zl, unicode.Zp) || unicode.Is(unicode.Noncharacter_Code_Point, c):
			return &diag.Diagnostic{Text: fmt.Sprintf("%U is invisible or has no meaning", c), Hint: "take it out"}
		}
	}
	return nil
}

// harmless reports the blocks in which nothing is refused and most texts are
// written, so that a whole language is soon read: Latin to Hebrew, Arabic
// letters, the scripts of India and their neighbours, and those of East Asia.
func harmless(c rune) bool {
	return c >= ' ' && c < 0x7f && c != '<' && c != '>' || c > 0xad && c < 0x600 || c >= 0x620 && c < 0x6dd ||
		c >= 0x900 && c < 0x1800 || c >= 0x3000 && c < 0xd800
}
