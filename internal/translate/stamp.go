package translate

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
)

// Stamp returns a language file with a hash in every message that has none, and
// a source in every event: they name the English text as it is now. It is for a
// file that was translated from this English; what already keeps one is left
// alone, so that a changed English text stays visible.
func Stamp(tag string, folders ...fs.FS) ([]byte, error) {
	source, problems := i18n.LoadSource(folders...)
	if len(problems) > 0 {
		return nil, problems
	}
	f, problems := fileOf(tag, source, folders)
	if len(problems) > 0 {
		return nil, problems
	}
	source.Hold(f)
	lines := strings.Split(f.Text, "\n")
	for _, m := range f.Messages {
		if m.Unheld() {
			lines[m.Line-1] = stampLine(lines[m.Line-1], fmt.Sprintf("hash = %q", m.EnglishHash()), m.Key, m.Alone)
		}
	}
	for _, e := range f.Events {
		if e.Unheld() {
			lines[e.Line-1] += fmt.Sprintf("\nsource = %q", e.SourceHash())
		}
	}
	stamped := strings.Join(lines, "\n")
	if err := sameWords(f, stamped); err != nil {
		return nil, err
	}
	return []byte(stamped), nil
}

// sameWords proves that stamping changed nothing but hashes.
func sameWords(before *i18n.File, text string) error {
	after, problems := i18n.Parse(before.Tag, text)
	if len(problems) > 0 {
		return fmt.Errorf("stamping spoils the file, so it is left as it was: %w", problems)
	}
	for _, m := range before.Messages {
		want, got := m.Message, after.Message(m.ID)
		if got != nil {
			want.Hash = got.Hash
		}
		if got == nil || got.Message != want || len(after.Messages) != len(before.Messages) {
			return diag.Diagnostics{{File: before.Path, Line: m.Line, Text: m.ID + " cannot be given a hash where it stands", Hint: "write the message on a line of its own"}}
		}
	}
	for _, e := range before.Events {
		got := after.Event(e.ID)
		if got == nil || !slices.EqualFunc(got.Sentences, e.Sentences, sameSentence) || len(after.Events) != len(before.Events) {
			return diag.Diagnostics{{File: before.Path, Line: e.Line, Text: e.ID + " cannot be given a source where it stands", Hint: "begin it with [" + e.ID + "] on a line of its own"}}
		}
	}
	return nil
}

// sameSentence compares sentences wherever they stand.
func sameSentence(a, b i18n.Sentence) bool {
	a.Line, b.Line = 0, 0
	return a == b
}

// stampLine puts a hash on the line where a message begins: `key = "text"`
// becomes a table in one line, a table in one line gets one key more, and in a
// table of several lines, or of dotted keys, the hash stands before its first
// key.
func stampLine(line, hash, key string, plain bool) string {
	head, value, _ := strings.Cut(line, "=")
	indent := line[:len(line)-len(strings.TrimLeft(line, " \t"))]
	switch {
	case plain:
		text, comment := cutComment(strings.TrimSpace(value))
		return fmt.Sprintf("%s= { %s, other = %s }%s", head, hash, text, comment)
	case strings.HasSuffix(strings.TrimSpace(head), key) && strings.HasPrefix(strings.TrimSpace(value), "{"):
		return head + "= { " + hash + ", " + strings.TrimLeft(strings.TrimSpace(value)[1:], " ")
	}
	if dot := strings.LastIndexByte(strings.TrimSpace(head), '.'); dot >= 0 { // count.other = "..."
		hash = strings.TrimSpace(head)[:dot+1] + hash
	}
	return indent + hash + "\n" + line
}

// cutComment cuts a TOML string from the comment behind it.
func cutComment(value string) (text, comment string) {
	quote := value[:1]
	for i := 1; i < len(value); i++ {
		if value[i] == '\\' && quote == `"` {
			i++
			continue
		}
		if value[i:i+1] == quote {
			return value[:i+1], value[i+1:]
		}
	}
	return value, ""
}
