package week

import (
	"fmt"
	"regexp"
	"strings"
)

// slip is a way to mistype a setting, known by the look of its line.
type slip struct {
	look *regexp.Regexp
	// text may use %s for the value typed; hint may use ${1} for the setting
	// and ${2} for the value.
	text, hint string
}

// signs are characters that stand where a plain one is wanted. They are looked
// for before everything else. Each pattern's first group is the setting and its
// second the value.
var signs = []slip{
	{regexp.MustCompile(`^\s*([\w-]*)\s*[=:]?\s*[^"']*?([“”„«»‘’‚‹›＂]).*$`),
		"%s is a curly quote", `use straight quotes: ${1} = "..."`},
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*\[(?:.*[\[,\s])?([“”„«»‘’‚‹›＂]).*$`),
		"%s is a curly quote", `use straight quotes: ${1} = ["...", "..."]`},
	{regexp.MustCompile(`^\s*([\w-]*)\s*(＝)`),
		"%s is not the plain equals sign", `write ${1} = "..." with =`},
	{regexp.MustCompile("^[^\"']*?()([\u00a0\u2000-\u200a\u202f\u3000])"),
		"an unusual space stands in this line", "delete the spaces and type them again"},
	{regexp.MustCompile(`^\s*(\w+)([\x{2010}-\x{2015}\x{2212}])(\w+)\s*=\s*(.*)$`),
		"%s is not the plain dash", `write ${1}-${3} = ${4}`},
	{regexp.MustCompile(`^\s*([\w-]+)\s*:\s*(.*)$`),
		`a setting is written with "=", not ":"`, `write ${1} = ${2}`},
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*(\d{19,})\s*(?:#.*)?$`),
		"%s is too large a number", "write ${1} = 4, or another small number"},
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*0+(\d+)\s*(?:#.*)?$`),
		"a number does not begin with 0", "write ${1} = ${2}"},
}

// slips are the other ways, tried in order.
var slips = []slip{
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*(?:#.*)?()$`),
		"nothing stands after the equals sign", "write a value, or take the line away"},
	{regexp.MustCompile(`^\s*(\w+) (\w+)\s*=\s*(.*)$`),
		"the name of a setting has no spaces in it", `write ${1}-${2} = ${3}`},
	{regexp.MustCompile(`^\s*(languages|allow|kinds)\s*=\s*([\p{L}][\p{L}\p{N} _-]*?)\s*(?:#.*)?$`),
		"%s is not a list", `write ${1} = ["${2}"]`},
	{regexp.MustCompile(`^\s*(languages|allow|kinds)\s*=\s*("[^"]*"(?:\s*,\s*"[^"]*")+)\s*(?:#.*)?$`),
		"the brackets around the list are missing", `write ${1} = [${2}]`},
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*\[(?:.*[\[,\s])?([\p{L}][\p{L}\p{N}_-]*)\s*[,\]]`),
		"%s has no quotes around it", `write each word of the list in quotes: ${1} = ["...", "..."]`},
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*([\p{L}][\p{L}\p{N} _-]*?)\s*(?:#.*)?$`),
		"%s has no quotes around it", `write ${1} = "${2}"`},
	{regexp.MustCompile(`^\s*(text|answer)\s*=\s*["']([^"']*?)\s*$`),
		"the quote at the end is missing", `write the whole ${1} on one line, between two quotes: ${1} = "..."`},
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*"([^"]*?)\s*$`),
		"the quote at the end is missing", `write ${1} = "${2}"`},
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*'([^']*?)\s*$`),
		"the quote at the end is missing", `write ${1} = "${2}"`},
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*([^"' #]+)"\s*$`),
		"the quote at the beginning is missing", `write ${1} = "${2}"`},
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*\[()[^\]]*$`),
		"the list is not closed", `write ${1} = ["...", "..."] on one line`},
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*\[.*"\s+(").*\]`),
		"a comma is missing in the list", `write ${1} = ["...", "..."]`},
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*"[^"]*"()[^"=,#\[\]]+"[^"=]*"?\s*$`),
		"there are quotes inside the quotes", "take the inner ones away"},
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*'([^"]*'[^"=]*)'\s*$`),
		"an apostrophe ends the text too early", `write ${1} = "${2}"`},
	{regexp.MustCompile(`^\s*(reading)\s*=\s*("[^"]*")\s*;.*$`),
		"something stands after %s", `write ${1} = ${2}, and nothing after it`},
	{regexp.MustCompile(`^\s*([\w-]+)\s*=\s*("[^"]*"|\S+)\s+[^#\s].*$`),
		"something stands after %s", "give each setting a line of its own"},
	{regexp.MustCompile(`^([^=]*)()$`),
		"this line is not a setting", `settings look like target = "add-within-20"; the note to families begins after the second "+++"`},
}

// explain says in plain words what is wrong with a line of settings, given
// what the TOML library says about it.
func explain(line, cause string) (text, hint string) {
	if storyHead.MatchString(line) {
		return "a story of your own begins with two brackets on each side", "write [[own-story]] above each of them"
	}
	if strings.Contains(cause, "already") {
		return fmt.Sprintf("%q is written twice", keyOf(line)), "keep one of the two"
	}
	if strings.HasPrefix(cause, "cannot decode") {
		return fmt.Sprintf("%q is a table and needs lines of its own", keyOf(line)), fmt.Sprintf("write [%s] on a line, and its settings below", keyOf(line))
	}
	if text, hint, ok := look(signs, line); ok {
		return text, hint
	}
	if text, hint, ok := explainValue(line); ok {
		return text, hint
	}
	if text, hint, ok := look(slips, line); ok {
		return text, hint
	}
	return "this line cannot be read: " + cause, ""
}

// storyHeading is the line above a story of one's own; storyHead is that line
// however it was typed.
const storyHeading = "[[own-story]]"

var storyHead = regexp.MustCompile(`^\s*\[+\s*(?i:own[ _-]?story)\s*\]*\s*(?:#.*)?$`)

// look finds the first slip that a line looks like.
func look(among []slip, line string) (text, hint string, ok bool) {
	for _, s := range among {
		m := s.look.FindStringSubmatchIndex(line)
		if m == nil {
			continue
		}
		text = s.text
		if strings.Contains(text, "%s") {
			text = fmt.Sprintf(text, fmt.Sprintf("%q", line[m[4]:m[5]]))
		}
		return text, string(s.look.ExpandString(nil, s.hint, line, m)), true
	}
	return "", "", false
}

// keyOf is the setting that a line begins with, as far as it can be told.
func keyOf(line string) string {
	line = strings.TrimLeft(line, " \t[\"'")
	end := strings.IndexFunc(line, func(c rune) bool {
		return c != '-' && c != '_' && c != '.' && (c < '0' || c > '9') && (c < 'A' || c > 'Z') && (c < 'a' || c > 'z')
	})
	if end < 0 {
		return line
	}
	return line[:end]
}
