package i18n

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
)

// checkIDs finds ids that are missing or that English does not have. A message whose
// name English does not know is left out: it was one of another version, or the one that
// was meant is missing.
func (b *builder) checkIDs() {
	for _, m := range b.file.Messages {
		if b.full() {
			return
		}
		if why := b.extra(m); why != nil {
			b.problem(m.Line, why.Text, why.Hint)
		}
		if m.gone {
			b.unused(m.Line, m.ID+" is not a message of en.toml and is left out", func() string {
				return diag.Suggest(m.ID, b.source.ids(), "take it out, or look the name up in en.toml")
			})
		}
		if b.source.blocks[m.Block] {
			b.lang.blocks[m.Block] = true
		}
	}
	for _, m := range b.source.File.Messages {
		needed := (m.Block == "" || b.lang.blocks[m.Block]) && m.Needed()
		if needed && b.file.byID[m.ID] == nil && len(b.file.All(m.ID)) == 0 {
			b.missing(m.ID, m.Block, b.file.lineNear(m.ID), m.ID+" is missing", m.Suggestion())
		}
	}
}

// All are the message with an id and the gender forms of it.
func (f *File) All(id string) []*Message {
	var out []*Message
	if m := f.byID[id]; m != nil {
		out = append(out, m)
	}
	for _, g := range Genders {
		if m := f.byID[id+"."+g]; m != nil {
			out = append(out, m)
		}
	}
	return out
}

// HasBlock reports whether the file has something of a block.
func (f *File) HasBlock(block string) bool {
	return slices.ContainsFunc(f.Messages, func(m *Message) bool { return m.Block == block })
}

// extra says why the file may not have a message; nil when it may, or when the message
// is gone.
func (b *builder) extra(m *Message) *diag.Diagnostic {
	switch {
	case m.Family == "language":
		if !slices.Contains(headerKeys, strings.TrimPrefix(m.ID, "language.")) {
			return &diag.Diagnostic{Text: fmt.Sprintf("[language] has no %q", m.Key), Hint: diag.Choice(m.Key, headerKeys)}
		}
		return nil
	case m.Family == "words":
		return checkWordID(m.ID)
	case m.English.ID == m.ID:
		return nil
	case m.Gender != "" && m.English.ID == m.sentence():
		if m.about() != "" {
			return nil
		}
		return &diag.Diagnostic{Text: fmt.Sprintf("%s is not about a person that is known, so it has no %s form", m.sentence(), m.Gender), Hint: "write one text for it"}
	case b.source.mayForm(m):
		return nil
	}
	m.gone = true
	return nil
}

// ids lists every message of the English file.
func (s *Source) ids() []string {
	out := make([]string, len(s.File.Messages))
	for i, m := range s.File.Messages {
		out[i] = m.ID
	}
	return out
}

// checkPlaces holds the places of a text against the English message.
func (b *builder) checkPlaces(m *Message, line int, t template, mayDropN bool) {
	want := m.English.places
	for i, s := range t {
		if s.place != "" && !slices.Contains(want, s.place) && !t[:i].has(s.place) {
			b.problem(line, fmt.Sprintf("%s has no place {{.%s}}", m.ID, s.place), placeHint(s.place, want))
		}
	}
	for _, name := range want {
		if dropped := name == "N" && mayDropN; !dropped && !t.has(name) {
			b.problem(line, fmt.Sprintf("%s: the place {{.%s}} is missing", m.ID, name), fmt.Sprintf("write {{.%s}} where it belongs in the sentence", name))
		}
	}
	if Counted(m.Family) && t.count("N") > 1 {
		b.problem(line, m.ID+" has its number twice", "keep one {{.N}}")
	}
	if n := t.count(gapPlace); n > 0 && n != m.English.gaps {
		b.problem(line, fmt.Sprintf("%s has {{.%s}} %d times, the English %d times", m.ID, gapPlace, n, m.English.gaps), "leave as many gaps as the English")
	}
}

func placeHint(name string, want []string) string {
	if len(want) == 0 {
		return "this message has no places"
	}
	written := make([]string, len(want))
	for i, w := range want {
		written[i] = "{{." + w + "}}"
	}
	return diag.Choice("{{."+name+"}}", written)
}
