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
			b.WriteString(inside(class, values()) + ",")
		case css.BeginRulesetGrammar:
			b.WriteString(inside(class, values()) + "{")
		case css.DeclarationGrammar, css.CustomPropertyGrammar:
			fmt.Fprintf(&b, "%s:%s;", data, values())
		case css.EndAtRuleGrammar, css.EndRulesetGrammar:
			b.WriteString("}")
		}
	}
}

// inside are selectors for what stands in an element of a class.
func inside(class, selectors string) string {
	var out []string
	for _, selector := range apart(selectors) {
		switch rest, isMain := strings.CutPrefix(selector, "main"); {
		case isMain:
			selector = "." + class + rest
		case !strings.HasPrefix(selector, "body"):
			selector = "." + class + " " + selector
		}
		out = append(out, selector)
	}
	return strings.Join(out, ",")
}

// apart parts a list of selectors at its commas; those within parentheses part
// nothing.
func apart(selectors string) []string {
	depth := 0
	return strings.FieldsFunc(selectors, func(c rune) bool {
		switch c {
		case '(':
			depth++
		case ')':
			depth--
		}
		return c == ',' && depth == 0
	})
}
