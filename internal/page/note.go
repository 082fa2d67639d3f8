package page

import (
	"context"
	"io"
	"strings"
	"sync"

	"github.com/a-h/templ"
	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"
)

// Note is the teacher's own text to families, in Markdown.
type Note struct {
	Markdown    string
	Tag         string // its language
	Name        string // what that language calls itself
	RightToLeft bool
}

// Notes are a week's notes as HTML, each made once: most languages show the one of the
// class. The zero value has none yet.
type Notes struct {
	mu   sync.Mutex
	html map[string]string // by their Markdown
}

// note writes a teacher's Markdown, made before or now.
func (all *Notes) note(markdown string) templ.Component {
	return raw(func(m *markup) {
		all.mu.Lock()
		defer all.mu.Unlock()
		html, made := all.html[markdown]
		if !made {
			var b strings.Builder
			m.err = note(markdown).Render(context.Background(), &b)
			if html = b.String(); all.html == nil {
				all.html = map[string]string{}
			}
			all.html[markdown] = html
		}
		m.write(html)
	})
}

// quietMarkdown reads a teacher's Markdown. Raw HTML is left out by goldmark;
// pictures, headings and links to elsewhere are turned into their words: a
// page asks for nothing and has its own headings.
var quietMarkdown = sync.OnceValue(func() goldmark.Markdown {
	return goldmark.New(goldmark.WithParserOptions(parser.WithASTTransformers(util.Prioritized(plain{}, 100))))
})

func note(markdown string) templ.Component {
	return templ.ComponentFunc(func(_ context.Context, w io.Writer) error {
		return quietMarkdown().Convert([]byte(markdown), w)
	})
}

// plain makes a note safe and quiet.
type plain struct{}

// Transform replaces the nodes that a note may not have.
func (plain) Transform(doc *ast.Document, r text.Reader, _ parser.Context) {
	var found []ast.Node
	_ = ast.Walk(doc, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if entering && unwanted(n, r.Source()) {
			found = append(found, n)
		}
		return ast.WalkContinue, nil
	})
	for _, n := range found {
		replace(n, r.Source())
	}
}

func unwanted(n ast.Node, source []byte) bool {
	switch n := n.(type) {
	case *ast.Image, *ast.Heading, *ast.RawHTML, *ast.HTMLBlock:
		return true
	case *ast.Link:
		return !strings.HasPrefix(string(n.Destination), "https://")
	case *ast.AutoLink:
		return !strings.HasPrefix(string(n.URL(source)), "https://")
	}
	return false
}

// replace puts a node's own words in its place; a heading becomes a paragraph.
func replace(n ast.Node, source []byte) {
	parent := n.Parent()
	switch n := n.(type) {
	case *ast.Heading:
		p := ast.NewParagraph()
		parent.ReplaceChild(parent, n, p)
		for c := n.FirstChild(); c != nil; c = n.FirstChild() {
			p.AppendChild(p, c)
		}
	case *ast.Link, *ast.Image:
		for c := n.FirstChild(); c != nil; c = n.FirstChild() {
			parent.InsertBefore(parent, n, c)
		}
		parent.RemoveChild(parent, n)
	case *ast.AutoLink:
		parent.ReplaceChild(parent, n, ast.NewString(n.Label(source)))
	default:
		parent.RemoveChild(parent, n)
	}
}
