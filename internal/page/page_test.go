package page

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/base64"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// TestPages holds every page, in a left-to-right and a right-to-left language,
// against what any page must be.
func TestPages(t *testing.T) {
	s := newStock(t)
	for _, tag := range order {
		views := s.in(tag).views()
		for _, name := range slices.Sorted(maps.Keys(views)) {
			t.Run(tag+"/"+name, func(t *testing.T) {
				out := render(t, views[name])
				if !Recognize(out[:min(len(out), 1000)]) {
					t.Error("the page is not recognized as one of ours")
				}
				keep(t, tag, name, out)
				paragraphs(t, out)
				d := read(t, out)
				d.document(t, tag, names[tag][1])
				d.security(t)
				d.references(t)
				d.pictures(t)
				weight(t, out)
			})
		}
	}
}

func render(t *testing.T, v View) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := Render(&out, v); err != nil {
		t.Fatalf("Render: %v", err)
	}
	return out.Bytes()
}

// keep writes the page to the folder named by HOMEBUILD_PAGES, to be looked at
// in a browser.
func keep(t *testing.T, tag, name string, out []byte) {
	t.Helper()
	to := os.Getenv("HOMEBUILD_PAGES")
	if to == "" {
		return
	}
	if err := os.MkdirAll(filepath.Join(to, tag), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(to, tag, name), out, 0o644); err != nil {
		t.Fatal(err)
	}
}

