package recheck

import (
	"slices"

	"golang.org/x/net/html"
)

// crossesOut reports whether something is crossed out or struck out in a group.
func (g group) crossesOut() bool {
	return slices.ContainsFunc(g.marks, func(m mark) bool { return m.class == "cross" || m.class == "strike" }) ||
		slices.ContainsFunc(g.groups, group.crossesOut)
}

// crossings wants nothing to be crossed out in a story but what is taken away
// from what is there, with the rest asked for: "16 - ? = 5" has nothing to cross
// out, and where amounts are compared, nothing leaves.
func (p *page) crossings(s *story, n *html.Node) {
	compares := false
	crossed := ""
	for _, svg := range all(n, "svg.picture") {
		f := p.figure(svg)
		compares = compares || f.name == "compare" || f.name == "rows" && !inside(svg, ".steps")
		if f.crossesOut() {
			crossed = attr(svg, "id")
		}
	}
	if crossed != "" && (compares || !s.takesAway()) {
		p.add("%s: #%s crosses out, and the story takes nothing away", s.name, crossed)
	}
}

// takesAway reports whether the story's own equation takes away what is told,
// and asks what is left.
func (s *story) takesAway() bool {
	if len(s.own) != 2 || s.own.asked() != 1 || len(s.own[1]) != 1 || !s.own[1][0].asked {
		return false
	}
	return slices.ContainsFunc(s.own[0], func(t term) bool { return t.sign < 0 })
}
