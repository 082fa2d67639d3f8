package reading

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Numeral is a whole number in a text: digits, a number word, or what a mark
// says to be one.
type Numeral struct {
	Value      int
	Start, End int  // bytes of Text.Plain; of a mark, all its words
	Marked     bool // the teacher marked it as one that counts
	Word       bool // written in words
}

// Text is a teacher's story with its marks taken out.
type Text struct {
	Plain    string // what is published
	Numerals []Numeral
	Asked    int // the byte of Plain where "[?]" stood; -1 for nowhere
}

// Mark takes the marks out of a text and finds its numbers, those in words with
// the help of a language's own. The error is a *Fault.
func Mark(text string, words map[string]int) (Text, error) {
	return counting{words: words}.mark(text)
}

func (c counting) mark(text string) (Text, error) {
	t := Text{Asked: -1}
	var b strings.Builder
	for text != "" {
		before, rest, opened := strings.Cut(text, "[")
		if strings.Contains(before, "]") {
			return Text{}, &Fault{`a "]" has no "[" before it`, "write marks like this: [6 kites]"}
		}
		t.add(&b, before, c)
		if !opened {
			break
		}
		inside, after, closed := strings.Cut(rest, "]")
		if !closed || strings.Contains(inside, "[") {
			return Text{}, &Fault{`a "[" is not closed`, "write marks like this: [6 kites]"}
		}
		if strings.TrimSpace(plainSigns.Replace(inside)) == "?" {
			if t.Asked >= 0 {
				return Text{}, &Fault{`"[?]" stands twice`, "keep the one where the number that is asked for would stand"}
			}
			t.Asked = b.Len()
			after = withoutGap(b.String(), after)
		} else if err := t.addMarked(&b, inside, c); err != nil {
			return Text{}, err
		}
		text = after
	}
	t.Plain = b.String()
	return t, nil
}

// withoutGap drops one of the two spaces that a mark leaves behind, or the one
// before a full stop.
func withoutGap(before, after string) string {
	if before == "" || strings.HasSuffix(before, " ") {
		return strings.TrimPrefix(after, " ")
	}
	return after
}

func (t *Text) add(b *strings.Builder, plain string, c counting) {
	for _, n := range c.numerals(plain) {
		n.Start, n.End = n.Start+b.Len(), n.End+b.Len()
		t.Numerals = append(t.Numerals, n)
	}
	b.WriteString(plain)
}

// addMarked adds what stands between brackets: words with one number, which then
// counts; or words, "=" and their number, which is one number among others.
func (t *Text) addMarked(b *strings.Builder, inside string, c counting) error {
	shown, meant, said := strings.Cut(plainSigns.Replace(inside), "=")
	shown = strings.TrimSpace(shown)
	if !said {
		shown, meant = strings.TrimSpace(inside), inside
	}
	found := c.numerals(meant)
	if len(found) != 1 || shown == "" || found[0].Value > Largest {
		return &Fault{fmt.Sprintf("the mark %q does not hold one number up to %d", "["+inside+"]", Largest),
			"write marks like this: [6 kites], or [a dozen = 12] for words"}
	}
	n := Numeral{Value: found[0].Value, Start: b.Len(), Marked: !said, Word: found[0].Word && !said}
	b.WriteString(shown)
	n.End = b.Len()
	t.Numerals = append(t.Numerals, n)
	return nil
}

// numerals finds the whole numbers of a plain text. Digits that belong to
// something else, such as 3.50, 7:30, 1/2, 2nd or A4, are none.
func (says counting) numerals(s string) []Numeral {
	var out []Numeral
	for at := 0; at < len(s); {
		c, size := utf8.DecodeRuneInString(s[at:])
		switch {
		case unicode.IsDigit(c):
			end := endOf(s, at, func(c rune) bool { return unicode.IsDigit(c) })
			if value, ok := number(s[at:end]); ok && alone(s, at, end) {
				out = append(out, Numeral{Value: value, Start: at, End: end})
			}
			at = end
		case unicode.IsLetter(c):
			end := endOf(s, at, inWord)
			if n, ok := says.wordAt(s, at, end); ok {
				out = append(out, n)
				end = max(end, n.End)
			}
			at = end
		default:
			at += size
		}
	}
	return out
}

func inWord(c rune) bool {
	return unicode.IsLetter(c) || unicode.IsMark(c) || c == '\'' || c == '’' || c == '-'
}

func endOf(s string, at int, in func(rune) bool) int {
	if n := strings.IndexFunc(s[at:], func(c rune) bool { return !in(c) }); n >= 0 {
		return at + n
	}
	return len(s)
}

// number reads digits of any script, whose ten digits stand in order and
// together (The Unicode Standard, 4.6 "Numeric Value").
func number(digits string) (int, bool) {
	n := 0
	for _, c := range digits {
		zero := c
		for c-zero < 9 && unicode.IsDigit(zero-1) && sameScript(zero-1, c) {
			zero--
		}
		if n = n*10 + int(c-zero); n > 1_000_000 {
			return 0, false
		}
	}
	return n, true
}

// sameScript reports whether two digits belong to one set of ten.
func sameScript(a, b rune) bool {
	for _, r := range unicode.Nd.R16 {
		if rune(r.Lo) <= b && b <= rune(r.Hi) {
			return rune(r.Lo) <= a && (a-rune(r.Lo))/10 == (b-rune(r.Lo))/10
		}
	}
	for _, r := range unicode.Nd.R32 {
		if rune(r.Lo) <= b && b <= rune(r.Hi) {
			return rune(r.Lo) <= a && (a-rune(r.Lo))/10 == (b-rune(r.Lo))/10
		}
	}
	return false
}

// alone reports whether digits are not part of something longer.
func alone(s string, start, end int) bool {
	before, _ := utf8.DecodeLastRuneInString(s[:start])
	after, size := utf8.DecodeRuneInString(s[end:])
	if unicode.IsLetter(after) && unicode.Is(unicode.Latin, after) || unicode.IsLetter(before) && unicode.Is(unicode.Latin, before) {
		return false
	}
	if strings.ContainsRune("$€£%°", before) || strings.ContainsRune("%°", after) {
		return false
	}
	next, _ := utf8.DecodeRuneInString(s[min(end+size, len(s)):])
	if strings.ContainsRune(".,:/٫٬", after) && unicode.IsDigit(next) {
		return false
	}
	if strings.ContainsRune(".,:/٫٬", before) && before != utf8.RuneError {
		earlier, _ := utf8.DecodeLastRuneInString(s[:start-utf8.RuneLen(before)])
		return !unicode.IsDigit(earlier)
	}
	return before != '-' && before != '−' || start == 0
}

func lower(s string) string { return strings.ReplaceAll(strings.ToLower(s), "’", "'") }

// Marked reports whether the teacher marked any number.
func (t Text) Marked() bool {
	return slices.ContainsFunc(t.Numerals, func(n Numeral) bool { return n.Marked })
}
