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
// problems where it is not. A key that is asked for may be there, and no other.
type Section struct {
	Written bool // whether the file has it

	file   *File
	table  *Value
	schema *schema
}

// Section is the file as a whole.
func (f *File) Section() *Section { return &Section{true, f, f.Root, &f.schema} }

// Add notes a problem at the line of a setting; see Line.
func (s *Section) Add(key, text, hint string) { s.file.found.add(s.Line(key), text, hint) }

// AddCoded is Add for a problem that has a code, with its value.
func (s *Section) AddCoded(code, value, key, text, hint string) {
	before := s.Found()
	if s.Add(key, text, hint); s.Found() > before {
		s.file.found.problems[before].Code, s.file.found.problems[before].Value = code, value
	}
}

// Found is how many problems the sections of the file have noted.
func (s *Section) Found() int { return len(s.file.found.problems) }

// Unknown notes that a word is none of the allowed ones.
func (s *Section) Unknown(key, what, typed string, allowed []string) {
	s.AddCoded(diag.Unknown, typed, key, fmt.Sprintf("%q is not %s", short(typed), what), diag.Choice(typed, allowed))
}

// wrong notes that a value is not of the sort that its key takes.
func (s *Section) wrong(v *Value, hint string) {
	s.file.found.add(v.Line, fmt.Sprintf("%s cannot be %s", v.Name(), v.shown()), hint)
}

// Value is what is written for a key; nil when it is left out.
func (s *Section) Value(key string) *Value { return s.file.tree.at[place{s.table, key}] }

// Values are what is written, in the order of the file.
func (s *Section) Values() []*Value { return slices.Collect(s.table.Children()) }

// Has reports whether a key is written, be it in a line that cannot be read.
func (s *Section) Has(key string) bool {
	return s.Value(key) != nil || slices.ContainsFunc(s.file.unreadable, func(u unreadable) bool { return keyOf(u.text) == key })
}

