package recheck

import (
	"slices"
	"strings"

	"golang.org/x/net/html"
)

// match picks elements.
type match func(*html.Node) bool

func tag(name string) match {
	return func(n *html.Node) bool { return n.Data == name }
}

// class matches elements that have every one of the classes.
func class(names ...string) match {
	return func(n *html.Node) bool {
		have := strings.Fields(attr(n, "class"))
		for _, name := range names {
			if !slices.Contains(have, name) {
				return false
			}
		}
		return true
	}
}

func both(a, b match) match {
	return func(n *html.Node) bool { return a(n) && b(n) }
}

// all lists the elements below n that match, in the order of the page.
func all(n *html.Node, want match) []*html.Node {
	var out []*html.Node
	for d := range n.Descendants() {
		if d.Type == html.ElementNode && want(d) {
			out = append(out, d)
		}
	}
	return out
}

// find is the first of all, or nil.
func find(n *html.Node, want match) *html.Node {
	for d := range n.Descendants() {
		if d.Type == html.ElementNode && want(d) {
			return d
		}
	}
	return nil
}

// children lists the elements directly below n that match.
func children(n *html.Node, want match) []*html.Node {
	var out []*html.Node
	for d := range n.ChildNodes() {
		if d.Type == html.ElementNode && want(d) {
			out = append(out, d)
		}
	}
	return out
}

func attr(n *html.Node, name string) string {
	v, _ := lookup(n, name)
	return v
}

// lookup finds an attribute; those of SVG may have a namespace.
func lookup(n *html.Node, name string) (string, bool) {
	for _, a := range n.Attr {
		if a.Key == name {
			return a.Val, true
		}
	}
	return "", false
}

// text is everything written below n, without what only listeners of a picture
// hear.
func text(n *html.Node) string {
	var b strings.Builder
	write(&b, n)
	return strings.Join(strings.Fields(clean(b.String())), " ")
}

func write(b *strings.Builder, n *html.Node) {
	switch {
	case n.Type == html.TextNode:
		b.WriteString(n.Data)
	case n.Type == html.ElementNode && (n.Data == "svg" || n.Data == "style"):
		b.WriteByte(' ')
	default:
		for d := range n.ChildNodes() {
			write(b, d)
		}
	}
}

// inside reports whether n stands below an element that matches.
func inside(n *html.Node, want match) bool {
	for a := range n.Ancestors() {
		if a.Type == html.ElementNode && want(a) {
			return true
		}
	}
	return false
}
