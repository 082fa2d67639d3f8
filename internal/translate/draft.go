package translate

import (
	"io/fs"
	"math"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
)

// Draft is a language file that somebody is working on: what it says so far,
// and what is the matter with it. It is for the translator alone; only a
// language from i18n.Load may stand in a family's page.
type Draft struct {
	Language *i18n.Language // what can be said so far
	Status   Status
	Problems diag.Diagnostics // to mend
	Missing  diag.Diagnostics // texts that are still to be written
	Stale    diag.Diagnostics // to hold against the English again, which has changed
	Unread   diag.Diagnostics // in a signed file: not what was read
	Advice   diag.Diagnostics // to look at, and perhaps to leave
	Unused   diag.Diagnostics // left out, since no page asks for it

	file   *i18n.File
	source *i18n.Source
	lacks  []string // ids of what Missing is about

	entries map[string]Entry // by their ids; nil until they are asked for
}

// Open reads a language file, whole or not. Problems mean that it cannot be
// understood at all, or that English itself cannot.
func Open(tag string, folders ...fs.FS) (*Draft, diag.Diagnostics) {
	source, problems := i18n.LoadSource(folders...)
	if len(problems) > 0 {
		return nil, problems
	}
	file, problems := fileOf(tag, source, folders)
	if len(problems) > 0 {
		return nil, problems
	}
	proof := source.Prove(file, math.MaxInt)
	if proof.Language == nil { // without a plural rule nothing can be said
		return nil, proof.Wrong
	}
	d := &Draft{
		Language: proof.Language, Status: statusOf(file, source, proof), Problems: proof.Wrong, Missing: proof.Missing,
		Stale: proof.Stale, Unread: proof.Unread, Advice: advice(file), Unused: proof.Unused, file: file, source: source, lacks: proof.Lacks,
	}
	d.Problems.Sort()
	return d, nil
}

// fileOf is a language's file; that of English was read before.
func fileOf(tag string, source *i18n.Source, folders []fs.FS) (*i18n.File, diag.Diagnostics) {
	if tag == i18n.SourceTag {
		return source.File, nil
	}
	return i18n.ReadFile(tag, folders...)
}

// Whole reports whether nothing keeps the file from being used.
func (d *Draft) Whole() bool { return len(d.Problems)+len(d.Missing) == 0 }

// ToDo is everything that keeps the file from being used, as it stands in the
// file.
func (d *Draft) ToDo() diag.Diagnostics {
	all := slices.Concat(d.Problems, d.Missing)
	all.Sort()
	return all
}

// English says a line in English; empty for a form that only this language has.
func (d *Draft) English(line phrase.Line) string {
	text, err := d.source.Language.Try(line)
	if err != nil {
		return ""
	}
	return text.String()
}

// Note is what the English file tells the translator about a message, or about
// the message that it is a form of.
func (d *Draft) Note(id string) string {
	m := d.file.Message(id)
	if m == nil {
		m = d.source.File.Message(id)
	}
	if m == nil {
		return ""
	}
	return oneLine(m.English.Description)
}

// EventNote is what the English file tells the translator about an event.
func (d *Draft) EventNote(id string) string {
	if e := d.source.File.Event(id); e != nil {
		return oneLine(e.Note)
	}
	return ""
}

func oneLine(text string) string { return strings.Join(strings.Fields(text), " ") }

// Text is the file as it was read.
func (d *Draft) Text() string { return d.file.Text }
