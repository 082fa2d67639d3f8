package page

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/tdewolff/parse/v2"
	"github.com/tdewolff/parse/v2/css"
)

// scope keeps the style of a sort of page to one part of a larger page: every
// selector finds only what stands in an element of the class, which takes the
// place of the page's main. Rules about body hold for the page as a whole.
func scope(style, class string) (string, error) {
	var b strings.Builder
	p := css.NewParser(parse.NewInputString(style), false)
	values := func() string {
		var v strings.Builder
		for _, token := range p.Values() {
			v.Write(token.Data)
		}
		return v.String()
	}
	for {
		grammar, _, data := p.Next()
		switch grammar {
		case css.ErrorGrammar:
			if errors.Is(p.Err(), io.EOF) {
				return b.String(), nil
			}
			return "", p.Err()
		case css.AtRuleGrammar:
			fmt.Fprintf(&b, "%s%s;", data, values())
		case css.BeginAtRuleGrammar:
			fmt.Fprintf(&b, "%s%s{", data, values())
		case css.QualifiedRuleGrammar:
			b.WriteString(within(class, values()) + ",")
		case css.BeginRulesetGrammar:
			b.WriteString(within(class, values()) + "{")
		case css.DeclarationGrammar, css.CustomPropertyGrammar:
			fmt.Fprintf(&b, "%s:%s;", data, values())
		case css.EndAtRuleGrammar, css.EndRulesetGrammar:
			b.WriteString("}")
		}
	}
}

// within is a selector for what stands in an element of a class.
func within(class, selector string) string {
	selector = strings.TrimSpace(selector)
	if rest, ok := strings.CutPrefix(selector, "main"); ok {
		return "." + class + rest
	}
	if strings.HasPrefix(selector, "body") {
		return selector
	}
	return "." + class + " " + selector
}
