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
	"github.com/pelletier/go-toml/v2"
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

// leaf is one `key = "text"` of the file with its whole path.
type leaf struct {
	path []string
	line int
}

// reader walks the TOML once for the lines, which go-i18n does not keep, and
// refuses what no message may be before go-i18n sees it.
type reader struct {
	parser   unstable.Parser
	lines    []int // offset of every line's first byte
	file     *file
	leaves   []leaf
	problems diag.Problems
}

// read reads one file. It returns nil with problems when the file cannot be
// understood at all.
func read(path, tag string, data []byte) (*file, diag.Problems) {
	r := &reader{file: &file{path: path, tag: tag, messages: map[string]*message{}, sum: sha256.Sum256(data)}}
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
	r.parse(data)
	if len(r.problems) > 0 {
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

// walk lists every leaf.
func (r *reader) walk(data []byte) {
	r.parser.Reset(data)
	var table []string
	for entries := 0; r.parser.NextExpression(); entries++ {
		if entries == maxEntries || len(r.leaves) > maxEntries {
			r.problem(0, "the file has more than %d names", "leave out what is not a message", maxEntries)
			return
		}
		switch e := r.parser.Expression(); e.Kind {
		case unstable.Table:
			table, _ = r.key(nil, e.Key())
		case unstable.ArrayTable:
			_, line := r.key(nil, e.Key())
			r.problem(line, "double brackets make a list, and a language file has none", "write the name in single brackets")
			return
		case unstable.KeyValue:
			r.keyValue(table, e)
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

func (r *reader) keyValue(prefix []string, e *unstable.Node) {
	path, line := r.key(prefix, e.Key())
	switch v := e.Value(); v.Kind {
	case unstable.String:
		r.leaves = append(r.leaves, leaf{path, line})
	case unstable.InlineTable:
		for it := v.Children(); it.Next(); {
			r.keyValue(path, it.Node())
		}
	default:
		r.problem(line, "%s is not text", "put it in double quotes", strings.Join(path, "."))
	}
}

// key reads a dotted key and the line it stands on.
func (r *reader) key(prefix []string, it unstable.Iterator) ([]string, int) {
	path := slices.Clip(prefix)
	line, parts := 0, len(prefix)
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
		path = append(path, string(n.Data))
	}
	if parts > maxDepth {
		r.problem(line, "a name has at most %d parts, this has %d", "look the name up in en.toml", maxDepth, parts)
	}
	return path, line
}

func plainKey(key []byte) bool {
	return len(key) > 0 && len(key) <= 60 && bytes.IndexFunc(key, func(c rune) bool {
		return c != '-' && (c < '0' || c > '9') && (c < 'a' || c > 'z') && (c < 'A' || c > 'Z')
	}) < 0
}

// parse hands the file to go-i18n and joins what it read with the lines.
func (r *reader) parse(data []byte) {
	messages, err := goi18n.ParseMessageBytes(data, toml.Unmarshal)
	var fault *toml.DecodeError
	if errors.As(err, &fault) {
		line, _ := fault.Position()
		r.problem(line, "this is not TOML: %s", "write every name once", strings.TrimPrefix(fault.Error(), "toml: "))
		return
	}
	if err != nil {
		r.problem(0, "go-i18n cannot read the messages: %v", "", err)
		return
	}
	read := make(map[string]*goi18n.Message, len(messages))
	for _, m := range messages {
		read[m.ID] = m
	}
	for _, l := range r.leaves {
		id, key := strings.Join(l.path, "."), ""
		if read[id] == nil {
			key = l.path[len(l.path)-1]
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
