package site

import "strings"

// link is the relative link to a page that is made; empty for one that its language
// cannot say.
func (c *common) link(from, to string) string {
	if c.unmade[to] {
		return ""
	}
	return link(from, to)
}

// link is the relative link from one page of the site to another. Names are
// flat and links relative, so that the site works from a web host, a memory
// stick, a chat attachment or a folder on a phone.
func link(from, to string) string {
	for {
		head, fromRest, inFolder := strings.Cut(from, "/")
		same, toRest, ok := strings.Cut(to, "/")
		if !inFolder || !ok || head != same {
			return strings.Repeat("../", strings.Count(from, "/")) + to
		}
		from, to = fromRest, toRest
	}
}
