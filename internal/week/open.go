package week

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"homebuild/internal/textfile"
	"homebuild/internal/tomlfile"
)

// text reads a file that is not empty. It says what is wrong and reports false
// when the file is not such a text.
func (r *reader) text(name string) (string, bool) {
	text, problem := textfile.Read(r.fsys, name)
	if problem != nil {
		r.problems = append(r.problems, *problem)
		return "", false
	}
	if strings.TrimSpace(text) == "" {
		r.add(name, 0, "the file is empty", "write it, or take it away")
		return "", false
	}
	return text, r.visible(name, text)
}

// visible refuses letters that nobody sees: they hide in copied text and can
// make a page read otherwise than it looks. Joiners and direction marks stay,
// since several scripts are not written without them.
func (r *reader) visible(name, text string) bool {
	ok := true
	for number, line := range lines(text) {
		for at, c := range line {
			if what := hidden(c, line[:at]); what != "" {
				r.add(name, number, fmt.Sprintf("%s (U+%04X) hides after %q", what, c, tail(line[:at])), "delete that part of the line and type it again")
				ok = false
				break
			}
		}
	}
	return ok
}

// spelled refuses letters that nobody sees and that are spelled out: "\u202e".
func (r *reader) spelled(file *tomlfile.File, name string) {
	for v := range file.Values() {
		for at, c := range v.Text {
			if what := hidden(c, v.Text[:at]); what != "" && c != '\n' {
				r.add(name, v.Line, fmt.Sprintf("%s holds %s (U+%04X)", v.Name(), what, c), "leave it out")
				break
			}
		}
	}
}

// unseen are characters that nobody sees and that do not belong in a note.
var unseen = []struct {
	first, last rune
	what        string
}{
	{0x00, '\t' - 1, "a control character"},
	{'\t' + 1, 0x1f, "a control character"},
	{0x7f, 0x9f, "a control character"},
	{0xad, 0xad, "an unseen character"},
	{0x200b, 0x200b, "an unseen character"},
	{0x2028, 0x2029, "a control character"},
	{0x202a, 0x202e, "a mark that turns the reading direction"},
	{0x2060, 0x2060, "an unseen character"},
	{0x2066, 0x2069, "a mark that turns the reading direction"},
	{0xfeff, 0xfeff, "an unseen character"},
	{0xfff9, 0xfffb, "an unseen character"},
	{utf8.RuneError, utf8.RuneError, "a letter that was lost earlier"},
	{0xe0000, 0xe0fff, "an unseen character"},
}

// hidden names an unseen character behind a text, or "".
func hidden(c rune, before string) string {
	for _, u := range unseen {
		if c >= u.first && c <= u.last && !(c == 0x200b && spaceless(before)) {
			return u.what
		}
	}
	return ""
}

// spaceless reports whether a text ends in a script that sets its words
// without spaces and marks them with U+200B: Thai, Lao, Myanmar, Khmer.
func spaceless(before string) bool {
	c, _ := utf8.DecodeLastRuneInString(before)
	return c >= 0x0e00 && c <= 0x0eff || c >= 0x1000 && c <= 0x109f || c >= 0x1780 && c <= 0x17ff
}

// tail is the end of a text, to find the place by.
func tail(s string) string {
	letters := []rune(s)
	return string(letters[max(0, len(letters)-12):])
}

// lines yields a text's lines, numbered from 1.
func lines(text string) func(func(int, string) bool) {
	return func(yield func(int, string) bool) {
		number := 0
		for line := range strings.SplitSeq(text, "\n") {
			number++
			if !yield(number, line) {
				return
			}
		}
	}
}
