package site

import (
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"golang.org/x/net/html"

	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/locales"
)

// A typeRule is something that a careful typesetter of a language would mark.
type typeRule struct {
	tags  string // of the languages that it is for; empty for all
	wrong *regexp.Regexp
	says  string
}

// typeRules are common practice, no published source, where they name none.
var typeRules = []typeRule{
	// The quotation marks of CLDR 48, delimiters of each language (from memory), are
	// none of them straight.
	{"", regexp.MustCompile(`["']`), "a straight quotation mark"},
	{"", regexp.MustCompile(`\.\.\.`), "three dots for an ellipsis"},
	{"ar fr ru uk", regexp.MustCompile(`[“”]`), "the quotation marks of another language: these languages begin with « (CLDR)"},
	{"en es ht ko pt so vi zh-Hans", regexp.MustCompile(`[«»„]`), "the quotation marks of another language: these languages begin with “ (CLDR)"},
	{"", regexp.MustCompile(`(^|[^\d\p{L}])[-‐‑–—−]\s*\d`), "a dash before a number reads as minus"},
	// Lexique des règles typographiques en usage à l'Imprimerie nationale (from memory).
	{"fr", regexp.MustCompile(`[^\x{a0}\x{202f}?!…][?!;]|[^\x{a0}\x{202f}\d]:|«[^\x{a0}\x{202f}]|[^\x{a0}\x{202f}]»`), "no narrow space before ? ! ; or no-break space beside : « »"},
	{"fr", regexp.MustCompile(`\p{L}'\p{L}`), "a straight apostrophe"},
	// GB/T 15834-2011 (from memory).
	{"zh-Hans", regexp.MustCompile(`\p{Han}[,.?!:;()]|[,?!:;()]\p{Han}`), "punctuation of half the width beside a Chinese character"},
	{"ar", regexp.MustCompile(`\p{Arabic}\s*[,;?]`), "a comma, semicolon or question mark that is not Arabic"},
	// The spelling of 1979 writes no apostrophe.
	{"ht", regexp.MustCompile(`\p{L}['’]\p{L}`), "an apostrophe, which Haitian Creole does not write"},
	{"ru uk", regexp.MustCompile(`\p{L} - |\s–\s`), "a hyphen or a short dash where a long one belongs"},
	{"", regexp.MustCompile(` [,.;?!،؟](\s|$)`), "a space before a punctuation mark"},
}

