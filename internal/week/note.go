package week

import (
	"fmt"
	"html"
	"regexp"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/pattern"
)

// maxNote keeps a page light: a note is read on a phone, in a minute or two.
const maxNote = 4000

var (
	deep      = pattern.Of(`^\s*(?:(?:>|[-+*]|\d+[.)])\s*){7}`)
	rawHTML   = pattern.Of(`<(?:!--|[!?/]?[A-Za-z][A-Za-z0-9-]*(?:[\s/>]|$))`)
	image     = pattern.Of(`!\[[^\]]*\](?:\([^)]*\)|\[[^\]]*\])?`)
	inline    = pattern.Of(`\]\(\s*<?([^)\s>]*)`)
	reference = pattern.Of(`^[\s>*+-]*\[[^\]]+\]:\s*<?([^\s>]*)>?(?:\s+["'(].*)?\s*$`)
	autolink  = pattern.Of(`<([A-Za-z][A-Za-z0-9+.-]+:[^\s<>]*)>`)
	bareLink  = pattern.Of(`(?i)(?:https?://|www\.)[^\s<>()\[\]"]*[^\s<>()\[\]".,;:!?*_']`)
)

// checkNote looks through a note for what a public page may not show: things
// about people, markup, pictures and links to other places. The note itself
// stays Markdown.
func (r *reader) checkNote(file string, first int, note string, allow []string) {
	if n := len([]rune(strings.TrimSpace(note))); n > maxNote {
		r.addCoded(diag.Long, fmt.Sprint(maxNote), file, first, fmt.Sprintf("the note has %d letters", n), fmt.Sprintf("keep it to %d: families read it on a phone", maxNote))
	}
	for number, line := range lines(note) {
		at := first + number - 1
		if deep().MatchString(line) && strings.Trim(line, "-*_ ") != "" {
			r.addCoded(diag.NoteNested, "", file, at, "a list or a quote stands in another, many times over", "begin the line with one mark, or with words")
		}
		line = r.checkMarkup(file, at, line)
		line = r.checkLinks(file, at, line, allow)
		for _, p := range private(line) {
			if !allowed(p.text, allow) {
				r.addCoded(p.code, p.text, file, at, fmt.Sprintf("the note shows %s, %q, and pages are public", p.what(), p.text),
					fmt.Sprintf("leave it out, or add allow = [%q] to the week's settings if everyone may see it", p.text))
			}
		}
	}
}

// checkMarkup refuses raw HTML and pictures and returns the line without them.
func (r *reader) checkMarkup(file string, at int, line string) string {
	if tag := rawHTML().FindString(line); tag != "" {
		r.addCoded(diag.NoteMarkup, strings.TrimSpace(tag), file, at, fmt.Sprintf("the note holds HTML, %q, which pages leave out", strings.TrimSpace(tag)),
			"write *slanted*, **strong**, or lines that begin with - instead")
	}
	return take(image(), line, func(text string) bool {
		r.addCoded(diag.NotePicture, text, file, at, fmt.Sprintf("the note holds a picture, %q, and pages fetch nothing", text), "tell in words what it shows")
		return true
	})
}

// checkLinks refuses links that the teacher did not allow and returns the line
// without its links.
func (r *reader) checkLinks(file string, at int, line string, allow []string) string {
	for _, look := range []*regexp.Regexp{autolink(), inline(), reference(), bareLink()} {
		for _, m := range look.FindAllStringSubmatchIndex(line, -1) {
			from, to := m[len(m)-2], m[len(m)-1]
			r.checkLink(file, at, html.UnescapeString(line[from:to]), allow)
		}
		line = take(look, line, func(string) bool { return true })
	}
	return line
}

// checkLink refuses one link.
func (r *reader) checkLink(file string, at int, to string, allow []string) {
	lower := strings.ToLower(to)
	switch {
	case to == "":
		r.addCoded(diag.LinkInside, "", file, at, "a link leads nowhere", "write the link on one line: [words](https://...)")
	case strings.HasPrefix(lower, "https://"):
		if !allowed(to, allow) {
			r.addCoded(diag.LinkOutside, to, file, at, fmt.Sprintf("the note links to %q, outside this site", to),
				fmt.Sprintf("leave it out, or add allow = [%q] to the week's settings", to))
		}
	case strings.HasPrefix(lower, "http://"):
		r.addCoded(diag.LinkPlain, to, file, at, fmt.Sprintf("%q is not a safe link", to), "write https:// instead of http://")
	case strings.HasPrefix(lower, "www."):
		r.addCoded(diag.LinkShort, to, file, at, fmt.Sprintf("%q is not a whole link", to), fmt.Sprintf("write %q", "https://"+to))
	case strings.Contains(to, ":"):
		r.addCoded(diag.LinkStrange, to, file, at, fmt.Sprintf("a link cannot lead to %q", to), "links begin with https://; write addresses and numbers as plain words")
	default:
		r.addCoded(diag.LinkInside, to, file, at, fmt.Sprintf("a note cannot link to %q", to), "homebuild makes the links between pages itself; leave this one out")
	}
}
