package desk

import (
	"flag"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

var update = flag.Bool("update", false, "write the page's types anew")

const declarations = "page/protocol.d.ts"

// TestProtocol holds the types that the page's code is checked with against
// those that the engine reads and writes.
func TestProtocol(t *testing.T) {
	files, err := filepath.Glob("protocol*.go")
	if err != nil {
		t.Fatal(err)
	}
	w := &typeWriter{}
	w.line("// Made from protocol*.go by: go test ./internal/desk -run Protocol -update")
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ParseComments)
		if err != nil {
			t.Fatal(err)
		}
		w.file(file)
	}
	if *update {
		if err := os.WriteFile(declarations, []byte(w.String()), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	have, err := os.ReadFile(declarations)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(w.String(), string(have)); diff != "" {
		t.Errorf("%s is not what protocol*.go says; make it anew with -update (- wanted, + there):\n%s", declarations, diff)
	}
}

// typeWriter writes Go's types as TypeScript's.
type typeWriter struct{ strings.Builder }

func (w *typeWriter) line(format string, args ...any) { fmt.Fprintf(w, format+"\n", args...) }

func (w *typeWriter) comment(indent string, doc *ast.CommentGroup) {
	if text := strings.TrimSpace(doc.Text()); text != "" {
		w.line("%s/** %s */", indent, strings.ReplaceAll(text, "\n", "\n"+indent+" * "))
	}
}

func (w *typeWriter) file(file *ast.File) {
	for _, decl := range file.Decls {
		group, ok := decl.(*ast.GenDecl)
		if !ok || group.Tok != token.TYPE {
			continue
		}
		for _, spec := range group.Specs {
			s := spec.(*ast.TypeSpec)
			w.line("")
			w.comment("", group.Doc)
			w.declare(s.Name.Name, s.Type, words(file, s.Name.Name))
		}
	}
}

// words are the constants of a type that is one of a few words.
func words(file *ast.File, of string) []string {
	var out []string
	for _, decl := range file.Decls {
		group, ok := decl.(*ast.GenDecl)
		if !ok || group.Tok != token.CONST {
			continue
		}
		for _, spec := range group.Specs {
			if v := spec.(*ast.ValueSpec); v.Type != nil && v.Type.(*ast.Ident).Name == of {
				out = append(out, v.Values[0].(*ast.BasicLit).Value)
			}
		}
	}
	return out
}

func (w *typeWriter) declare(name string, is ast.Expr, words []string) {
	switch is := is.(type) {
	case *ast.StructType:
		w.structure(name, is)
	case *ast.InterfaceType:
		w.line("export interface %s {", name)
		for _, m := range is.Methods.List {
			w.comment("  ", m.Doc)
			call, f := m.Names[0].Name, m.Type.(*ast.FuncType)
			w.line("  %s(args: %s): %s;", small(call), typeOf(f.Params.List[0].Type), typeOf(f.Results.List[0].Type))
		}
		w.line("}")
	default:
		if len(words) > 0 {
			w.line("export type %s = %s;", name, strings.Join(words, " | "))
			return
		}
		w.line("export type %s = %s;", name, typeOf(is))
	}
}

func (w *typeWriter) structure(name string, is *ast.StructType) {
	var extends string
	for _, f := range is.Fields.List {
		if len(f.Names) == 0 {
			extends = " extends " + typeOf(f.Type)
		}
	}
	w.line("export interface %s%s {", name, extends)
	for _, f := range is.Fields.List {
		if len(f.Names) == 0 {
			continue
		}
		w.comment("  ", f.Doc)
		key, optional, _ := strings.Cut(reflect.StructTag(strings.Trim(f.Tag.Value, "`")).Get("json"), ",")
		mark, comment := "", ""
		if optional == "omitempty" {
			mark = "?"
		}
		if text := strings.TrimSpace(f.Comment.Text()); text != "" {
			comment = " // " + text
		}
		w.line("  %s%s: %s;%s", key, mark, typeOf(f.Type), comment)
	}
	w.line("}")
}

func typeOf(is ast.Expr) string {
	switch is := is.(type) {
	case *ast.Ident:
		known := map[string]string{"int": "number", "bool": "boolean", "any": "unknown"}
		if name, ok := known[is.Name]; ok {
			return name
		}
		return is.Name
	case *ast.StarExpr:
		return typeOf(is.X) + " | null"
	case *ast.ArrayType:
		if item, ok := is.Elt.(*ast.Ident); ok && item.Name == "byte" {
			return "string"
		}
		return typeOf(is.Elt) + "[]"
	case *ast.MapType:
		return "Record<" + typeOf(is.Key) + ", " + typeOf(is.Value) + ">"
	}
	panic(fmt.Sprintf("a %T has no type in TypeScript yet", is))
}

// small is the name of a call as the page writes it.
func small(name string) string { return strings.ToLower(name[:1]) + name[1:] }
