package recheck

import (
	"iter"
	"slices"
	"strings"

	"golang.org/x/net/html"
)

// selector is what an element must be: of a name, with an attribute, an id, and every
// one of some classes, as far as they are not empty.
type selector struct {
	name, attribute, id, class string
	more                       []string // classes beside class
}

// selectorOf reads "p", ".say", "p.slip.say", "#say", "[id]" for any element with that
// attribute, "" for any at all.
func selectorOf(want string) selector {
	if id, ok := strings.CutPrefix(want, "#"); ok {
		return selector{id: id}
	}
	if name, ok := strings.CutPrefix(want, "["); ok {
		return selector{attribute: strings.TrimSuffix(name, "]")}
	}
	name, classes, _ := strings.Cut(want, ".")
	class, rest, some := strings.Cut(classes, ".")
	s := selector{name: name, class: class}
	if some {
		s.more = strings.Split(rest, ".")
	}
	return s
}

func (s selector) matches(n *html.Node) bool {
	switch {
	case n.Type != html.ElementNode, s.name != "" && n.Data != s.name:
		return false
	case s.id != "":
		return attr(n, "id") == s.id
	case s.attribute != "":
		return slices.ContainsFunc(n.Attr, func(a html.Attribute) bool { return a.Key == s.attribute })
	case s.class == "":
		return true
	}
	have := attr(n, "class")
	return hasWord(have, s.class) && !slices.ContainsFunc(s.more, func(c string) bool { return !hasWord(have, c) })
}

// hasWord reports whether a word is among those of a list with spaces between them.
func hasWord(list, word string) bool {
	for each := range strings.FieldsSeq(list) {
		if each == word {
			return true
		}
	}
	return false
}

// is reports whether an element is what a selector names.
func is(n *html.Node, want string) bool { return selectorOf(want).matches(n) }

func filter(nodes iter.Seq[*html.Node], want string) []*html.Node {
	var out []*html.Node
	s := selectorOf(want)
	for n := range nodes {
		if s.matches(n) {
			out = append(out, n)
		}
	}
	return out
}

// below are the nodes below n in the order of the page; below nothing is nothing. It
// steps along the tree: the iterators of html go down one call for each level.
func below(n *html.Node) iter.Seq[*html.Node] {
	return func(yield func(*html.Node) bool) {
		if n == nil {
			return
		}
		for d := after(n, n); d != nil && yield(d); {
			d = after(d, n)
		}
	}
}

// after is the node that comes after d in the order of the page, below n; nil at the end.
func after(d, n *html.Node) *html.Node {
	if d.FirstChild != nil {
		return d.FirstChild
	}
	for d != n && d.NextSibling == nil {
		d = d.Parent
	}
	if d == n {
		return nil
	}
	return d.NextSibling
}

// all lists the elements below n that match, in the order of the page; below nothing
// is nothing.
func all(n *html.Node, want string) []*html.Node { return filter(below(n), want) }

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
	s := selectorOf(want)
	for d := range below(n) {
		if s.matches(d) {
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
