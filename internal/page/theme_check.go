package page

import (
	"fmt"
	"strings"
	"unicode"

	"homebuild/internal/diag"
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
	"<", "\\", "url(", "image(", "image-set(", "src(", "expression(", "@import", "@font-face", "@namespace",
}

// checkCSS refuses what does not belong in a look.
func checkCSS(name, css string) *diag.Diagnostic {
	if len(css) > largestCSS {
		return &diag.Diagnostic{File: name, Text: fmt.Sprintf("the file has %d bytes, and every page carries it", len(css)), Hint: fmt.Sprintf("keep it to %d", largestCSS)}
	}
	small := inSmallLetters(css)
	for _, no := range notInCSS {
		if at := strings.Index(small, no); at >= 0 {
			return &diag.Diagnostic{
				File: name, Line: 1 + strings.Count(css[:at], "\n"), Text: fmt.Sprintf("%q is not for a theme", css[at:at+len(no)]),
				Hint: "take it out; a page asks for no file and holds no markup",
			}
		}
	}
	if at := strings.IndexFunc(css, turns); at >= 0 {
		return &diag.Diagnostic{File: name, Line: 1 + strings.Count(css[:at], "\n"), Text: "an invisible sign stands here that turns the direction of a text", Hint: "delete the line and type it anew"}
	}
	if wrong := checkBalance(name, css); wrong != nil {
		return wrong
	}
	return checkShown(name, css)
}

// turns reports whether a sign changes the direction of what follows (Unicode
// Standard Annex #9, "Unicode Bidirectional Algorithm", 2.1 to 2.6).
func turns(c rune) bool { return unicode.Is(unicode.Bidi_Control, c) }

// inSmallLetters changes the letters of ASCII alone, so that places stay.
func inSmallLetters(css string) string {
	return strings.Map(func(c rune) rune {
		if 'A' <= c && c <= 'Z' {
			return c + 'a' - 'A'
		}
		return c
	}, css)
}
