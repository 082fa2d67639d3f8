package tomlfile

import (
	"errors"
	"fmt"
	"strings"

	"github.com/pelletier/go-toml/v2/unstable"

	"homebuild/internal/diag"
)

// Limits of a file from a stranger.
const (
	maxDepth    = 8       // parts of a name, and lists in each other
	maxValues   = 150_000 // tables, texts and items of lists; a language has about 3,000
	maxProblems = 200     // told of one file; the rest waits until these are mended
)

// report gathers what is wrong with a file.
type report struct {
	path     string
	problems diag.Diagnostics
}

func (r *report) add(line int, text, hint string) {
	if len(r.problems) < maxProblems {
		r.problems = append(r.problems, diag.Diagnostic{File: r.path, Line: line, Text: text, Hint: hint})
	}
}

// place is where a value stands: under which key of which table.
type place struct {
	in  *Value
	key string
}

// tree is what a text says.
type tree struct {
	report
	text   string
	parser unstable.Parser
	root   *Value
	at     map[place]*Value
	values [][]Value // in the order of the text, in pieces that never move
	count  int

	line, offset int // of the place in the text that was asked for last
	duplicates   []duplicate
}

// duplicate is a name that was written before.
type duplicate struct {
	first *Value
	line  int
}

// skipped is the heading of a table of which nothing is told.
const skipped = "[[skipped]]"

// piece is how many values are made at once; the first piece of a short file is smaller.
const piece = 256

// newTree makes an empty tree for a text that begins on a line of the file.
func newTree(path, text string, first int) *tree {
	usual := strings.Count(text, "=") + 1 // about one value for each; a line may hold several
	t := &tree{report: report{path: path}, text: text, at: make(map[place]*Value, usual), line: first}
	t.values = append(t.values, make([]Value, 0, min(usual, piece)))
	t.root = &Value{Kind: Table, Line: first}
	return t
}

// walk grows the tree from the text, up to the place that is no TOML, if there
// is one.
func (t *tree) walk() *unstable.ParserError {
	t.parser.Reset([]byte(t.text))
	table := t.root
	for t.parser.NextExpression() {
		switch e := t.parser.Expression(); {
		case e.Kind != unstable.KeyValue:
			table = t.header(e)
		case table != nil: // else what is wrong with the header was told
			t.keyValue(table, e)
		}
		if len(t.problems)+len(t.duplicates) >= maxProblems {
			return nil
		}
		if t.count > maxValues {
			t.add(0, fmt.Sprintf("the file has more than %d names", maxValues), "take out what does not belong here")
			return nil
		}
	}
	var wrong *unstable.ParserError
	errors.As(t.parser.Error(), &wrong)
	return wrong
}

// lineAt is the line of the file that a byte of the text stands on.
func (t *tree) lineAt(offset int) int {
	if offset < t.offset {
		t.line -= strings.Count(t.text[offset:t.offset], "\n")
	} else {
		t.line += strings.Count(t.text[t.offset:offset], "\n")
	}
	t.offset = offset
	return t.line
}

// put puts a new value behind the others of a table or a list; nil when that
// would be one too many, or too deep.
func (t *tree) put(in *Value, key string, kind Kind, line int) *Value {
	if in.depth == maxDepth {
		t.add(line, fmt.Sprintf("names and lists stand more than %d deep in each other", maxDepth), "write it with fewer dots and brackets")
	}
	if in.depth == maxDepth || t.count > maxValues {
		return nil
	}
	last := len(t.values) - 1
	if len(t.values[last]) == cap(t.values[last]) {
		t.values = append(t.values, make([]Value, 0, piece))
		last++
	}
	t.values[last] = append(t.values[last], Value{Key: key, Kind: kind, Line: line, Parent: in, depth: in.depth + 1})
	t.count++
	v := &t.values[last][len(t.values[last])-1]
	if in.first == nil {
		in.first = v
	} else {
		in.last.next = v
	}
	in.last = v
	if key != "" {
		t.at[place{in, key}] = v
	}
	return v
}

