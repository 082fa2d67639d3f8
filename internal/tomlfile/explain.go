package tomlfile

import (
	"fmt"
	"regexp"
	"strings"
	"sync"
)

// typo is a way to mistype a setting, known by the look of its line. The
// pattern's first group is the key and its second the value.
type typo struct {
	look *regexp.Regexp
	// text may use %s for the value typed; hint may use ${1} for the key and
	// ${2} for the value.
	text, hint string
	only       Kind // of keys that take it; 0 for any
}

// of compiles the look of what stands after a key and its equals sign.
func of(value string) *regexp.Regexp { return regexp.MustCompile(`^\s*([\w-]+)\s*=\s*` + value) }

// lookalikes are characters that stand where a plain one is wanted. They are looked
// for before everything else.
var lookalikes = sync.OnceValue(func() []typo {
	return []typo{
		{regexp.MustCompile(`^\s*([\w-]*)\s*[=:]?\s*[^"']*?([“”„«»‘’‚‹›＂]).*$`),
			"%s is a curly quote", `use straight quotes: ${1} = "..."`, 0},
		{of(`\[(?:.*[\[,\s])?([“”„«»‘’‚‹›＂]).*$`),
			"%s is a curly quote", `use straight quotes: ${1} = ["...", "..."]`, 0},
		{regexp.MustCompile(`^\s*([\w-]*)\s*(＝)`),
			"%s is not the plain equals sign", `write ${1} = "..." with =`, 0},
		{regexp.MustCompile("^[^\"']*?()([\u00a0\u2000-\u200a\u202f\u3000])"),
			"an unusual space stands in this line", "delete the spaces and type them again", 0},
		{regexp.MustCompile(`^\s*(\w+)([\x{2010}-\x{2015}\x{2212}])(\w+)\s*=\s*(.*)$`),
			"%s is not the plain dash", `write ${1}-${3} = ${4}`, 0},
		{regexp.MustCompile(`^\s*([\w-]+)\s*:\s*(.*)$`),
			`a setting is written with "=", not ":"`, `write ${1} = ${2}`, 0},
	}
})

// typos are the other ways, tried in order.
var typos = sync.OnceValue(func() []typo {
	return []typo{
		{of(`(?:#.*)?()$`),
			"nothing stands after the equals sign", "write a value, or take the line away", 0},
		{regexp.MustCompile(`^\s*(\w+) (\w+)\s*=\s*(.*)$`),
			"the name of a setting has no spaces in it", `write ${1}-${2} = ${3}`, 0},
		{of(`([\p{L}][\p{L}\p{N}_-]*)[\s,;]+([\p{L}][\p{L}\p{N}_-]*)\s*(?:#.*)?$`),
			"the words of the list have no quotes around them", `write ${1} = ["${2}", "${3}"]`, List},
		{of(`([\p{L}][\p{L}\p{N}_-]*)[\s,;]+([\p{L}][\p{L}\p{N}_-]*)[\s,;]+[\p{L}][\p{L}\p{N}_, ;-]*(?:#.*)?$`),
			"the words of the list have no quotes around them", `write ${1} = ["${2}", "${3}", "..."], and so on`, List},
		{of(`([\p{L}][\p{L}\p{N} _-]*?)\s*(?:#.*)?$`),
			"%s is not a list", `write ${1} = ["${2}"]`, List},
		{of(`("[^"]*"(?:\s*,\s*"[^"]*")+)\s*(?:#.*)?$`),
			"the brackets around the list are missing", `write ${1} = [${2}]`, List},
		{of(`\[(?:.*[\[,\s])?([\p{L}][\p{L}\p{N}_-]*)\s*[,\]]`),
			"%s has no quotes around it", `write each word of the list in quotes: ${1} = ["...", "..."]`, 0},
		{of(`([\p{L}][\p{L}\p{N} _-]*?)\s*(?:#.*)?$`),
			"%s has no quotes around it", `write ${1} = "${2}"`, 0},
		{of(`"(.*".*)"\s*$`),
			"there are quotes inside the quotes", `write three quotes around it: ${1} = """${2}"""`, Text},
		{of(`["']([^"']*?)\s*$`),
			"a text of several lines has three quotes", `write ${1} = """, the text on the lines below, and """ on a line behind it`, Lines},
		{of(`["']([^"']*?)\s*$`),
			"the quote at the end is missing", `write the whole ${1} on one line, between two quotes: ${1} = "..."`, Text},
		{of(`"([^"]*?)\s*$`),
			"the quote at the end is missing", `write ${1} = "${2}"`, 0},
		{of(`'([^']*?)\s*$`),
			"the quote at the end is missing", `write ${1} = "${2}"`, 0},
		{of(`([^"' #]+)"\s*$`),
			"the quote at the beginning is missing", `write ${1} = "${2}"`, 0},
		{of(`\[()[^\]]*$`),
			"the list is not closed", `write ${1} = ["...", "..."] on one line`, 0},
		{of(`\[.*"\s+(").*\]`),
			"a comma is missing in the list", `write ${1} = ["...", "..."]`, 0},
		{of(`"([^"]*"[^"=,#\[\]]+"[^"=]*?)"?\s*$`),
			"there are quotes inside the quotes", `write three quotes around it: ${1} = """${2}"""`, 0},
		{of(`'([^"]*'[^"=]*)'\s*$`),
			"an apostrophe ends the text too early", `write ${1} = "${2}"`, 0},
		{of(`("[^"]*")\s*[;,.].*$`),
			"something stands after %s", `write ${1} = ${2}, and nothing after it`, 0},
		{of(`("[^"]*"|\S+)\s+[^#\s].*$`),
			"something stands after %s", "give each setting a line of its own", 0},
	}
})