// keyOf is the key that a line begins with, as far as it can be told.
func keyOf(line string) string {
	line = strings.TrimLeft(line, " \t[\"'")
	return line[:len(line)-len(strings.TrimLeft(line, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_."))]
}

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
		key, index, _ := strings.Cut(strings.TrimSuffix(part, "]"), "[")
		v := s.file.tree.at[place{table, key}]
		if v == nil {
			break
		}
		if tables, _ := tablesOf(v); index != "" {
			if n, _ := strconv.Atoi(index); n < len(tables) {
				v = tables[n]
			}
		}
		line, table = v.Line, v
	}
	return line
}

// Sets is the key that a line of some other text sets, or whose table it begins,
// as if it stood in the section; what is the name of that table. Both are empty
// for a line that does neither.
func (s *Section) Sets(line string) (key, what string) {
	if k := s.schema.headed(line); k != nil {
		return k.name, k.of.what
	}
	if m := assignment.FindStringSubmatch(line); m != nil && s.schema.key(m[1]) != nil {
		return m[1], ""
	}
	return "", ""
}

// Word is a short text, without the spaces around it; empty when left out.
func (s *Section) Word(key string) string { return s.text(key, Word, "word") }

// Text is a text, without the spaces around it; empty when left out.
func (s *Section) Text(key string) string { return s.text(key, Text, "text") }

func (s *Section) text(name string, takes Kind, sort string) string {
	s.schema.note(key{name: name, takes: takes})
	v := s.Value(name)
	switch {
	case v == nil:
		return ""
	case v.Kind == Text:
		return strings.TrimSpace(v.Text)
	}
	s.wrong(v, fmt.Sprintf("write a %s in quotes: %s = \"...\"", sort, name))
	return ""
}

// OneOf is a word of a list; empty when it is left out or none of them. What
// names the list: "a strategy".
func (s *Section) OneOf(key, what string, allowed []string) string {
	typed := s.Word(key)
	if typed == "" || slices.Contains(allowed, typed) {
		return typed
	}
	s.Unknown(key, what, typed, allowed)
	return ""
}

// Number is a whole number from low to high; the usual one when it is left out
// or wrong.
func (s *Section) Number(name string, low, high, usual int) int {
	k, v := s.schema.note(key{name: name, takes: Number, low: low, high: high, usual: usual}), s.Value(name)
	if v == nil {
		return usual
	}
	n, err := strconv.Atoi(strings.ReplaceAll(v.Text, "_", ""))
	switch {
	case v.Kind != Number || err != nil && len(v.Text) < 19 || len(v.Text) > 1 && v.Text[0] == '0':
		s.wrong(v, k.plainNumber(v.Text))
	case err != nil || n < low || n > high:
		s.file.found.add(v.Line, fmt.Sprintf("%s = %s is not from %d to %d", v.Name(), short(v.Text), low, high), k.plainNumber(""))
	default:
		return n
	}
	return usual
}

// Switch is true or false; false when left out or wrong.
func (s *Section) Switch(name string) bool {
	k, v := s.schema.note(key{name: name, takes: Switch}), s.Value(name)
	if v != nil && v.Kind != Switch {
		s.wrong(v, k.plainSwitch(v.Text))
		return false
	}
	return v != nil && v.Text == "true"
}

// List is a list of words; nil when left out or wrong.
func (s *Section) List(name string) []string {
	s.schema.note(key{name: name, takes: List})
	v := s.Value(name)
	if v == nil {
		return nil
	}
	if v.Kind != List {
		s.wrong(v, fmt.Sprintf("write a list: %s = [%s]", name, v.listed()))
		return nil
	}
	words := []string{}
	for item := range v.Children() {
		if item.Kind == Text || item.Kind == Date {
			words = append(words, strings.TrimSpace(item.Text))
			continue
		}
		s.file.found.add(item.Line, fmt.Sprintf("%s holds %s, which is not a word", name, item.shown()), "write each in quotes")
	}
	return words
}

// Numbers is a list of whole numbers from low to high; nil when left out or wrong.
func (s *Section) Numbers(name string, low, high int) []int {
	s.schema.note(key{name: name, takes: List})
	v := s.Value(name)
	if v == nil {
		return nil
	}
	hint := fmt.Sprintf("write whole numbers from %d to %d: %s = [8, 6]", low, high, name)
	if v.Kind != List {
		s.wrong(v, hint)
		return nil
	}
	var out []int
	for item := range v.Children() {
		n, err := strconv.Atoi(strings.ReplaceAll(item.Text, "_", ""))
		if item.Kind != Number || err != nil || n < low || n > high {
			s.file.found.add(item.Line, fmt.Sprintf("%s holds %s", name, item.shown()), hint)
			return nil
		}
		out = append(out, n)
	}
	return out
}

// Renamed tells of a key that has another name now, where it is written.
func (s *Section) Renamed(old, now string) {
	s.schema.note(key{name: old, takes: Word, gone: true})
	if v := s.Value(old); v != nil {
		s.AddCoded(diag.Renamed, now, old, fmt.Sprintf("%q is called %q now", old, now), fmt.Sprintf("write %s = %s", now, v.shown()))
	}
}

// Section is the table of a key. What names it: "a target of your own". It is
// there, without a value, when the file leaves it out.
func (s *Section) Section(name, what string) *Section {
	k, all := s.tables(name, what, Table)
	if len(all) > 0 {
		return all[0]
	}
	return &Section{false, s.file, &Value{Key: name, Kind: Table, Line: s.table.Line, Parent: s.table}, k.of}
}

// Sections are the tables of a key, of which there may be several; none when it
// is left out or wrong. What names one of them.
func (s *Section) Sections(name, what string) []*Section {
	_, all := s.tables(name, what, Tables)
	return all
}

func (s *Section) tables(name, what string, takes Kind) (*key, []*Section) {
	head := "[" + strings.TrimPrefix(s.table.Name()+"."+name, ".") + "]"
	if takes == Tables {
		head = "[" + head + "]"
	}
	k := s.schema.note(key{name: name, takes: takes, of: &schema{what: what, head: head}})
	v := s.Value(name)
	if v == nil {
		return k, nil
	}
	tables, all := tablesOf(v)
	if !all || takes == Table && v.Kind != Table {
		s.Add(name, fmt.Sprintf("%q is a table and needs lines of its own", name), fmt.Sprintf("write %s on a line, and its settings below", head))
	}
	var out []*Section
	for _, table := range tables {
		out = append(out, &Section{true, s.file, table, k.of})
	}
	return k, out
}
