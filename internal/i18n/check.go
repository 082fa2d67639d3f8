package i18n

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"unicode/utf8"

	"homebuild/internal/diag"
)

// Check looks a language file over for its translator: everything that Load
// refuses, and everything that is surely a slip.
func Check(tag string, folders ...fs.FS) diag.Problems {
	begun, problems := Open(tag, folders...)
	if len(problems) > 0 {
		return problems
	}
	return begun.ToDo()
}

// newChecker reads every message of the file.
func newChecker(f *file, src *source) *checker {
	parsed, _ := parseTag(f.tag)
	c := &checker{file: f, source: src, tag: f.tag, writing: writings[scriptOf(parsed)], reviewed: f.messages["language.reviewed"] != nil}
	for _, id := range f.order {
		if in := family(id); in != "language" && in != "words" && lastKey(id) != "gender" {
			c.message(id, f.messages[id])
		}
	}
	return c
}

// checker marks what a careful reader would.
type checker struct {
	file     *file
	source   *source
	tag      string
	writing  writing
	reviewed bool
	problems diag.Problems
	advice   diag.Problems // what a careful reader looks at, and may leave
}

func (c *checker) problem(line int, text, hint string) {
	c.problems = append(c.problems, diag.Problem{File: c.file.path, Line: line, Text: text, Hint: hint})
}

func (c *checker) message(id string, m *message) {
	english := c.source.file.messages[c.source.base(id)]
	for k := zero; k <= other; k++ {
		text := m.text(k)
		if text == "" {
			continue
		}
		line := m.lineOf(k.String())
		c.spaces(id, line, text)
		if english != nil && english != m {
			c.beside(id, line, text, english.Other)
		}
	}
	if english == nil {
		return
	}
	now := fmt.Sprintf("the English is %q; where the text fits it, write hash = %q in its table", english.Other, c.source.hash(id))
	switch c.source.staleness(id, m) {
	case stale:
		c.problem(m.lineOf("hash"), id+": the English has changed since this was translated", now)
	case unknown:
		if c.reviewed {
			c.problem(m.line, id+" keeps no hash, so nobody can tell whether the review still holds", now)
		}
	}
}

func (c *checker) spaces(id string, line int, text string) {
	switch {
	case strings.Contains(text, "  "):
		c.problem(line, id+" has two spaces side by side", "write one")
	case strings.TrimSpace(text) != text:
		c.problem(line, id+" begins or ends with a space", "take it out")
	}
}

// beside compares a text with the English one.
func (c *checker) beside(id string, line int, text, english string) {
	words, englishWords := withoutPlaces(text), withoutPlaces(english)
	if len(strings.Fields(englishWords)) > 1 && text == english {
		c.problem(line, id+" is still English", c.source.suggestion(id))
		return
	}
	if word := c.writing.foreignWord(words); c.writing.letters != nil && word != "" && !slices.Contains(strings.Fields(englishWords), word) {
		c.problem(line, fmt.Sprintf("%s: %q has letters of another script", id, word), "write it in the script of "+c.tag)
	}
	if _, gender := cutGender(id); gender != "" || c.source.file.messages[id] != nil {
		c.length(id, line, words, englishWords)
	}
	c.end(id, line, text, english)
	if strings.HasPrefix(c.tag, "es") && strings.Count(text, "?")+strings.Count(text, "!") != strings.Count(text, "¿")+strings.Count(text, "¡") {
		c.problem(line, id+": a question or exclamation is not opened or not closed", "write ¿ ... ? and ¡ ... !")
	}
}

// length compares the lengths of two texts without their places. Short texts
// grow the most.
func (c *checker) length(id string, line int, words, englishWords string) {
	n, most := utf8.RuneCountInString(words), 15+utf8.RuneCountInString(englishWords)*22/10
	if n > most {
		c.advice = append(c.advice, diag.Problem{File: c.file.path, Line: line,
			Text: fmt.Sprintf("%s has %d letters, the English %d", id, n, utf8.RuneCountInString(englishWords)), Hint: "say it as briefly as the English, if the language can"})
	}
}

// end asks for the end mark that English has, in the marks of the script.
func (c *checker) end(id string, line int, text, english string) {
	want := writings["Latn"].endMark(english)
	if want < 0 || c.writing.letters == nil || c.writing.ends[want] == "" || c.writing.endMark(text) == want {
		return
	}
	mark, _ := utf8.DecodeRuneInString(c.writing.ends[want])
	c.problem(line, fmt.Sprintf("%s ends without %q, where the English ends with %q", id, mark, westernEnds[want][0]), fmt.Sprintf("write %q at the end, or say it as the English does", mark))
}

// withoutPlaces is a text without its places.
func withoutPlaces(text string) string {
	t, wrong := parseTemplate(text)
	if wrong != nil {
		return text
	}
	var b strings.Builder
	for _, s := range t {
		b.WriteString(s.text)
	}
	return b.String()
}
