package translate

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/language"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
)

// checker marks what a careful reader would, beside what i18n refuses.
type checker struct {
	file     *i18n.File
	writing  writing
	reviewed bool
	problems diag.Diagnostics
	advice   diag.Diagnostics // what a careful reader looks at, and may leave
}

// check reads every message of a file that was held against English.
func check(file *i18n.File) *checker {
	script, _ := language.Make(file.Tag).Script()
	c := &checker{file: file, writing: writings[script.String()], reviewed: file.Message("language.reviewed") != nil}
	for _, m := range file.Messages {
		if m.Family != "language" && m.Family != "words" && m.Key != "gender" {
			c.message(m)
		}
	}
	for _, e := range file.Events {
		c.event(e)
	}
	return c
}

func (c *checker) problem(line int, text, hint string) {
	c.problems = append(c.problems, diag.Diagnostic{File: c.file.Path, Line: line, Text: text, Hint: hint})
}

func (c *checker) message(m *i18n.Message) {
	english := m.English
	for _, category := range i18n.Categories() {
		text, line := m.Text(category), m.LineOf(category.String())
		if text == "" {
			continue
		}
		c.spaces(m.ID, line, text)
		if english.ID != "" && english != m {
			c.beside(m, line, text, english.Other)
		}
	}
	if english.ID == "" {
		return
	}
	now := fmt.Sprintf("the English is %q; where the text fits it, write hash = %q in its table", english.Other, m.EnglishHash())
	switch {
	case m.Stale():
		c.problem(m.LineOf("hash"), m.ID+": the English has changed since this was translated", now)
	case m.Unheld() && c.reviewed:
		c.problem(m.Line, m.ID+" keeps no hash, so nobody can tell whether the review still holds", now)
	}
}

// event reads the sentences of an event. They are told anew and not translated, so
// that only slips are looked for.
func (c *checker) event(e *i18n.Event) {
	for _, s := range e.Sentences {
		id := e.ID + "." + s.Name()
		c.spaces(id, s.Line, s.Text)
		english := cmp.Or(e.English.Sentence(s.Group, s.Key), e.English.Sentence("", s.Key))
		if e.English == e || english == nil || s.Text == "" {
			continue
		}
		if words := i18n.WithoutPlaces(s.Text); len(strings.Fields(words)) > 1 && s.Text == english.Text {
			c.problem(s.Line, id+" is still English", fmt.Sprintf("tell it in %s: %q", c.file.Tag, english.Text))
			continue
		}
		c.script(id, s.Line, i18n.WithoutPlaces(s.Text), i18n.WithoutPlaces(english.Text))
		c.marks(id, s.Line, s.Text)
		if strings.HasPrefix(s.Key, "ask-") {
			c.end(id, s.Line, s.Text, english.Text)
		}
	}
	now := fmt.Sprintf("read the English again; where the telling fits it, write source = %q below [%s]", e.SourceHash(), e.ID)
	switch {
	case e.Stale():
		c.problem(e.Line, e.ID+": the English has changed since this was told", now)
	case e.Unheld() && c.reviewed:
		c.problem(e.Line, e.ID+" does not keep its source, so nobody can tell whether the review still holds", now)
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

// script looks for words in letters of another script.
func (c *checker) script(id string, line int, words, englishWords string) {
	if word := c.writing.foreignWord(words); c.writing.letters != nil && word != "" && !slices.Contains(strings.Fields(englishWords), word) {
		c.problem(line, fmt.Sprintf("%s: %q has letters of another script", id, word), "write it in the script of "+c.file.Tag)
	}
}

// marks looks for questions and exclamations that Spanish opens and closes.
func (c *checker) marks(id string, line int, text string) {
	if strings.HasPrefix(c.file.Tag, "es") && strings.Count(text, "?")+strings.Count(text, "!") != strings.Count(text, "¿")+strings.Count(text, "¡") {
		c.problem(line, id+": a question or exclamation is not opened or not closed", "write ¿ ... ? and ¡ ... !")
	}
}

// beside compares a text with the English one.
func (c *checker) beside(m *i18n.Message, line int, text, english string) {
	words, englishWords := i18n.WithoutPlaces(text), i18n.WithoutPlaces(english)
	if len(strings.Fields(englishWords)) > 1 && text == english {
		c.problem(line, m.ID+" is still English", m.Suggestion())
		return
	}
	c.script(m.ID, line, words, englishWords)
	if m.Gender != "" || m.ID == m.English.ID {
		c.length(m.ID, line, words, englishWords)
	}
	c.end(m.ID, line, text, english)
	c.marks(m.ID, line, text)
}

// length compares the lengths of two texts without their places. Short texts
// grow the most.
func (c *checker) length(id string, line int, words, englishWords string) {
	n, most := utf8.RuneCountInString(words), 15+utf8.RuneCountInString(englishWords)*22/10
	if n > most {
		c.advice = append(c.advice, diag.Diagnostic{File: c.file.Path, Line: line,
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
