package tomlfile

import (
	"fmt"
	"strings"

	"homebuild/internal/pattern"
)

// fault is what is wrong with a text that stands on several lines.
type fault uint8

const (
	noFault   fault = iota
	neverEnds       // the quotes below it are missing
	curly           // its quotes are a word processor's
	backslash       // it holds one, which TOML takes for the start of something else
)

var (
	opening  = pattern.Of(`^\s*[\w."'-]+\s*=\s*("""|'''|[“”„«»‘’‚‹›＂"']{3})(.*)$`)
	oneQuote = pattern.Of(`^\s*[\w."'-]+\s*=\s*(?:"[^"]*|'[^']*)$`)
	heading  = pattern.Of(`^\s*\[{1,2}[\w. -]+\]{1,2}\s*(?:#.*)?$`)
	setting  = pattern.Of(`^\s*[\w-]+\s*=`)
)

// block is what has to be put aside of a text that cannot be read: its lines from
// one up to another, of which all but one say nothing on their own.
type block struct {
	from, to int // places of lines; to is not in it
	told     int // the line that is told of
	fault    fault
}

// blockAt is the block around a line that the TOML library cannot read.
func blockAt(lines []string, row int, cause string) block {
	for at := 0; at <= row; at++ {
		m := opening().FindStringSubmatch(lines[at])
		if m == nil {
			continue
		}
		end, closed := closing(lines, at, m[1], m[2])
		straight := m[1] == `"""` || m[1] == "'''"
		switch {
		case straight && !closed:
			return block{at, end, at, neverEnds}
		case row >= end:
			at = end - 1
		case !straight:
			return block{at, end, at, curly}
		default:
			return block{at, end, row, backslash}
		}
	}
	b := block{from: row, to: row + 1, told: row}
	if strings.Contains(cause, "escape") {
		b.fault = backslash
	}
	if oneQuote().MatchString(lines[row]) {
		b.to = continued(lines, row)
	}
	return b
}

// closing is behind the line that closes the text whose quotes open on a line. A
// text that swallows the next setting is not closed.
func closing(lines []string, open int, quotes, rest string) (end int, closed bool) {
	if strings.Contains(rest, quotes) {
		return open + 1, true
	}
	for i := open + 1; i < len(lines); i++ {
		switch {
		case opening().MatchString(lines[i]), heading().MatchString(lines[i]):
			return i, false
		case strings.Contains(lines[i], quotes), curlyEnd().MatchString(lines[i]):
			return i + 1, true
		}
	}
	return len(lines), false
}

var curlyEnd = pattern.Of(`^\s*[“”„«»‘’‚‹›＂]{3}\s*$`)

// continued is behind the lines that belong to a text with one quote in front: up
// to the quote at its end, or the next setting.
func continued(lines []string, open int) int {
	for i := open + 1; i < len(lines); i++ {
		line := strings.TrimSpace(lines[i])
		if setting().MatchString(lines[i]) || heading().MatchString(lines[i]) || strings.HasPrefix(line, "#") {
			return i
		}
		if strings.HasSuffix(line, `"`) || strings.HasSuffix(line, "'") {
			return i + 1
		}
	}
	return open + 1 // no quote closes it further down: only its own line is about it
}

// explainLong says what is wrong with a text of several lines.
func (u unreadable) explainLong() (text, hint string) {
	switch u.fault {
	case neverEnds:
		return "a text begins here and never ends", `write three quotes, """, on a line of their own below its last line`
	case curly:
		return "curly quotes stand around this text", `write three straight quotes, """, above it and below it`
	case backslash:
		return `a backslash, \, stands in the text`, "take it away, or write two"
	}
	return "", ""
}

// Lines is a text that may have several lines, as it stands; empty when left out.
func (s *Section) Lines(name string) string {
	s.schema.note(key{name: name, takes: Lines})
	v := s.Value(name)
	if v == nil {
		return ""
	}
	if v.Kind != Text {
		s.wrong(v, "write three quotes above the text and below it: "+name+` = """`)
		return ""
	}
	return v.Text
}

// plainDay says how a day is written.
func (k *key) plainDay() string {
	return fmt.Sprintf("write a day, year-month-day: %s = 2026-09-14", k.name)
}

// Day is a day as it was written, with or without quotes; empty when left out or
// wrong. Whether the calendar has it, others know.
func (s *Section) Day(name string) string {
	s.schema.note(key{name: name, takes: Date})
	v := s.Value(name)
	switch {
	case v == nil:
		return ""
	case v.Kind == Date || v.Kind == Text:
		return strings.TrimSpace(v.Text)
	}
	s.wrong(v, s.schema.key(name).plainDay())
	return ""
}

// FirstLine is the line that the text of a key begins on, which may be below the
// key's own.
func (s *Section) FirstLine(name string) int {
	line := s.Line(name)
	rows := strings.Split(s.file.tree.text, "\n")
	if at := line - s.file.Root.Line; at < len(rows) && opening().MatchString(rows[at]) {
		if m := opening().FindStringSubmatch(rows[at]); m[2] == "" {
			return line + 1
		}
	}
	return line
}
