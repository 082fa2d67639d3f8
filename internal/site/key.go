package site

import (
	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
)

// A file's key names everything that its bytes depend on, so that a file whose
// key has not changed need not be rendered again. All files depend on the
// program; all pages on the look, the address, whether search engines are
// welcome, and the names of the site's languages. Each adds what its own view is
// made from: a language with all its messages, a lesson, all weeks' targets. A week's
// settings count only through what they lead to, so that a week planned as
// before stays. The tests change every input in turn and hold the keys against
// the bytes.

// ids are the names of what pages share.
type ids struct {
	frame    string                    // what every page depends on
	language map[*i18n.Language]string // a language and what the school is called in it
	all      string                    // all languages
	calendar string
}

// described is what a page says of a language other than its own.
type described struct {
	Tag, Name string
	RTL       bool
	Class     bool
}

// listed is what an index says of a week.
type listed struct {
	Date   string
	Target phrase.Line
}

func (b *builder) newIDs() ids {
	out := ids{language: map[*i18n.Language]string{}}
	var others []described
	var all []string
	for _, l := range b.languages {
		others = append(others, described{l.Tag(), l.Name(), l.RightToLeft(), l == b.school})
		out.language[l] = digest(l.Sum(), l.Tag(), b.schoolName(l))
		all = append(all, out.language[l])
	}
	out.frame = digest(b.Theme.Sum(), b.Site.Address, b.Site.Index, others)
	out.all = digest(all)
	weeks := make([]listed, len(b.lessons))
	for i := range b.lessons {
		weeks[i] = b.lessons[i].listed()
	}
	out.calendar = digest(weeks)
	return out
}

func (b *builder) schoolName(l *i18n.Language) string {
	return b.Site.Name.In(l.Tag(), b.Site.School)
}

// madeFrom is what a file is made from beyond what all files are.
type madeFrom []any

// of names a language with all its messages, and what the school is called.
func (b *builder) of(l *i18n.Language) string { return b.ids.language[l] }

// key names what a file is made from; empty when the program has no name, so
// that every file is rendered.
func (b *builder) key(path string, from madeFrom) string {
	if b.Program == "" {
		return ""
	}
	return digest(b.Program, path, from)
}

// listed is what an index says of the lesson.
func (l *lesson) listed() listed { return listed{l.week.Date, l.target.CanLine()} }
