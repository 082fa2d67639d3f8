// Package diag holds problems in people's files as data: where, what is wrong,
// and what to write instead. All problems of a run are gathered and sorted, so
// that a person mends a file once.
package diag

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"
)

// Diagnostic is one thing to mend. Text is lower case without a full stop and
// quotes what was typed; Hint is the next step and may be empty.
type Diagnostic struct {
	File string `json:"file"`           // path as the person knows it, slash separated
	Line int    `json:"line,omitempty"` // from 1; 0 when the file as a whole is meant
	Text string `json:"text"`
	Hint string `json:"hint,omitempty"`
	Code string `json:"code,omitempty"` // names what programs have words of their own for; empty for most
	// Value is what a diagnostic with a code is about: the quoted words, a number, a
	// setting.
	Value string `json:"value,omitempty"`
}

// Codes of diagnostics, with their values.
const (
	// Something about a person, and pages are public: the words.
	PrivateMail   = "private-mail"   // an e-mail address
	PrivatePhone  = "private-phone"  // a telephone number
	PrivateID     = "private-id"     // an id number
	PrivateNumber = "private-number" // a telephone or an id number

	OddDate  = "odd-date"
	Brackets = "brackets"  // a bracket in a story that stands alone
	Mark     = "mark"      // a mark in a story that holds no number: the mark
	Untold   = "untold"    // what a translation leaves out: the numbers
	Overtold = "overtold"  // what only a translation tells: the number
	Answer   = "answer"    // an answer that is not the story's: the right one
	Long     = "long"      // a text that is too long: how many letters it may have
	Markup   = "markup"    // HTML in a story: the first tag
	Link     = "link"      // a link in a story: the link
	Unmet    = "unmet"     // a wish that the week's stories cannot meet: the setting
	Taken    = "taken"     // a Monday that has a week: the date
	Address  = "address"   // where no site can be: the address
	Nameless = "nameless"  // a site without a name
	Copied   = "copied"    // a note that an earlier week has word for word: the date
	HardNote = "hard-note" // a note that is hard to read
	OtherDay = "other-day" // a week that begins on another day than the others: the date

	// What a note cannot show: the words.
	NoteMarkup  = "note-markup"
	NotePicture = "note-picture"
	NoteNested  = "note-nested"  // a list in a list in a list
	LinkOutside = "link-outside" // a link that is not allowed yet
	LinkPlain   = "link-plain"   // a link that begins with http://
	LinkShort   = "link-short"   // a link that begins with www.
	LinkStrange = "link-strange" // a link of another sort, as to an address
	LinkInside  = "link-inside"  // a link without a place to go to

	Unknown  = "unknown"  // a word that is none of those there are: the word
	Missing  = "missing"  // a setting without which there is no week
	Renamed  = "renamed"  // a setting that has another name now: the new one
	Unchosen = "unchosen" // an own story that does not say yet what it tells
	Misfit   = "misfit"   // a kept story that cannot be told any more

	// What a language holds back: its name in itself.
	Draft     = "draft"      // nobody who speaks it well has signed its words
	Newer     = "newer"      // some of its words are newer than that
	TellsFew  = "tells-few"  // it tells stories of some kinds only
	LeavesOut = "leaves-out" // it leaves out events, and so no language of the site has them
	NoNote    = "no-note"    // a week without a note: the date
	NoNoteIn  = "no-note-in" // weeks without a note in a language: the newest date
	HeavyPage = "heavy-page" // a page that takes long to arrive: the language
	HeavyWeek = "heavy-week" // a week whose pages do: the language
)

// String is "file:line: text", then the hint on its own line.
func (p Diagnostic) String() string {
	var b strings.Builder
	if p.File != "" {
		b.WriteString(p.File + ":")
		if p.Line > 0 {
			fmt.Fprintf(&b, "%d:", p.Line)
		}
		b.WriteByte(' ')
	}
	b.WriteString(p.Text)
	if p.Hint != "" {
		b.WriteString("\n  hint: " + p.Hint)
	}
	return b.String()
}

// Diagnostics is a list of problems that is also an error.
type Diagnostics []Diagnostic

// Error gives every problem, one after the other.
func (ps Diagnostics) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.String()
	}
	return strings.Join(lines, "\n")
}

// Sort puts problems in the order of file and line.
func (ps Diagnostics) Sort() {
	slices.SortStableFunc(ps, func(a, b Diagnostic) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line))
	})
}

// Amount is a number with its noun: "1 page", "3 pages".
func Amount(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

// manyWords is the length from which a list is better asked for than read.
const manyWords = 14

// Choice says which of the allowed words was meant, or which there are.
func Choice(typed string, allowed []string) string {
	switch near := Nearest(typed, allowed); {
	case len(allowed) == 0:
		return "there is none to choose yet; leave it out"
	case len(allowed) <= manyWords && near != "":
		return didYouMean(near) + " there are: " + strings.Join(allowed, ", ")
	case len(allowed) <= manyWords:
		return "there are: " + strings.Join(allowed, ", ")
	case near != "":
		return didYouMean(near)
	}
	return "there are: " + Some(allowed, manyWords)
}

// Some lists the first words of a list, at most so many, and counts the rest.
func Some(words []string, most int) string {
	if len(words) <= most {
		return strings.Join(words, ", ")
	}
	return fmt.Sprintf("%s and %d more", strings.Join(words[:most], ", "), len(words)-most)
}

// Suggest asks whether the nearest of the allowed words was meant; where none
// is near, it gives the other hint.
func Suggest(typed string, allowed []string, otherwise string) string {
	if near := Nearest(typed, allowed); near != "" {
		return didYouMean(near)
	}
	return otherwise
}

func didYouMean(word string) string { return fmt.Sprintf("did you mean %q?", word) }

// And adds to a hint, which may end in a question.
func And(hint, more string) string {
	if strings.HasSuffix(hint, "?") {
		return hint + " " + more
	}
	return hint + "; " + more
}

// Nearest returns the allowed word closest to the typed one, or the only one
// that begins with it; "" when none is close enough to be a slip of the fingers.
func Nearest(typed string, allowed []string) string {
	typed = strings.ToLower(typed)
	begun, beginning := "", 0
	best, least := "", 1+utf8.RuneCountInString(typed)/2
	for _, word := range allowed {
		small := strings.ToLower(word)
		if typed != "" && strings.HasPrefix(small, typed) {
			begun = word
			beginning++
		}
		if utf8.RuneCountInString(typed)-utf8.RuneCountInString(small) >= least {
			continue // as a whole paragraph typed for a word
		}
		if d := distance([]rune(typed), []rune(small)); d < least {
			best, least = word, d
		}
	}
	if best == "" && beginning == 1 {
		return begun
	}
	return best
}

// distance counts the letters to add, drop, change or swap (optimal string
// alignment).
func distance(a, b []rune) int {
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}
