package tomlfile

import (
	"fmt"
	"regexp"
	"strings"

	"homebuild/internal/diag"
)

// schema is what a section was asked for: no other key may stand there.
type schema struct {
	what string // what they are settings of: "a target"; empty for the file
	head string // the line above them: "[own-target]"
	keys []key
}

// key is a setting and what it takes.
type key struct {
	name             string
	takes            Kind
	low, high, usual int     // of a Number
	gone             bool    // it has another name now
	of               *schema // of a Table or of Tables
}

// key finds a key; nil for none.
func (s *schema) key(name string) *key {
	for i := range s.keys {
		if s.keys[i].name == name {
			return &s.keys[i]
		}
	}
	return nil
}

// find finds a key here or in one of the tables.
func (s *schema) find(name string) *key {
	k := s.key(name)
	for i := 0; k == nil && i < len(s.keys); i++ {
		if s.keys[i].of != nil {
			k = s.keys[i].of.find(name)
		}
	}
	return k
}

// note notes that a key was asked for.
func (s *schema) note(k key) *key {
	if have := s.key(k.name); have != nil {
		return have
	}
	s.keys = append(s.keys, k)
	return &s.keys[len(s.keys)-1]
}

var bracketed = regexp.MustCompile(`^\s*\[+\s*(.*?)\s*\]*\s*(?:#.*)?$`)

// headed is the key whose tables a line in brackets begins, however it was typed;
// nil for none.
func (s *schema) headed(line string) *key {
	m := bracketed.FindStringSubmatch(line)
	if m == nil {
		return nil
	}
	k := s.key(strings.NewReplacer(" ", "-", "_", "-").Replace(strings.ToLower(m[1])))
	if k == nil || k.of == nil {
		return nil
	}
	return k
}

// heading says how tables begin, and what to write.
func (k *key) heading() (text, hint string) {
	if k.takes == Tables {
		return k.of.what + " begins with two brackets on each side", "write " + k.of.head + " above each of them"
	}
	return k.of.what + " begins with one bracket on each side", "write " + k.of.head + " above its settings"
}

// unknown tells of the keys in a table that nobody asked for.
func (f *File) unknown(all *report, in *Value, s *schema) {
	for v := range in.Children() {
		switch k := s.key(v.Key); {
		case k == nil && "[["+v.Key+"]]" != skipped:
			text := fmt.Sprintf("%q is not a setting", short(v.Key))
			if s.what != "" {
				text += " of " + s.what
			}
			all.add(v.Line, text, f.whereTo(v.Key, s))
		case k != nil && k.of != nil:
			tables, _ := tablesOf(v)
			for _, table := range tables {
				f.unknown(all, table, k.of)
			}
		}
	}
}

// whereTo says what was meant by a key, or where it belongs.
func (f *File) whereTo(typed string, s *schema) string {
	if s != &f.schema && f.schema.key(typed) != nil {
		return fmt.Sprintf("%s is a setting of the whole file: write it above %s", typed, s.head)
	}
	var names []string
	for _, k := range s.keys {
		if k.of != nil && k.of.key(typed) != nil {
			return fmt.Sprintf("%s is a setting of %s: write it below %s", typed, k.of.what, k.of.head)
		}
		if !k.gone {
			names = append(names, k.name)
		}
	}
	return diag.Choice(typed, names)
}

// tablesOf are the tables of a value: itself, or those in its list. They are
// all that it holds, or not.
func tablesOf(v *Value) (tables []*Value, all bool) {
	if v.Kind == Table {
		return append(tables, v), true
	}
	all = v.Kind == List || v.Kind == Tables
	for item := range v.Children() {
		if item.Kind == Table {
			tables = append(tables, item)
		} else {
			all = false
		}
	}
	return tables, all
}

// maxWord keeps a message short when a whole paragraph was typed for a word.
const maxWord = 60

func short(typed string) string {
	if letters := []rune(typed); len(letters) > maxWord {
		return string(letters[:maxWord]) + "..."
	}
	return typed
}
