package tomlfile

import (
	"slices"
	"strings"
)

// Put gives a text of a file another value and leaves every other byte as it is.
// The name is whole, "learn.next.other", and the value is TOML; see Quote. A text that is not there yet stands behind
// the last one of its table, in the way in which that table is written. Put reports
// false, and the text as it was, where there is no such table, or what has the name
// is no text.
func Put(text, name, value string) (string, bool) {
	f := Parse("", text, 1)
	if len(f.Problems()) > 0 {
		return text, false
	}
	parts := strings.Split(name, ".")
	key := parts[len(parts)-1]
	table := f.named(parts[:len(parts)-1])
	if table == nil {
		return text, false
	}
	if v := f.tree.at[place{table, key}]; v != nil {
		if v.Kind != Text {
			return text, false
		}
		return text[:v.from] + value + text[v.to:], true
	}
	at, line := table.end(), key+" = "+value
	switch {
	case at == 0 && table.origin == headed: // nothing stands below its heading
		at = f.lineStart(table.Line)
	case at == 0:
		return text, false
	case table.origin == closed && table.last.Kind == Text:
		return text[:at] + ", " + line + text[at:], true
	case table.origin == dotted:
		line = table.Key + "." + line
	case table.origin != headed:
		return text, false
	}
	return insertLine(text, at, line), true
}

// PutTable writes one more table, heading and lines, behind all that belongs to
// another one, or at the end of the text where that is not written as a table.
func PutTable(text, behind string, lines []string) string {
	f := Parse("", text, 1)
	table := f.named(strings.Split(behind, "."))
	body := strings.Join(lines, "\n")
	if table != nil && table.origin == headed {
		if end := table.end(); end > 0 {
			return insertLine(text, end, "\n"+body)
		}
	}
	return strings.TrimRight(text, "\n") + "\n\n" + body + "\n"
}

// Headed reports whether a table is written with a heading, [name].
func Headed(text, name string) bool {
	v := Parse("", text, 1).named(strings.Split(name, "."))
	return v != nil && v.Kind == Table && v.origin == headed
}

// insertLine puts a line behind the one in which a place of the text is.
func insertLine(text string, at int, line string) string {
	if end := strings.IndexByte(text[at:], '\n'); end >= 0 {
		at += end
	} else {
		at = len(text)
	}
	if at > 0 && text[at-1] == '\r' {
		at--
		line = "\r\n" + strings.ReplaceAll(line, "\n", "\r\n")
	} else {
		line = "\n" + line
	}
	return text[:at] + line + text[at:]
}

// named is the value with a name, by its parts; nil for none.
func (f *File) named(parts []string) *Value {
	v := f.Root
	for _, key := range parts {
		if v = f.tree.at[place{v, key}]; v == nil {
			return nil
		}
	}
	return v
}

// end is where the last of a table's own texts ends, or of its tables on one line; 0
// for none.
func (v *Value) end() int {
	end := 0
	for child := range v.Children() {
		switch {
		case child.Kind == Text:
			end = max(end, int(child.to))
		case child.Kind == Table && (child.origin == closed || child.origin == dotted):
			end = max(end, child.end())
		}
	}
	return end
}

// lineStart is where a line of the text begins.
func (f *File) lineStart(line int) int {
	at := 0
	for range line - 1 {
		at += strings.IndexByte(f.tree.text[at:], '\n') + 1
	}
	return at
}

// Replace gives texts of a file other values, by their whole names, and leaves every
// other byte as it is; the values are TOML, see Quote. Left are the names that are not
// there, or are no texts, in their order.
func Replace(text string, values map[string]string) (replaced string, left []string) {
	f := Parse("", text, 1)
	type change struct {
		from, to int32
		value    string
	}
	var changes []change
	for name, value := range values {
		if v := f.named(strings.Split(name, ".")); v != nil && v.Kind == Text {
			changes = append(changes, change{v.from, v.to, value})
		} else {
			left = append(left, name)
		}
	}
	slices.Sort(left)
	slices.SortFunc(changes, func(a, b change) int { return int(a.from - b.from) })
	var b strings.Builder
	at := int32(0)
	for _, c := range changes {
		b.WriteString(text[at:c.from])
		b.WriteString(c.value)
		at = c.to
	}
	b.WriteString(text[at:])
	return b.String(), left
}
