package i18n

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"homebuild/internal/diag"
)

// usualQuotes are the quotation marks of most languages, and the apostrophe.
const usualQuotes = "“”‘’"

// otherQuotes are those of languages that have others. Source: Unicode CLDR 48.2,
// delimiters (npm cldr-misc-full 48.2.0).
var otherQuotes = []struct{ marks, languages string }{
	{"«»“”", "ast blo bm br ca cv dyo el eu ewo ie it kab kk lij mg mua nnh pms sc sg ti"},
	{"„“‚‘", "cs de dsb et hr hsb is ksh lb luy mk nds sk sl"},
	{"«»‹›", "am fa gsw jgo kkj mzn rm sdh wae"},
	{"«»„“", "bas be bua ky os ru sah tyv uk"},
	{"«»‘’", "dua ksf nb nn no rw"},
	{"«»", "fr ht hy oc yav"},
	{"„“", "bg lt prg sgs"},
	{"「」『』", "ja yue zh-Hant"},
	{"„”«»", "nmg pl ro"},
	{"„”‚’", "agq ff"},
	{"„”»«", "hu szl"},
	{"«»„”", "shi zgh"},
	{"„”‘’", "bs"},
	{"“”«»", "eo"},
	{"„“«»", "ka"},
	{"„”’", "sr"},
	{"»«›‹", "ug"},
}

// allQuotes are all of them, doubleQuotes those that are never an apostrophe.
const (
	allQuotes    = "“”„«»「」『』‘’‚‹›"
	doubleQuotes = "“”„«»「」『』\""
)

// inUse is in how many texts of a file a mark stands that its translator writes on
// purpose.
const inUse = 5

// quotesOf are the marks that a file may use: those that CLDR has for the language,
// and those that the file uses again and again.
func quotesOf(f *File) string {
	base, _, _ := strings.Cut(f.Tag, "-")
	own := usualQuotes
	for _, o := range otherQuotes {
		if languages := strings.Fields(o.languages); slices.Contains(languages, f.Tag) || slices.Contains(languages, base) {
			own += o.marks
		}
	}
	for _, mark := range allQuotes {
		if strings.Count(f.Text, string(mark)) >= inUse {
			own += string(mark)
		}
	}
	return own
}

// marks finds quotation marks that the language does not have, a quotation that is not
// opened or not closed, and digits that are not those of the file's pages.
func (s slips) marks(text string) *diag.Diagnostic {
	double := 0
	for _, c := range text {
		switch {
		case unicode.IsDigit(c) && !strings.ContainsRune(s.digits, c):
			return &diag.Diagnostic{Text: fmt.Sprintf(" has the digit %c, and the pages write %s", c, s.digits), Hint: "write it in the digits of the pages"}
		case c == '"':
			double++
		case c < utf8.RuneSelf || unicode.IsLetter(c) || !strings.ContainsRune(allQuotes, c):
		case !strings.ContainsRune(s.quoting, c):
			return &diag.Diagnostic{Text: fmt.Sprintf(" has the quotation mark %c, which %s does not use", c, s.tag), Hint: "write one of " + strings.Join(strings.Split(s.quoting, ""), " ")}
		case strings.ContainsRune(doubleQuotes, c):
			double++
		}
	}
	if double%2 != 0 {
		return &diag.Diagnostic{Text: ": a quotation is not opened or not closed", Hint: "write a mark before what somebody says, and one behind it"}
	}
	return nil
}
