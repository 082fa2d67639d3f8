package i18n

import "strings"

// RunKind says what a stretch of text is, so that a page can mark it up.
type RunKind uint8

const (
	RunPlain    RunKind = iota + 1 // words of the message
	RunNumber                      // a bare number
	RunCounted                     // a counted thing as a whole: "8 shells"
	RunBlank                       // a line to write on
	RunPerson                      // a name
	RunEquation                    // an equation; a page isolates it, see Language.EquationsRightToLeft
	RunOwnText                     // a teacher's own words, in any language and direction
	RunMark                        // a sign around a message, in a language that is Marked
)

// Run is a stretch of text of one kind.
type Run struct {
	Kind RunKind
	Text string
}

// Text is a message that was said.
type Text []Run

// String joins the runs as they stand.
func (t Text) String() string {
	if len(t) == 1 {
		return t[0].Text
	}
	size := 0
	for _, r := range t {
		size += len(r.Text)
	}
	var b strings.Builder
	b.Grow(size)
	for _, r := range t {
		b.WriteString(r.Text)
	}
	return b.String()
}
