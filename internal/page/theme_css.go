package page

import (
	"fmt"
	"slices"
	"strings"

	"github.com/tdewolff/parse/v2"
	"github.com/tdewolff/parse/v2/css"

	"homebuild/internal/diag"
)

// closers are the brackets of CSS by what opens them (CSS Syntax Module Level 3,
// section 4; a function's name takes its bracket along).
var closers = map[css.TokenType]css.TokenType{
	css.LeftBraceToken:       css.RightBraceToken,
	css.LeftParenthesisToken: css.RightParenthesisToken,
	css.LeftBracketToken:     css.RightBracketToken,
	css.FunctionToken:        css.RightParenthesisToken,
}

// checkBalance finds a bracket or a quotation that is not closed, or closes
// nothing: a browser would take the rules behind it for something else.
func checkBalance(name, text string) *diag.Diagnostic {
	type open struct {
		kind css.TokenType
		line int
		text string
	}
	var stack []open
	wrong := func(line int, text, hint string) *diag.Diagnostic {
		return &diag.Diagnostic{File: name, Line: line, Text: text, Hint: hint}
	}
	lexer, line := css.NewLexer(parse.NewInputString(text)), 1
	for {
		kind, data := lexer.Next()
		switch kind {
		case css.ErrorToken:
			if n := len(stack); n > 0 {
				return wrong(stack[n-1].line, fmt.Sprintf("%q is not closed", stack[n-1].text), "each { needs its }, each ( its )")
			}
			return nil
		case css.BadStringToken:
			return wrong(line, "a quotation is not closed", `end it on the same line with the sign that opens it, " or '`)
		case css.LeftBraceToken, css.LeftParenthesisToken, css.LeftBracketToken, css.FunctionToken:
			stack = append(stack, open{kind, line, string(data)})
		case css.RightBraceToken, css.RightParenthesisToken, css.RightBracketToken:
			n := len(stack)
			if n == 0 || closers[stack[n-1].kind] != kind {
				return wrong(line, fmt.Sprintf("%q closes nothing", data), "take it away, or look whether one is missing above")
			}
			stack = stack[:n-1]
		case css.StringToken:
			if len(data) < 2 || data[len(data)-1] != data[0] {
				return wrong(line, "a quotation is not closed", `end it on the same line with the sign that opens it, " or '`)
			}
		case css.CommentToken:
			if !strings.HasSuffix(string(data), "*/") {
				return wrong(line, "a remark is not closed", "end it with */")
			}
		}
		line += strings.Count(string(data), "\n")
	}
}

// whole are the selectors of all that a page shows.
var whole = []string{"html", "body", "main", ":root", "*"}

// hiding are declarations after which nothing is to be seen.
var hiding = []string{"display:none", "visibility:hidden", "visibility:collapse", "opacity:0", "font-size:0", "content-visibility:hidden"}

// checkShown finds a rule that hides the whole page.
func checkShown(name, text string) *diag.Diagnostic {
	p := css.NewParser(parse.NewInputString(text), false)
	var hidden string // the selector of the rule, where it is one of the whole
	for {
		grammar, _, data := p.Next()
		var values strings.Builder
		for _, token := range p.Values() {
			values.Write(token.Data)
		}
		switch grammar {
		case css.ErrorGrammar:
			return nil
		case css.BeginRulesetGrammar:
			for _, selector := range apart(values.String()) {
				if slices.Contains(whole, selector) {
					hidden = selector
				}
			}
		case css.EndRulesetGrammar:
			hidden = ""
		case css.DeclarationGrammar:
			value := strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(values.String()), "!important"))
			if rule := strings.ToLower(string(data) + ":" + value); hidden != "" && slices.Contains(hiding, rule) {
				line := 1 + strings.Count(text[:min(p.Offset(), len(text))], "\n")
				return &diag.Diagnostic{File: name, Line: line, Text: fmt.Sprintf("%s of %q hides the whole page", rule, hidden), Hint: "take it out"}
			}
		}
	}
}
