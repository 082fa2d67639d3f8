package tomlfile

import (
	"strings"

	"homebuild/internal/pattern"
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

var bracketed = pattern.Of(`^\s*\[+\s*(.*?)\s*\]*\s*(?:#.*)?$`)

// headed is the key whose tables a line in brackets begins, however it was typed;
// nil for none.
func (s *schema) headed(line string) *key {
	m := bracketed().FindStringSubmatch(line)
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
