package tomlfile

import (
	"fmt"
	"regexp"
	"strings"

	"homebuild/internal/diag"
)

// asked are the keys that a section was asked for: no other may stand there.
type asked struct {
	what string // what they are settings of: "a target"; empty for the file
	head string // the line above them: "[own-target]"
	keys []key
}

// key is a setting and what it takes.
type key struct {
	name             string
	takes            Kind
	low, high, usual int    // of a Number
	of               *asked // of a Table or of Tables
}

// key finds a key; nil for none.
func (a *asked) key(name string) *key {
	for i := range a.keys {
		if a.keys[i].name == name {
			return &a.keys[i]
		}
	}
	return nil
}

// find finds a key here or in one of the tables.
func (a *asked) find(name string) *key {
	k := a.key(name)
	for i := 0; k == nil && i < len(a.keys); i++ {
		if a.keys[i].of != nil {
			k = a.keys[i].of.find(name)
		}
	}
	return k
}

// note notes that a key was asked for.
func (a *asked) note(k key) *key {
	if have := a.key(k.name); have != nil {
		return have
	}
	a.keys = append(a.keys, k)
	return &a.keys[len(a.keys)-1]
}

var bracketed = regexp.MustCompile(`^\s*\[+\s*(.*?)\s*\]*\s*(?:#.*)?$`)

// begun is the key whose tables a line in brackets begins, however it was typed;
// nil for none.
func (a *asked) begun(line string) *key {
	m := bracketed.FindStringSubmatch(line)
	if m == nil {
		return nil
	}
	k := a.key(strings.NewReplacer(" ", "-", "_", "-").Replace(strings.ToLower(m[1])))
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
func (f *File) unknown(all *report, in *Value, a *asked) {
	for v := range in.Children() {
		switch k := a.key(v.Key); {
		case k == nil && "[["+v.Key+"]]" != passedOver:
			text := fmt.Sprintf("%q is not a setting", short(v.Key))
			if a.what != "" {
				text += " of " + a.what
			}
			all.add(v.Line, text, f.whereTo(v.Key, a))
		case k != nil && k.of != nil:
			tables, _ := tablesOf(v)
			for _, table := range tables {
				f.unknown(all, table, k.of)
			}
		}
	}
}

// whereTo says what was meant by a key, or where it belongs.
func (f *File) whereTo(typed string, a *asked) string {
	if a != &f.asked && f.asked.key(typed) != nil {
		return fmt.Sprintf("%s is a setting of the whole file: write it above %s", typed, a.head)
	}
	var names []string
	for _, k := range a.keys {
		if k.of != nil && k.of.key(typed) != nil {
			return fmt.Sprintf("%s is a setting of %s: write it below %s", typed, k.of.what, k.of.head)
		}
		names = append(names, k.name)
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
