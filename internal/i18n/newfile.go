package i18n

import (
	"bytes"
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"golang.org/x/text/language"
	"golang.org/x/text/language/display"
)

// nativeDigits lists the languages whose pages CLDR 48 writes with digits of
// their own by default, as far as this package has those digits.
var nativeDigits = map[string]string{
	"ar-EG": "arab", "ar-SA": "arab", "ckb": "arab",
	"fa": "arabext", "ps": "arabext", "ur-IN": "arabext",
	"mr": "deva", "ne": "deva",
}

const newFileHead = `# %[1]s: the words of homebuild's pages.
#
# Each message has a note, the English text and an empty text to fill in.
# - Places such as {{.Start}} stay as they are; put them where your language
#   wants them. {{.A}} and {{.B}} are people and may be left out of a story
#   sentence where the verb says who it is.
# - Write whole sentences, the way you would say them to a parent.
# - A story (story...), a thing, a person or a setting that does not work in
#   your language may be left out: take out all of its messages.
# - A sentence may ask for another form of a thing or a name. Write
#   {{.Start.accusative}}, and add [thing.shell.count-accusative] to every thing.
# - Where a verb agrees with the person, replace other = "..." in its table by
#   two tables, [story....change.feminine] and [story....change.masculine], and
#   give every person a gender.
# - Leave hash as it is: it shows later which English texts have changed.

`

// NewFile writes an empty language file for a translator: every message with
// its note and its English text, and the plural categories that the language
// needs. What is guessed is marked.
func NewFile(tag string, folders ...fs.FS) ([]byte, error) {
	_, src, problems := loadSource(folders)
	if len(problems) > 0 {
		return nil, problems
	}
	parsed, wrong := parseTag(tag)
	if wrong != nil {
		return nil, fmt.Errorf("%s; %s", wrong.text, wrong.hint)
	}
	rule, err := newPlurals(parsed)
	if err != nil {
		rule = onlyOther()
	}
	w := &fileWriter{source: src, rule: rule}
	fmt.Fprintf(w, newFileHead, display.English.Tags().Name(parsed))
	w.header(parsed, err == nil)
	for _, id := range src.file.order {
		if src.required(id) {
			w.message(id, src.file.messages[id])
		}
	}
	return w.Bytes(), nil
}

type fileWriter struct {
	bytes.Buffer
	source *source
	rule   *plurals
	block  string // the block that was written last
}

func (w *fileWriter) header(tag language.Tag, hasRule bool) {
	rtl := slices.Contains(rightToLeftScripts, scriptOf(tag))
	digits := nativeDigits[tag.String()]
	if digits == "" {
		digits = "latn"
	}
	fmt.Fprintf(w, "[language]\nname = %q # please confirm: the language's own name\n", display.Self.Name(tag))
	fmt.Fprintf(w, "direction = %q # please confirm: ltr or rtl\n", direction(rtl))
	fmt.Fprintf(w, "digits = %q # please confirm: latn 0123, arab ٠١٢٣, arabext ۰۱۲۳, deva ०१२३\n", digits)
	fmt.Fprintf(w, "equations = \"ltr\" # please confirm: the order in which schools write 8 + 6 = 14\n")
	if !hasRule {
		fmt.Fprintf(w, "plurals = \"other\" # please confirm: nouns never change after a number; or the tag of a language with the same rule\n")
	}
	fmt.Fprintf(w, "review = \"draft\" # a fluent reader who has read it all replaces this line by reviewed = \"M. G., 2026-10-01\"\n\n")
	fmt.Fprintf(w, "# Number words are optional; a number that is missing is written in digits.\n# [words]\n# 1 = \"\"\n# [words.feminine]\n# 1 = \"\"\n")
}

func (w *fileWriter) message(id string, m *message) {
	if in := block(id); in != w.block {
		w.block = in
		if f := family(id); slices.Contains(peopleFamilies, f) || slices.Contains(countedFamilies, f) {
			fmt.Fprintf(w, "\n[%s]\n# gender = \"feminine\" # where the language needs it: %s\n", in, strings.Join(genders, ", "))
		}
	}
	w.WriteByte('\n')
	if m.Description != "" {
		fmt.Fprintf(w, "# %s\n", oneLine(m.Description))
	}
	for c := zero; c <= other; c++ {
		if text := m.text(c); text != "" {
			fmt.Fprintf(w, "# English%s: %s\n", map[bool]string{true: " (" + c.String() + ")"}[w.source.counted[id]], oneLine(text))
		}
	}
	fmt.Fprintf(w, "[%s]\nhash = %q\n", id, w.source.hash(id))
	if !w.source.counted[id] {
		fmt.Fprint(w, "other = \"\"\n")
		return
	}
	for c := zero; c <= other; c++ {
		if w.rule.needs(c) {
			fmt.Fprintf(w, "%s = \"\" # %s\n", c, w.examples(c))
		}
	}
}

// examples lists the first numbers of a category.
func (w *fileWriter) examples(c category) string {
	var list []string
	for n, got := range w.rule.table {
		if got == c && len(list) == 6 {
			return strings.Join(list, ", ") + " ..."
		}
		if got == c {
			list = append(list, fmt.Sprint(n))
		}
	}
	return strings.Join(list, ", ")
}

func oneLine(text string) string { return strings.Join(strings.Fields(text), " ") }
