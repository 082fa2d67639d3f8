package translate

import (
	"strings"
	"unicode"
)

// writing is what is known about a script.
type writing struct {
	letters []*unicode.RangeTable
	// ends are the marks that end a statement, a question and an exclamation;
	// an empty list means that the script needs none.
	ends [3]string
}

var westernEnds = [3]string{".…", "?", "!"}

// writings lists scripts by ISO 15924. Marks: Unicode Standard, chapters on
// the scripts; that they end sentences in children's books of each language is
// from memory, so a fluent reader decides.
var writings = map[string]writing{
	"Latn": {tables("Latin"), westernEnds},
	"Cyrl": {tables("Cyrillic"), westernEnds},
	"Grek": {tables("Greek"), [3]string{".…", ";\u037e", "!"}},
	"Armn": {tables("Armenian"), [3]string{"։", "", ""}},
	"Geor": {tables("Georgian"), westernEnds},
	"Hebr": {tables("Hebrew"), westernEnds},
	"Arab": {tables("Arabic"), [3]string{".۔…", "؟", "!"}},
	"Syrc": {tables("Syriac"), [3]string{".", "؟", "!"}},
	"Thaa": {tables("Thaana"), [3]string{".", "؟", "!"}},
	"Nkoo": {tables("Nko"), [3]string{".", "؟", "߹!"}},
	"Adlm": {tables("Adlam"), [3]string{".", "?\U0001E95F", "!\U0001E95E"}},
	"Deva": {tables("Devanagari"), [3]string{"।.…", "?", "!"}},
	"Beng": {tables("Bengali"), [3]string{"।", "?", "!"}},
	"Guru": {tables("Gurmukhi"), [3]string{"।", "?", "!"}},
	"Gujr": {tables("Gujarati"), westernEnds},
	"Orya": {tables("Oriya"), [3]string{"।", "?", "!"}},
	"Taml": {tables("Tamil"), westernEnds},
	"Telu": {tables("Telugu"), westernEnds},
	"Knda": {tables("Kannada"), westernEnds},
	"Mlym": {tables("Malayalam"), westernEnds},
	"Sinh": {tables("Sinhala"), westernEnds},
	"Thai": {tables("Thai"), [3]string{}},
	"Laoo": {tables("Lao"), [3]string{}},
	"Khmr": {tables("Khmer"), [3]string{"។", "?", "!"}},
	"Mymr": {tables("Myanmar"), [3]string{"။", "?။", "!။"}},
	"Tibt": {tables("Tibetan"), [3]string{"།", "།", "།"}},
	"Ethi": {tables("Ethiopic"), [3]string{"።", "?፧", "!"}},
	"Hans": {tables("Han", "Bopomofo"), [3]string{"。", "？", "！"}},
	"Hant": {tables("Han", "Bopomofo"), [3]string{"。", "？", "！"}},
	"Jpan": {tables("Han", "Hiragana", "Katakana"), [3]string{"。", "？", "！"}},
	"Kore": {tables("Hangul", "Han"), westernEnds},
	"Cher": {tables("Cherokee"), westernEnds},
	"Hmnp": {tables("Nyiakeng_Puachue_Hmong"), westernEnds},
}

func tables(names ...string) []*unicode.RangeTable {
	var out []*unicode.RangeTable
	for _, name := range names {
		out = append(out, unicode.Scripts[name])
	}
	return out
}

// foreignWord is the first word with a letter of another script.
func (w writing) foreignWord(text string) string {
	own := append([]*unicode.RangeTable{unicode.Common, unicode.Inherited}, w.letters...)
	for _, word := range strings.FieldsFunc(text, func(c rune) bool { return !unicode.IsLetter(c) && !unicode.IsMark(c) }) {
		for _, c := range word {
			if !unicode.In(c, own...) {
				return word
			}
		}
	}
	return ""
}

// endMark tells which of statement, question and exclamation a text ends as;
// -1 for none.
func (w writing) endMark(text string) int {
	text = strings.TrimRightFunc(text, func(c rune) bool {
		return unicode.IsSpace(c) || unicode.In(c, unicode.Pe, unicode.Pf, unicode.Pi) || c == '"' || c == '\''
	})
	last := []rune(text)
	if len(last) == 0 {
		return -1
	}
	for i, marks := range w.ends {
		if strings.ContainsRune(marks, last[len(last)-1]) {
			return i
		}
	}
	return -1
}
