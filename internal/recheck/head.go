package recheck

import (
	"crypto/sha256"
	"encoding/base64"
	"fmt"
	"slices"
	"strings"
	"unicode"

	"golang.org/x/net/html"
)

// forbidden elements load, run, send or hide something. A page has none of
// them: it is one file that asks nothing of anybody.
var forbidden = []string{
	"script", "form", "iframe", "frame", "object", "embed", "base", "img", "picture", "audio", "video", "source",
	"track", "portal", "noscript", "applet", "button", "textarea", "select",
}

// head rechecks what stands around the content: language, title, policy, and
// that nothing runs or loads.
func (c *checker) head(p *page) {
	c.one(p, "h1")
	c.one(p, "title")
	c.one(p, "main")
	if attr(p.root, "lang") == "" || attr(p.root, "dir") == "" {
		c.add(p, "<html> does not say its language and direction")
	}
	if f := p.folder(); f != "" && attr(p.root, "lang") != f {
		c.add(p, "<html> says lang=%q in the folder %q", attr(p.root, "lang"), f)
	}
	if c.meta(p, "name", "description") == "" {
		c.add(p, "there is no description")
	}
	if !strings.HasPrefix(string(p.raw[:min(len(p.raw), 15)]), "<!doctype html>") {
		c.add(p, "it does not begin with <!doctype html>")
	}
	c.policy(p)
	for _, n := range all(p.root, func(*html.Node) bool { return true }) {
		c.quiet(p, n)
	}
}

// one wants exactly one element of a name, with words in it.
func (c *checker) one(p *page, name string) {
	found := all(p.root, both(tag(name), func(n *html.Node) bool { return !inside(n, tag("svg")) }))
	if len(found) != 1 {
		c.add(p, "there are %d <%s>, want 1", len(found), name)
	} else if text(found[0]) == "" {
		c.add(p, "<%s> is empty", name)
	}
}

// meta gives the content of the only <meta> of its kind.
func (c *checker) meta(p *page, key, value string) string {
	found := all(p.root, both(tag("meta"), func(n *html.Node) bool { return strings.EqualFold(attr(n, key), value) }))
	if len(found) != 1 {
		return ""
	}
	return attr(found[0], "content")
}

// policy wants the page's own style to be the only thing that it allows
// (Content Security Policy Level 3, W3C).
func (c *checker) policy(p *page) {
	rules := map[string]string{}
	for rule := range strings.SplitSeq(c.meta(p, "http-equiv", "Content-Security-Policy"), ";") {
		name, value, _ := strings.Cut(strings.TrimSpace(rule), " ")
		rules[name] = value
	}
	for _, name := range []string{"default-src", "base-uri", "form-action"} {
		if rules[name] != "'none'" {
			c.add(p, "the security policy says %s %s, want 'none'", name, rules[name])
		}
	}
	styles := all(p.root, tag("style"))
	if len(styles) != 1 {
		c.add(p, "there are %d <style>, want 1", len(styles))
		return
	}
	var css strings.Builder
	for n := range styles[0].ChildNodes() {
		css.WriteString(n.Data)
	}
	sum := sha256.Sum256([]byte(css.String()))
	want := "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
	if rules["style-src"] != want {
		c.add(p, "the security policy allows the style %s, and the page has %s", rules["style-src"], want)
	}
	if strings.Contains(css.String(), "url(") && !onlyOwn(css.String()) || strings.Contains(css.String(), "@import") {
		c.add(p, "the style asks for another file")
	}
}

// onlyOwn reports whether every url() of a style points into the page.
func onlyOwn(css string) bool {
	for _, after := range strings.Split(css, "url(")[1:] {
		if !strings.HasPrefix(strings.TrimLeft(after, `"' `), "#") {
			return false
		}
	}
	return true
}

// quiet wants an element to run nothing, load nothing and send nothing.
func (c *checker) quiet(p *page, n *html.Node) {
	if slices.Contains(forbidden, n.Data) {
		c.add(p, "there is a <%s>", n.Data)
	}
	for _, a := range n.Attr {
		switch {
		case a.Key == "style", a.Key == "src", a.Key == "srcset", a.Key == "ping", a.Key == "target", a.Key == "background":
			c.add(p, "<%s> has the attribute %s", n.Data, a.Key)
		case strings.HasPrefix(a.Key, "on"):
			c.add(p, "<%s> runs something: %s", n.Data, a.Key)
		case a.Key == "http-equiv" && !strings.EqualFold(a.Val, "Content-Security-Policy"):
			c.add(p, "<meta> says %s", a.Val)
		}
	}
	if rel := attr(n, "rel"); n.Data == "link" && rel != "canonical" && rel != "alternate" {
		c.add(p, "<link rel=%q> loads something", rel)
	}
	if n.Data == "input" && attr(n, "type") != "radio" {
		c.add(p, "there is an <input type=%q>", attr(n, "type"))
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
func (c *checker) direction(p *page) {
	passages := append([]*html.Node{p.root}, all(p.root, func(n *html.Node) bool { return attr(n, "lang") != "" })...)
	for _, n := range passages {
		right, left := letters(n)
		want := "ltr"
		if right > left {
			want = "rtl"
		}
		if dir := attr(n, "dir"); right+left > 0 && dir != want {
			c.add(p, "<%s lang=%q> has dir=%q; its letters run %s: %s", n.Data, attr(n, "lang"), dir, want, short(text(n)))
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
				if unicode.In(r, rightToLeft...) && unicode.IsLetter(r) {
					right++
				} else if unicode.IsLetter(r) {
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
