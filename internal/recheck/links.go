package recheck

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"maps"
	"net/url"
	"path"
	"slices"
	"strings"

	"homebuild/internal/diag"
)

// checkIDs wants every id to be there once.
func (p *page) checkIDs() {
	p.ids = map[string]int{}
	for _, n := range all(p.root, "[id]") {
		id := attr(n, "id")
		if p.ids[id]++; p.ids[id] == 2 || id == "" {
			p.add("the id %q is not there once", id)
		}
	}
	for _, key := range []string{"aria-labelledby", "aria-describedby", "for"} {
		for _, n := range all(p.root, "["+key+"]") {
			for id := range strings.FieldsSeq(attr(n, key)) {
				if p.ids[id] == 0 {
					p.add("%s points to #%s, which is not there", key, id)
				}
			}
		}
	}
}

// links notes the links of a page, those to itself and to the site at the head
// of the file apart from those to follow.
func (p *page) links() {
	for _, n := range all(p.root, "[href]") {
		p.found.Links++
		href := attr(n, "href")
		u, err := url.Parse(href)
		switch {
		case n.Data == "link" && attr(n, "rel") == "canonical":
			p.canonical = href
		case n.Data == "link" && attr(n, "hreflang") != "":
			lang := attr(n, "hreflang")
			if p.versions[lang] != "" {
				p.add("hreflang %s is named twice", lang)
			}
			p.versions[lang] = href
		case err != nil || href == "":
			p.add("the link %q cannot be read", href)
		case u.IsAbs() || u.Host != "":
			p.add("the link %q leads out of the site", href)
		default:
			p.hrefs = append(p.hrefs, href)
		}
	}
}

// follow wants each relative link to end at a file, and at an id in it. A folder
// is no file: without a server nothing opens its index.
func (c *checker) follow(p *page) {
	for _, href := range p.hrefs {
		file, place, _ := strings.Cut(href, "#")
		to := p.path
		if file != "" {
			to = path.Join(path.Dir(p.path), file)
		}
		switch target := c.pages[to]; {
		case strings.HasPrefix(file, "/") || strings.HasPrefix(to, "..") || strings.HasSuffix(file, "/"):
			p.add("the link %q works only on a server", href)
		case !c.files[to]:
			p.add("the link %q leads to no file", href)
		case place != "" && target != nil && target.ids[place] == 0:
			p.add("the link %q leads to no place in %s", href, to)
		}
	}
}

// addresses rechecks what is said to search engines and feed readers: the
// site's address is one, it fits each page's path, and the versions of a page
// name each other.
func (c *checker) addresses() {
	bases := map[string]int{}
	for _, name := range c.paths {
		p := c.pages[name]
		if base, ok := strings.CutSuffix(p.canonical, p.path); ok {
			bases[base]++
		}
	}
	base := ""
	for _, b := range slices.Sorted(maps.Keys(bases)) {
		if bases[b] > bases[base] {
			base = b
		}
	}
	for _, name := range c.paths {
		p := c.pages[name]
		if base != "" && p.canonical != base+p.path {
			p.add("the canonical address is %q, want %q", p.canonical, base+p.path)
		}
		c.named(p, base)
	}
	c.follows(base)
}

// named rechecks the other languages of a page: each is there, is what it is
// named, and names this page in turn. A page that stands in a language folder
// names every language that has the same page, and where to pick one.
func (c *checker) named(p *page, base string) {
	for _, lang := range slices.Sorted(maps.Keys(p.versions)) {
		to := c.inFolder(p, base, p.versions[lang])
		switch other := c.pages[to]; {
		case other == nil:
			p.add("hreflang %s leads to no page: %q", lang, p.versions[lang])
		case lang == "x-default":
		case other.lang != lang:
			p.add("hreflang %s leads to a page in %q", lang, other.lang)
		case c.inFolder(other, base, other.versions[p.lang]) != p.path:
			p.add("hreflang %s leads to %s, which does not name this page in turn", lang, to)
		}
	}
	if p.folder() == "" {
		return
	}
	if p.versions["x-default"] == "" {
		p.add("there is no hreflang x-default: nobody can pick a language")
	}
	for _, lang := range c.languages {
		if path := lang + "/" + p.name(); c.pages[path] != nil && c.inFolder(p, base, p.versions[lang]) != path {
			p.add("hreflang does not name %s", path)
		}
	}
}

// inFolder turns an address, absolute or not, into a path of the folder.
func (c *checker) inFolder(p *page, base, href string) string {
	if rest, ok := strings.CutPrefix(href, base); ok && base != "" {
		return rest
	}
	if href == "" || strings.Contains(href, "://") {
		return ""
	}
	return path.Join(path.Dir(p.path), href)
}

// follows follows the links of Atom files (RFC 4287): each leads to a file.
func (c *checker) follows(base string) {
	for _, name := range slices.Sorted(maps.Keys(c.feeds)) {
		note := func(text string) { c.problems = append(c.problems, diag.Diagnostic{File: name, Text: text}) }
		d := xml.NewDecoder(bytes.NewReader(c.feeds[name]))
		for {
			t, err := d.Token()
			if err != nil {
				if !errors.Is(err, io.EOF) {
					note("it is not well-formed: " + err.Error())
				}
				break
			}
			e, ok := t.(xml.StartElement)
			if !ok || e.Name.Local != "link" {
				continue
			}
			for _, a := range e.Attr {
				if a.Name.Local == "href" && !c.files[c.inFolder(&page{path: name}, base, a.Value)] {
					note("the link \"" + a.Value + "\" leads to no file")
				}
			}
		}
	}
}
