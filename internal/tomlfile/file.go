package tomlfile

import (
	"fmt"
	"iter"
	"strings"

	"github.com/pelletier/go-toml/v2/unstable"

	"homebuild/internal/diag"
)

// File is a file that was read.
type File struct {
	Root *Value
	// Example says what a setting looks like, for a line that is none.
	Example string

	found      report // by sections
	tree       *tree
	unreadable []unreadable
	schema     schema
}

// unreadable is a line that is no TOML, and what the library says about it.
type unreadable struct {
	line        int
	text, cause string
	fault       fault // of a text of several lines
}

// maxUnreadable is how many unreadable lines of a file are told at once.
const maxUnreadable = 20

// longestLine is what is looked at of a line that cannot be read, in bytes.
const longestLine = 2000

// Parse reads a text that begins on the line first of the file with that path.
// After a line that cannot be read it goes on without that line.
func Parse(path, text string, first int) *File {
	f := &File{found: report{path: path}}
	for range maxUnreadable {
		f.tree = newTree(path, text, first)
		wrong := f.tree.walk()
		if wrong == nil {
			break
		}
		var ok bool
		if text, ok = f.skip(text, wrong); !ok {
			break
		}
	}
	f.Root = f.tree.root
	return f
}

// Values are all values of the file in the order in which they stand there.
func (f *File) Values() iter.Seq[*Value] {
	return func(yield func(*Value) bool) {
		for _, piece := range f.tree.values {
			for i := range piece {
				if !yield(&piece[i]) {
					return
				}
			}
		}
	}
}

// Problems are all that is wrong: lines that cannot be read, names that are
// written twice, and, once the file was read as sections, what these found and
// keys that none of them asked for.
func (f *File) Problems() diag.Diagnostics {
	all := report{path: f.found.path}
	for _, u := range f.unreadable {
		text, hint := f.explain(u)
		all.add(u.line, text, hint)
	}
	for _, d := range f.tree.duplicates {
		text, hint := fmt.Sprintf("%q is written twice", d.first.Name()), fmt.Sprintf("keep one of the two; the first is on line %d", d.first.Line)
		if k := f.schema.key(d.first.Key); k != nil && k.takes == Tables && d.first.Parent == f.Root {
			text, hint = k.heading()
		}
		all.add(d.line, text, hint)
	}
	all.problems = append(all.problems, f.tree.problems...)
	if len(f.schema.keys) > 0 {
		f.unknown(&all, f.Root, &f.schema)
	}
	all.problems = append(all.problems, f.found.problems...)
	all.problems.Sort()
	return all.problems
}

// skip puts a line that cannot be read aside, with those that belong to it, and
// gives the text without them. What stands below a heading that cannot be read is
// passed over.
func (f *File) skip(text string, wrong *unstable.ParserError) (rest string, ok bool) {
	at := f.tree.lineAt(int(f.tree.parser.Range(wrong.Highlight).Offset))
	lines := strings.Split(text, "\n")
	row := at - f.tree.root.Line
	b := blockAt(lines, row, wrong.Message)
	if start := listStart(lines, row, wrong.Message); start < row {
		b = block{from: start, to: row, told: start}
	}
	line := lines[b.told][:min(len(lines[b.told]), longestLine)]
	f.unreadable = append(f.unreadable, unreadable{f.tree.root.Line + b.told, line, wrong.Message, b.fault})
	ok = strings.TrimSpace(lines[b.from]) != "" && line != skipped
	clear(lines[b.from:b.to])
	if strings.HasPrefix(strings.TrimSpace(line), "[") {
		lines[b.from] = skipped
	}
	return strings.Join(lines, "\n"), ok
}

// listStart is the line of a list that was never closed: the TOML library finds
// out lines later, at the next key or heading.
func listStart(lines []string, row int, cause string) int {
	isHead := heading().MatchString(lines[row])
	if !strings.Contains(cause, "array") || strings.Contains(lines[row], "[") && row < len(lines)-1 && !isHead {
		return row
	}
	for i := row; i >= 0; i-- {
		line := strings.TrimSpace(lines[i])
		if _, value, ok := strings.Cut(line, "="); ok && !strings.HasPrefix(line, "#") && strings.HasPrefix(strings.TrimSpace(value), "[") {
			return i
		}
	}
	return row
}