// assignment is a line with a key and a value, and perhaps a remark.
var assignment = of(`(.*?)\s*(?:#.*)?$`)

// explain says in plain words what is wrong with a line.
func (f *File) explain(u unreadable) (text, hint string) {
	if k := f.schema.headed(u.text); k != nil {
		return k.heading()
	}
	if u.fault != noFault {
		return u.explainLong()
	}
	if text, hint, ok := f.look(lookalikes(), u.text); ok {
		return text, hint
	}
	if text, hint, ok := f.explainValue(u.text); ok {
		return text, hint
	}
	if text, hint, ok := f.look(typos(), u.text); ok {
		return text, hint
	}
	switch {
	case strings.Contains(u.text, "=") || strings.TrimSpace(u.text) == "":
		return "this line cannot be read: " + u.cause, ""
	case f.Example == "":
		return "this line is neither a text nor a name in brackets", `write key = "text", or # before a remark`
	}
	return "this line is not a setting", f.Example
}

// look finds the first slip that a line looks like.
func (f *File) look(among []typo, line string) (text, hint string, ok bool) {
	for _, typo := range among {
		m := typo.look.FindStringSubmatchIndex(line)
		if m == nil {
			continue
		}
		if k := f.schema.find(line[m[2]:m[3]]); typo.only != 0 && (k == nil || k.takes != typo.only) {
			continue
		}
		text = typo.text
		if strings.Contains(text, "%s") {
			text = fmt.Sprintf(text, fmt.Sprintf("%q", short(line[m[4]:m[5]])))
		}
		return text, string(typo.look.ExpandString(nil, typo.hint, line, m)), true
	}
	return "", "", false
}

// explainValue says what is wrong with a number, a day, or true or false, that
// cannot be read.
func (f *File) explainValue(line string) (text, hint string, ok bool) {
	m := assignment.FindStringSubmatch(line)
	if m == nil || m[2] == "" {
		return "", "", false
	}
	k, typed := f.schema.find(m[1]), m[2]
	text = fmt.Sprintf("%s cannot be %s", m[1], short(typed))
	switch {
	case k == nil:
	case k.takes == Number:
		return text, k.plainNumber(typed), true
	case k.takes == Switch:
		return text, k.plainSwitch(typed), true
	case k.takes == Date:
		return text, k.plainDay(), true
	}
	return "", "", false
}
