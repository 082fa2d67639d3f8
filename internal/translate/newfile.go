package translate

import (
	"bytes"
	"cmp"
	_ "embed"
	"fmt"
	"io/fs"
	"strings"

	"golang.org/x/text/language"
	"golang.org/x/text/language/display"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
)

// nativeDigits lists the languages whose pages CLDR 48 writes with digits of
// their own by default, as far as this package has those digits.
var nativeDigits = map[string]string{
	"ar-EG": "arab", "ar-SA": "arab", "ckb": "arab",
	"fa": "arabext", "ps": "arabext", "ur-IN": "arabext",
	"mr": "deva", "ne": "deva",
}

//go:embed newfile.txt
var newFileHead string

// familyNotes stand above the first message of a family.
var familyNotes = map[string]string{
	"character": `Who lives in the stories, and whom a child may choose for a story of its own.
Where verbs agree with the character, write gender = "feminine" under its name in
brackets: GENDERS`,
}

//go:embed newevents.txt
var eventsHead string

// Begin is the file that a translator begins with: a copy of that in the first folder,
// the program's own, or else an empty one.
func Begin(tag string, folders ...fs.FS) (text []byte, copied bool, err error) {
	if text, err = fs.ReadFile(folders[0], tag+".toml"); err == nil {
		return text, true, nil
	}
	text, err = NewFile(tag, folders...)
	return text, false, err
}

// NewFile writes an empty language file for a translator: every message with
// its note and its English text, and the plural categories that the language
// needs. What is guessed is marked.
func NewFile(tag string, folders ...fs.FS) ([]byte, error) {
	source, problems := i18n.LoadSource(folders...)
	if len(problems) > 0 {
		return nil, problems
	}
	parsed, wrong := i18n.ParseTag(tag)
	if wrong != nil {
		return nil, diag.Diagnostics{*wrong}
	}
	rule, err := i18n.NewPlurals(parsed)
	if err != nil {
		rule = i18n.OnlyOther()
	}
	w := &fileWriter{rule: rule}
	fmt.Fprintf(w, newFileHead, display.English.Tags().Name(parsed))
	w.header(parsed, err == nil)
	things := map[string][]*i18n.Message{}
	for _, m := range source.File.Messages {
		switch {
		case !m.Needed():
		case i18n.Counted(m.Family):
			things[m.Block] = append(things[m.Block], m)
		default:
			w.message(m)
		}
	}
	w.WriteString(eventsHead)
	for _, e := range source.File.Events {
		for _, thing := range source.Things(e.ID) {
			for _, m := range things[thing] {
				w.message(m)
			}
			delete(things, thing)
		}
		w.event(e)
	}
	return w.Bytes(), nil
}

type fileWriter struct {
	bytes.Buffer
	rule   *i18n.Plurals
	block  string // the block that was written last
	family string
}

func (w *fileWriter) header(tag language.Tag, hasRule bool) {
	digits := cmp.Or(nativeDigits[tag.String()], "latn")
	fmt.Fprintf(w, "[language]\nname = %q # please confirm: the language's own name\n", display.Self.Name(tag))
	fmt.Fprintf(w, "direction = %q # please confirm: ltr, from left to right, or rtl\n", i18n.Direction(i18n.RightToLeft(tag)))
	fmt.Fprintf(w, "digits = %q # please confirm: latn 0123, arab ٠١٢٣, arabext ۰۱۲۳, deva ०१२३\n", digits)
	fmt.Fprintf(w, "equations = \"ltr\" # please confirm: the order in which schools write 8 + 6 = 14, ltr or rtl\n")
	if !hasRule {
		fmt.Fprintf(w, "plurals = \"other\" # please confirm: nouns never change after a number; or the tag of a language with the same rule\n")
	}
	fmt.Fprintf(w, "review = \"draft\" # leave it: \"homebuild language sign\" writes here who has read it all\n\n")
	fmt.Fprintf(w, "# Number words are optional, for weeks that write numbers as words; a number that\n# is missing is written in digits.\n# [words]\n# 1 = \"\"\n# [words.feminine]\n# 1 = \"\"\n")
}

func (w *fileWriter) message(m *i18n.Message) {
	w.note(m.Family)
	if m.Block != w.block {
		w.block = m.Block
		if i18n.People(m.Family) || i18n.Counted(m.Family) {
			fmt.Fprintf(w, "\n[%s]\n", m.Block)
		}
	}
	w.WriteByte('\n')
	if m.Description != "" {
		fmt.Fprintf(w, "# %s\n", oneLine(m.Description))
	}
	for _, c := range i18n.Categories() {
		if text := m.Text(c); text != "" {
			fmt.Fprintf(w, "# English%s: %s\n", map[bool]string{true: " (" + c.String() + ")"}[m.Plural()], oneLine(text))
		}
	}
	fmt.Fprintf(w, "[%s]\nhash = %q\n", m.ID, m.EnglishHash())
	if !m.Plural() {
		fmt.Fprint(w, "other = \"\"\n")
		return
	}
	for _, c := range i18n.Categories() {
		if w.rule.Needs(c) {
			fmt.Fprintf(w, "%s = \"\" # %s\n", c, w.examples(c))
		}
	}
}

// event writes the table of an event, its sentences empty, each below the English.
// Sentences that only some stories say in a way of their own stand below the
// others.
func (w *fileWriter) event(e *i18n.Event) {
	fmt.Fprintf(w, "\n\n# %s\n[%s]\nsource = %q\n", oneLine(e.Note), e.ID, e.SourceHash())
	group := ""
	for _, s := range e.Sentences {
		if s.Group != group {
			group = s.Group
			fmt.Fprintf(w, "\n[%s.%s]\n", e.ID, group)
		}
		fmt.Fprintf(w, "# English: %s\n%s = \"\"\n", oneLine(s.Text), s.Key)
	}
}

// note explains a family where it begins.
func (w *fileWriter) note(in string) {
	if note := familyNotes[in]; in != w.family && note != "" {
		note = strings.ReplaceAll(note, "GENDERS", strings.Join(i18n.Genders, ", ")+".")
		fmt.Fprintf(w, "\n\n# %s\n", strings.ReplaceAll(note, "\n", "\n# "))
	}
	w.family = in
}

// examples lists the first numbers of a category.
func (w *fileWriter) examples(c i18n.Category) string {
	const shown = 6
	numbers := w.rule.Examples(c, shown+1)
	text := strings.Trim(strings.ReplaceAll(fmt.Sprint(numbers[:min(shown, len(numbers))]), " ", ", "), "[]")
	if len(numbers) > shown {
		text += " ..."
	}
	return text
}
