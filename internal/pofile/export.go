package pofile

import (
	"fmt"
	"slices"
	"strings"

	"github.com/chai2010/gettext-go/po"
	"golang.org/x/text/language"
	"golang.org/x/text/language/display"

	"homebuild/internal/i18n"
	"homebuild/internal/translate"
)

// fuzzy marks a text that is to be looked at again.
const fuzzy = "fuzzy"

// Export is a language file as PO.
func Export(d *translate.Draft) []byte {
	path := "locales/" + d.Language.Tag() + ".toml"
	rule, categories := d.Language.Plurals(), d.Categories()
	var b strings.Builder
	b.WriteString(head(d.Language.Tag(), pluralForms(rule, categories)).String())
	kinds := numbersOf(rule, categories)
	for _, e := range d.Entries() {
		b.WriteString("\n" + message(e, path, kinds).String())
	}
	return []byte(b.String())
}

// head is the entry that describes the file. It names no day: the same words are the
// same bytes.
func head(tag, forms string) po.Header {
	name := display.English.Tags().Name(language.Make(tag))
	return po.Header{
		Comment: po.Comment{TranslatorComment: name + `: the words of homebuild's pages.
Places such as {{.Number}} stay as they are; put them where your language wants them.
Write whole sentences, the way you would say them to a parent.
"homebuild language import ` + tag + `" brings your texts into the language file.`},
		ProjectIdVersion: "homebuild",
		Language:         poTag(tag),
		LanguageTeam:     name,
		MimeVersion:      "1.0", ContentType: "text/plain; charset=UTF-8", ContentTransferEncoding: "8bit",
		UnknowFields: map[string]string{pluralField: forms}, // the library reads this field and does not write it
	}
}

const pluralField = "Plural-Forms"

// poTag is a language tag in the way of PO: "pt_BR".
func poTag(tag string) string { return strings.ReplaceAll(tag, "-", "_") }

// numbersOf says which numbers a form is for: "1, 21, 31 …".
func numbersOf(rule *i18n.Plurals, categories []i18n.Category) []string {
	const shown = 6
	out := make([]string, len(categories))
	for i, c := range categories {
		numbers := rule.Examples(c, shown+1)
		words := strings.Fields(strings.Trim(fmt.Sprint(numbers[:min(shown, len(numbers))]), "[]"))
		out[i] = fmt.Sprintf("msgstr[%d] is %s: %s", i, c, strings.Join(words, ", "))
		switch {
		case len(words) == 0:
			out[i] = fmt.Sprintf("msgstr[%d] is %s: no whole number", i, c)
		case len(numbers) > shown:
			out[i] += " …"
		}
	}
	return out
}

func message(e translate.Entry, path string, kinds []string) po.Message {
	m := po.Message{MsgContext: e.ID, MsgId: e.English, MsgIdPlural: e.Others}
	notes := []string{}
	if e.Note != "" {
		notes = append(notes, e.Note)
	}
	if e.Forms() {
		notes = append(notes, kinds...)
		m.MsgStrPlural = e.Texts
	} else {
		m.MsgStr = e.Texts[0]
	}
	m.ExtractedComment = strings.Join(notes, "\n")
	if e.Line > 0 {
		m.ReferenceFile, m.ReferenceLine = []string{path}, []int{e.Line}
	}
	if e.Stale && slices.ContainsFunc(e.Texts, func(text string) bool { return text != "" }) {
		m.Flags = []string{fuzzy}
	}
	return m
}
