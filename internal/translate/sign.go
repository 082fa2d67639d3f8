package translate

import (
	"fmt"
	"io/fs"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
)

// Sign returns a language file in which a fluent reader stands for its words:
// by and date (2026-10-01) are what that person gave, and take the place of
// "draft". A file with something to mend, or with a message that nobody has
// held against the English of today, cannot be signed; the error is
// diag.Diagnostics then.
func Sign(tag, by, date string, folders ...fs.FS) ([]byte, error) {
	reviewed := by + ", " + date
	if wrong := checkSignature(by, reviewed); wrong != nil {
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
	return setReviewed(draft.file, reviewed)
}

// checkSignature makes sure that a signature is a name and a day, and nothing
// that would not stay inside its quotes.
func checkSignature(by, reviewed string) *diag.Diagnostic {
	switch {
	case strings.ContainsAny(by, `"\`) || i18n.CheckCharacters(by, "Latn") != nil:
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

// setReviewed writes the signature in the place of "draft", or of the
// signature before, and proves that nothing else has changed.
func setReviewed(f *i18n.File, reviewed string) ([]byte, error) {
	at := f.Message("language.reviewed")
	if at == nil {
		at = f.Message("language.review")
	}
	lines := strings.Split(f.Text, "\n")
	lines[at.Line-1] = fmt.Sprintf("reviewed = %q", reviewed)
	signed := strings.Join(lines, "\n")
	after, problems := i18n.Parse(f.Tag, signed)
	if len(problems) == 0 && len(after.Messages) == len(f.Messages) && len(after.Events) == len(f.Events) && after.Message("language.reviewed") != nil {
		return []byte(signed), nil
	}
	return nil, diag.Diagnostics{{File: f.Path, Line: at.Line, Text: "the review cannot be written where it stands", Hint: `put review = "draft" on a line of its own`}}
}
