package tomlfile

import (
	"fmt"
	"iter"
	"slices"
	"strings"
)

// Kind is what a value is, or what a key takes.
type Kind uint8

// The kinds. Word and Lines are what keys take; a value is then a Text.
const (
	Text    Kind = iota + 1
	Word         // a short text, most often one of a list
	Lines        // a text that may have several lines
	Number       // a whole number
	Decimal      // a number that is not whole
	Switch       // true or false
	Date         // a day, a time or both
	List         // of words
	Table        // name = { ... }, or [name] with its keys below
	Tables       // [[name]], once for each
)

// Value is a value of a file, with the line it stands on.
type Value struct {
	Key    string // the last part of its name; empty in a list
	Text   string // the text; for a number, a switch or a date what was typed
	Line   int
	Kind   Kind
	origin origin
	depth  uint8 // 0 for the file as a whole
	// Where a text stands, with its quotes: bytes from one up to another.
	from, to int32

	Parent            *Value // nil for the file as a whole
	first, last, next *Value // of its own values, and beside it
}

// origin is how a table came to be, which decides whether it may be written
// again (TOML 1.0.0, sections "Table", "Inline Table" and "Array of Tables").
type origin uint8

const (
	closed   origin = iota // a = ...: nothing can be added
	implied                // the a of [a.b]
	headed                 // [a]
	dotted                 // the a of a.b = ...
	repeated               // [[a]]
)

// Children are the values of a table or a list, in the order of the file.
func (v *Value) Children() iter.Seq[*Value] {
	return func(yield func(*Value) bool) {
		for child := v.first; child != nil && yield(child); child = child.next {
		}
	}
}

// Name is the whole name of a value, with dots: "own-target.largest".
func (v *Value) Name() string {
	parts := make([]string, 0, maxDepth)
	for ; v.Parent != nil; v = v.Parent {
		if v.Key != "" {
			parts = append(parts, v.Key)
		}
	}
	slices.Reverse(parts)
	return strings.Join(parts, ".")
}

// shown is a value as a person would write it.
func (v *Value) shown() string {
	switch v.Kind {
	case Text:
		return fmt.Sprintf("%q", short(v.Text))
	case List, Tables:
		return "a list"
	case Table:
		return "a table"
	}
	return short(v.Text)
}

// listed is a value as a list would hold it: "en, es" is two words.
func (v *Value) listed() string {
	words := strings.FieldsFunc(v.Text, func(c rune) bool { return c == ',' || c == ';' || c == ' ' })
	if v.Kind != Text || len(words) == 0 {
		return `"...", "..."`
	}
	for i, word := range words {
		words[i] = fmt.Sprintf("%q", word)
	}
	return strings.Join(words, ", ")
}
