//go:build unix

package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"syscall"
	"testing"
	"testing/fstest"

	"homebuild/internal/i18n"
	"homebuild/locales"
	"homebuild/themes"
)

// Attacks through what stands on the disk instead of in a file. A secret lies
// outside the school's folder; no page may show it.
func TestAttacksOnTheDisk(t *testing.T) {
	link := func(to, at string) func(t *testing.T, dir string) {
		return func(t *testing.T, dir string) {
			name := filepath.Join(dir, filepath.FromSlash(at))
			_ = os.RemoveAll(name)
			if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.Symlink(to, name); err != nil {
				t.Fatal(err)
			}
		}
	}
	pipe := func(at string) func(t *testing.T, dir string) {
		return func(t *testing.T, dir string) {
			name := filepath.Join(dir, filepath.FromSlash(at))
			_ = os.RemoveAll(name)
			_ = os.MkdirAll(filepath.Dir(name), 0o755)
			if err := syscall.Mkfifo(name, 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
	file := func(at, text string) func(t *testing.T, dir string) {
		return func(t *testing.T, dir string) { putFile(t, filepath.Join(dir, filepath.FromSlash(at)), text) }
	}
	folder := func(at string) func(t *testing.T, dir string) {
		return func(t *testing.T, dir string) {
			_ = os.RemoveAll(filepath.Join(dir, at))
			_ = os.MkdirAll(filepath.Join(dir, at), 0o755)
		}
	}
	// A hundred million bytes that take no room.
	large := func(at string) func(t *testing.T, dir string) {
		return func(t *testing.T, dir string) {
			name := filepath.Join(dir, filepath.FromSlash(at))
			putFile(t, name, "")
			if err := os.Truncate(name, 100_000_000); err != nil {
				t.Fatal(err)
			}
		}
	}
	theme := readFile(t, themes.Files, "paper/colours.toml")
	tests := []struct {
		name string
		make func(t *testing.T, dir string)
		want string
	}{
		{"site.toml is a link out", link("../secret.toml", "site.toml"), "site.toml: this is a link to another place"},
		{"site.toml is a link to nothing", link("nowhere", "site.toml"), "site.toml: this is a link to another place"},
		{"site.toml is a link to itself", link("site.toml", "site.toml"), "site.toml: this is a link to another place"},
		{"site.toml is a pipe", pipe("site.toml"), "site.toml: this is not a file"},
		{"site.toml is a folder", folder("site.toml"), "site.toml: this is not a file"},
		{"site.toml is 100 MB", large("site.toml"), "site.toml: the file is larger than 1 MB"},
		{"weeks is a link out", link("../other", "weeks"), "weeks: this is a link to another place"},
		{"weeks is a link to the whole disk", link("/", "weeks"), "weeks: this is a link to another place"},
		{"a week is a link out", link("../../secret.toml", "weeks/2026-09-14.toml"), "weeks/2026-09-14.toml: this is a link to another place"},
		{"a week is a link to a device", link("/dev/zero", "weeks/2026-09-14.toml"), "weeks/2026-09-14.toml: this is a link to another place"},
		{"a week is a pipe", pipe("weeks/2026-09-14.toml"), "weeks/2026-09-14.toml: this is not a file"},
		{"a week is a folder", folder("weeks/2026-09-14.toml"), "weeks: there is no week yet"},
		{"a week is 100 MB", large("weeks/2026-09-14.toml"), "weeks/2026-09-14.toml: the file is larger than 1 MB"},
		{"a week of a day that is not", file("weeks/2026-13-45.toml", plainWeek), "weeks/2026-13-45.toml: "},
		{"a week of markup", file("weeks/<script>alert(1)<.toml", plainWeek), "weeks/<script>alert(1)<.toml: "},
		{"a note of markup", file("weeks/2026-09-14.<img src=x onerror=alert(1)>.toml", "x"), "weeks/2026-09-14.<img src=x onerror=alert(1)>.toml: "},
		{"a note of a path", file("weeks/2026-09-14...toml", "x"), "weeks/2026-09-14...toml: "},
		{"a week with a line end in its name", file("weeks/2026-09-14\n.toml", "x"), `weeks/2026-09-14`},
		{"a week that speaks to the terminal", file("weeks/2026-09-14\x1b[31m.toml", "x"), `weeks/2026-09-14`},
		{"a week that turns the direction", file("weeks/2026-09-14\u202e.toml", "x"), `weeks/2026-09-14`},
		{"a language is a link out", link("../../secret.toml", "locales/es.toml"), "locales/es.toml: "},
		{"a language is a pipe", pipe("locales/es.toml"), "locales/es.toml: this is not a file"},
		{"a language is a folder", folder("locales/es.toml"), "locales/es.toml: this is not a file"},
		{"a language is 100 MB", large("locales/es.toml"), "locales/es.toml: the file is larger than 1 MB"},
		{"a language nobody asked for is a pipe", pipe("locales/fr.toml"), ""},
		{"languages are a link out", link("../other", "locales"), "locales: this is a link to another place"},
		{"themes are a link out", link("../other", "themes"), "themes: this is a link to another place"},
		{"a look that is not used is a link", link("../../other", "themes/hers"), "themes/hers: this is a link to another place"},
		{"a theme is a link out", link("../../other", "themes/own"), `site.toml:3: "own" is not a theme`},
		{"a theme's colors are a link out", link("../../../secret.toml", "themes/own/colours.toml"), "themes/own/colours.toml: this is a link to another place"},
		{"a theme's colors are a pipe", pipe("themes/own/colours.toml"), "themes/own/colours.toml: this is not a file"},
		{"a theme's colors are 100 MB", large("themes/own/colours.toml"), "themes/own/colours.toml: the file is larger than 1 MB"},
		{"a theme's look is a pipe", func(t *testing.T, dir string) {
			file("themes/own/colours.toml", theme)(t, dir)
			pipe("themes/own/theme.css")(t, dir)
		}, "themes/own/theme.css: this is not a file"},
		{"a theme's look is a link out", func(t *testing.T, dir string) {
			file("themes/own/colours.toml", theme)(t, dir)
			link("../../../secret.css", "themes/own/theme.css")(t, dir)
		}, "themes/own/theme.css: this is a link to another place"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			parent := t.TempDir()
			dir := filepath.Join(parent, "school")
			for _, name := range []string{"secret.toml", "secret.css", "other/2026-09-14.toml", "other/es.toml", "other/colours.toml"} {
				putFile(t, filepath.Join(parent, name), "hunter2")
			}
			site := plainSite
			if strings.HasPrefix(test.name, "a theme") {
				site += "theme = \"own\"\n"
			}
			putFile(t, filepath.Join(dir, "site.toml"), site)
			putFile(t, filepath.Join(dir, "weeks/2026-09-14.toml"), plainWeek)
			test.make(t, dir)
			out := filepath.Join(parent, "out")
			var said, errs strings.Builder
			code := testStreams(&said, &errs).run([]string{"build", dir, "--out", out})
			first, _, _ := strings.Cut(strings.TrimPrefix(errs.String(), filepath.ToSlash(dir)+"/"), "\n")
			if wantCode := map[bool]int{true: exitFine, false: exitProblems}[test.want == ""]; code != wantCode || !strings.HasPrefix(first, test.want) {
				t.Errorf("want exit code %d and %q, got %d and %.200q", wantCode, test.want, code, first)
			}
			if strings.Contains(errs.String()+said.String(), "hunter2") {
				t.Errorf("the secret was told: %s", errs.String())
			}
			if strings.ContainsAny(errs.String(), "\x1b\u202e") {
				t.Errorf("the error speaks to the terminal: %q", errs.String())
			}
			if _, err := os.Stat(filepath.Join(out, publicFolder)); err == nil && code != exitFine {
				t.Error("pages were written all the same")
			}
		})
	}
}

var aText = regexp.MustCompile(`((?:^|[^a-z])(?:other|one|two|few|many|zero) = "|^[a-z][a-z0-9-]* = ")([^"]+)"`)

// Markup is refused in every message of a language, one after the other: each
// is spoiled, and each is told with its line.
func TestMarkupInEveryMessage(t *testing.T) {
	raw := readFile(t, locales.Files, "es.toml")
	lines := strings.Split(raw, "\n")
	spoiled, told := 0, 0
	// A few hundred at a time: no more is told of one file.
	const step = 150
	var at []int
	header := false
	for i, line := range lines {
		if strings.HasPrefix(line, "[") {
			header = line == "[language]"
		}
		if m := aText.FindStringSubmatch(line); m != nil && !header && m[1] != `hash = "` && m[1] != `description = "` && m[1] != `gender = "` && m[1] != `source = "` {
			at = append(at, i)
		}
	}
	for from := 0; from < len(at); from += step {
		bad := append([]string{}, lines...)
		want := map[int]bool{}
		for _, i := range at[from:min(from+step, len(at))] {
			place := aText.FindStringSubmatchIndex(bad[i])[4]
			bad[i] = bad[i][:place] + "<img src=x onerror=alert(1)>" + bad[i][place:]
			want[i+1] = true
			spoiled++
		}
		_, problems := i18n.Load([]string{"es"}, locales.Files, mapFS("es.toml", strings.Join(bad, "\n")))
		for _, p := range problems {
			if strings.Contains(p.Text, `"<" is a sign of markup`) && want[p.Line] {
				told++
				delete(want, p.Line)
			}
		}
		for line := range want {
			t.Errorf("line %d: markup passed: %s", line, bad[line-1])
		}
	}
	t.Logf("%d messages spoiled, %d told", spoiled, told)
	if spoiled < 500 {
		t.Errorf("want every message of a language spoiled, got %d", spoiled)
	}
}

func mapFS(name, text string) fstest.MapFS { return fstest.MapFS{name: {Data: []byte(text)}} }
