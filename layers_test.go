// Package homebuild_test keeps the direction of the house: each room may use
// only the rooms below it, and each outside library has one room that knows it.
package homebuild_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// rooms lists, bottom up, what each room may import from this module.
// Mathematics knows no words, words know no HTML, HTML knows no files, and only
// cmd knows flags.
var rooms = map[string][]string{
	"internal/diag":         nil,
	"internal/pattern":      nil,
	"internal/textfile":     {"internal/diag"},
	"internal/documented":   {},
	"internal/tomlfile":     {"internal/diag"},
	"internal/output":       nil,
	"internal/problem":      nil,
	"internal/phrase":       {"internal/problem"},
	"internal/picture":      {"internal/problem", "internal/phrase"},
	"internal/picture/svg":  {"internal/phrase", "internal/picture"},
	"internal/strategy":     {"internal/problem", "internal/phrase", "internal/picture"},
	"internal/estimate":     {"internal/problem", "internal/phrase", "internal/strategy"},
	"internal/mistake":      {"internal/problem", "internal/phrase", "internal/strategy", "internal/estimate"},
	"internal/activity":     {"internal/problem", "internal/phrase", "internal/strategy", "internal/estimate", "internal/mistake", "internal/picture", "internal/diag", "internal/tomlfile"},
	"internal/story":        {"internal/diag", "internal/problem", "internal/phrase", "internal/tomlfile"},
	"internal/i18n":         {"internal/problem", "internal/phrase", "internal/story", "internal/diag", "internal/textfile", "internal/tomlfile"},
	"internal/translate":    {"internal/problem", "internal/phrase", "internal/story", "internal/i18n", "internal/diag", "internal/tomlfile"},
	"internal/cards":        nil,
	"internal/qrcode":       nil,
	"internal/readability":  nil,
	"internal/sms":          nil,
	"internal/page":         {"internal/qrcode", "internal/problem", "internal/phrase", "internal/strategy", "internal/picture", "internal/story", "internal/i18n", "internal/picture/svg", "internal/cards", "internal/diag", "internal/textfile", "internal/tomlfile"},
	"internal/ownstory":     {"internal/diag", "internal/problem", "internal/picture"},
	"internal/week":         {"internal/diag", "internal/textfile", "internal/tomlfile", "internal/problem", "internal/activity", "internal/story"},
	"internal/site":         {"internal/output", "internal/problem", "internal/phrase", "internal/strategy", "internal/estimate", "internal/mistake", "internal/picture", "internal/activity", "internal/story", "internal/i18n", "internal/translate", "internal/ownstory", "internal/cards", "internal/page", "internal/week", "internal/qrcode", "internal/sms", "internal/diag", "internal/tomlfile", "internal/readability"},
	"internal/weight":       nil,
	"internal/check":        {"internal/diag", "internal/i18n", "internal/readability", "internal/site", "internal/week", "internal/weight"},
	"internal/school":       {"internal/diag", "internal/textfile", "internal/tomlfile", "internal/output", "internal/problem", "internal/strategy", "internal/picture", "internal/activity", "internal/story", "internal/i18n", "internal/translate", "internal/page", "internal/week", "internal/site", "locales", "themes", "site"},
	"internal/desk":         {"internal/archive", "internal/diag", "internal/output", "internal/problem", "internal/strategy", "internal/picture", "internal/picture/svg", "internal/activity", "internal/story", "internal/i18n", "internal/ownstory", "internal/page", "internal/week", "internal/site", "internal/school", "internal/cards", "internal/phrase", "internal/check", "internal/tomlfile"},
	"internal/archive":      {"internal/output"},
	"internal/publish":      {"internal/archive", "internal/output"},
	"internal/recheck":      {"internal/diag", "internal/weight"}, // nothing of what made the pages
	"internal/watch":        nil,
	"internal/loopback":     nil,
	"locales":               nil,
	"docs":                  nil,
	"themes":                nil,
	"site":                  nil,
	"internal/desk/page":    {"themes"},
	"internal/deskfolder":   {"internal/desk", "internal/publish", "internal/school", "internal/textfile"},
	"internal/deskserver":   {"internal/desk", "internal/desk/page", "internal/loopback", "internal/watch"},
	"internal/sampleserver": {"internal/diag", "internal/output", "internal/loopback", "internal/watch"},
	"internal/pofile":       {"internal/diag", "internal/i18n", "internal/translate"},
	"internal/wordserver":   {"internal/diag", "internal/i18n", "internal/loopback", "internal/school", "internal/translate"},
	"cmd/homebuild":         {"*"},
	"cmd/desk-engine":       {"internal/desk"},
	"cmd/desk-file":         {"internal/desk/page", "internal/i18n", "locales"},
	"cmd/desk-file/nohttp":  nil,
	"cmd/mutate":            {"cmd/mutate/switched"},
	"cmd/mutate/switched":   nil,
	"browser":               {"*"},
	".":                     nil,
}

// everyone may use these, which know nothing of what the program is for.
var everyone = []string{"internal/pattern"}

