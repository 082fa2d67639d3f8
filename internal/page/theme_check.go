package page

import (
	"bytes"
	"fmt"
	"strings"

	"github.com/tdewolff/parse/v2"
	"github.com/tdewolff/parse/v2/css"
)

// checkCSS refuses what does not belong in a look: "<", which could close the
// <style> element, and everything that asks for a file. The page's security
// policy would stop such a request too; here the teacher learns of it.
func checkCSS(name string, raw []byte) error {
	refuse := func(text string, at int) error {
		line := 1 + bytes.Count(raw[:min(at, len(raw))], []byte("\n"))
		return fmt.Errorf("%w: %s:%d: %q is not for a theme; a page asks for no file and holds no markup", ErrTheme, name, line, text)
	}
	if i := bytes.IndexByte(raw, '<'); i >= 0 {
		return refuse("<", i)
	}
	// An escape could spell url( or @import past the checks below.
	if i := bytes.IndexByte(raw, '\\'); i >= 0 {
		return refuse("\\", i)
	}
	// The lexer below finds url( as a token; here it may not stand anywhere, as
	// in 0url(, so that nobody has to know what a browser makes of it.
	if i := bytes.Index(bytes.ToLower(raw), []byte("url(")); i >= 0 {
		return refuse("url(", i)
	}
	lexer, at := css.NewLexer(parse.NewInputBytes(bytes.Clone(raw))), 0
	for {
		kind, token := lexer.Next()
		if kind == css.ErrorToken {
			return nil // the end; unfinished rules are mended by the browser
		}
		word := strings.ToLower(string(token))
		if kind == css.URLToken || kind == css.BadURLToken || asksForFile[word] {
			return refuse(string(token), at)
		}
		at += len(token)
	}
}

var asksForFile = map[string]bool{
	"@import": true, "@font-face": true, "@namespace": true,
	"url(": true, "image(": true, "image-set(": true, "-webkit-image-set(": true,
	"src(": true, "expression(": true,
}
