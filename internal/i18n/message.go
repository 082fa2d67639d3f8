package i18n

import (
	"slices"
	"strings"

	goi18n "github.com/nicksnyder/go-i18n/v2/i18n"
)

// Category is a plural category of CLDR (Unicode LDML, part 3, "Language
// Plural Rules").
type Category uint8

// The categories, in CLDR's order.
const (
	Zero Category = iota
	One
	Two
	Few
	Many
	Other
)

// messageKeys are the keys that the table of a message may have: the categories,
// and what go-i18n keeps beside them.
var messageKeys = []string{"zero", "one", "two", "few", "many", "other", "description", "hash"}

// String is CLDR's name of the category.
func (c Category) String() string { return messageKeys[c] }

// Categories lists all of them.
func Categories() []Category { return []Category{Zero, One, Two, Few, Many, Other} }

// Message is a message of a file, as go-i18n holds it: its id, its texts, the
// note for translators and the hash of the English that it was made from. Beside
// them is where each of these stands.
type Message struct {
	goi18n.Message
	Line   int    // where it begins
	Alone  bool   // key = "text", without a table
	Family string // the first part of its id: "thing"
	Block  string // the optional block that it belongs to: "thing.shell"; empty for a required message
	Key    string // the last part of its id: "count-accusative"
	Gender string // of the person that this form of a sentence is about; empty for none

	English *Message // that it is held against; an empty one for none

	gone bool // English has no such message, and nothing asks for it

	lines [8]int32 // of messageKeys; 0 for what is not written
	source
}

// field is the part of a message that a key of its table fills, by the place of
// the key in messageKeys.
func (m *Message) field(key int) *string {
	return [...]*string{&m.Zero, &m.One, &m.Two, &m.Few, &m.Many, &m.Other, &m.Description, &m.Hash}[key]
}

// Text is the text of a plural category.
func (m *Message) Text(c Category) string { return *m.field(int(c)) }

// Wrote reports whether the file writes the category down, be it empty.
func (m *Message) Wrote(c Category) bool { return m.lines[c] > 0 }

// LineOf is the line of a key of the message, or of the message.
func (m *Message) LineOf(key string) int {
	if i := slices.Index(messageKeys, key); i >= 0 && m.lines[i] > 0 {
		return int(m.lines[i])
	}
	return m.Line
}

// HasForms reports whether the message has a text for each plural category.
func (m *Message) HasForms() bool { return m.isPlural() }

// Gone reports whether English has no such message; it is known once a file was proved.
func (m *Message) Gone() bool { return m.gone }

// sentence is the id without the gender.
func (m *Message) sentence() string {
	if m.Gender == "" {
		return m.ID
	}
	return m.ID[:len(m.ID)-len(m.Gender)-1]
}

// split finds the parts of the id.
func (m *Message) split() {
	m.Family, _, _ = strings.Cut(m.ID, ".")
	m.Block = blockOf(m.ID)
	m.Key = m.ID[strings.LastIndexByte(m.ID, '.')+1:]
	if m.Key != m.ID && slices.Contains(Genders, m.Key) {
		m.Gender = m.Key
	}
}

// optional lists the families of messages that a language may leave out block
// by block, with the number of parts in a block's id: the thing "thing.shell".
// All other messages are required; events are no messages.
var optional = map[string]int{"thing": 2, "character": 2, "setting": 2}

// blockOf is the id of the optional block that a message belongs to; empty for
// a required message.
func blockOf(id string) string {
	family, _, _ := strings.Cut(id, ".")
	parts := optional[family]
	if parts == 0 {
		return ""
	}
	end := 0
	for range parts {
		dot := strings.IndexByte(id[end:], '.')
		if dot < 0 {
			return id
		}
		end += dot + 1
	}
	return id[:end-1]
}

// Counted and People report whether the messages of a family are forms of
// something to count, or of somebody's name. Both may have a gender.
func Counted(family string) bool { return family == "thing" }

// People reports whether the messages of a family are forms of a name.
func People(family string) bool { return family == "character" }

// Genders are CLDR's grammatical genders (grammaticalFeatures). A message that
// agrees with the person it is about has one form for each.
var Genders = []string{"animate", "common", "feminine", "inanimate", "masculine", "neuter", "personal"}

// formOf splits the key of a counted block: "count-accusative" is the
// accusative of count.
func formOf(key string) (kind, form string) {
	kind, form, _ = strings.Cut(key, "-")
	return kind, form
}
