package tomlfile

import (
	"fmt"
	"strings"

	"homebuild/internal/diag"
)

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
	if diag.Nearest(typed, names) == "" { // all of them: the one that is looked for may be the last
		return "there are: " + strings.Join(names, ", ")
	}
	return diag.Choice(typed, names)
}

// maxWord keeps a message short when a whole paragraph was typed for a word.
const maxWord = 60

func short(typed string) string {
	if letters := []rune(typed); len(letters) > maxWord {
		return string(letters[:maxWord]) + "..."
	}
	return typed
}
