package tomlfile

import (
	"fmt"
	"regexp"
	"strings"

	"homebuild/internal/diag"
)

// Schema says which keys a file, or a table of it, may have.
type Schema struct {
	What string // what the keys are settings of: "a target"; empty for the file
	Like string // what a line looks like, for a line that is none
	Keys []Key
}

// Key is a setting and what it takes.
type Key struct {
	Name      string
	Takes     Kind
	Low, High int     // of a Number
	Usual     int     // of a Number that is left out
	Of        *Schema // of a Table or of Tables; nil where any key may stand
}

// key finds a key by its name; nil for none.
func (s *Schema) key(name string) *Key {
	if s != nil {
		for i := range s.Keys {
			if s.Keys[i].Name == name {
				return &s.Keys[i]
			}
		}
	}
	return nil
}

// find finds a key of the file or of one of its tables.
func (s *Schema) find(name string) *Key {
	k := s.key(name)
	for i := 0; k == nil && s != nil && i < len(s.Keys); i++ {
		k = s.Keys[i].Of.key(name)
	}
	return k
}

func (s *Schema) names() []string {
	names := make([]string, len(s.Keys))
	for i, k := range s.Keys {
		names[i] = k.Name
	}
	return names
}

var bracketed = regexp.MustCompile(`^\s*\[+\s*(.*?)\s*\]*\s*(?:#.*)?$`)

// heading is the key whose tables a line in brackets begins, however it was
// typed; nil for none.
func (s *Schema) heading(line string) *Key {
	m := bracketed.FindStringSubmatch(line)
	if m == nil {
		return nil
	}
	k := s.key(strings.NewReplacer(" ", "-", "_", "-").Replace(strings.ToLower(m[1])))
	if k == nil || k.Of == nil {
		return nil
	}
	return k
}

// In finds the key that a line of some other text sets or begins, as if it stood
// in the file; nil for none.
func (s *Schema) In(line string) *Key {
	if k := s.heading(line); k != nil {
		return k
	}
	if m := assignment.FindStringSubmatch(line); m != nil {
		return s.key(m[1])
	}
	return nil
}

// head is the line above the settings of a table: "[own-target]".
func (k *Key) head() string {
	if k.Takes == Tables {
		return "[[" + k.Name + "]]"
	}
	return "[" + k.Name + "]"
}

// brackets says how tables begin, and bracketsHint what to write.
func (k *Key) brackets() string {
	if k.Takes == Tables {
		return k.Of.What + " begins with two brackets on each side"
	}
	return k.Of.What + " begins with one bracket on each side"
}

func (k *Key) bracketsHint() string {
	if k.Takes == Tables {
		return "write " + k.head() + " above each of them"
	}
	return "write " + k.head() + " above its settings"
}

// unknown tells of the keys in a table that its schema does not have.
func (f *File) unknown(in *Value, s *Schema) {
	for v := range in.Children() {
		k := s.key(v.Key)
		switch {
		case k == nil:
			text := fmt.Sprintf("%q is not a setting", short(v.Key))
			if s.What != "" {
				text += " of " + s.What
			}
			f.add(v.Line, text, f.whereTo(v.Key, s))
		case k.Of != nil:
			tables, _ := tablesOf(v)
			for _, table := range tables {
				f.unknown(table, k.Of)
			}
		}
	}
}

// whereTo says what was meant by a key, or where it belongs.
func (f *File) whereTo(key string, s *Schema) string {
	for _, k := range f.schema.Keys {
		switch {
		case k.Of == s && f.schema.key(key) != nil:
			return fmt.Sprintf("%s is a setting of the whole file: write it above %s", key, k.head())
		case s == f.schema && k.Of.key(key) != nil:
			return fmt.Sprintf("%s is a setting of %s: write it below %s", key, k.Of.What, k.head())
		}
	}
	return diag.Choice(key, s.names())
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
