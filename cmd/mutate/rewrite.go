package main

import (
	"fmt"
	"go/ast"
	"go/token"
	"strconv"
	"strings"
)

// helper is what the changed code calls the package of the switches: a name that no
// code of ours has.
const helper = "switched_"

// functions are the switches by the sign that they stand for.
var functions = map[token.Token]string{
	token.LSS: "Less", token.LEQ: "LessOrEqual", token.GTR: "Greater", token.GEQ: "GreaterOrEqual",
	token.ADD: "Add", token.SUB: "Subtract", token.MUL: "Multiply", token.QUO: "Divide", token.REM: "Remainder",
}

// rewriter puts switches into one file. Lines stay where they are.
type rewriter struct {
	*source
	file
	changes map[token.Pos][]*change // by the place of the sign
}

// rewrite is the text of a file in which each of the changes has its switch. Those that
// do not compile, and those for which there is no switch, are told so.
func (s *source) rewrite(f file, changes []*change) []byte {
	r := rewriter{s, f, map[token.Pos][]*change{}}
	lines := s.set.File(f.tree.FileStart)
	for _, c := range changes {
		if c.line <= lines.LineCount() { // else somebody works on the file
			at := lines.LineStart(c.line) + token.Pos(c.column-1)
			r.changes[at] = append(r.changes[at], c)
		}
	}
	body := r.render(f.tree)
	if body == r.between(f.tree.Pos(), f.tree.End()) {
		return f.text // an import that is not used would not compile
	}
	clause := r.between(f.tree.Pos(), f.tree.Name.End()) // package x
	body = clause + "; import " + helper + ` "` + switches + `"` + strings.TrimPrefix(body, clause)
	return []byte(r.between(f.tree.FileStart, f.tree.Pos()) + body + r.between(f.tree.End(), f.tree.FileEnd))
}

func (r *rewriter) offset(p token.Pos) int { return r.set.Position(p).Offset }

func (r *rewriter) between(from, to token.Pos) string {
	return string(r.text[r.offset(from):r.offset(to)])
}

// render is the text of a node with the switches that are inside it.
func (r *rewriter) render(node ast.Node) string {
	if text, ok := r.switched(node); ok {
		return text
	}
	var b strings.Builder
	done := node.Pos()
	ast.Inspect(node, func(n ast.Node) bool {
		if n == nil || n == node {
			return true
		}
		text, ok := r.switched(n)
		if ok {
			b.WriteString(r.between(done, n.Pos()) + text)
			done = n.End()
		}
		return !ok
	})
	return b.String() + r.between(done, node.End())
}

// switched is the text of a node whose own sign has a switch, and whether it has.
func (r *rewriter) switched(node ast.Node) (string, bool) {
	switch n := node.(type) {
	case *ast.BinaryExpr:
		return r.binary(n)
	case *ast.UnaryExpr:
		if changes := r.at(n.OpPos, n.Op); len(changes) > 0 {
			return call("Negate", changes[0], r.between(n.OpPos+1, n.X.Pos())+r.render(n.X)), true
		}
	case *ast.IncDecStmt:
		if changes := r.at(n.TokPos, n.Tok); len(changes) > 0 {
			return r.render(n.X) + " " + n.Tok.String()[:1] + "= " + call("One", changes[0]), true
		}
	}
	return "", false
}

// binary is the text of an expression with two sides. A comparison may have two
// changes: the inner switch moves its border, the outer turns it round.
func (r *rewriter) binary(n *ast.BinaryExpr) (string, bool) {
	changes := r.at(n.OpPos, n.Op)
	if len(changes) == 0 {
		return "", false
	}
	left, right := r.render(n.X)+r.between(n.X.End(), n.OpPos), r.between(n.OpPos+token.Pos(len(n.Op.String())), n.Y.Pos())+r.render(n.Y)
	text := left + n.Op.String() + right
	var opposite *change
	for _, c := range changes {
		switch {
		case c.kind == "CONDITIONALS_NEGATION":
			opposite = c
		case n.Op == token.ADD && !r.isNumber(n):
			c.outcome = notCompilable
		default:
			text = call(functions[n.Op], c, left, right)
		}
	}
	if opposite != nil {
		text = call("Not", opposite, text)
	}
	return text, true
}

// at are the changes of the sign at a place, which learn which sign it is.
func (r *rewriter) at(sign token.Pos, is token.Token) (fitting []*change) {
	for _, c := range r.changes[sign] {
		if c.from = is; c.to() != token.ILLEGAL {
			fitting = append(fitting, c)
		}
	}
	return fitting
}

// call is the text of the call of a switch.
func call(function string, c *change, arguments ...string) string {
	return fmt.Sprintf("%s.%s(%s)", helper, function, strings.Join(append([]string{strconv.Itoa(c.number)}, arguments...), ", "))
}
