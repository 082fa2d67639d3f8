package tomlfile

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"github.com/pelletier/go-toml/v2"
)

// Set gives a setting another value in the text of a file, and leaves every other
// line as it is. The name is that of a key, or of a key in a table with a dot
// between: "focus", "note.es". The value is TOML; see Quote. A setting that is not
// there yet takes the place of a remark that shows it, "# focus = ...", or stands
// behind the others.
func Set(text, name, value string) string {
	e := newEdit(text)
	table, key := split(name)
	line := key + " = " + value
	if v := e.find(table, key); v != nil && !v.Parent.onOneLine() {
		if v.Parent.origin == dotted {
			line = table + "." + line
		}
		return e.replace(e.block(v), line)
	}
	if table == "" {
		return e.add(line)
	}
	v := e.find("", table)
	switch {
	case v == nil:
		return strings.TrimRight(text, "\n") + "\n\n[" + table + "]\n" + line + "\n"
	case v.origin == dotted:
		return e.insert(e.block(v.last).to, table+"."+line)
	case v.onOneLine(): // its values get lines of their own
		text = Remove(text, table)
		for child := range v.Children() {
			text = Set(text, table+"."+child.Key, Quote(child.Text))
		}
		return Set(text, name, value)
	case v.last != nil:
		return e.insert(e.block(v.last).to, line)
	}
	return e.insert(v.Line, line)
}

// Remove takes a setting, or a whole table, out of the text of a file.
func Remove(text, name string) string {
	e := newEdit(text)
	v := e.find(split(name))
	if v == nil {
		return text
	}
	return e.replace(e.block(v))
}

// Append puts one more table of a kind behind all else: [[name]] with its lines.
func Append(text, name string, body []string) string {
	return strings.TrimRight(text, "\n") + "\n\n[[" + name + "]]\n" + strings.Join(body, "\n") + "\n"
}

// RemoveTable takes the i-th table of [[name]] out of the text of a file.
func RemoveTable(text, name string, i int) string {
	e := newEdit(text)
	v := e.find("", name)
	if v == nil {
		return text
	}
	tables, _ := tablesOf(v)
	if i >= len(tables) {
		return text
	}
	return e.replace(e.block(tables[i]))
}

// Quote is a text as TOML: on one line in straight quotes, or on lines of its own
// between three.
func Quote(text string) string {
	text = strings.ReplaceAll(text, "\r\n", "\n")
	if !strings.ContainsFunc(text, func(c rune) bool { return c < ' ' || c == 0x7f || c == '"' || c == '\\' }) {
		return `"` + text + `"`
	}
	if !strings.Contains(text, "\n") {
		data, err := toml.Marshal(map[string]string{"v": text})
		if err != nil {
			panic(err) // a text can always be written
		}
		return strings.TrimSpace(strings.TrimPrefix(string(data), "v = "))
	}
	var b strings.Builder
	for _, c := range strings.TrimRight(text, "\n") {
		switch {
		case c == '\\' || c == '"':
			b.WriteString(`\` + string(c))
		case c < ' ' && c != '\n' && c != '\t' || c == 0x7f:
			fmt.Fprintf(&b, `\u%04X`, c)
		default:
			b.WriteRune(c)
		}
	}
	return `"""` + "\n" + b.String() + "\n" + `"""`
}

// QuoteList is a list of words as TOML.
func QuoteList(words []string) string {
	quoted := make([]string, len(words))
	for i, w := range words {
		quoted[i] = Quote(w)
	}
	return "[" + strings.Join(quoted, ", ") + "]"
}

// edit is a text that is read in order to change some lines of it.
type edit struct {
	*File
	lines []string
}

// span is lines from one up to another, numbered from 0.
type span struct{ from, to int }

func newEdit(text string) edit {
	text = strings.ReplaceAll(text, "\r\n", "\n")
	return edit{Parse("", text, 1), strings.Split(text, "\n")}
}

// split parts the name of a setting: in no table, or in one.
func split(name string) (table, key string) {
	if table, key, inTable := strings.Cut(name, "."); inTable {
		return table, key
	}
	return "", name
}

func (e edit) find(table, key string) *Value {
	in := e.Root
	if table != "" {
		if in = e.tree.at[place{e.Root, table}]; in == nil {
			return nil
		}
	}
	return e.tree.at[place{in, key}]
}

// block is the lines of a value, with all that belongs to it: up to the next
// value that does not, but without the remarks above that one.
func (e edit) block(v *Value) span {
	b := span{v.Line - 1, len(e.lines)}
	for next := range e.Values() {
		if row := next.Line - 1; row > b.from && row < b.to && next.Key != "" && !next.within(v) {
			b.to = row
		}
	}
	for _, u := range e.unreadable {
		if row := u.line - 1; row > b.from && row < b.to {
			b.to = row
		}
	}
	for b.to > b.from+1 && !said(e.lines[b.to-1]) {
		b.to--
	}
	return b
}

// onOneLine reports whether a table is written name = { ... }.
func (v *Value) onOneLine() bool { return v.Kind == Table && v.Parent != nil && v.origin == closed }

// within reports whether a value belongs to another, or to a table of its list.
func (v *Value) within(of *Value) bool {
	for ; v != nil; v = v.Parent {
		if v == of {
			return true
		}
	}
	return false
}

// said reports whether a line is no remark and not empty. The heading of the next
// table is neither of a value, nor above one.
func said(line string) bool {
	line = strings.TrimSpace(line)
	return line != "" && !strings.HasPrefix(line, "#") && !heading().MatchString(line)
}

// add puts a setting in front of all tables: where a remark shows it, or last.
func (e edit) add(line string) string {
	key, _, _ := strings.Cut(line, " ")
	first := slices.IndexFunc(e.lines, heading().MatchString)
	if first < 0 {
		first = len(e.lines)
	}
	shown := regexp.MustCompile(`^#\s*` + regexp.QuoteMeta(key) + `\s*=`)
	for i, have := range e.lines[:first] {
		if shown.MatchString(have) {
			return e.replace(span{i, i + 1}, line)
		}
	}
	last := 0
	for child := range e.Root.Children() {
		if child.origin == closed || child.origin == dotted {
			last = max(last, e.block(child).to)
		}
	}
	return e.insert(last, line)
}

func (e edit) insert(at int, line string) string { return e.replace(span{at, at}, line) }

func (e edit) replace(b span, with ...string) string {
	return strings.Join(slices.Replace(slices.Clone(e.lines), b.from, b.to, with...), "\n")
}

// At names the setting that stands on a line of the text of a file: "focus",
// "note.es", "own-story.in.es"; of tables that come more than once, index says in
// the how manyth it is, from 0. Name is empty for a line above all settings.
func At(text string, line int) (name string, index int) {
	e := newEdit(text)
	var found *Value
	for v := range e.Values() {
		if v.Line <= line && v.Key != "" {
			found = v
		}
	}
	if found == nil || line < 1 {
		return "", 0
	}
	for v := found; v.Parent != nil; v = v.Parent {
		if tables, _ := tablesOf(v.Parent); v.Parent.Kind == Tables {
			index = slices.IndexFunc(tables, func(t *Value) bool { return t == v })
		}
	}
	return found.Name(), index
}

// Get is the value of a setting in the text of a file as it is written there, its
// text where it is one; empty where it is left out, or holds nothing.
func Get(text, name string) string {
	e := newEdit(text)
	v := e.find(split(name))
	switch {
	case v == nil:
		return ""
	case v.Text == "" && v.first != nil:
		return strings.TrimSpace(strings.Join(e.lines[e.block(v).from:e.block(v).to], "\n"))
	}
	return v.Text
}
