package recheck

import (
	"encoding/xml"
	"maps"
	"net/url"
	"path"
	"slices"
	"strings"

	"golang.org/x/net/html"

	"homebuild/internal/diag"
)

// ids wants every id to be there once.
func (c *checker) ids(p *page) {
	for id, times := range p.ids {
		if times > 1 || id == "" {
			c.add(p, "the id %q is there %d times", id, times)
		}
	}
	for _, key := range []string{"aria-labelledby", "aria-describedby", "for"} {
		for _, n := range all(p.root, func(n *html.Node) bool { return attr(n, key) != "" }) {
			for id := range strings.FieldsSeq(attr(n, key)) {
				if p.ids[id] == 0 {
					c.add(p, "%s points to #%s, which is not there", key, id)
				}
			}
		}
	}
}

// links follows every link of a page that stays in the folder.
func (c *checker) links(p *page) {
	for _, n := range all(p.root, func(n *html.Node) bool { _, ok := lookup(n, "href"); return ok }) {
		c.report.Links++
		href := attr(n, "href")
		u, err := url.Parse(href)
		switch {
		case err != nil || href == "":
			c.add(p, "the link %q cannot be read", href)
		case n.Data == "link" && u.IsAbs(): // see addresses
		case u.IsAbs() || u.Host != "":
			c.add(p, "the link %q leads out of the site", href)
		default:
			c.follow(p, u, href)
		}
	}
}

// follow wants a relative link to end at a file, and at an id in it. A folder is
// no file: without a server nothing opens its index.
func (c *checker) follow(p *page, u *url.URL, href string) {
	to := p.path
	if u.Path != "" {
		to = path.Join(path.Dir(p.path), u.Path)
	}
	if strings.HasPrefix(u.Path, "/") || strings.HasPrefix(to, "..") || strings.HasSuffix(u.Path, "/") {
		c.add(p, "the link %q works only on a server", href)
		return
	}
	if _, ok := c.files[to]; !ok {
		c.add(p, "the link %q leads to no file", href)
		return
	}
	if target := c.pages[to]; u.Fragment != "" && target != nil && target.ids[u.Fragment] == 0 {
		c.add(p, "the link %q leads to no place in %s", href, to)
	}
}

// addresses rechecks what is said to search engines and feed readers: the
// site's address is one, it fits each page's path, and the versions of a page
// name each other.
func (c *checker) addresses() {
	bases := map[string]int{}
	for _, name := range c.paths {
		p := c.pages[name]
		if canonical := c.link(p, "canonical", ""); canonical != "" {
			base, ok := strings.CutSuffix(canonical, p.path)
			if !ok {
				c.add(p, "the canonical address %q is not that of this page", canonical)
				continue
			}
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
		if canonical := c.link(p, "canonical", ""); base != "" && canonical != base+p.path {
			c.add(p, "the canonical address is %q, want %q", canonical, base+p.path)
		}
		c.versions(p, base)
	}
	c.feeds(base)
}

// link is the address of a <link> of the page.
func (c *checker) link(p *page, rel, hreflang string) string {
	for _, n := range all(p.root, both(tag("link"), func(n *html.Node) bool { return attr(n, "rel") == rel })) {
		if attr(n, "hreflang") == hreflang {
			return attr(n, "href")
		}
	}
	return ""
}

// versions rechecks the other languages of a page: each is there, names itself
// as it is named, and names this page in turn. A page that stands in a language
// folder names every language that has the same page, and where to pick one.
func (c *checker) versions(p *page, base string) {
	named := map[string]string{}
	for _, n := range all(p.root, both(tag("link"), func(n *html.Node) bool { return attr(n, "hreflang") != "" })) {
		lang, to := attr(n, "hreflang"), c.inFolder(p, base, attr(n, "href"))
		other := c.pages[to]
		if other == nil {
			c.add(p, "hreflang %s leads to no page: %q", lang, attr(n, "href"))
			continue
		}
		if named[lang] != "" {
			c.add(p, "hreflang %s is named twice", lang)
		}
		named[lang] = to
		if lang == "x-default" {
			continue
		}
		if own := attr(other.root, "lang"); own != lang {
			c.add(p, "hreflang %s leads to a page in %q", lang, own)
		}
		if back := c.inFolder(other, base, c.link(other, "alternate", attr(p.root, "lang"))); back != p.path {
			c.add(p, "hreflang %s leads to %s, which does not name this page in turn", lang, to)
		}
	}
	if p.folder() == "" {
		return
	}
	if named["x-default"] == "" {
		c.add(p, "there is no hreflang x-default: nobody can pick a language")
	}
	for _, lang := range c.tags() {
		if path := lang + "/" + p.name(); c.pages[path] != nil && named[lang] != path {
			c.add(p, "hreflang does not name %s", path)
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

// tags are the language folders.
func (c *checker) tags() []string {
	var out []string
	for _, name := range c.paths {
		if f := c.pages[name].folder(); f != "" && !slices.Contains(out, f) {
			out = append(out, f)
		}
	}
	return out
}

// feeds follows the links of Atom files (RFC 4287): each leads to a page.
func (c *checker) feeds(base string) {
	for _, name := range slices.Sorted(maps.Keys(c.files)) {
		if path.Ext(name) != ".xml" {
			continue
		}
		at := &page{path: name}
		d := xml.NewDecoder(strings.NewReader(string(c.files[name])))
		for {
			t, err := d.Token()
			if t == nil {
				if err != nil && err.Error() != "EOF" {
					c.add(at, "it is not well-formed: %v", err)
				}
				break
			}
			if e, ok := t.(xml.StartElement); ok && e.Name.Local == "link" {
				c.feedLink(at, base, e)
			}
		}
	}
}

func (c *checker) feedLink(at *page, base string, e xml.StartElement) {
	for _, a := range e.Attr {
		if a.Name.Local != "href" {
			continue
		}
		c.report.Links++
		to := c.inFolder(at, base, a.Value)
		if _, ok := c.files[to]; !ok {
			c.problems = append(c.problems, diag.Problem{File: at.path, Text: "the link \"" + a.Value + "\" leads to no file"})
		}
	}
}
