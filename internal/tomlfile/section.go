package tomlfile

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/diag"
)

// Section is a table of settings: the file as a whole, or a table in it. Each of
// its methods gives a value as it is meant to be, and tells in the file's
// problems where it is not.
type Section struct {
	file   *File
	table  *Value
	schema *Schema
}

// Section is the file as a whole.
func (f *File) Section() *Section { return &Section{f, f.Root, f.schema} }

// Add notes a problem at the line of a setting; see Line.
func (s *Section) Add(key, text, hint string) { s.file.add(s.Line(key), text, hint) }

// Unknown notes that a word is none of the allowed ones.
func (s *Section) Unknown(key, what, typed string, allowed []string) {
	s.Add(key, fmt.Sprintf("%q is not %s", short(typed), what), diag.Choice(typed, allowed))
}

// Value is what is written for a key; nil when it is left out.
func (s *Section) Value(key string) *Value { return s.file.Child(s.table, key) }

// Values are what is written, in the order of the file.
func (s *Section) Values() []*Value { return slices.Collect(s.table.Children()) }

// Has reports whether a key is written, be it in a line that cannot be read.
func (s *Section) Has(key string) bool { return s.Value(key) != nil || s.file.skipped[key] }

// Line is the line of a setting; that of the section when it is left out.
func (s *Section) Line(key string) int {
	if v := s.Value(key); v != nil {
		return v.Line
	}
	return s.table.Line
}

// LineOf is the line of a setting anywhere below, or of the nearest table that
// is there: "own-target.largest", "own-story[1].text". It is 0 for none.
func (s *Section) LineOf(path string) int {
	line, table := 0, s.table
	for part := range strings.SplitSeq(path, ".") {
		key, index, inList := strings.Cut(part, "[")
		v := s.file.Child(table, key)
		if inList && v != nil {
			n, _ := strconv.Atoi(strings.TrimSuffix(index, "]"))
			if tables, _ := tablesOf(v); n < len(tables) {
				v = tables[n]
			}
		}
		if v == nil {
			break
		}
		line, table = v.Line, v
	}
	return line
}

// takes is what a key takes; a text where the schema leaves the keys open.
func (s *Section) takes(key string) *Key {
	if s.schema == nil {
		return &Key{Name: key, Takes: Text}
	}
	k := s.schema.key(key)
	if k == nil {
		panic("tomlfile: no key " + key + " in the schema") // and so no file can have it
	}
	return k
}

// wrong notes that a value is not of the sort that its key takes.
func (s *Section) wrong(v *Value, hint string) {
	s.file.add(v.Line, fmt.Sprintf("%s cannot be %s", v.Name(), shown(v)), hint)
}

// shown is a value as a person would write it.
func shown(v *Value) string {
	switch v.Kind {
	case Text:
		return fmt.Sprintf("%q", short(v.Text))
	case List, Tables:
		return "a list"
	case Table:
		return "a table"
	}
	return v.Text
}

// Text is a text without the spaces around it; empty when left out.
func (s *Section) Text(key string) string {
	k, v := s.takes(key), s.Value(key)
	switch {
	case v == nil:
		return ""
	case v.Kind == Text:
		return strings.TrimSpace(v.Text)
	case k.Takes == Word:
		s.wrong(v, fmt.Sprintf("write a word in quotes: %s = \"...\"", key))
	default:
		s.wrong(v, fmt.Sprintf("write a text in quotes: %s = \"...\"", key))
	}
	return ""
}

// OneOf is a word of a list; empty when it is left out or none of them. What
// names the list: "a strategy".
func (s *Section) OneOf(key, what string, allowed []string) string {
	typed := s.Text(key)
	if typed == "" || slices.Contains(allowed, typed) {
		return typed
	}
	s.Unknown(key, what, typed, allowed)
	return ""
}

// Number is a whole number within the key's limits; its usual one when it is
// left out or wrong.
func (s *Section) Number(key string) int {
	k, v := s.takes(key), s.Value(key)
	if v == nil {
		return k.Usual
	}
	n, err := strconv.Atoi(strings.ReplaceAll(v.Text, "_", ""))
	switch {
	case v.Kind != Number || err != nil && len(v.Text) < 19 || len(v.Text) > 1 && v.Text[0] == '0':
		s.wrong(v, k.plainNumber(v.Text))
	case err != nil || n < k.Low || n > k.High:
		s.file.add(v.Line, fmt.Sprintf("%s = %s is not from %d to %d", v.Name(), short(v.Text), k.Low, k.High), k.plainNumber(""))
	default:
		return n
	}
	return k.Usual
}

// Switch is true or false; false when left out or wrong.
func (s *Section) Switch(key string) bool {
	k, v := s.takes(key), s.Value(key)
	if v != nil && v.Kind != Switch {
		s.wrong(v, k.plainSwitch(v.Text))
		return false
	}
	return v != nil && v.Text == "true"
}

// List is a list of words; nil when left out or wrong.
func (s *Section) List(key string) []string {
	v := s.Value(key)
	if v == nil {
		return nil
	}
	if v.Kind != List {
		s.wrong(v, fmt.Sprintf("write a list: %s = [%s]", key, listed(v)))
		return nil
	}
	words := []string{}
	for item := range v.Children() {
		if item.Kind == Text {
			words = append(words, strings.TrimSpace(item.Text))
			continue
		}
		s.file.add(item.Line, fmt.Sprintf("%s holds %s, which is not a word", key, shown(item)), "write each in quotes")
	}
	return words
}

// listed is a value as a list would hold it: "en, es" is two words.
func listed(v *Value) string {
	words := strings.FieldsFunc(v.Text, func(c rune) bool { return c == ',' || c == ';' || c == ' ' })
	if v.Kind != Text || len(words) == 0 {
		return `"...", "..."`
	}
	for i, word := range words {
		words[i] = fmt.Sprintf("%q", word)
	}
	return strings.Join(words, ", ")
}

// Section is the table of a key; nil when it is left out or wrong.
func (s *Section) Section(key string) *Section {
	if all := s.Sections(key); len(all) > 0 {
		return all[0]
	}
	return nil
}

// Sections are the tables of a key, of which there may be several; none when it
// is left out or wrong.
func (s *Section) Sections(key string) []*Section {
	v, k := s.Value(key), s.takes(key)
	if v == nil {
		return nil
	}
	var out []*Section
	tables, all := tablesOf(v)
	for _, table := range tables {
		out = append(out, &Section{s.file, table, k.Of})
	}
	if !all || k.Takes == Table && v.Kind != Table {
		head := k.head()
		if above := s.table.Name(); above != "" {
			head = "[" + above + "." + key + "]"
		}
		s.Add(key, fmt.Sprintf("%q is a table and needs lines of its own", key), fmt.Sprintf("write %s on a line, and its settings below", head))
	}
	return out
}
