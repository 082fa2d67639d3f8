package tomlfile

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/pelletier/go-toml/v2"
	"pgregory.net/rapid"
)

// plain is a value as go-toml gives it.
func plain(v *Value) any {
	switch v.Kind {
	case Table:
		table := map[string]any{}
		for child := range v.Children() {
			table[child.Key] = plain(child)
		}
		return table
	case List, Tables:
		list := []any{}
		for child := range v.Children() {
			list = append(list, plain(child))
		}
		return list
	}
	return v.Text
}

// What a file says, and whether a name may be written again, is held against
// go-toml, which obeys TOML 1.0.0.
func TestTreeIsWhatTOMLSays(t *testing.T) {
	agreed := map[bool]int{}
	rapid.Check(t, func(t *rapid.T) {
		name := rapid.Custom(func(t *rapid.T) string {
			return strings.Join(rapid.SliceOfN(rapid.SampledFrom([]string{"a", "b", "c", `"d"`}), 1, 2).Draw(t, "parts"), ".")
		})
		line := rapid.Custom(func(t *rapid.T) string {
			switch rapid.IntRange(0, 5).Draw(t, "kind") {
			case 0:
				return "[" + name.Draw(t, "table") + "]"
			case 1:
				return "[[" + name.Draw(t, "tables") + "]]"
			case 2:
				return name.Draw(t, "key") + ` = { ` + name.Draw(t, "in") + ` = "x", ` + name.Draw(t, "in") + ` = "y" }`
			case 3:
				return name.Draw(t, "key") + ` = ["x", ["y\n"], { ` + name.Draw(t, "in") + ` = 'z' }]`
			}
			return name.Draw(t, "key") + ` = "te\"xt"`
		})
		data := strings.Join(rapid.SliceOfN(line, 1, 6).Draw(t, "lines"), "\n")
		want := map[string]any{}
		err := toml.Unmarshal([]byte(data), &want)
		f := Parse("x.toml", data, 1)
		if (err == nil) != (len(f.Problems()) == 0) {
			t.Fatalf("%s\ngo-toml says %v, we say %v", data, err, f.Problems())
		}
		agreed[err == nil]++
		if err == nil && !cmp.Equal(want, plain(f.Root)) {
			t.Fatalf("%s\n%s", data, cmp.Diff(want, plain(f.Root)))
		}
	})
	if agreed[true] == 0 || agreed[false] == 0 {
		t.Errorf("want files of both kinds, got %d that can be read and %d that cannot", agreed[true], agreed[false])
	}
}

// Every value has its whole name and its line, counted from where the text
// begins in its file.
func TestNamesAndLines(t *testing.T) {
	f := Parse("x.toml", `
a = "x" # a remark
"b.c".d = 1
[e.f]
g = { h = true,
  i = "y" }
j = [
  "z",
  2026-09-14,
]
[[k]]
[[k]]
l = """
two
lines"""
`, 5)
	if len(f.Problems()) > 0 {
		t.Fatal(f.Problems())
	}
	var got []string
	for v := range f.Values() {
		got = append(got, fmt.Sprintf("%d %s %q", v.Line, v.Name(), v.Text))
	}
	want := []string{`6 a "x"`, `7 b.c ""`, `7 b.c.d "1"`, `8 e ""`, `8 e.f ""`, `9 e.f.g ""`, `9 e.f.g.h "true"`, `10 e.f.g.i "y"`,
		`11 e.f.j ""`, `12 e.f.j "z"`, `13 e.f.j "2026-09-14"`, `15 k ""`, `15 k ""`, `16 k ""`, `17 k.l "two\nlines"`}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("values (-want +got):\n%s", diff)
	}
	for path, line := range map[string]int{"a": 6, "e.f.g.i": 10, "e.f.x": 8, "k[0].l": 15, "k[1].l": 17, "x": 0, "k[7].l": 15} {
		if got := f.Section().LineOf(path); got != line {
			t.Errorf("line of %s: want %d, got %d", path, line, got)
		}
	}
}

// Files that cost as much as they can.
func TestHostileFiles(t *testing.T) {
	tests := []struct{ name, text, want string }{
		{"nested lists", "a = " + strings.Repeat("[", 1<<20), "x.toml:1: "},
		{"closed nested lists", "a = " + strings.Repeat("[", 9000) + strings.Repeat("]", 9000), "x.toml:1: names and lists stand more than 8 deep in each other"},
		{"nested tables", "a = " + strings.Repeat("{a=", 1<<18), "x.toml:1: "},
		{"closed nested tables", "a = " + strings.Repeat("{a=", 9000) + "1" + strings.Repeat("}", 9000), "x.toml:1: names and lists stand more than 8 deep in each other"},
		{"a long name", "[" + strings.Repeat("a.", 1<<19) + "a]", "x.toml:1: names and lists stand more than 8 deep in each other"},
		{"many names", strings.Repeat("[[a]]\n", 170_000), "x.toml: the file has more than 150000 names"},
		{"a long list", "a = [" + strings.Repeat("1,", 1<<18) + "]", "x.toml: the file has more than 150000 names"},
		{"one name again and again", strings.Repeat("a = 1\n", 1<<17), `x.toml:2: "a" is written twice`},
		{"unreadable lines", strings.Repeat("a = \n", 1<<17), "x.toml:1: nothing stands after the equals sign"},
	}
	for _, test := range tests {
		start := time.Now()
		f := Parse("x.toml", test.text, 1)
		t.Logf("%s: %d problems in %v", test.name, len(f.Problems()), time.Since(start))
		if len(f.Problems()) == 0 || len(f.Problems()) > maxProblems || !strings.HasPrefix(f.Problems()[0].String(), test.want) {
			t.Errorf("%s: want at most %d problems, the first %s..., got %d: %.200s", test.name, maxProblems, test.want, len(f.Problems()), f.Problems())
		}
	}
}

// Whatever a file holds, reading it ends, and every problem is on a line of it.
func FuzzParse(f *testing.F) {
	for _, seed := range []string{"a = [[{b=1}]]", "[[a]]\n[a.b]\n[a]", "a.b = 1\na = {", "\"\\u0000\" = '''x", "a = “x”\n[[a"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		file := Parse("x.toml", text, 1)
		for _, p := range file.Problems() {
			if p.Text == "" || p.Line > 1+strings.Count(text, "\n") {
				t.Errorf("problem without a true place: %+v", p)
			}
		}
		for v := range file.Values() {
			if v.Line < 1 || v.Line > 1+strings.Count(text, "\n") {
				t.Errorf("value without a true place: %+v", v)
			}
		}
	})
}
