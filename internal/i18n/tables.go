package i18n

import (
	"slices"
	"strings"

	"homebuild/internal/diag"
)

// messageKeys are the keys that a message table may have. go-i18n knows more
// (id, leftDelim, rightDelim, translation, and any case of letters); they
// would change how the message is read and are refused.
var (
	messageKeys  = append(categoryNames[:], "description", "hash")
	refusedKeys  = []string{"id", "leftdelim", "rightdelim", "translation"}
	reservedKeys = append(slices.Clone(messageKeys), refusedKeys...)
)

// checkTables finds tables that are half a message: a misspelt plural category
// would make go-i18n stop, without a line, or read a new message.
func (r *reader) checkTables() {
	isMessage := make(map[string]bool, len(r.leaves))
	for _, l := range r.leaves {
		if key := lastKey(l.name); slices.Contains(reservedKeys, strings.ToLower(key)) {
			isMessage[strings.TrimSuffix(strings.TrimSuffix(l.name, key), ".")] = true
		}
	}
	for _, l := range r.leaves {
		for from := 0; from <= len(l.name); {
			end := partEnd(l.name, from)
			if table := l.name[:max(0, from-1)]; isMessage[table] {
				r.checkMessageKey(table, l.name[from:end], l.line)
			}
			from = end + 1
		}
	}
}

func (r *reader) checkMessageKey(table, key string, line int) {
	switch {
	case table == "" && slices.Contains(reservedKeys, strings.ToLower(key)):
		r.problem(line, "%q stands outside a message", "put it under the name of its message, in single brackets", key)
	case table == "":
	case slices.Contains(messageKeys, key):
	case slices.Contains(refusedKeys, strings.ToLower(key)):
		r.problem(line, "%s: %q is not allowed in a message", "leave it out", table, key)
	case slices.Contains(genders, key):
		r.problem(line, "%s: the form %q stands beside the text of the message", "keep only the gender forms; a hash goes inside each of them", table, key)
	default:
		hint := "a message has description, hash and the plural categories zero, one, two, few, many, other"
		if near := diag.Nearest(key, messageKeys); near != "" {
			hint = "write " + near
		}
		r.problem(line, "%s: %q is not a plural category", hint, table, key)
	}
}
