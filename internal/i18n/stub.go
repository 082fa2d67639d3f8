package i18n

import (
	"io/fs"

	"homebuild/internal/diag"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

type header struct {
	tag, name, reviewed      string
	rtl, equationsRTL, stale bool
}
type ready struct{ word string }
type thing struct{}
type person struct{}
type plurals struct{}
type digits [10]string

const popIsolate = "\u2069"

func (l *Language) isolate() string { return "\u2066" }

// Say says a line.
func (l *Language) Say(phrase.Line) Text { panic("i18n: not yet") }

// Number writes a number in the language's digits.
func (l *Language) Number(int) string { panic("i18n: not yet") }

// Equation writes an equation.
func (l *Language) Equation(problem.Equation) string { panic("i18n: not yet") }

// Catalog holds languages that were loaded together.
type Catalog struct{}

// Load reads languages.
func Load(tags []string, folders ...fs.FS) (*Catalog, diag.Problems) { panic("i18n: not yet") }

// Language returns a language by its tag.
func (c *Catalog) Language(tag string) (*Language, bool) { return nil, false }

// Languages lists the languages in the order asked for.
func (c *Catalog) Languages() []*Language { return nil }

// Source is English.
func (c *Catalog) Source() *Language { return nil }
