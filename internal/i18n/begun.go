package i18n

import (
	"io/fs"
	"math"
	"slices"

	"homebuild/internal/diag"
	"homebuild/internal/phrase"
)

// Begun is a language file that somebody is working on: what it says so far,
// and what is the matter with it. It is for the translator alone; only a
// language from Load may stand in a family's page.
type Begun struct {
	Status   Status
	Problems diag.Problems // to mend
	Empty    diag.Problems // texts that are still to be written
	Advice   diag.Problems // to look at, and perhaps to leave
	lang     *Language
	source   *source
	english  *Language
}

// Open reads a language file, whole or not. Problems mean that it cannot be
// understood at all, or that English itself cannot.
func Open(tag string, folders ...fs.FS) (*Begun, diag.Problems) {
	en, src, problems := loadSource(folders)
	if len(problems) > 0 {
		return nil, problems
	}
	f := src.file
	if tag != SourceTag {
		if f, problems = readFile(tag, folders); len(problems) > 0 {
			return nil, problems
		}
	}
	b := newBuilder(f, src, math.MaxInt)
	b.build()
	if b.lang == nil { // without a plural rule nothing can be said
		return nil, b.problems
	}
	c := newChecker(f, src)
	problems = append(b.problems, c.problems...)
	problems.Sort()
	return &Begun{
		Status: statusOf(f, src), Problems: problems, Empty: b.empty, Advice: c.advice,
		lang: b.lang, source: src, english: en,
	}, nil
}

// Whole reports whether nothing keeps the file from being used.
func (b *Begun) Whole() bool { return len(b.Problems)+len(b.Empty) == 0 }

// ToDo is everything that keeps the file from being used, as it stands in the
// file.
func (b *Begun) ToDo() diag.Problems {
	all := slices.Concat(b.Problems, b.Empty)
	all.Sort()
	return all
}

// Samples says what can be said so far; see the function Samples.
func (b *Begun) Samples() []Sample { return Samples(b.lang) }

// Say says a line, or tells why that cannot be done yet.
func (b *Begun) Say(line phrase.Line) (Text, error) { return b.lang.try(line) }

// English says the same line in English; empty for a form that only this
// language has.
func (b *Begun) English(line phrase.Line) string {
	text, err := b.english.try(line)
	if err != nil {
		return ""
	}
	return text.String()
}

// Note is what the English file tells the translator about a message.
func (b *Begun) Note(id string) string {
	if m := b.source.file.messages[b.source.base(id)]; m != nil {
		return oneLine(m.Description)
	}
	return ""
}

// Has reports whether something of a block is written: "thing.shell",
// "story.add-to-result.1".
func (b *Begun) Has(id string) bool { return b.lang.Has(id) }

// RightToLeft is the direction that the file states.
func (b *Begun) RightToLeft() bool { return b.lang.rtl }

// EquationsRightToLeft is the order of equations that the file states.
func (b *Begun) EquationsRightToLeft() bool { return b.lang.equationsRTL }

// Gender is that of a person or character; empty where none is stated.
func (b *Begun) Gender(person string) string {
	if p := b.lang.people[person]; p != nil {
		return p.gender
	}
	return ""
}
