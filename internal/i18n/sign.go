package i18n

import (
	"fmt"
	"io/fs"
	"strings"

	"homebuild/internal/diag"
)

// Sign returns a language file in which a fluent reader stands for its words:
// by and date (2026-10-01) are what that person gave, and take the place of
// "draft". A file with something to mend, or with a message that nobody has
// held against the English of today, cannot be signed; the error is
// diag.Problems then.
func Sign(tag, by, date string, folders ...fs.FS) ([]byte, error) {
	reviewed := by + ", " + date
	if wrong := checkSignature(by, reviewed); wrong != nil {
		return nil, fmt.Errorf("%s; %s", wrong.text, wrong.hint)
	}
	begun, problems := Open(tag, folders...)
	if problems == nil {
		problems = begun.ToDo()
	}
	if len(problems) > 0 {
		return nil, problems
	}
	data, problem := findFile(tag, folders)
	if problem != nil {
		return nil, diag.Problems{*problem}
	}
	f, problems := read(shownPath(tag), tag, data)
	if len(problems) > 0 {
		return nil, problems
	}
	if problems := unheld(f, begun.source); len(problems) > 0 {
		return nil, problems
	}
	return setReviewed(f, string(data), reviewed)
}

// checkSignature makes sure that a signature is a name and a day, and nothing
// that would not stay inside its quotes.
func checkSignature(by, reviewed string) *fault {
	switch {
	case strings.ContainsAny(by, `"\`) || checkCharacters(by, "Latn") != nil:
		return &fault{fmt.Sprintf("%q has signs that no name has", by), "write a name or initials"}
	case !reviewedPattern.MatchString(reviewed) || strings.TrimSpace(by) != by:
		return &fault{fmt.Sprintf("%q is not a name and a day", reviewed), "write a name or initials, and a day such as 2026-10-01"}
	}
	return nil
}

// unheld lists messages that do not say which English they were made from.
func unheld(f *file, src *source) diag.Problems {
	var out diag.Problems
	for _, id := range f.order {
		if m := f.messages[id]; src.staleness(id, m) == unknown {
			out = append(out, diag.Problem{File: f.path, Line: m.line, Text: id + " keeps no hash of its English text",
				Hint: "where the whole file was held against the English of today, run: homebuild language stamp " + f.tag})
		}
	}
	return out
}

// setReviewed writes the signature in the place of "draft", or of the
// signature before, and proves that nothing else has changed.
func setReviewed(f *file, data, reviewed string) ([]byte, error) {
	at := f.messages["language.reviewed"]
	if at == nil {
		at = f.messages["language.review"]
	}
	lines := strings.Split(data, "\n")
	lines[at.line-1] = fmt.Sprintf("reviewed = %q", reviewed)
	signed := []byte(strings.Join(lines, "\n"))
	after, problems := read(f.path, f.tag, signed)
	if len(problems) == 0 && len(after.messages) == len(f.messages) && after.messages["language.reviewed"] != nil {
		return signed, nil
	}
	return nil, diag.Problems{{File: f.path, Line: at.line, Text: "the review cannot be written where it stands", Hint: `put review = "draft" on a line of its own`}}
}