// owners names the only rooms that may import an outside library.
var owners = map[string][]string{
	"github.com/spf13/cobra":           {"cmd/homebuild"},
	"github.com/ajstarks/svgo":         {"internal/picture/svg"},
	"github.com/a-h/templ":             {"internal/page"},
	"github.com/yuin/goldmark":         {"internal/page"},
	"github.com/nicksnyder/go-i18n/v2": {"internal/i18n"},
	"github.com/pelletier/go-toml/v2":  {"internal/tomlfile", "internal/ownstory"},
	"net/http":                         {"internal/loopback", "internal/deskserver", "internal/sampleserver", "internal/wordserver"},
	"github.com/fsnotify/fsnotify":     {"internal/watch"},
	"github.com/chai2010/gettext-go":   {"internal/pofile"},
	"os":                               {"internal/publish", "internal/deskfolder", "internal/deskserver", "internal/documented", "cmd/homebuild", "cmd/desk-file", "cmd/mutate", "cmd/mutate/switched", "browser", "."},
	"time":                             {"internal/archive", "internal/desk", "internal/publish", "internal/watch", "internal/loopback", "internal/deskserver", "internal/week", "internal/site", "internal/school", "cmd/homebuild", "cmd/mutate", "browser"},
	"math/rand":                        nil,
	"math/rand/v2":                     nil,
}

func TestDirection(t *testing.T) {
	seen := map[string]bool{}
	err := filepath.WalkDir(".", func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && (d.Name() == "node_modules" || d.Name() == "testdata" || strings.HasPrefix(d.Name(), ".") && path != ".") {
			return filepath.SkipDir
		}
		if d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return nil
		}
		room := filepath.ToSlash(filepath.Dir(path))
		seen[room] = true
		checkFile(t, room, path)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(seen) < 5 {
		t.Fatalf("only %d rooms found: the test is run from the wrong folder", len(seen))
	}
}

// DEVELOPERS.md says of each room what it is for.
func TestRoomsAreDescribed(t *testing.T) {
	page, err := os.ReadFile("DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	_, table, _ := strings.Cut(string(page), "## The rooms")
	table, _, found := strings.Cut(table, "\n## ")
	if !found {
		t.Fatal("DEVELOPERS.md has no table of rooms")
	}
	for room := range rooms {
		if room != "." && !strings.Contains(table, "`"+room+"`") && !strings.Contains(table, "`"+room+"/`") {
			t.Errorf("the table of rooms does not say what %s is for", room)
		}
	}
}

func checkFile(t *testing.T, room, path string) {
	allowed, known := rooms[room]
	if !known {
		t.Errorf("%s: the room %q is not in the table of rooms", path, room)
		return
	}
	src, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	file, err := parser.ParseFile(token.NewFileSet(), path, src, parser.SkipObjectResolution)
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range compiledAtStart(file) {
		t.Errorf("%s: %s is compiled at each start of the program; pattern.Of waits until it is needed", path, name)
	}
	for _, spec := range file.Imports {
		name, err := strconv.Unquote(spec.Path.Value)
		if err != nil {
			t.Fatal(err)
		}
		if own, ok := strings.CutPrefix(name, "homebuild/"); ok {
			if !slices.Contains(everyone, own) && !slices.Contains(allowed, own) && !slices.Contains(allowed, "*") {
				t.Errorf("%s: %s may not use %s", path, room, own)
			}
			continue
		}
		for library, who := range owners {
			if (name == library || strings.HasPrefix(name, library+"/")) && !slices.Contains(who, room) {
				t.Errorf("%s: %s may not use %s; only %v may", path, room, library, who)
			}
		}
	}
}

// compiledAtStart are the variables of a file that hold regular expressions and
// templates that are compiled before the program begins: twenty of them take as long as
// all else that it does to tell its version.
func compiledAtStart(file *ast.File) (names []string) {
	for _, decl := range file.Decls {
		vars, ok := decl.(*ast.GenDecl)
		if !ok || vars.Tok != token.VAR {
			continue
		}
		for _, spec := range vars.Specs {
			value := spec.(*ast.ValueSpec)
			ast.Inspect(value, func(n ast.Node) bool {
				if call, ok := n.(*ast.SelectorExpr); ok && (call.Sel.Name == "MustCompile" || call.Sel.Name == "Must") {
					names = append(names, value.Names[0].Name)
				}
				_, later := n.(*ast.FuncLit)
				return !later
			})
		}
	}
	return names
}

func TestCompiledAtStart(t *testing.T) {
	file, err := parser.ParseFile(token.NewFileSet(), "x.go", `package x
var early = regexp.MustCompile("a")
var inside = map[string]*regexp.Regexp{"a": regexp.MustCompile("a")}
var page = template.Must(template.New("page").Parse("a"))
var later = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile("a") })
func now() { _ = regexp.MustCompile("a") }`, 0)
	if err != nil {
		t.Fatal(err)
	}
	if got, want := compiledAtStart(file), []string{"early", "inside", "page"}; !slices.Equal(got, want) {
		t.Errorf("want %v, got %v", want, got)
	}
}
