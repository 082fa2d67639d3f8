package pofile

import (
	"errors"
	"go/ast"
	"go/parser"
	"go/token"
	"strconv"
	"strings"
)

// expression is that of a Plural-Forms: C's arithmetic over n (GNU gettext manual,
// "Plural forms").
type expression func(n int) int

var errExpression = errors.New("not an expression over n")

// compile reads an expression. C and Go write them alike but for the choice, a ? b : c,
// which is taken apart here.
func compile(text string) (expression, error) {
	text = strings.TrimSpace(text)
	question := outside(text, '?', 0)
	if question < 0 {
		if inner, ok := unwrapped(text); ok && strings.Contains(inner, "?") {
			return compile(inner)
		}
		node, err := parser.ParseExpr(text)
		if err != nil {
			return nil, errExpression
		}
		return build(node)
	}
	colon := outside(text, ':', question+1)
	if colon < 0 {
		return nil, errExpression
	}
	var parts [3]expression
	for i, part := range []string{text[:question], text[question+1 : colon], text[colon+1:]} {
		var err error
		if parts[i], err = compile(part); err != nil {
			return nil, err
		}
	}
	return func(n int) int {
		if parts[0](n) != 0 {
			return parts[1](n)
		}
		return parts[2](n)
	}, nil
}

// outside finds a sign from a place on that stands in no parentheses, and for a colon
// in no other choice; -1 for none.
func outside(text string, sign byte, from int) int {
	deep, choices := 0, 0
	for i := from; i < len(text); i++ {
		switch c := text[i]; {
		case c == sign && deep == 0 && choices == 0:
			return i
		case c == '(':
			deep++
		case c == ')':
			deep--
		case c == '?' && deep == 0:
			choices++
		case c == ':' && deep == 0:
			choices--
		}
	}
	return -1
}

// unwrapped is a text without the parentheses around all of it.
func unwrapped(text string) (string, bool) {
	if len(text) < 2 || text[0] != '(' || outside(text[1:], ')', 0) != len(text)-2 {
		return text, false
	}
	return text[1 : len(text)-1], true
}

func build(node ast.Expr) (expression, error) {
	switch x := node.(type) {
	case *ast.ParenExpr:
		return build(x.X)
	case *ast.Ident:
		if x.Name == "n" {
			return func(n int) int { return n }, nil
		}
	case *ast.BasicLit:
		if value, err := strconv.Atoi(x.Value); err == nil && x.Kind == token.INT {
			return func(int) int { return value }, nil
		}
	case *ast.UnaryExpr:
		if of, err := build(x.X); err == nil && x.Op == token.NOT {
			return func(n int) int { return truth(of(n) == 0) }, nil
		}
	case *ast.BinaryExpr:
		left, err := build(x.X)
		if err != nil {
			return nil, err
		}
		right, err := build(x.Y)
		if do := operators[x.Op]; err == nil && do != nil {
			return func(n int) int { return do(left(n), right(n)) }, nil
		}
	}
	return nil, errExpression
}

var operators = map[token.Token]func(a, b int) int{
	token.LAND: func(a, b int) int { return truth(a != 0 && b != 0) },
	token.LOR:  func(a, b int) int { return truth(a != 0 || b != 0) },
	token.EQL:  func(a, b int) int { return truth(a == b) },
	token.NEQ:  func(a, b int) int { return truth(a != b) },
	token.LSS:  func(a, b int) int { return truth(a < b) },
	token.LEQ:  func(a, b int) int { return truth(a <= b) },
	token.GTR:  func(a, b int) int { return truth(a > b) },
	token.GEQ:  func(a, b int) int { return truth(a >= b) },
	token.ADD:  func(a, b int) int { return a + b },
	token.SUB:  func(a, b int) int { return a - b },
	token.MUL:  func(a, b int) int { return a * b },
	token.REM: func(a, b int) int {
		if b == 0 {
			return 0
		}
		return a % b
	},
}

func truth(is bool) int {
	if is {
		return 1
	}
	return 0
}
