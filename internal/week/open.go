package week

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"strings"
	"unicode/utf8"
)

// maxSize is far more than anyone writes for a week, and little enough that a
// wrong file does no harm.
const maxSize = 1 << 20

// text reads a file as plain text with "\n" line ends and no byte order mark.
// It says what is wrong and reports false when the file is not such a text.
func (r *reader) text(name string) (string, bool) {
	data, ok := r.bytes(name)
	if !ok {
		return "", false
	}
	if bytes.HasPrefix(data, []byte("\xff\xfe")) || bytes.HasPrefix(data, []byte("\xfe\xff")) {
		r.add(name, 0, "the file is saved as UTF-16, not as plain UTF-8 text", `choose "UTF-8" where your editor asks for the encoding, and save it again`)
		return "", false
	}
	if at := bytes.IndexByte(data, 0); at >= 0 {
		r.add(name, 0, "this is not a text file", "word processors keep more than text in their files; save it as plain text")
		return "", false
	}
	if bytes.HasPrefix(data, []byte(`{\rtf`)) {
		r.add(name, 1, "this is not a plain text file", "word processors keep more than text in their files; save it as plain text (in TextEdit: Format, Make Plain Text)")
		return "", false
	}
	data = bytes.TrimPrefix(data, []byte("\xef\xbb\xbf"))
	data = bytes.ReplaceAll(data, []byte("\r\n"), []byte("\n"))
	data = bytes.ReplaceAll(data, []byte("\r"), []byte("\n"))
	if at := badUTF8(data); at >= 0 {
		r.add(name, lineAt(data, at), "a letter here is not saved as UTF-8", `choose "UTF-8" where your editor asks for the encoding, and save it again`)
		return "", false
	}
	if len(bytes.TrimSpace(data)) == 0 {
		r.add(name, 0, "the file is empty", "write it, or take it away")
		return "", false
	}
	return string(data), r.visible(name, string(data))
}

// bytes reads a real file of this folder, up to maxSize.
func (r *reader) bytes(name string) ([]byte, bool) {
	info, err := fs.Lstat(r.fsys, name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		r.add(name, 0, "the file is missing", "")
		return nil, false
	case err != nil:
		r.add(name, 0, "the file cannot be read: "+reason(err), "")
		return nil, false
	case info.Mode()&fs.ModeSymlink != 0:
		r.add(name, 0, "this is a link to another place", "put the file itself here; links are not followed")
		return nil, false
	case !info.Mode().IsRegular():
		r.add(name, 0, "this is not a file", "")
		return nil, false
	}
	file, err := r.fsys.Open(name)
	if err != nil {
		r.add(name, 0, "the file cannot be read: "+reason(err), "")
		return nil, false
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, maxSize+1))
	if err != nil {
		r.add(name, 0, "the file cannot be read: "+reason(err), "")
		return nil, false
	}
	if len(data) > maxSize {
		r.add(name, 0, "the file is larger than 1 MB", "a week is a page of text; is this another file?")
		return nil, false
	}
	return data, true
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

// hidden names an unseen character that does not belong in a note, or "".
func hidden(c rune, before string) string {
	switch {
	case c == '\t':
		return ""
	case c < 0x20 || c >= 0x7f && c < 0xa0 || c == 0x2028 || c == 0x2029:
		return "a control character"
	case c >= 0x202a && c <= 0x202e || c >= 0x2066 && c <= 0x2069:
		return "a mark that turns the reading direction"
	case c == 0x200b && !spaceless(before), c == 0x2060, c == 0xfeff, c == 0xad,
		c >= 0xe0000 && c <= 0xe0fff, c >= 0xfff9 && c <= 0xfffb:
		return "an unseen character"
	case c == utf8.RuneError:
		return "a letter that was lost earlier"
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
	if len(letters) > 12 {
		letters = letters[len(letters)-12:]
	}
	return string(letters)
}

func badUTF8(data []byte) int {
	for at := 0; at < len(data); {
		c, size := utf8.DecodeRune(data[at:])
		if c == utf8.RuneError && size == 1 {
			return at
		}
		at += size
	}
	return -1
}

func lineAt(data []byte, at int) int { return 1 + bytes.Count(data[:at], []byte("\n")) }

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

// reason is what an error of the disk says without the path in front.
func reason(err error) string {
	var at *fs.PathError
	if errors.As(err, &at) {
		return at.Err.Error()
	}
	return err.Error()
}
