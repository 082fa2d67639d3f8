package page

import (
	"bytes"
	"fmt"
)

// largestCSS is far more than a look needs, and little enough for every page to
// carry.
const largestCSS = 32 << 10

// notInCSS are what a look has no use for: "<" could close the <style>
// element, "\\" could spell any of the others past this check, and the rest asks
// for a file. The words are refused wherever they stand, as in 0url(, so that
// nobody has to know what a browser makes of it. The page's security policy
// would stop such a request too; here the teacher learns of it.
var notInCSS = []string{
	"<", "\\", "\x00", "url(", "image(", "image-set(", "src(", "expression(", "@import", "@font-face", "@namespace",
}

// checkCSS refuses what does not belong in a look.
func checkCSS(name string, raw []byte) error {
	if len(raw) > largestCSS {
		return fmt.Errorf("%w: %s has %d bytes; every page carries it, so keep it to %d", ErrTheme, name, len(raw), largestCSS)
	}
	small := inSmallLetters(raw)
	for _, no := range notInCSS {
		if at := bytes.Index(small, []byte(no)); at >= 0 {
			return fmt.Errorf("%w: %s:%d: %q is not for a theme; a page asks for no file and holds no markup",
				ErrTheme, name, 1+bytes.Count(small[:at], []byte("\n")), raw[at:at+len(no)])
		}
	}
	return nil
}

// inSmallLetters changes the letters of ASCII alone, so that places stay.
func inSmallLetters(raw []byte) []byte {
	small := bytes.Clone(raw)
	for i, c := range small {
		if 'A' <= c && c <= 'Z' {
			small[i] = c + 'a' - 'A'
		}
	}
	return small
}
