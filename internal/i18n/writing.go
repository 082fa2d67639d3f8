package i18n

import (
	"iter"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// writing is how a script writes.
type writing struct {
	letters []*unicode.RangeTable
	// ends are the marks that end a statement, a question and an exclamation;
	// an empty list means that the script needs none.
	ends    [3]string
	foreign string // marks of other scripts that are typed by mistake
}

// withFullStopOfUrdu are languages in Arabic letters that end a statement with ۔
// (Unicode Standard, U+06D4 ARABIC FULL STOP: "Urdu"; the others from memory).
var withFullStopOfUrdu = []string{"ur", "pnb", "skr"}

var westernEnds = [3]string{".…", "?", "!"}

// writings lists scripts by ISO 15924. Marks: Unicode Standard, chapters on
// the scripts; that they end sentences in children's books of each language is
// from memory, so a fluent reader decides.
var writings = map[string]writing{
	"Latn": {tables("Latin"), westernEnds, ""},
	"Cyrl": {tables("Cyrillic"), westernEnds, ""},
	"Grek": {tables("Greek"), [3]string{".…", ";\u037e", "!"}, ""},
	"Armn": {tables("Armenian"), [3]string{"։", "", ""}, ""},
	"Geor": {tables("Georgian"), westernEnds, ""},
	"Hebr": {tables("Hebrew"), westernEnds, ""},
	"Arab": {tables("Arabic"), [3]string{".۔…", "؟", "!"}, "?,;"},
	"Syrc": {tables("Syriac"), [3]string{".", "؟", "!"}, ""},
	"Thaa": {tables("Thaana"), [3]string{".", "؟", "!"}, ""},
	"Nkoo": {tables("Nko"), [3]string{".", "؟", "߹!"}, ""},
	"Adlm": {tables("Adlam"), [3]string{".", "?\U0001E95F", "!\U0001E95E"}, ""},
	"Deva": {tables("Devanagari"), [3]string{"।.…", "?", "!"}, ""},
	"Beng": {tables("Bengali"), [3]string{"।", "?", "!"}, ""},
	"Guru": {tables("Gurmukhi"), [3]string{"।", "?", "!"}, ""},
	"Gujr": {tables("Gujarati"), westernEnds, ""},
	"Orya": {tables("Oriya"), [3]string{"।", "?", "!"}, ""},
	"Taml": {tables("Tamil"), westernEnds, ""},
	"Telu": {tables("Telugu"), westernEnds, ""},
	"Knda": {tables("Kannada"), westernEnds, ""},
	"Mlym": {tables("Malayalam"), westernEnds, ""},
	"Sinh": {tables("Sinhala"), westernEnds, ""},
	"Thai": {tables("Thai"), [3]string{}, ""},
	"Laoo": {tables("Lao"), [3]string{}, ""},
	"Khmr": {tables("Khmer"), [3]string{"។", "?", "!"}, ""},
	"Mymr": {tables("Myanmar"), [3]string{"။", "?။", "!။"}, ""},
	"Tibt": {tables("Tibetan"), [3]string{"།", "།", "།"}, ""},
	"Ethi": {tables("Ethiopic"), [3]string{"።", "?፧", "!"}, ""},
	"Hans": {tables("Han", "Bopomofo"), [3]string{"。", "？", "！"}, "?!,;"},
	"Hant": {tables("Han", "Bopomofo"), [3]string{"。", "？", "！"}, "?!,;"},
	"Jpan": {tables("Han", "Hiragana", "Katakana"), [3]string{"。", "？", "！"}, ""},
	"Kore": {tables("Hangul", "Han"), westernEnds, ""},
	"Cher": {tables("Cherokee"), westernEnds, ""},
	"Hmnp": {tables("Nyiakeng_Puachue_Hmong"), westernEnds, ""},
}

func tables(names ...string) []*unicode.RangeTable {
	var out []*unicode.RangeTable
	for _, name := range names {
		out = append(out, unicode.Scripts[name])
	}
	return out
}

// own is the set of what a script writes with: its letters, and all signs that no
// script has for itself.
func (w writing) own() *runeSet {
	return setOf(slices.Concat([]*unicode.RangeTable{unicode.Common, unicode.Inherited}, w.letters)...)
}

// foreignWords yields the words with a letter that is not in a set.
func (s *runeSet) foreignWords(text string) iter.Seq[string] {
	return func(yield func(string) bool) {
		if s.hasAll(text) {
			return
		}
		for word := range strings.FieldsFuncSeq(text, notInWord) {
			if !s.hasAll(word) && !yield(word) {
				return
			}
		}
	}
}

// endMark tells which of statement, question and exclamation a text ends as;
// -1 for none.
func (w writing) endMark(text string) int {
	for text != "" {
		last, size := utf8.DecodeLastRuneInString(text)
		if !unicode.IsSpace(last) && !unicode.In(last, unicode.Pe, unicode.Pf, unicode.Pi) && last != '"' && last != '\'' {
			return slices.IndexFunc(w.ends[:], func(marks string) bool { return strings.ContainsRune(marks, last) })
		}
		text = text[:len(text)-size]
	}
	return -1
}
