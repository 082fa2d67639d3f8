package i18n

import (
	"fmt"
	"slices"
	"strings"

	"golang.org/x/text/language"

	"homebuild/internal/diag"
	"homebuild/internal/problem"
)

// header is what [language] says.
type header struct {
	Notation
	tag      string
	name     string
	script   string // ISO 15924: "Latn"
	rtl      bool
	between  string // of two sentences
	turkic   bool   // small i becomes capital İ
	reviewed Signatures
	open     bool     // something is not what was read and signed
	ending   ending   // follows the sound before it; nil where none does
	source   bool     // English: written here, not translated
	holds    []string // events and kinds of stories that wait for a fluent reader
}

// headerKeys are the keys of [language].
var headerKeys = []string{"name", "direction", "digits", "equations", "review", "reviewed", "read", "plurals", "hold"}

// rightToLeftScripts are those of Unicode's bidirectional classes R and AL
// that are in use for home languages.
var rightToLeftScripts = []string{"Adlm", "Arab", "Hebr", "Mand", "Nkoo", "Rohg", "Samr", "Syrc", "Thaa"}

// ParseTag checks that a word is a language tag in its usual spelling, so that
// a file has one name only.
func ParseTag(word string) (language.Tag, *diag.Diagnostic) {
	tag, err := language.Parse(word)
	if err != nil {
		return tag, &diag.Diagnostic{Text: fmt.Sprintf("%q is not a language tag", word), Hint: "name the file by the BCP 47 tag of its language: es.toml, pt-BR.toml, zh-Hant.toml"}
	}
	if tag.String() != word {
		return tag, &diag.Diagnostic{Text: fmt.Sprintf("the usual tag for %q is %q", word, tag), Hint: fmt.Sprintf("name the file %s.toml", tag)}
	}
	return tag, nil
}

// scriptOf is the script that a language is usually written in.
func scriptOf(tag language.Tag) string {
	s, _ := tag.Script()
	return s.String()
}

// RightToLeft reports whether a language is usually written from right to left.
func RightToLeft(tag language.Tag) bool {
	return slices.Contains(rightToLeftScripts, scriptOf(tag))
}

// header reads [language] and holds it against the script.
func (b *builder) header(tag language.Tag) {
	l := b.lang
	base, _ := tag.Base()
	l.tag, l.script = b.file.Tag, scriptOf(tag)
	l.between = between(base.String())
	l.turkic = slices.Contains([]string{"tr", "az", "crh", "tt", "gag"}, base.String())
	l.ending = endings[base.String()]
	l.name = b.headerWord("name", nil)
	l.rtl = b.headerWord("direction", directions) == Direction(true)
	script := RightToLeft(tag)
	if stated := b.file.Message("language.direction"); stated != nil && stated.Other == Direction(!script) {
		b.problem(stated.Line, fmt.Sprintf("direction does not fit the %s script of %s", l.script, l.tag), fmt.Sprintf("write direction = %q", Direction(script)))
	}
	l.equationsRTL = b.headerWord("equations", directions) == Direction(true)
	if l.equationsRTL && !script {
		b.problem(b.headerLine("equations"), "equations run from left to right in a left-to-right language", `write equations = "ltr"`)
	}
	b.headerDigits()
	b.headerReview()
	b.headerHold()
	for _, key := range headerKeys { // pages show these words, too
		if m := b.file.Message("language." + key); m != nil {
			if wrong := CheckCharacters(m.Other, l.script); wrong != nil {
				b.problem(m.Line, key+": "+wrong.Text, wrong.Hint)
			}
		}
	}
}

var directions = []string{"ltr", "rtl"}

// Direction is the word for a direction of writing.
func Direction(rtl bool) string {
	if rtl {
		return directions[1]
	}
	return directions[0]
}

// headerLine is the line of a key of [language], or where it belongs.
func (b *builder) headerLine(key string) int {
	if m := b.file.Message("language." + key); m != nil {
		return m.Line
	}
	return b.file.lineNear("language." + key)
}

// headerWord reads a key of [language]; allowed nil takes any text.
func (b *builder) headerWord(key string, allowed []string) string {
	m := b.file.Message("language." + key)
	if m == nil || m.Other == "" {
		hint := `write it under [language]`
		if allowed != nil {
			hint = fmt.Sprintf("write %s = %q or %q under [language]", key, allowed[0], allowed[1])
		}
		b.problem(b.headerLine(key), "[language] does not say its "+key, hint)
		return ""
	}
	if allowed != nil && !slices.Contains(allowed, m.Other) {
		b.problem(m.Line, fmt.Sprintf("%s is %q", key, m.Other), diag.Choice(m.Other, allowed))
		return allowed[0]
	}
	return m.Other
}

func (b *builder) headerDigits() {
	name := b.headerWord("digits", digitNames)
	set := digitSets[name]
	if set.zero == 0 {
		set = digitSets["latn"]
	}
	if len(set.scripts) > 0 && !slices.Contains(set.scripts, b.lang.script) {
		b.problem(b.headerLine("digits"), fmt.Sprintf("digits %q do not belong to the %s script of %s", name, b.lang.script, b.lang.tag), `write digits = "latn"`)
	}
	b.lang.digits = digits(set.zero)
}

// headerReview reads who reviewed the file. The two keys exclude each other,
// and nobody's name means draft.
func (b *builder) headerReview() {
	review, reviewed := b.file.Message("language.review"), b.file.Message("language.reviewed")
	hint := `write review = "draft", or reviewed = "M. G., 2026-10-01" once a fluent reader has signed it`
	switch {
	case review == nil && reviewed == nil:
		b.problem(b.headerLine("review"), "[language] does not say whether it was reviewed", hint)
	case review != nil && reviewed != nil:
		b.problem(reviewed.Line, "[language] has both review and reviewed", hint)
	case review != nil && review.Other == "source" && b.file.Tag == SourceTag:
		b.lang.source = true
	case review != nil && review.Other != "draft":
		b.problem(review.Line, fmt.Sprintf("review is %q", review.Other), hint)
	case reviewed != nil:
		signatures, ok := ParseSignatures(reviewed.Other)
		if !ok {
			b.problem(reviewed.Line, fmt.Sprintf("reviewed is %q; it needs a name or initials, a comma and a date", reviewed.Other), hint)
			return
		}
		b.lang.reviewed = signatures
	}
}

// situations are the beginnings of the names of kinds of stories.
var situations = []string{"add-to", "take-from", "together", "compare"}

// headerHold reads what waits for a fluent reader, with commas between: events,
// "kitchen.soup", and kinds of stories, "compare-bigger-fewer" or all that "compare".
func (b *builder) headerHold() {
	hold := b.file.Message("language.hold")
	if hold == nil {
		return
	}
	var known []string
	for _, e := range b.file.Events {
		known = append(known, strings.TrimPrefix(e.ID, eventFamily+"."))
	}
	known = append(known, situations...)
	for _, k := range problem.Kinds() {
		known = append(known, k.String())
	}
	for _, word := range strings.Split(hold.Other, ",") {
		word = strings.TrimSpace(word)
		if !slices.Contains(known, word) {
			b.problem(hold.Line, fmt.Sprintf("hold names %q, which is neither an event of the file nor a kind of story", word), diag.Choice(word, known))
			continue
		}
		b.lang.holds = append(b.lang.holds, word)
	}
}
