package main

import (
	"bytes"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"homebuild/internal/output"
	"homebuild/internal/publish"
	"homebuild/internal/school"
	"homebuild/locales"
	example "homebuild/site"
	"homebuild/themes"
)

// ownSchool copies the example school's first weeks into a folder, with their
// notes in English.
func ownSchool(t testing.TB, weeks int, languages ...string) string {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "school")
	entries, err := fs.ReadDir(example.Files, "weeks")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries[:weeks] {
		english, _, _ := strings.Cut(readFile(t, example.Files, "weeks/"+e.Name()), "\nar = ")
		putFile(t, filepath.Join(dir, "weeks", e.Name()), english+"\n")
	}
	text := readFile(t, example.Files, "site.toml")
	text = regexp.MustCompile(`(?m)^languages.*`).ReplaceAllString(text, `languages = ["`+strings.Join(languages, `", "`)+`"]`)
	putFile(t, filepath.Join(dir, "site.toml"), text)
	return dir
}

func readFile(t testing.TB, fsys fs.FS, name string) string {
	t.Helper()
	data, err := fs.ReadFile(fsys, name)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

func putFile(t testing.TB, name, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// homebuild runs the program and gives what it says.
func homebuild(t testing.TB, args ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	if code := testStreams(&out, &errs).run(args); code != exitFine {
		t.Fatalf("homebuild %v: exit code %d\n%s", args, code, errs.String())
	}
	return out.String()
}

// tree reads public and desk in a folder: path to bytes.
func tree(t testing.TB, dir string) map[string]string {
	t.Helper()
	files := map[string]string{}
	for _, part := range []string{publicFolder, deskFolder} {
		err := fs.WalkDir(os.DirFS(dir), part, func(name string, e fs.DirEntry, err error) error {
			if err == nil && !e.IsDir() {
				files[name] = readFile(t, os.DirFS(dir), name)
			}
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	return files
}

// copied is a school's own files in another folder, without what was built.
func copied(t testing.TB, dir string) string {
	t.Helper()
	to := filepath.Join(t.TempDir(), "copy")
	if err := os.CopyFS(to, os.DirFS(dir)); err != nil {
		t.Fatal(err)
	}
	for _, built := range []string{publicFolder, deskFolder, ".homebuild"} {
		if err := os.RemoveAll(filepath.Join(to, built)); err != nil {
			t.Fatal(err)
		}
	}
	return to
}

// After any edit a build leaves what a first build would make, and writes no
// more pages than have other bytes.
func TestEveryEditIsAFreshBuild(t *testing.T) {
	t.Parallel()
	const keyOfKeptStories, aRemark = "the key, when the stories are kept", "a language file with a remark"
	dir := ownSchool(t, 4, "en", "es")
	edit := func(name, old, new string) func() {
		return func() {
			path := filepath.Join(dir, filepath.FromSlash(name))
			text, err := os.ReadFile(path)
			if err != nil || !strings.Contains(string(text), old) {
				t.Fatalf("%s has no %q: %v", name, old, err)
			}
			putFile(t, path, strings.Replace(string(text), old, new, 1))
		}
	}
	colors := strings.Replace(readFile(t, themes.Files, "paper/colours.toml"), "#f4ecdd", "#f4ecde", 1)
	spanish := strings.ReplaceAll(readFile(t, locales.Files, "es.toml"), `"Siguiente"`, `"Sigamos"`)
	steps := []struct {
		name string
		edit func()
	}{
		{"nothing", func() {}},
		{"a note", edit("weeks/2026-09-21.toml", "Dear families", "Dear all")},
		{"the number of stories", func() {
			edit("weeks/2026-10-05.toml", "= 3", "= 5")()
			_ = os.Remove(filepath.Join(dir, "weeks/2026-10-05.stories.toml")) // what is kept stands
		}},
		{"a theme of one's own", func() { putFile(t, filepath.Join(dir, "themes/paper/colours.toml"), colors) }},
		{aRemark, func() {
			putFile(t, filepath.Join(dir, "locales/es.toml"), "# a remark\n"+readFile(t, locales.Files, "es.toml"))
		}},
		{"a language file of one's own", func() { putFile(t, filepath.Join(dir, "locales/es.toml"), spanish) }},
		{"the name", edit("site.toml", "Pebble Lane", "Harbour")},
		{"the address", edit("site.toml", "pebblelane.example", "harbour.example")},
		{"a language less", edit("site.toml", `, "es"`, "")},
		{"a week less", func() {
			_ = os.Remove(filepath.Join(dir, "weeks/2026-09-14.toml"))
			_ = os.Remove(filepath.Join(dir, "weeks/2026-09-14.stories.toml"))
		}},
		{keyOfKeptStories, edit("site.toml", "puddle", "pond")},
	}
	homebuild(t, "build", dir, "--quiet", "--remove", "all")
	for _, step := range steps {
		before := tree(t, dir)
		step.edit()
		said := homebuild(t, "build", dir, "--remove", "all") // a fresh folder has nothing that families had
		fresh := copied(t, dir)
		homebuild(t, "build", fresh, "--quiet")
		want, got := tree(t, fresh), tree(t, dir)
		if diff := cmp.Diff(keysOf(want), keysOf(got)); diff != "" {
			t.Errorf("%s: files (-fresh +edited):\n%s", step.name, diff)
		}
		changed := 0
		for name := range want {
			if want[name] != got[name] {
				t.Errorf("%s: %s is not as in a fresh build", step.name, name)
			}
			if strings.HasPrefix(name, publicFolder) && before[name] != got[name] {
				changed++
			}
		}
		if written, _, _ := strings.Cut(said, " "); written != strconv.Itoa(changed) {
			t.Errorf("%s: %d pages have other bytes, want as many written, got %s", step.name, changed, written)
		}
		if (changed == 0) != (step.name == "nothing" || step.name == aRemark || step.name == keyOfKeptStories) {
			t.Errorf("%s: %d pages have other bytes", step.name, changed)
		}
		t.Logf("%s: %d of %d", step.name, changed, len(got))
	}
}

func keysOf(files map[string]string) []string {
	var names []string
	for name := range files {
		names = append(names, name)
	}
	slices.Sort(names)
	return names
}

// One worker or many, one order or another, once or twice, in one piece or in
// parts: the same bytes.
func TestReproducible(t *testing.T) {
	t.Parallel()
	dir := ownSchool(t, 5, "en", "ar", "zh-Hans")
	listed := func() []output.File {
		made, problems := school.Open(dir, os.DirFS(dir)).Assemble(nil)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		return made.Pages()
	}
	write := func(files []output.File, options ...publish.Options) map[string]string {
		parent := t.TempDir()
		for _, o := range options {
			if _, err := publish.Write(filepath.Join(parent, publicFolder), files, o); err != nil {
				t.Fatal(err)
			}
		}
		putFile(t, filepath.Join(parent, deskFolder, "empty"), "")
		return tree(t, parent)
	}
	backwards := listed()
	slices.Reverse(backwards)
	same := listed()
	want := write(same, publish.Options{Workers: 1})
	if len(want) < 3*(5*4+20) {
		t.Fatalf("only %d files were built", len(want))
	}
	for name, got := range map[string]map[string]string{
		"8 workers":         write(listed(), publish.Options{Workers: 8}),
		"the other order":   write(backwards, publish.Options{Workers: 2}),
		"the same list":     write(same, publish.Options{Workers: 3}),
		"three parts":       write(listed(), publish.Options{Shard: publish.Shard{I: 2, N: 3}}, publish.Options{Shard: publish.Shard{I: 1, N: 3}}, publish.Options{Shard: publish.Shard{I: 3, N: 3}}),
		"parts, then whole": write(listed(), publish.Options{Shard: publish.Shard{I: 1, N: 2}}, publish.Options{}),
	} {
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%s: the pages are not those of one worker", name)
		}
	}
}

// The parts of the command line are the whole, and those of other files are refused.
func TestBuildInParts(t *testing.T) {
	t.Parallel()
	dir := ownSchool(t, 2, "en", "ar")
	whole, parts := copied(t, dir), copied(t, dir)
	homebuild(t, "build", whole, "--quiet")
	for _, part := range []string{"3/3", "1/3", "2/3"} {
		homebuild(t, "build", parts, "--quiet", "--shard", part)
	}
	if diff := cmp.Diff(tree(t, whole), tree(t, parts)); diff != "" {
		t.Error("three parts are not the whole")
	}
	note := filepath.Join(parts, "weeks", "2026-09-14.toml")
	text := readFile(t, os.DirFS(parts), "weeks/2026-09-14.toml")
	putFile(t, note, strings.Replace(text, "Dear families", "Dear all", 1))
	homebuild(t, "build", parts, "--quiet", "--shard", "1/3")
	putFile(t, note, text)
	var errs bytes.Buffer
	if code := testStreams(io.Discard, &errs).run([]string{"build", parts, "--shard", "2/3"}); code != exitProblems || !strings.Contains(errs.String(), "part 1 of 3, which was made from other files") {
		t.Errorf("a part of other files was put beside part 1: exit code %d, %s", code, errs.String())
	}
	for _, typed := range []string{"0/3", "4/3", "3", "1/0", "a/b", "1/3x", "-1/3", "01/3"} {
		if code := testStreams(io.Discard, io.Discard).run([]string{"build", dir, "--shard", typed}); code != exitWrongUse {
			t.Errorf("--shard %s: want exit code %d, got %d", typed, exitWrongUse, code)
		}
	}
}
