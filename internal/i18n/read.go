package i18n

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"fmt"
	"slices"
	"sort"
	"strings"
	"unicode/utf8"

	goi18n "github.com/nicksnyder/go-i18n/v2/i18n"
	"github.com/pelletier/go-toml/v2/unstable"

	"homebuild/internal/diag"
)

// Limits of a file from a stranger.
const (
	maxFile    = 1 << 20 // bytes
	maxMessage = 600     // characters
	maxDepth   = 6       // parts of an id
	maxEntries = 10_000  // tables and texts; a whole language has about 2,000

	maxProblems = 200 // of one file; the rest waits until these are mended
)

// file is a language file as it was read.
type file struct {
	path     string // as a person knows it: "locales/es.toml"
	tag      string
	messages map[string]*message
	order    []string // ids as they stand in the file
	sum      [sha256.Size]byte
}

// message is what go-i18n read, with the lines it stands on.
type message struct {
	*goi18n.Message
	line int
	keys []keyLine // of the table; none for a plain string
}

// keyLine is a key of a message's table and the line it stands on.
type keyLine struct {
	key  string
	line int
}

// lineOf is the line of a key of the message, or of the message.
func (m *message) lineOf(key string) int {
	for _, k := range m.keys {
		if k.key == key {
			return k.line
		}
	}
	return m.line
}

// lineNear is the line of the first message in the table that an id belongs
// to, where a missing message should be added; the last line with a message
// when there is no such table.
func (f *file) lineNear(id string) int {
	table := strings.TrimSuffix(id, lastKey(id))
	last := 0
	for _, have := range f.order {
		last = max(last, f.messages[have].line)
		if strings.HasPrefix(have, table) {
			return f.messages[have].line
		}
	}
	return last
}

// text is the message's text of a plural category.
func (m *message) text(c category) string {
	return [...]string{m.Zero, m.One, m.Two, m.Few, m.Many, m.Other}[c]
}

// has reports whether the file writes the category down, be it empty.
func (m *message) has(c category) bool {
	if len(m.keys) == 0 {
		return c == other
	}
	return slices.ContainsFunc(m.keys, func(k keyLine) bool { return k.key == c.String() })
}

// leaf is one `key = "text"` of the file, by its whole name.
type leaf struct {
	name string
	line int
}

// reader walks the TOML once, for the names and texts that go-i18n wants and for
// the lines, which it does not keep. What no message may be is refused before
// go-i18n sees it.
type reader struct {
	parser   unstable.Parser
	lines    []int // offset of every line's first byte
	file     *file
	tree     *tree
	leaves   []leaf
	problems diag.Problems
}

// read reads one file. It returns nil with problems when the file cannot be
// understood at all.
func read(path, tag string, data []byte) (*file, diag.Problems) {
	r := &reader{tree: newTree(), file: &file{path: path, tag: tag, messages: make(map[string]*message, usualEntries), sum: sha256.Sum256(data)}}
	if len(data) > maxFile {
		r.problem(0, "the file is larger than %d bytes", "leave out what is not a message", maxFile)
		return nil, r.problems
	}
	r.lines = lineStarts(data)
	if at := invalidUTF8(data); at >= 0 {
		r.problem(r.lineAt(at), "these bytes are not UTF-8 text", "save the file as UTF-8")
		return nil, r.problems
	}
	r.walk(data)
	if len(r.problems) == 0 {
		r.checkTables()
	}
	if len(r.problems) > 0 {
		return nil, r.problems
	}
	if r.parse(); len(r.problems) > 0 {
		return nil, r.problems
	}
	return r.file, nil
}

func (r *reader) problem(line int, text, hint string, args ...any) {
	r.problems = append(r.problems, diag.Problem{File: r.file.path, Line: line, Text: fmt.Sprintf(text, args...), Hint: hint})
}

func lineStarts(data []byte) []int {
	starts := make([]int, 1, 1+bytes.Count(data, []byte{'\n'}))
	for i, b := range data {
		if b == '\n' {
			starts = append(starts, i+1)
		}
	}
	return starts
}

// lineAt is the number of the line that holds the byte.
func (r *reader) lineAt(offset int) int {
	return sort.SearchInts(r.lines, offset+1)
}

func invalidUTF8(data []byte) int {
	if utf8.Valid(data) {
		return -1
	}
	for i := 0; i < len(data); {
		c, size := utf8.DecodeRune(data[i:])
		if c == utf8.RuneError && size == 1 {
			return i
		}
		i += size
	}
	return -1
}