// weight: ten segments of 1,460 bytes are what a server may send at once on a
// new connection (RFC 6928, section 2), less room for headers.
func weight(t *testing.T, out []byte) {
	t.Helper()
	var z bytes.Buffer
	w, err := gzip.NewWriterLevel(&z, gzip.BestCompression)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := w.Write(out); err != nil {
		t.Fatal(err)
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	t.Logf("%d bytes, %d compressed", len(out), z.Len())
	if want := 14_000; z.Len() > want {
		t.Errorf("the page is %d bytes compressed, want at most %d", z.Len(), want)
	}
}

// document: WCAG 2.2, 3.1.1 (language), 2.4.2 (title), 1.3.1 (one main title, and
// one for each sheet of paper that the page holds).
func (d doc) document(t *testing.T, tag, dir string) {
	t.Helper()
	root := d.all("html")[0]
	if got := attr(root, "lang"); got != tag {
		t.Errorf("lang is %q, want %q", got, tag)
	}
	if got := attr(root, "dir"); got != dir {
		t.Errorf("dir is %q, want %q", got, dir)
	}
	sheets := 0
	for _, x := range d.all("section") {
		if strings.HasPrefix(attr(x, "class"), "chapter ") {
			sheets++
		}
	}
	for element, want := range map[string]int{"h1": 1 + sheets, "main": 1, "title": 1, "style": 1, "header": 1} {
		if got := len(d.all(element)); got != want {
			t.Errorf("%d <%s>, want %d", got, element, want)
		}
	}
	if textOf(d.all("title")[0]) == "" || textOf(d.all("h1")[0]) == "" {
		t.Error("the title or the heading is empty")
	}
	for _, name := range []string{"viewport", "description", "robots"} {
		if d.meta("name", name) == "" {
			t.Errorf("meta %s is missing", name)
		}
	}
	alternates := map[string]bool{}
	for _, l := range d.all("link") {
		alternates[attr(l, "hreflang")] = true
	}
	for _, want := range append([]string{"x-default"}, order...) {
		if !alternates[want] {
			t.Errorf("no alternate for %s", want)
		}
	}
}

// security: nothing runs, nothing is asked for, and the policy says so
// (Content Security Policy Level 3: a hash allows one inline style and no
// style attributes).
func (d doc) security(t *testing.T) {
	t.Helper()
	sum := sha256.Sum256([]byte(textOf(d.all("style")[0])))
	want := "default-src 'none'; style-src 'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'; base-uri 'none'; form-action 'none'"
	if got := d.meta("http-equiv", "Content-Security-Policy"); got != want {
		t.Errorf("policy is %q, want %q", got, want)
	}
	for _, n := range d.nodes {
		if slices.Contains([]string{"script", "iframe", "object", "embed", "form", "img", "base", "video", "audio"}, n.Data) {
			t.Errorf("<%s> in a page", n.Data)
		}
		for _, a := range n.Attr {
			switch {
			case strings.HasPrefix(a.Key, "on"), a.Key == "style", a.Key == "src", a.Key == "srcset", a.Key == "ping":
				t.Errorf("<%s %s> in a page", n.Data, a.Key)
			case strings.Contains(strings.ToLower(a.Val), "javascript:"), a.Val == "about:invalid#TemplFailedSanitizationURL":
				t.Errorf("<%s %s=%q>", n.Data, a.Key, a.Val)
			case a.Key == "href" && strings.Contains(a.Val, ":"):
				t.Errorf("<%s href=%q> leads out of the site", n.Data, a.Val)
			}
		}
	}
}

// references: ids are unique, and whatever names one finds it.
func (d doc) references(t *testing.T) {
	t.Helper()
	ids := map[string]bool{}
	for _, n := range d.nodes {
		if id := attr(n, "id"); id != "" {
			if ids[id] {
				t.Errorf("id %q twice", id)
			}
			ids[id] = true
		}
	}
	for _, n := range d.nodes {
		for _, key := range []string{"href", "aria-labelledby", "aria-describedby", "for"} {
			for _, word := range strings.Fields(attr(n, key)) {
				name, local := strings.CutPrefix(word, "#")
				if (local || key != "href") && !ids[name] {
					t.Errorf("<%s %s=%q> names nothing", n.Data, key, word)
				}
			}
		}
	}
}

// pictures: WCAG 2.2, 1.1.1: an alternative, or hidden as decoration.
func (d doc) pictures(t *testing.T) {
	t.Helper()
	for _, n := range d.all("svg") {
		named := attr(n, "role") == "img" && (attr(n, "aria-label") != "" || attr(n, "aria-labelledby") != "")
		if !named && attr(n, "aria-hidden") != "true" {
			t.Errorf("<svg class=%q> is neither named nor hidden", attr(n, "class"))
		}
	}
}

// paragraphs: a block inside a <p> would end it (HTML, "the p element"), which
// a parser mends in silence.
func paragraphs(t *testing.T, out []byte) {
	t.Helper()
	blocks := []string{"p", "div", "ul", "ol", "li", "table", "h1", "h2", "h3", "section", "fieldset", "details"}
	open := false
	for z := html.NewTokenizer(bytes.NewReader(out)); z.Next() != html.ErrorToken; {
		token := z.Token()
		switch {
		case token.Type == html.StartTagToken && open && slices.Contains(blocks, token.Data):
			t.Errorf("<%s> inside a <p>", token.Data)
		case token.Data == "p":
			open = token.Type == html.StartTagToken
		}
	}
}

// doc is a page read back.
type doc struct{ nodes []*html.Node }

func read(t *testing.T, page []byte) doc {
	t.Helper()
	root, err := html.Parse(bytes.NewReader(page))
	if err != nil {
		t.Fatalf("Parse: %v", err)
	}
	var d doc
	for n := range root.Descendants() {
		if n.Type == html.ElementNode {
			d.nodes = append(d.nodes, n)
		}
	}
	return d
}

func (d doc) all(element string) []*html.Node {
	var out []*html.Node
	for _, n := range d.nodes {
		// A <title> or <style> of a picture is not the page's.
		if n.Data == element && (n.Namespace == "" || element == "svg") {
			out = append(out, n)
		}
	}
	return out
}

func (d doc) meta(key, name string) string {
	for _, n := range d.all("meta") {
		if attr(n, key) == name {
			return attr(n, "content")
		}
	}
	return ""
}

func attr(n *html.Node, key string) string {
	for _, a := range n.Attr {
		if a.Key == key {
			return a.Val
		}
	}
	return ""
}

func textOf(n *html.Node) string {
	var b strings.Builder
	for c := range n.Descendants() {
		if c.Type == html.TextNode {
			b.WriteString(c.Data)
		}
	}
	return strings.TrimSpace(b.String())
}
