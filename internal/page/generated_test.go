package page

import (
	"bytes"
	"go/format"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/a-h/templ"
	"github.com/a-h/templ/generator"
	"github.com/a-h/templ/parser/v2"
	"github.com/google/go-cmp/cmp"
)

// TestGenerated: the Go code in the repository is what `make generate` makes of
// the templates. It calls the generator as the command does (templ,
// cmd/templ/generatecmd), which need not be built for it.
func TestGenerated(t *testing.T) {
	templates, err := filepath.Glob("*.templ")
	if err != nil {
		t.Fatal(err)
	}
	made, err := filepath.Glob("*_templ.go")
	if err != nil {
		t.Fatal(err)
	}
	if len(templates) == 0 || len(templates) != len(made) {
		t.Errorf("%d templates and %d generated files", len(templates), len(made))
	}
	for _, name := range templates {
		want, err := generated(name)
		if err != nil {
			t.Fatal(err)
		}
		got, err := os.ReadFile(strings.TrimSuffix(name, ".templ") + "_templ.go")
		if err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(string(want), string(got)); diff != "" {
			t.Errorf("%s: run: make generate (-want +got)\n%s", name, diff)
		}
	}
}

func generated(name string) ([]byte, error) {
	file, err := parser.Parse(name)
	if err != nil {
		return nil, err
	}
	var code bytes.Buffer
	if _, err := generator.Generate(file, &code, generator.WithVersion(templ.Version()), generator.WithFileName(name)); err != nil {
		return nil, err
	}
	return format.Source(code.Bytes())
}
