package translate

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"homebuild/internal/diag"
	"homebuild/internal/pattern"
)

// Reading is what a fluent reader reads of a language in about an hour: sentences with
// a number each, in groups, and a place for a remark below each of them.
type Reading struct {
	Tag, Name   string // Name is the language's own
	Part, Parts int    // which this is, from 1, and how many there are
	Groups      []Group
}

// Group are sentences of a reading under a title.
type Group struct {
	Title     string
	Sentences []Sentence
}

// Sentence is a message as a page says it.
type Sentence struct {
	IDs  []string // of the message, and of others that say the same
	Said string
	// Of is what a page shows when it says it, such as the calculation that a reply
	// belongs to; empty where the sentence stands for itself.
	Of string
	// Ends reports that what follows is not read on from here: the end of a story.
	Ends bool
}

// Size is how many sentences there are.
func (r Reading) Size() int {
	n := 0
	for _, g := range r.Groups {
		n += len(g.Sentences)
	}
	return n
}

const (
	remarkMark = ">"
	// keyTitle stands above the list that leads from a number to a message. A reader
	// needs none of it.
	keyTitle = "---- The end. Please leave what follows: it says which message each number is. ----"
)

// String is a plain text that Remarks reads again.
func (r Reading) String() string {
	var b, key strings.Builder
	fmt.Fprintf(&b, `%s (%s): %d sentences with numbers that break sentences easily. Part %d of %d, about an hour.

Read each one as families hear it: is it right, and would you say it so? If not,
write below it, behind ">", what you would say or what is wrong. A remark may have
several lines, each with ">" in front. Leave all other lines as they are. Behind a
reply stand the calculation and the number that the child answered with. Numbers of
children's pages are seldom so odd: do not mind that. Then send the file back.
`, r.Name, r.Tag, r.Size(), r.Part, r.Parts)
	n := 0
	for _, g := range r.Groups {
		fmt.Fprintf(&b, "\n\n==== %s ====\n\n", g.Title)
		for _, s := range g.Sentences {
			n++
			fmt.Fprintf(&b, "%d  %s", n, s.Said)
			if s.Of != "" {
				fmt.Fprintf(&b, "  (%s)", s.Of)
			}
			fmt.Fprintf(&b, "\n%s\n", remarkMark)
			if s.Ends {
				b.WriteString("\n")
			}
			fmt.Fprintf(&key, "%d %s\n", n, strings.Join(s.IDs, " "))
		}
	}
	fmt.Fprintf(&b, "\n%s\n%s %s\n%s", keyTitle, keyLanguage, r.Tag, key.String())
	return b.String()
}

const keyLanguage = "language"

// Remark is what a reader wrote about a message.
type Remark struct {
	ID      string
	Reading []Remarked // in the order of the reading
}

// Remarked is a sentence with what the reader wrote below it.
type Remarked struct {
	Number int
	Said   string
	Remark string
}

// numbered is a sentence as String writes it.
var numbered = pattern.Of(`^(\d+)(?:  |\t|\x{a0})\s*(.*)$`)

// Remarks reads the remarks in a reading of a language that came back, by message, in
// the order in which a message has its first one. Problems point to a line of the file
// that was named.
func Remarks(tag, name, text string) ([]Remark, diag.Diagnostics) {
	body, key, whole := strings.Cut(text, keyTitle)
	if !whole {
		return nil, diag.Diagnostics{{File: name, Text: "the list at the end is missing, which says what message each number is",
			Hint: "homebuild language sample " + tag + " --hard --out NEW.txt makes a reading; copy the remarks into it"}}
	}
	ids, of := readKey(key)
	if of != tag {
		return nil, diag.Diagnostics{{File: name, Text: fmt.Sprintf("this is a reading of %q", of), Hint: "homebuild language remarks " + of + " " + name}}
	}
	var all []Remark
	var problems diag.Diagnostics
	at := Remarked{}
	for i, line := range strings.Split(body, "\n") {
		line = strings.TrimSpace(strings.TrimLeftFunc(line, func(c rune) bool { return unicode.Is(unicode.Bidi_Control, c) }))
		remark, is := strings.CutPrefix(line, remarkMark)
		if m := numbered().FindStringSubmatch(line); m != nil {
			number, _ := strconv.Atoi(m[1])
			at = Remarked{Number: number, Said: m[2]}
		}
		if remark = strings.TrimSpace(remark); !is || remark == "" {
			continue
		}
		if len(ids[at.Number]) == 0 {
			problems = append(problems, diag.Diagnostic{File: name, Line: i + 1, Text: "this remark stands below no sentence of the reading", Hint: "write it below the sentence and its number"})
			continue
		}
		for _, id := range ids[at.Number] {
			all = remarked(all, id, at, remark)
		}
	}
	return all, problems
}

// readKey reads the list at the end.
func readKey(text string) (ids map[int][]string, tag string) {
	ids = map[int][]string{}
	for _, line := range strings.Split(text, "\n") {
		word, rest, _ := strings.Cut(strings.TrimSpace(line), " ")
		if n, err := strconv.Atoi(word); err == nil {
			ids[n] = strings.Fields(rest)
		} else if word == keyLanguage {
			tag = rest
		}
	}
	return ids, tag
}

// remarked adds a line of a remark.
func remarked(all []Remark, id string, at Remarked, line string) []Remark {
	i := slices.IndexFunc(all, func(r Remark) bool { return r.ID == id })
	if i < 0 {
		i, all = len(all), append(all, Remark{ID: id})
	}
	if last := len(all[i].Reading) - 1; last >= 0 && all[i].Reading[last].Number == at.Number {
		all[i].Reading[last].Remark += "\n" + line
		return all
	}
	at.Remark = line
	all[i].Reading = append(all[i].Reading, at)
	return all
}
