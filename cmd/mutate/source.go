package main

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"strings"
)

// switches is the package whose functions the changed code calls.
const switches = "homebuild/cmd/mutate/switched"

// source is the code of a package without its tests, parsed and with its types.
type source struct {
	path     string // of the package, as imports name it
	files    []file
	set      *token.FileSet
	info     types.Info
	importer types.Importer
	number   *types.Interface // what - is defined on: switched.Number
}

// file is one file of a package.
type file struct {
	name string // with its whole path
	text []byte
	tree *ast.File
}

// listedPackage is what go list tells of a package.
type listedPackage struct {
	ImportPath, Dir, Export string
	GoFiles                 []string
	DepOnly                 bool // not asked for by its name
}

// load reads the package in a folder of the module.
func load(ctx context.Context, folder string) (*source, error) {
	out, err := exec.CommandContext(ctx, "go", "list", "-export", "-deps", "-json=ImportPath,Dir,Export,GoFiles,DepOnly", "./"+folder, switches).Output()
	if err != nil {
		return nil, fmt.Errorf("%s: the go command cannot list this package (go list ./%s says why): %w", folder, folder, err)
	}
	s := &source{set: token.NewFileSet()}
	exports := map[string]string{}
	for decoder := json.NewDecoder(strings.NewReader(string(out))); ; {
		var p listedPackage
		if err := decoder.Decode(&p); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			return nil, err
		}
		exports[p.ImportPath] = p.Export
		if p.DepOnly || p.ImportPath == switches {
			continue
		}
		s.path = p.ImportPath
		for _, name := range p.GoFiles {
			if err := s.parse(filepath.Join(p.Dir, name)); err != nil {
				return nil, err
			}
		}
	}
	s.importer = importer.ForCompiler(s.set, "gc", func(path string) (io.ReadCloser, error) { return os.Open(exports[path]) })
	return s, s.findTypes()
}

func (s *source) parse(name string) error {
	text, err := os.ReadFile(name)
	if err != nil {
		return err
	}
	tree, err := parser.ParseFile(s.set, name, text, parser.SkipObjectResolution)
	s.files = append(s.files, file{name, text, tree})
	return err
}

func (s *source) findTypes() error {
	helpers, err := s.importer.Import(switches)
	if err != nil {
		return err
	}
	s.number = helpers.Scope().Lookup("Number").Type().Underlying().(*types.Interface)
	s.info = types.Info{Types: map[ast.Expr]types.TypeAndValue{}}
	var trees []*ast.File
	for _, f := range s.files {
		trees = append(trees, f.tree)
	}
	config := types.Config{Importer: s.importer}
	_, err = config.Check(s.path, s.set, trees, &s.info)
	return err
}

// isNumber tells whether - is defined on an expression, whatever a type parameter in
// it stands for.
func (s *source) isNumber(x ast.Expr) bool {
	return types.Satisfies(types.Default(s.info.TypeOf(x)), s.number)
}

// switchable puts a switch for each change that waits to be tried into the code, by
// file. What cannot have one is told so: signs in files of other systems, and in
// constants.
func (s *source) switchable(changes []*change) (map[string][]byte, error) {
	s.part(waiting(changes))
	for _, c := range waiting(changes) {
		if c.from == token.ILLEGAL {
			c.outcome = notTried
		}
	}
	changed := s.rewriteAll(waiting(changes))
	if err := s.compiles(changed); err != nil {
		return nil, fmt.Errorf("%s: the switches of some changes do not fit together; mend cmd/mutate/rewrite.go: %w", s.path, err)
	}
	return changed, nil
}

// part finds the changes whose switches do not compile, by halves.
func (s *source) part(changes []*change) {
	if len(changes) == 0 || s.compiles(s.rewriteAll(changes)) == nil {
		return
	}
	if len(changes) == 1 {
		changes[0].outcome = notTried
		return
	}
	half := len(changes) / 2
	s.part(changes[:half])
	s.part(changes[half:])
}

// rewriteAll is the text of all files with switches for some changes.
func (s *source) rewriteAll(changes []*change) map[string][]byte {
	changed := map[string][]byte{}
	for _, f := range s.files {
		var inside []*change
		for _, c := range changes {
			if path.Base(c.file) == filepath.Base(f.name) {
				inside = append(inside, c)
			}
		}
		changed[f.name] = s.rewrite(f, inside)
	}
	return changed
}

// compiles tells the first reason why changed code does not.
func (s *source) compiles(changed map[string][]byte) error {
	set := token.NewFileSet()
	var trees []*ast.File
	for _, f := range s.files {
		tree, err := parser.ParseFile(set, f.name, changed[f.name], parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		trees = append(trees, tree)
	}
	config := types.Config{Importer: s.importer}
	_, err := config.Check(s.path, set, trees, nil)
	return err
}
