package i18n

import (
	"io/fs"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/pelletier/go-toml/v2"
	"pgregory.net/rapid"

	"homebuild/locales"
)

// What a file says, and whether a name may be written again, is held against
// go-toml, which obeys TOML 1.0.0.
func TestTreeIsWhatTOMLSays(t *testing.T) {
	agreed := map[bool]int{}
	rapid.Check(t, func(t *rapid.T) {
		name := rapid.Custom(func(t *rapid.T) string {
			return strings.Join(rapid.SliceOfN(rapid.SampledFrom([]string{"a", "b", "c"}), 1, 2).Draw(t, "parts"), ".")
		})
		line := rapid.Custom(func(t *rapid.T) string {
			switch rapid.IntRange(0, 3).Draw(t, "kind") {
			case 0:
				return "[" + name.Draw(t, "table") + "]"
			case 1:
				return name.Draw(t, "key") + ` = { ` + name.Draw(t, "in") + ` = "x", ` + name.Draw(t, "in") + ` = "y" }`
			}
			return name.Draw(t, "key") + ` = "text"`
		})
		data := strings.Join(rapid.SliceOfN(line, 1, 6).Draw(t, "lines"), "\n")
		want := map[string]any{}
		err := toml.Unmarshal([]byte(data), &want)
		r := &reader{file: &file{path: "locales/xx.toml"}, tree: newTree(), lines: lineStarts([]byte(data))}
		r.walk([]byte(data))
		if (err == nil) != (len(r.problems) == 0) {
			t.Fatalf("%s\ngo-toml says %v, we say %v", data, err, r.problems)
		}
		agreed[err == nil]++
		if err == nil && !cmp.Equal(want, r.tree.root) {
			t.Fatalf("%s\n%s", data, cmp.Diff(want, r.tree.root))
		}
	})
	if agreed[true] == 0 || agreed[false] == 0 {
		t.Errorf("want files of both kinds, got %d that can be read and %d that cannot", agreed[true], agreed[false])
	}
}

func TestTreeOfEveryLanguage(t *testing.T) {
	for _, tag := range Tags(locales.Files) {
		data, problem := findFile(tag, []fs.FS{locales.Files})
		if problem != nil {
			t.Fatal(problem)
		}
		want := map[string]any{}
		if err := toml.Unmarshal(data, &want); err != nil {
			t.Fatal(err)
		}
		r := &reader{file: &file{path: shownPath(tag)}, tree: newTree(), lines: lineStarts(data)}
		if r.walk(data); len(r.problems) > 0 {
			t.Fatal(r.problems)
		}
		if diff := cmp.Diff(want, r.tree.root); diff != "" {
			t.Errorf("%s (-go-toml +ours):\n%s", tag, diff)
		}
	}
}
