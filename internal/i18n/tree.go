package i18n

import "strings"

// origin is how a name of a TOML file came to be, which decides whether it may
// be written again (TOML 1.0.0, sections "Keys", "Table" and "Inline Table").
type origin uint8

const (
	implied origin = iota + 1 // the a of [a.b]
	headed                    // [a]
	dotted                    // the a of a.b = "text"
	closed                    // a = "text", a = { b = "text" }: nothing can be added
)

// usualEntries is about how many names a whole language has.
const usualEntries = 2000

// tree is what a file says, name below name, as go-i18n wants it.
type tree struct {
	root    map[string]any
	origins map[string]origin // by the whole name: "strategy.doubles.about"
}

func newTree() *tree {
	return &tree{map[string]any{}, make(map[string]origin, usualEntries)}
}

// scope is a table that keys are written in; without names where something is
// wrong with its header, so that what follows waits until that is mended.
type scope struct {
	name  string // "strategy.doubles"; none at the start of a file
	names map[string]any
}

// open makes the table of a header. It names what was written before, if the
// header leads there.
func (t *tree) open(name string) (table scope, before string) {
	table = scope{name, t.root}
	for from := 0; from <= len(name); {
		end := partEnd(name, from)
		was, last := t.origins[name[:end]], end == len(name)
		switch {
		case was == closed, last && (was == headed || was == dotted):
			return scope{name: name}, name[:end]
		case last:
			t.origins[name] = headed
		case was == 0:
			t.origins[name[:end]] = implied
		}
		table.names = below(table.names, name[from:end])
		from = end + 1
	}
	return table, ""
}

// put puts a value where a key of a table leads, which may be dotted. It names
// what was written before, if the key leads there.
func (t *tree) put(in scope, name string, value any) (before string) {
	from, table := 0, in.names
	if in.name != "" {
		from = len(in.name) + 1
	}
	for {
		end := partEnd(name, from)
		was, last := t.origins[name[:end]], end == len(name)
		switch {
		case was != 0 && (last || was != dotted):
			return name[:end]
		case last:
			t.origins[name] = closed
			table[name[from:]] = value
			return ""
		}
		t.origins[name[:end]] = dotted
		table = below(table, name[from:end])
		from = end + 1
	}
}

// partEnd is where the part of a name ends that begins at from.
func partEnd(name string, from int) int {
	if dot := strings.IndexByte(name[from:], '.'); dot >= 0 {
		return from + dot
	}
	return len(name)
}

func below(table map[string]any, key string) map[string]any {
	sub, ok := table[key].(map[string]any)
	if !ok {
		sub = map[string]any{}
		table[key] = sub
	}
	return sub
}
