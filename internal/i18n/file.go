package i18n

import (
	"crypto/sha256"
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/tomlfile"
)

// File is a language file that was read.
type File struct {
	Path     string // as a person knows it: "locales/es.toml"
	Tag      string
	Text     string     // of the file as a whole
	Messages []*Message // in the order of the file
	Events   []*Event   // in the order of the file

	byID   map[string]*Message
	events map[string]*Event
	sum    [sha256.Size]byte
}

// Message is the message with an id; nil for none.
func (f *File) Message(id string) *Message { return f.byID[id] }

// lineNear is the line of the first message in the table that an id belongs
// to, where a missing message should be added; the last line with a message
// when there is no such table.
func (f *File) lineNear(id string) int {
	table := id[:strings.LastIndexByte(id, '.')+1]
	last := 0
	for _, m := range f.Messages {
		last = max(last, m.Line)
		if strings.HasPrefix(m.ID, table) {
			return m.Line
		}
	}
	return last
}

// Parse reads the text of a language file. It returns nil with problems when the
// text cannot be understood at all.
func Parse(tag, text string) (*File, diag.Diagnostics) {
	doc := tomlfile.Parse(shownPath(tag), text, 1)
	f := &File{Path: shownPath(tag), Tag: tag, Text: text}
	if problems := doc.Problems(); len(problems) > 0 {
		return nil, problems
	}
	r := fileReader{file: f, tables: map[*tomlfile.Value]*Message{}}
	f.sum = sumOf(doc)
	messages := make([]*tomlfile.Value, 0, 2000)
	for v := range doc.Values() {
		if r.check(v); !inEvent(v) {
			messages = append(messages, v)
		}
	}
	for _, v := range messages {
		r.add(v)
	}
	r.readEvents(doc.Root)
	if len(r.problems) > 0 {
		r.problems.Sort()
		return nil, r.problems
	}
	f.byID = make(map[string]*Message, len(f.Messages))
	for _, m := range f.Messages {
		m.split()
		f.byID[m.ID] = m
	}
	f.events = make(map[string]*Event, len(f.Events))
	for _, e := range f.Events {
		f.events[e.ID] = e
	}
	return f, nil
}

// fileReader makes messages of the values of a file.
type fileReader struct {
	file     *File
	tables   map[*tomlfile.Value]*Message // tables that are messages; nil until one of their texts is read
	slab     []Message
	problems diag.Diagnostics
}

func (r *fileReader) problem(v *tomlfile.Value, hint, text string, args ...any) {
	r.problems = append(r.problems, diag.Diagnostic{File: r.file.Path, Line: v.Line, Text: fmt.Sprintf(text, args...), Hint: hint})
}

// refusedKeys are what go-i18n would read besides messageKeys, and both of them
// in any case of letters; they would change how a message is read.
var refusedKeys = []string{"id", "leftdelim", "rightdelim", "translation"}

// check refuses what no message may be, and finds the tables that are messages.
func (r *fileReader) check(v *tomlfile.Value) {
	switch {
	case v.Key == "":
		return // in a list, which is told
	case v.Kind == tomlfile.Tables:
		r.problem(v, "write the name in single brackets", "double brackets make a list, and a language file has none")
	case v.Kind != tomlfile.Text && v.Kind != tomlfile.Table:
		r.problem(v, "put it in double quotes", "%s is not text", v.Name())
	case !plainKey(v.Key):
		r.problem(v, "use letters a to z, digits and hyphens", "%q is not a name", v.Key)
	}
	if lower := strings.ToLower(v.Key); v.Kind == tomlfile.Text && !inEvent(v) && (slices.Contains(messageKeys, lower) || slices.Contains(refusedKeys, lower)) {
		if v.Parent.Parent == nil {
			r.problem(v, "put it under the name of its message, in single brackets", "%q stands outside a message", v.Key)
			return
		}
		r.tables[v.Parent] = nil
	}
}

func plainKey(key string) bool {
	return key != "" && len(key) <= 60 && strings.IndexFunc(key, func(c rune) bool {
		return c != '-' && (c < '0' || c > '9') && (c < 'a' || c > 'z') && (c < 'A' || c > 'Z')
	}) < 0
}

// add puts a text into its message.
func (r *fileReader) add(v *tomlfile.Value) {
	m, inMessage := r.tables[v.Parent]
	key := slices.Index(messageKeys, v.Key)
	switch {
	case inMessage && (key < 0 || v.Kind != tomlfile.Text):
		r.notOfMessage(v)
	case v.Kind != tomlfile.Text:
	case !inMessage:
		m = r.message(v, v.Line)
		m.Alone, m.Other, m.lines[Other] = true, v.Text, int32(v.Line)
	default:
		if m == nil {
			m = r.message(v.Parent, v.Line)
			r.tables[v.Parent] = m
		}
		*m.field(key), m.lines[key] = v.Text, int32(v.Line)
	}
}

// message makes the message of a text or of a table, which begins on a line.
func (r *fileReader) message(v *tomlfile.Value, line int) *Message {
	if len(r.slab) == cap(r.slab) {
		r.slab = make([]Message, 0, 64)
	}
	r.slab = append(r.slab, Message{Line: line})
	m := &r.slab[len(r.slab)-1]
	m.ID = v.Name()
	r.file.Messages = append(r.file.Messages, m)
	return m
}

// notOfMessage tells of a key that the table of a message may not have: a
// misspelt plural category would make go-i18n stop, without a line, or read a
// new message.
func (r *fileReader) notOfMessage(v *tomlfile.Value) {
	id := v.Parent.Name()
	switch {
	case slices.Contains(refusedKeys, strings.ToLower(v.Key)):
		r.problem(v, "leave it out", "%s: %q is not allowed in a message", id, v.Key)
	case slices.Contains(Genders, v.Key):
		r.problem(v, "keep only the gender forms; a hash goes inside each of them", "%s: the form %q stands beside the text of the message", id, v.Key)
	default:
		r.problem(v, diag.Choice(v.Key, messageKeys), "%s: %q is not a plural category", id, v.Key)
	}
}