// In the pages of every language quotation marks, dashes and spaces are as the language
// writes them, and no number is parted from what it counts at a line's end.
func TestTypography(t *testing.T) {
	in := exampleInput(t, allTags()...)
	planned, _, problems := Plan(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	files := planned.Pages()
	for _, tag := range i18n.Tags(locales.Files) {
		t.Run(tag, func(t *testing.T) {
			t.Parallel()
			parted := partedNumber(in.language(tag))
			seen := map[string]bool{}
			for _, f := range files {
				if !isOf(f.Path, tag) || strings.Contains(f.Path, "check") || !strings.HasSuffix(f.Path, ".html") {
					continue
				}
				for _, text := range paragraphsOf(elements(parsed(t, f), "html")[0], tag) {
					if seen[text] {
						continue
					}
					seen[text] = true
					for _, r := range typeRules {
						if r.tags == "" || slices.Contains(strings.Fields(r.tags), tag) {
							if at := r.wrong.FindString(text); at != "" {
								t.Errorf("%s: %s, %q in %q", f.Path, r.says, at, text)
							}
						}
					}
					if at := parted.FindString(text); at != "" {
						t.Errorf("%s: a number may part from what it counts, %q in %q", f.Path, at, text)
					}
				}
			}
			if len(seen) < 1000 {
				t.Errorf("only %d texts were looked at", len(seen))
			}
		})
	}
}

// counters are words for what a number counts that stand in no thing's forms: steps,
// times, tens, dots.
var counters = map[string]string{
	"ar": "نقاط نقطة عشرات مئات آحاد خطوات", "en": "steps step dots tens ones hundreds minutes", "es": "pasos puntos decenas unidades centenas minutos",
	"fr": "pas points dizaines unités centaines minutes", "ht": "fwa pwen dizèn inite santèn minit", "ko": "번 걸음 분", "pt": "passos pontos dezenas unidades centenas minutos",
	"ru": "шагов шага точек точки года минут", "so": "jeer tallaabo dhibcood", "uk": "кроків крапок року хвилин", "vi": "chấm lần bước chục phút",
}

// partedNumber finds a number with a space that lines break at before one of the
// language's nouns.
func partedNumber(l *i18n.Language) *regexp.Regexp {
	nouns := strings.Fields(counters[l.Tag()])
	things := map[string]int{} // by the word behind the number
	for _, f := range l.Forms() {
		if strings.HasPrefix(f.ID, "thing.") && f.Plural {
			for _, n := range []int{1, 2, 5, 11, 100} {
				things[nounOf(l, f.ID, n)]++
			}
		}
	}
	for noun, n := range things {
		if n <= 3*5 && noun != "" && noun != "năm" { // "more" stands behind every number, and a year in a date
			nouns = append(nouns, noun)
		}
	}
	slices.Sort(nouns)
	for i, w := range nouns {
		nouns[i] = regexp.QuoteMeta(w)
	}
	return regexp.MustCompile(`\d ` + `(` + strings.Join(slices.Compact(nouns), "|") + `)([^\p{L}]|$)`)
}

// nounOf is the word behind a number in a form of a thing; empty for short ones, which
// may be anything.
func nounOf(l *i18n.Language, id string, n int) string {
	text, err := l.Try(phrase.Say(id, phrase.Number("N", n)))
	if err != nil {
		return ""
	}
	words := strings.FieldsFunc(text.String(), func(c rune) bool { return !unicode.IsLetter(c) && c != '’' })
	digits := strings.IndexFunc(text.String(), unicode.IsDigit)
	if digits != 0 || len(words) == 0 || len([]rune(words[0])) < 3 {
		return ""
	}
	return words[0]
}

// inlineTags do not begin a text of their own.
var inlineTags = []string{"a", "b", "bdi", "em", "i", "q", "s", "small", "span", "strong", "sub", "sup", "time", "u", "wbr"}

// paragraphsOf are the texts of an element that are in a language: each paragraph with what
// stands in it, an equation or a gap shown by "⁂", and what only listeners hear.
func paragraphsOf(n *html.Node, tag string) (out []string) {
	var b strings.Builder
	end := func() {
		if text := strings.Trim(b.String(), " \n\t"); text != "" {
			out = append(out, text)
		}
		b.Reset()
	}
	var walk func(n *html.Node)
	walk = func(n *html.Node) {
		switch {
		case n.Type == html.TextNode:
			b.WriteString(n.Data)
			return
		case n.Type == html.ElementNode && slices.Contains([]string{"script", "style", "svg"}, n.Data), attribute(n, "lang") != "" && attribute(n, "lang") != tag:
			return
		case attribute(n, "class") == "eq", attribute(n, "class") == "gap":
			b.WriteString("⁂")
			return
		case strings.HasPrefix(attribute(n, "class"), "hide"): // said apart from the words around it
			for c := range n.ChildNodes() {
				out = append(out, paragraphsOf(c, tag)...)
			}
			return
		}
		for _, key := range []string{"alt", "aria-label", "title", "content"} {
			if n.Type == html.ElementNode && attribute(n, key) != "" && n.Data != "meta" {
				out = append(out, attribute(n, key))
			}
		}
		inline := n.Type == html.ElementNode && slices.Contains(inlineTags, n.Data)
		if !inline {
			end()
		}
		for c := range n.ChildNodes() {
			walk(c)
		}
		if !inline {
			end()
		}
	}
	walk(n)
	end()
	return out
}