// walk lists every leaf, and grows the tree.
func (r *reader) walk(data []byte) {
	r.parser.Reset(data)
	table := scope{"", r.tree.root}
	for entries := 0; r.parser.NextExpression(); entries++ {
		if entries == maxEntries || len(r.leaves) > maxEntries {
			r.problem(0, "the file has more than %d names", "leave out what is not a message", maxEntries)
			return
		}
		switch e := r.parser.Expression(); e.Kind {
		case unstable.Table:
			table = r.header(e)
		case unstable.ArrayTable:
			_, line, _ := r.key("", e.Key())
			r.problem(line, "double brackets make a list, and a language file has none", "write the name in single brackets")
			return
		case unstable.KeyValue:
			if table.names != nil {
				r.keyValue(table, e)
			}
		}
		if len(r.problems) >= maxProblems {
			return
		}
	}
	var fault *unstable.ParserError
	if err := r.parser.Error(); errors.As(err, &fault) {
		r.problem(r.lineAt(int(r.parser.Range(fault.Highlight).Offset)), "this is not TOML: %s", `write key = "text", with both quotes`, fault.Message)
	} else if err != nil {
		r.problem(0, "this is not TOML: %v", "", err)
	}
}

func (r *reader) header(e *unstable.Node) scope {
	name, line, sound := r.key("", e.Key())
	if !sound {
		return scope{}
	}
	table, before := r.tree.open(name)
	r.once(line, before)
	return table
}

func (r *reader) keyValue(in scope, e *unstable.Node) {
	name, line, sound := r.key(in.name, e.Key())
	if !sound {
		return
	}
	switch v := e.Value(); v.Kind {
	case unstable.String:
		r.leaves = append(r.leaves, leaf{name, line})
		r.once(line, r.tree.put(in, name, string(v.Data)))
	case unstable.InlineTable:
		inline := scope{name, map[string]any{}}
		r.once(line, r.tree.put(in, name, inline.names))
		for it := v.Children(); it.Next(); {
			r.keyValue(inline, it.Node())
		}
	default:
		r.problem(line, "%s is not text", "put it in double quotes", name)
	}
}

// once tells of a name that was written before, if there is one.
func (r *reader) once(line int, before string) {
	if before == "" {
		return
	}
	hint := "write every name once"
	for _, l := range r.leaves {
		if l.line < line && strings.HasPrefix(l.name+".", before+".") {
			hint += fmt.Sprintf("; the first is on line %d", l.line)
			break
		}
	}
	r.problem(line, "%s is written a second time", hint, before)
}

// key reads a dotted key of a table, and the line it stands on.
func (r *reader) key(table string, it unstable.Iterator) (name string, line int, sound bool) {
	parts, before := 0, len(r.problems)
	if name = table; name != "" {
		parts = 1 + strings.Count(name, ".")
	}
	for it.Next() {
		if parts++; parts > maxDepth {
			continue
		}
		n := it.Node()
		if line == 0 {
			line = r.lineAt(int(n.Raw.Offset))
		}
		if !plainKey(n.Data) {
			r.problem(line, "%q is not a name", "use letters a to z, digits and hyphens", n.Data)
		}
		if name != "" {
			name += "."
		}
		name += string(n.Data)
	}
	if parts > maxDepth {
		r.problem(line, "a name has at most %d parts, this has %d", "look the name up in en.toml", maxDepth, parts)
	}
	return name, line, len(r.problems) == before
}

func plainKey(key []byte) bool {
	return len(key) > 0 && len(key) <= 60 && bytes.IndexFunc(key, func(c rune) bool {
		return c != '-' && (c < '0' || c > '9') && (c < 'a' || c > 'z') && (c < 'A' || c > 'Z')
	}) < 0
}

// parse hands the tree to go-i18n and joins what it read with the lines.
func (r *reader) parse() {
	// The bytes were read already: go-i18n is given what they say.
	messages, err := goi18n.ParseMessageBytes([]byte{'\n'}, func(_ []byte, v any) error {
		*v.(*any) = r.tree.root
		return nil
	})
	if err != nil {
		r.problem(0, "go-i18n cannot read the messages: %v", "", err)
		return
	}
	read := make(map[string]*goi18n.Message, len(messages))
	for _, m := range messages {
		read[m.ID] = m
	}
	for _, l := range r.leaves {
		id, key := l.name, ""
		if read[id] == nil {
			key = lastKey(id)
			id = strings.TrimSuffix(id, "."+key)
		}
		r.add(id, key, l.line, read[id])
	}
}

func (r *reader) add(id, key string, line int, m *goi18n.Message) {
	if m == nil {
		panic("i18n: go-i18n did not read " + id)
	}
	got := r.file.messages[id]
	if got == nil {
		got = &message{Message: m, line: line}
		r.file.messages[id] = got
		r.file.order = append(r.file.order, id)
	}
	if key != "" {
		got.keys = append(got.keys, keyLine{key, line})
		got.line = min(got.line, line)
	}
}
