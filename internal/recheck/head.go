package recheck

import (
	"crypto/sha256"
	"encoding/base64"
	"fmt"
	"slices"
	"strings"
	"unicode"

	"golang.org/x/net/html"

	"homebuild/internal/pattern"
)

// forbidden elements load, run, send or hide something. A page has none of
// them: it is one file that asks nothing of anybody.
var forbidden = []string{
	"script", "form", "iframe", "frame", "object", "embed", "base", "img", "picture", "audio", "video", "source",
	"track", "portal", "noscript", "applet", "button", "textarea", "select",
}

// head rechecks what stands around the content: language, title, policy, and
// that nothing runs or loads.
func (p *page) head() {
	p.one("h1")
	p.one("title")
	p.one("main")
	if attr(p.root, "lang") == "" || attr(p.root, "dir") == "" {
		p.add("<html> does not say its language and direction")
	}
	if f := p.folder(); f != "" && attr(p.root, "lang") != f {
		p.add("<html> says lang=%q in the folder %q", attr(p.root, "lang"), f)
	}
	if p.meta("name", "description") == "" {
		p.add("there is no description")
	}
	if !strings.HasPrefix(string(p.raw[:min(len(p.raw), 15)]), "<!doctype html>") {
		p.add("it does not begin with <!doctype html>")
	}
	p.policy()
	for _, n := range all(p.root, "") {
		p.quiet(n)
	}
}

// one wants exactly one element of a name, with words in it.
func (p *page) one(name string) {
	found := slices.DeleteFunc(all(p.root, name), func(n *html.Node) bool { return inside(n, "svg") })
	if len(found) != 1 {
		p.add("there are %d <%s>, want 1", len(found), name)
	} else if text(found[0]) == "" {
		p.add("<%s> is empty", name)
	}
}

// meta gives the content of the only <meta> of its kind.
func (p *page) meta(key, value string) string {
	found := slices.DeleteFunc(all(p.root, "meta"), func(n *html.Node) bool { return !strings.EqualFold(attr(n, key), value) })
	if len(found) != 1 {
		return ""
	}
	return attr(found[0], "content")
}

// policy wants the page's own style to be the only thing that it allows
// (Content Security Policy Level 3, W3C).
func (p *page) policy() {
	rules := map[string]string{}
	for rule := range strings.SplitSeq(p.meta("http-equiv", "Content-Security-Policy"), ";") {
		name, value, _ := strings.Cut(strings.TrimSpace(rule), " ")
		rules[name] = value
	}
	for _, name := range []string{"default-src", "base-uri", "form-action"} {
		if rules[name] != "'none'" {
			p.add("the security policy says %s %s, want 'none'", name, rules[name])
		}
	}
	styles := all(p.root, "style")
	if len(styles) != 1 {
		p.add("there are %d <style>, want 1", len(styles))
		return
	}
	var css strings.Builder
	for n := range styles[0].ChildNodes() {
		css.WriteString(n.Data)
	}
	sum := sha256.Sum256([]byte(css.String()))
	want := "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
	if rules["style-src"] != want {
		p.add("the security policy allows the style %s, and the page has %s", rules["style-src"], want)
	}
	if strings.Contains(css.String(), "@import") || foreign().MatchString(css.String()) {
		p.add("the style asks for another file")
	}
}

// foreign finds what a style fetches by url(): all but a url() that points into the page.
var foreign = pattern.Of(`url\(["' ]*[^#"' ]`)

// quiet wants an element to run nothing, load nothing and send nothing.
func (p *page) quiet(n *html.Node) {
	if slices.Contains(forbidden, n.Data) {
		p.add("there is a <%s>", n.Data)
	}
	for _, a := range n.Attr {
		switch {
		case a.Key == "style", a.Key == "src", a.Key == "srcset", a.Key == "ping", a.Key == "target", a.Key == "background":
			p.add("<%s> has the attribute %s", n.Data, a.Key)
		case strings.HasPrefix(a.Key, "on"):
			p.add("<%s> runs something: %s", n.Data, a.Key)
		case a.Key == "http-equiv" && !strings.EqualFold(a.Val, "Content-Security-Policy"):
			p.add("<meta> says %s", a.Val)
		}
	}
	if rel := attr(n, "rel"); n.Data == "link" && rel != "canonical" && rel != "alternate" {
		p.add("<link rel=%q> loads something", rel)
	}
	if n.Data == "input" && attr(n, "type") != "radio" {
		p.add("there is an <input type=%q>", attr(n, "type"))
	}
}

// rightToLeft are the scripts that are written so (Unicode Standard Annex 9,
// the letters of the classes R and AL).
var rightToLeft = []*unicode.RangeTable{
	unicode.Arabic, unicode.Hebrew, unicode.Syriac, unicode.Thaana, unicode.Nko, unicode.Samaritan, unicode.Mandaic,
	unicode.Adlam, unicode.Hanifi_Rohingya,
}

// direction wants dir to be that of the letters that most of the text is
// written in, on the page and on each passage in another language.
func (p *page) direction() {
	passages := append([]*html.Node{p.root}, all(p.root, "[lang]")...)
	for _, n := range passages {
		right, left := letters(n)
		want := "ltr"
		if right > left {
			want = "rtl"
		}
		if dir := attr(n, "dir"); right+left > 0 && dir != want {
			p.add("<%s lang=%q> has dir=%q; its letters run %s: %s", n.Data, attr(n, "lang"), dir, want, short(text(n)))
		}
	}
}

// letters counts the letters below n by direction, passages in other languages
// and the heading of the file apart.
func letters(n *html.Node) (right, left int) {
	for d := range n.ChildNodes() {
		switch {
		case d.Type == html.ElementNode && (d.Data == "head" || d.Data == "style" || attr(d, "lang") != ""):
		case d.Type == html.ElementNode:
			r, l := letters(d)
			right, left = right+r, left+l
		case d.Type == html.TextNode:
			for _, r := range d.Data {
				switch {
				case !unicode.IsLetter(r):
				case r > unicode.MaxASCII && unicode.In(r, rightToLeft...):
					right++
				default:
					left++
				}
			}
		}
	}
	return right, left
}

// short is the beginning of a text, for a problem.
func short(s string) string {
	if r := []rune(s); len(r) > 40 {
		return fmt.Sprintf("%q", string(r[:40])+"…")
	}
	return fmt.Sprintf("%q", s)
}
