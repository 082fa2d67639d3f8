package recheck

import (
	"iter"
	"slices"
	"strings"

	"golang.org/x/net/html"
)

// is reports whether an element is what a selector names: "p", ".say", "p.slip.say",
// "#say", "[id]" for any with that attribute, "" for any at all.
func is(n *html.Node, selector string) bool {
	if id, ok := strings.CutPrefix(selector, "#"); ok {
		return n.Type == html.ElementNode && attr(n, "id") == id
	}
	if name, ok := strings.CutPrefix(selector, "["); ok {
		return n.Type == html.ElementNode && slices.ContainsFunc(n.Attr, func(a html.Attribute) bool { return a.Key+"]" == name })
	}
	name, classes, some := strings.Cut(selector, ".")
	if n.Type != html.ElementNode || name != "" && n.Data != name {
		return false
	}
	have := ""
	if some {
		have = " " + attr(n, "class") + " "
	}
	for some {
		var first string
		if first, classes, some = strings.Cut(classes, "."); !strings.Contains(have, " "+first+" ") {
			return false
		}
	}
	return true
}

func filter(nodes iter.Seq[*html.Node], want string) []*html.Node {
	var out []*html.Node
	for n := range nodes {
		if is(n, want) {
			out = append(out, n)
		}
	}
	return out
}

// all lists the elements below n that match, in the order of the page; below nothing
// is nothing.
func all(n *html.Node, want string) []*html.Node {
	if n == nil {
		return nil
	}
	return filter(n.Descendants(), want)
}

// children lists the elements directly below n that match; below nothing is nothing.
func children(n *html.Node, want string) []*html.Node {
	if n == nil {
		return nil
	}
	return filter(n.ChildNodes(), want)
}

// inside reports whether n stands below an element that matches.
func inside(n *html.Node, want string) bool { return len(filter(n.Ancestors(), want)) > 0 }

// beside lists the elements of n's parent before it and after it.
func beside(n *html.Node) (before, after []*html.Node) {
	siblings := children(n.Parent, "")
	i := slices.Index(siblings, n)
	return siblings[:i], siblings[i+1:]
}

// find is the first of all, or nil; below nothing is nothing.
func find(n *html.Node, want string) *html.Node {
	if n == nil {
		return nil
	}
	for d := range n.Descendants() {
		if is(d, want) {
			return d
		}
	}
	return nil
}

func attr(n *html.Node, name string) string {
	for _, a := range n.Attr {
		if a.Key == name { // those of SVG may have a namespace
			return a.Val
		}
	}
	return ""
}

// text is everything written below n, without what only listeners of a picture
// hear.
func text(n *html.Node) string {
	if n == nil {
		return ""
	}
	var b strings.Builder
	write(&b, n)
	return strings.Join(strings.Fields(clean(b.String())), " ")
}

func texts(nodes []*html.Node) []string {
	var out []string
	for _, n := range nodes {
		out = append(out, text(n))
	}
	return out
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
