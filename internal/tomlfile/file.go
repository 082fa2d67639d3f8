package tomlfile

import (
	"iter"
	"strings"

	"github.com/pelletier/go-toml/v2/unstable"

	"homebuild/internal/diag"
)

// File is a file that was read, and what is wrong with it so far.
type File struct {
	Root     *Value
	Problems diag.Problems

	path    string
	schema  *Schema // nil for a file of words
	tree    *tree
	skipped map[string]bool // keys whose lines could not be read, and were told
}

// maxSlips is how many unreadable lines of a file are told at once.
const maxSlips = 20

// longestLine is what is looked at of a line that cannot be read, in bytes.
const longestLine = 2000

// Parse reads a text that begins on the line first of the file with that path.
// The schema may be nil: then any key may be there. After a line that cannot be
// read it goes on without that line.
func Parse(path, text string, first int, schema *Schema) *File {
	f := &File{path: path, schema: schema, skipped: map[string]bool{}}
	for range maxSlips {
		f.tree = newTree(path, text, first, schema)
		slip := f.tree.walk()
		if slip == nil {
			break
		}
		var ok bool
		if text, ok = f.skip(text, slip); !ok {
			break
		}
	}
	f.Root = f.tree.root
	f.Problems = append(f.Problems, f.tree.problems...)
	if schema != nil {
		f.unknown(f.Root, schema)
	}
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

// Child is the value of a key in a table; nil where there is none.
func (f *File) Child(in *Value, key string) *Value { return f.tree.at[place{in, key}] }

// skip tells of a line that cannot be read, and gives the text without it. The
// heading of a list of tables stays as it should be, so that the keys below it
// stay its own.
func (f *File) skip(text string, slip *unstable.ParserError) (rest string, ok bool) {
	at := f.tree.lineAt(int(f.tree.parser.Range(slip.Highlight).Offset))
	lines := strings.Split(text, "\n")
	row := listStart(lines, at-f.tree.root.Line, slip.Message)
	line := lines[row][:min(len(lines[row]), longestLine)]
	what, hint := explain(f.schema, line, slip.Message)
	f.add(f.tree.root.Line+row, what, hint)
	if strings.TrimSpace(line) == "" {
		return "", false
	}
	f.skipped[keyOf(line)] = true
	lines[row] = ""
	if k := f.schema.heading(line); k != nil && strings.TrimSpace(line) != k.head() {
		lines[row] = k.head()
	}
	return strings.Join(lines, "\n"), true
}

func (f *File) add(line int, text, hint string) {
	f.Problems = append(f.Problems, diag.Problem{File: f.path, Line: line, Text: text, Hint: hint})
}

// listStart is the line of a list that was never closed: the TOML library finds
// out lines later, at the next key.
func listStart(lines []string, row int, cause string) int {
	if !strings.Contains(cause, "array") || strings.Contains(lines[row], "[") && row < len(lines)-1 {
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

// keyOf is the key that a line begins with, as far as it can be told.
func keyOf(line string) string {
	line = strings.TrimLeft(line, " \t[\"'")
	end := strings.IndexFunc(line, func(c rune) bool {
		return c != '-' && c != '_' && c != '.' && (c < '0' || c > '9') && (c < 'A' || c > 'Z') && (c < 'a' || c > 'z')
	})
	if end < 0 {
		return line
	}
	return line[:end]
}
