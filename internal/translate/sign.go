package translate

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
)

// Sign returns a language file in which a fluent reader stands for the words that it
// has now: by and date (2026-10-01) are what that person gave. What an earlier reader
// signed and nobody has changed stays hers. A file with something to write or to mend,
// or with a message that nobody has held against the English of today, cannot be
// signed; the error is diag.Diagnostics then.
func Sign(tag, by, date string, folders ...fs.FS) ([]byte, error) {
	signature := by + ", " + date
	if wrong := checkSignature(by, signature); wrong != nil {
		return nil, fmt.Errorf("%s; %s", wrong.Text, wrong.Hint)
	}
	draft, problems := Open(tag, folders...)
	if problems == nil {
		problems = append(draft.ToDo(), draft.Stale...)
	}
	if len(problems) == 0 {
		problems = unheld(draft.file)
	}
	if len(problems) > 0 {
		return nil, problems
	}
	return draft.signed(signature)
}

// checkSignature makes sure that a signature is a name and a day, and nothing
// that would not stay inside its quotes.
func checkSignature(by, reviewed string) *diag.Diagnostic {
	switch {
	case strings.ContainsAny(by, `"\;`) || i18n.CheckCharacters(by, "Latn") != nil:
		return &diag.Diagnostic{Text: fmt.Sprintf("%q has signs that no name has", by), Hint: "write a name or initials"}
	case !i18n.IsSignature(reviewed) || strings.TrimSpace(by) != by:
		return &diag.Diagnostic{Text: fmt.Sprintf("%q is not a name and a day", reviewed), Hint: "write a name or initials, and a day such as 2026-10-01"}
	}
	return nil
}

// unheld lists messages that do not say which English they were made from.
func unheld(f *i18n.File) diag.Diagnostics {
	var out diag.Diagnostics
	for _, m := range f.Messages {
		if m.Unheld() {
			out = append(out, diag.Diagnostic{File: f.Path, Line: m.Line, Text: m.ID + " keeps no hash of its English text",
				Hint: "where the whole file was held against the English of today, run: homebuild language stamp " + f.Tag})
		}
	}
	for _, e := range f.Events {
		if e.Unheld() {
			out = append(out, diag.Diagnostic{File: f.Path, Line: e.Line, Text: e.ID + " does not say which English it was told from",
				Hint: "where the whole file was held against the English of today, run: homebuild language stamp " + f.Tag})
		}
	}
	return out
}

// signed writes a signature into the head of the file, behind those that were there,
// and what it stands for into every message that nobody has read as it is. It proves
// that nothing else has changed.
func (d *Draft) signed(signature string) ([]byte, error) {
	f := d.file
	at, all := f.Message("language.review"), i18n.Signatures{}
	if m := f.Message("language.reviewed"); m != nil {
		at = m
		all, _ = i18n.ParseSignatures(m.Other)
	}
	if !slices.Contains(all, signature) {
		all = append(all, signature)
	}
	by := slices.Index(all, signature) + 1
	lines := strings.Split(f.Text, "\n")
	for _, m := range f.Messages {
		if !m.IsRead() {
			replaceQuoted(lines, m.LineOf("hash"), m.Hash, m.Signed(by))
		}
	}
	for _, e := range f.Events {
		if !e.IsRead() {
			replaceQuoted(lines, e.SourceLine, e.Source, e.Signed(by))
		}
	}
	head := fmt.Sprintf("reviewed = %q", all)
	if read := f.Message("language.read"); read != nil {
		lines[read.Line-1] = fmt.Sprintf("read = %q", f.Unmarked())
	} else {
		head += fmt.Sprintf("\nread = %q", f.Unmarked())
	}
	lines[at.Line-1] = head
	text := strings.Join(lines, "\n")
	return []byte(text), d.proveSigned(text)
}

// replaceQuoted puts a text into the place of another one in quotes.
func replaceQuoted(lines []string, line int, old, new string) {
	for _, quote := range []string{`"`, `'`} {
		lines[line-1] = strings.Replace(lines[line-1], quote+old+quote, quote+new+quote, 1)
	}
}

// proveSigned makes sure that a signed text says what the file says, and that all of it
// was read.
func (d *Draft) proveSigned(text string) error {
	f := d.file
	wrong := func(line int, what, hint string) error {
		return diag.Diagnostics{{File: f.Path, Line: line, Text: what, Hint: hint}}
	}
	after, problems := i18n.Parse(f.Tag, text)
	if len(problems) > 0 || after.Message("language.reviewed") == nil {
		return wrong(1, "the review cannot be written where it stands", `put review = "draft" on a line of its own`)
	}
	d.source.Hold(after)
	for _, m := range f.Messages {
		got := after.Message(m.ID)
		if head := m.Family == "language"; !head && (got == nil || !sameText(m, got) || !got.IsRead()) {
			return wrong(m.Line, m.ID+" cannot be signed where it stands", "write the message and its hash on lines of their own")
		}
	}
	for _, e := range f.Events {
		got := after.Event(e.ID)
		if got == nil || !got.IsRead() || !slices.EqualFunc(got.Sentences, e.Sentences, sameSentence) {
			return wrong(e.Line, e.ID+" cannot be signed where it stands", "write its source on a line of its own")
		}
	}
	return nil
}

func sameText(a, b *i18n.Message) bool {
	x, y := a.Message, b.Message
	y.Hash = x.Hash
	return x == y
}
