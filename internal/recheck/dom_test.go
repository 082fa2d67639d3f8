package recheck

import (
	"strings"
	"testing"

	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"
)

// A selector is met by a whole word of a class list, wherever it stands (HTML Living
// Standard, 2.3.7: space-separated tokens).
func TestSelectors(t *testing.T) {
	tests := []struct {
		element, selector string
		want              bool
	}{
		{`<p>`, "p", true}, {`<p>`, "", true}, {`<p>`, "b", false},
		{`<p class="slip say">`, "p.say", true}, {`<p class="slip say">`, ".say.slip", true},
		{`<p class="saysay">`, ".say", false}, {`<p class="says say">`, ".say", true}, {`<p class="to-say">`, ".say", false},
		{`<p class="say">`, "b.say", false}, {`<p class="say">`, ".say.slip", false}, {`<p>`, ".say", false},
		{`<p id=say>`, "#say", true}, {`<p id=says>`, "#say", false},
		{`<p lang=ar>`, "[lang]", true}, {`<p lang=ar>`, "[dir]", false},
	}
	for _, test := range tests {
		nodes, err := html.ParseFragment(strings.NewReader(test.element), &html.Node{Type: html.ElementNode, Data: "body", DataAtom: atom.Body})
		if err != nil || len(nodes) != 1 {
			t.Fatalf("%s: %d nodes, %v", test.element, len(nodes), err)
		}
		if got := is(nodes[0], test.selector); got != test.want {
			t.Errorf("%q on %s: want %v, got %v", test.selector, test.element, test.want, got)
		}
	}
}
