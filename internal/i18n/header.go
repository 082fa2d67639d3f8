package i18n

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"golang.org/x/text/language"

	"homebuild/internal/diag"
)

// header is what [language] says.
type header struct {
	tag          string
	name         string
	script       string // ISO 15924: "Latn"
	rtl          bool
	equationsRTL bool
	turkic       bool // small i becomes capital İ
	reviewed     string
	stale        bool
	source       bool // English: written here, not translated
}

// headerKeys are the keys of [language].
var headerKeys = []string{"name", "direction", "digits", "equations", "review", "reviewed", "plurals"}

// rightToLeftScripts are those of Unicode's bidirectional classes R and AL
// that are in use for home languages.
var rightToLeftScripts = []string{"Adlm", "Arab", "Hebr", "Mand", "Nkoo", "Rohg", "Samr", "Syrc", "Thaa"}

var reviewedPattern = regexp.MustCompile(`^\S.*, \d{4}-\d{2}-\d{2}$`)

// ParseTag checks that a word is a language tag in its usual spelling, so that
// a file has one name only. The text says what is wrong, the hint what to
// write; both are empty when the tag is fine.
func parseTag(word string) (language.Tag, *fault) {
	tag, err := language.Parse(word)
	if err != nil {
		return tag, &fault{fmt.Sprintf("%q is not a language tag", word), "name the file by the BCP 47 tag of its language: es.toml, pt-BR.toml, zh-Hant.toml"}
	}
	if tag.String() != word {
		return tag, &fault{fmt.Sprintf("the usual tag for %q is %q", word, tag), fmt.Sprintf("name the file %s.toml", tag)}
	}
	return tag, nil
}

// scriptOf is the script that a language is usually written in.
func scriptOf(tag language.Tag) string {
	s, _ := tag.Script()
	return s.String()
}

// header reads [language] and holds it against the script.
func (b *builder) header(tag language.Tag) {
	l := b.lang
	base, _ := tag.Base()
	l.tag, l.script = b.file.tag, scriptOf(tag)
	l.turkic = slices.Contains([]string{"tr", "az", "crh", "tt", "gag"}, base.String())
	l.name = b.headerWord("name", nil)
	script := slices.Contains(rightToLeftScripts, l.script)
	l.rtl = b.headerWord("direction", []string{"ltr", "rtl"}) == "rtl"
	if stated := b.file.messages["language.direction"]; stated != nil && stated.Other == direction(!script) {
		b.problem(stated.line, fmt.Sprintf("direction does not fit the %s script of %s", l.script, l.tag), fmt.Sprintf("write direction = %q", direction(script)))
	}
	l.equationsRTL = b.headerWord("equations", []string{"ltr", "rtl"}) == "rtl"
	if l.equationsRTL && !script {
		b.problem(b.headerLine("equations"), "equations run from left to right in a left-to-right language", `write equations = "ltr"`)
	}
	b.headerDigits()
	b.headerReview()
	b.headerCharacters()
}

// headerCharacters holds the header's own words to what messages are held to:
// pages show them.
func (b *builder) headerCharacters() {
	for _, key := range headerKeys {
		if m := b.file.messages["language."+key]; m != nil {
			if wrong := checkCharacters(m.Other, b.lang.script); wrong != nil {
				b.problem(m.line, key+": "+wrong.text, wrong.hint)
			}
		}
	}
}

func direction(rtl bool) string {
	if rtl {
		return "rtl"
	}
	return "ltr"
}

// headerLine is the line of a key of [language], or where it belongs.
func (b *builder) headerLine(key string) int {
	if m := b.file.messages["language."+key]; m != nil {
		return m.line
	}
	return b.file.lineNear("language." + key)
}

// headerWord reads a key of [language]; allowed nil takes any text.
func (b *builder) headerWord(key string, allowed []string) string {
	m := b.file.messages["language."+key]
	if m == nil || m.Other == "" {
		hint := `write it under [language]`
		if allowed != nil {
			hint = fmt.Sprintf("write %s = %q or %q under [language]", key, allowed[0], allowed[1])
		}
		b.problem(b.headerLine(key), "[language] does not say its "+key, hint)
		return ""
	}
	if allowed != nil && !slices.Contains(allowed, m.Other) {
		b.problem(m.line, fmt.Sprintf("%s is %q", key, m.Other), "write "+oneOf(m.Other, allowed))
		return allowed[0]
	}
	return m.Other
}

// oneOf suggests the word that was begun or the nearest one, or lists them all.
func oneOf(typed string, allowed []string) string {
	begun := slices.DeleteFunc(slices.Clone(allowed), func(word string) bool { return typed == "" || !strings.HasPrefix(word, typed) })
	if len(begun) == 1 {
		return begun[0]
	}
	if near := diag.Nearest(typed, allowed); near != "" {
		return near
	}
	return strings.Join(allowed, ", ")
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
	b.lang.digits = newDigits(set.zero)
}

// headerReview reads who reviewed the file. The two keys exclude each other,
// and nobody's name means draft.
func (b *builder) headerReview() {
	review, reviewed := b.file.messages["language.review"], b.file.messages["language.reviewed"]
	hint := `write review = "draft", or reviewed = "M. G., 2026-10-01" once a fluent reader has signed it`
	switch {
	case review == nil && reviewed == nil:
		b.problem(b.headerLine("review"), "[language] does not say whether it was reviewed", hint)
	case review != nil && reviewed != nil:
		b.problem(reviewed.line, "[language] has both review and reviewed", hint)
	case review != nil && review.Other == "source" && b.file.tag == SourceTag:
		b.lang.source = true
	case review != nil && review.Other != "draft":
		b.problem(review.line, fmt.Sprintf("review is %q", review.Other), hint)
	case reviewed != nil && !reviewedPattern.MatchString(reviewed.Other):
		b.problem(reviewed.line, fmt.Sprintf("reviewed is %q; it needs a name or initials, a comma and a date", reviewed.Other), hint)
	case reviewed != nil:
		b.lang.reviewed = reviewed.Other
	}
}