// table puts a new table behind the others; nil when that cannot be.
func (t *tree) table(in *Value, key string, of origin, line int) *Value {
	v := t.put(in, key, Table, line)
	if v != nil {
		v.origin = of
	}
	return v
}

// header makes the table of [name], or one more of [[name]]; nil when there is
// something wrong with it.
func (t *tree) header(e *unstable.Node) *Value {
	in := t.root
	for it := e.Key(); in != nil && it.Next(); {
		key, line := t.words(it.Node()), t.lineAt(int(it.Node().Raw.Offset))
		v := t.at[place{in, key}]
		switch last := it.IsLast(); {
		case last && e.Kind == unstable.ArrayTable:
			return t.repeat(in, v, key, line)
		case v == nil:
			v = t.table(in, key, implied, line)
		case v.origin == closed || last && v.origin != implied:
			t.duplicates = append(t.duplicates, duplicate{v, line})
			return nil
		case v.origin == repeated:
			v = v.last
		}
		in = v
	}
	if in != nil && in.origin == implied {
		in.origin, in.Line = headed, t.line
	}
	return in
}

// repeat begins one more table of [[key]]; v is what has that name so far.
func (t *tree) repeat(in, v *Value, key string, line int) *Value {
	switch {
	case v == nil:
		if v = t.put(in, key, Tables, line); v == nil {
			return nil
		}
		v.origin = repeated
	case v.origin != repeated:
		t.duplicates = append(t.duplicates, duplicate{v, line})
		return nil
	}
	return t.table(v, "", headed, line)
}

// keyValue puts a value where a key of a table leads, which may be dotted.
func (t *tree) keyValue(in *Value, e *unstable.Node) {
	for it := e.Key(); in != nil && it.Next(); {
		key, line := t.words(it.Node()), t.lineAt(int(it.Node().Raw.Offset))
		v := t.at[place{in, key}]
		switch last := it.IsLast(); {
		case v != nil && (last || v.origin != dotted):
			t.duplicates = append(t.duplicates, duplicate{v, line})
			return
		case last:
			t.value(in, key, line, e.Value())
		case v == nil:
			v = t.table(in, key, dotted, line)
		}
		in = v
	}
}

// kinds are those of the library's values.
var kinds = map[unstable.Kind]Kind{
	unstable.String: Text, unstable.Integer: Number, unstable.Float: Decimal, unstable.Bool: Switch,
	unstable.LocalDate: Date, unstable.LocalTime: Date, unstable.LocalDateTime: Date, unstable.DateTime: Date,
	unstable.Array: List, unstable.InlineTable: Table,
}

// value puts a value into a table, or into a list when it has no key.
func (t *tree) value(in *Value, key string, line int, n *unstable.Node) {
	if n.Raw.Length > 0 && key == "" {
		line = t.lineAt(int(n.Raw.Offset))
	}
	v := t.put(in, key, kinds[n.Kind], line)
	if v == nil {
		return
	}
	for it := n.Children(); it.Next(); {
		if v.Kind == Table {
			t.keyValue(v, it.Node())
		} else {
			t.value(v, "", line, it.Node())
		}
	}
	if n.Data != nil {
		v.Text = t.words(n)
		v.from, v.to = int32(n.Raw.Offset), int32(n.Raw.Offset+n.Raw.Length)
	}
}

// words are the words of a key or a value, out of the text itself where it has
// them as they are.
func (t *tree) words(n *unstable.Node) string {
	from, to := int(n.Raw.Offset), int(n.Raw.Offset+n.Raw.Length)
	if quotes := to - from - len(n.Data); quotes == 0 || quotes == 2 {
		from, to = from+quotes/2, to-quotes/2
		if t.text[from:to] == string(n.Data) {
			return t.text[from:to]
		}
	}
	return string(n.Data)
}
