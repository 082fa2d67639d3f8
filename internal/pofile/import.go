package pofile

import (
	"fmt"
	"slices"
	"strings"

	"github.com/chai2010/gettext-go/po"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/pattern"
	"homebuild/internal/translate"
)

// MaxSize is more bytes than a file of any language has: ours have up to 1.5 million,
// as each text has its note with it.
const MaxSize = 8 << 20

// Imported is what came of taking a PO file back.
type Imported struct {
	Text    []byte           // of the language file, every byte that nobody changed as it was
	Changed int              // entries that say something else now
	Fuzzy   int              // entries that are marked fuzzy, and were not looked at
	Refused diag.Diagnostics // entries that were not taken, by their lines in the PO file
}

// Import takes the texts of a PO file into a language file. What a check would refuse is
// not taken, and told with its line in the PO file, which is at path. Problems mean that
// the PO file cannot be read at all.
func Import(d *translate.Draft, path, text string) (*Imported, diag.Diagnostics) {
	wrong := func(line int, text, hint string) diag.Diagnostics {
		return diag.Diagnostics{{File: path, Line: line, Text: text, Hint: hint}}
	}
	plain, line := simple(text)
	if line > 0 {
		return nil, wrong(line, "this line is not of a PO file", `lines are msgctxt, msgid, msgid_plural, msgstr or msgstr[0] with a text in quotes, texts in quotes, and remarks after "#"`)
	}
	file, err := po.Load([]byte(plain))
	if err != nil {
		return nil, wrong(0, "this is not a PO file: "+err.Error(), "save it as PO, in UTF-8")
	}
	if tag := d.Language.Tag(); file.MimeHeader.Language != "" && file.MimeHeader.Language != poTag(tag) {
		return nil, wrong(1, fmt.Sprintf("the head says that the language is %q", file.MimeHeader.Language), fmt.Sprintf("import the file of %s", tag))
	}
	categories, err := categoriesOf(file.MimeHeader.PluralForms, d.Language.Plurals(), d.Categories())
	if err != nil {
		return nil, wrong(1, err.Error(), "write in the head: "+pluralField+": "+pluralForms(d.Language.Plurals(), d.Categories()))
	}
	in := &Imported{}
	lines := map[string]int{}
	var changes []translate.Change
	for _, m := range file.Messages {
		if slices.Contains(m.Flags, fuzzy) {
			in.Fuzzy++
			continue
		}
		c, why := changeOf(m, categories)
		switch {
		case why == nil && lines[c.ID] > 0:
			why = &diag.Diagnostic{Text: fmt.Sprintf("%s stands twice, first in line %d", c.ID, lines[c.ID]), Hint: "keep one of the two"}
		case why == nil:
			lines[c.ID] = m.StartLine
			changes = append(changes, c)
			continue
		}
		in.Refused = append(in.Refused, diag.Diagnostic{File: path, Line: m.StartLine, Text: why.Text, Hint: why.Hint})
	}
	var refused []translate.Refusal
	if in.Text, in.Changed, refused, err = d.Apply(changes); err != nil {
		return nil, wrong(0, err.Error(), "write these texts in an editor")
	}
	for _, r := range refused {
		in.Refused = append(in.Refused, diag.Diagnostic{File: path, Line: lines[r.ID], Text: r.Text, Hint: r.Hint})
	}
	in.Refused.Sort()
	return in, nil
}

// changeOf is an entry as a change of the language file.
func changeOf(m po.Message, categories []i18n.Category) (translate.Change, *diag.Diagnostic) {
	c := translate.Change{ID: m.MsgContext, English: m.MsgId, Others: m.MsgIdPlural}
	switch {
	case c.ID == "":
		return c, &diag.Diagnostic{Text: fmt.Sprintf("the entry of %q has no msgctxt, which names the message", m.MsgId), Hint: "export the file again, and keep msgctxt"}
	case m.MsgIdPlural == "":
		c.Categories, c.Texts = []i18n.Category{i18n.Other}, []string{m.MsgStr}
		return c, nil
	}
	for i, text := range m.MsgStrPlural {
		switch {
		case i < len(categories) && categories[i] != none:
			c.Categories, c.Texts = append(c.Categories, categories[i]), append(c.Texts, text)
		case text != "":
			return c, &diag.Diagnostic{Text: fmt.Sprintf("%s has a text msgstr[%d], which no number takes", c.ID, i), Hint: "leave it out, or mend " + pluralField + " in the head"}
		}
	}
	return c, nil
}

var (
	keyword  = pattern.Of(`^(msgctxt|msgid|msgid_plural|msgstr|msgstr\[[0-9]\])\s+".*"\s*$`)
	inQuotes = pattern.Of(`^\s*".*"\s*$`)
)

// simple is a PO file without what the reader need not know: remarks but for flags, and
// entries that are obsolete ("#~"). It gives the first line that no PO file has in its
// place: the reader would wait for an end there, or mix two entries up.
func simple(text string) (plain string, wrong int) {
	lines := strings.Split(strings.TrimPrefix(strings.ReplaceAll(text, "\r\n", "\n"), "\ufeff"), "\n")
	begun, said, inText := false, false, false // an entry is begun; it has its msgstr; a text in quotes may go on
	for i, line := range lines {
		word := ""
		if m := keyword().FindStringSubmatch(line); m != nil {
			word = m[1]
		}
		switch {
		case strings.HasPrefix(line, "#") || strings.TrimSpace(line) == "":
			if begun && !said {
				return "", i + 1
			}
			begun, said, inText = false, false, false
			lines[i] = separator(line)
		case strings.HasPrefix(word, "msgstr") && begun:
			said, inText = true, true
		case word != "" && !said && !strings.HasPrefix(word, "msgstr"):
			begun, inText = true, true
		case word == "" && inText && inQuotes().MatchString(line):
		default:
			return "", i + 1
		}
	}
	return strings.Join(lines, "\n"), 0
}

// separator is a line between entries as far as the reader needs it.
func separator(line string) string {
	switch {
	case strings.HasPrefix(line, "#,"):
		return line
	case strings.HasPrefix(line, "#") && !strings.HasPrefix(line, "#~"):
		return "#"
	}
	return ""
}
