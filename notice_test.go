package homebuild_test

import (
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write NOTICE anew")

// noticeHead stands above the list.
const noticeHead = `homebuild is made with the work of others. These modules are in the program, on
one system or another; their licenses follow, each once with the modules that it
covers. The number words of internal/i18n and its quotation marks are from Unicode CLDR
48.2, under the Unicode license at the end. This list is made by: go test . -run TestNotice
-update
`

// systems are those that the program is made for; what is in it differs a
// little.
var systems = []string{"linux", "darwin", "windows"}

// module is a part of the program with its license.
type module struct{ path, version, dir string }

// Every module of the program is named in NOTICE with its version and the whole
// text of its license.
func TestNotice(t *testing.T) {
	want := notice(t, modules(t))
	if *update {
		if err := os.WriteFile("NOTICE", []byte(want), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	got, err := os.ReadFile("NOTICE")
	if err != nil {
		t.Fatal(err)
	}
	if string(got) != want {
		t.Error("NOTICE is not that of the modules in the program; go test . -run TestNotice -update writes it anew")
	}
	for _, name := range []string{"github.com/spf13/cobra", "github.com/ajstarks/svgo", "github.com/yuin/goldmark", "golang.org/x/text"} {
		if !strings.Contains(string(got), name) {
			t.Errorf("NOTICE does not name %s", name)
		}
	}
}

// modules lists what is linked into the program.
func modules(t *testing.T) []module {
	t.Helper()
	var all []module
	for _, system := range systems {
		cmd := exec.Command("go", "list", "-deps", "-f", "{{with .Module}}{{if not .Main}}{{.Path}}\t{{.Version}}\t{{.Dir}}{{end}}{{end}}", "./cmd/homebuild")
		cmd.Env = append(os.Environ(), "GOOS="+system, "CGO_ENABLED=0")
		cmd.Stderr = os.Stderr
		out, err := cmd.Output()
		if err != nil {
			t.Fatalf("go list for %s: %v", system, err)
		}
		for line := range strings.Lines(string(out)) {
			words := strings.Split(strings.TrimSpace(line), "\t")
			if m := (module{words[0], words[min(1, len(words)-1)], words[len(words)-1]}); len(words) == 3 && !slices.Contains(all, m) {
				all = append(all, m)
			}
		}
	}
	slices.SortFunc(all, func(a, b module) int { return strings.Compare(a.path, b.path) })
	if len(all) < 10 {
		t.Fatalf("only %d modules found", len(all))
	}
	return all
}

// notice writes the list and the texts.
func notice(t *testing.T, all []module) string {
	t.Helper()
	covered := map[string][]string{} // by the text
	var texts []string
	var list strings.Builder
	add := func(name, text string) {
		if covered[text] == nil {
			texts = append(texts, text)
		}
		covered[text] = append(covered[text], name)
		fmt.Fprintf(&list, "  %-70s %s\n", name, kindOf(t, name, text))
	}
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		t.Fatal(err)
	}
	add("the Go standard library", license(t, strings.TrimSpace(string(root))))
	for _, m := range all {
		add(m.path+" "+m.version, license(t, m.dir))
	}
	unicode, err := os.ReadFile("testdata/unicode-license.txt")
	if err != nil {
		t.Fatal(err)
	}
	add("Unicode data (CLDR) in golang.org/x/text", strings.TrimSpace(string(unicode)))
	var b strings.Builder
	b.WriteString(noticeHead + "\n" + list.String())
	for _, text := range texts {
		b.WriteString("\n" + strings.Repeat("-", 78) + "\n" + strings.Join(covered[text], "\n") + "\n\n" + text + "\n")
	}
	return b.String()
}

// license is the text that a module comes with.
func license(t *testing.T, dir string) string {
	t.Helper()
	names, err := filepath.Glob(filepath.Join(dir, "LICENSE*"))
	if err != nil {
		t.Fatal(err)
	}
	if len(names) == 0 {
		return stated(t, dir)
	}
	slices.Sort(names)
	text, err := os.ReadFile(names[0])
	if err != nil {
		t.Fatal(err)
	}
	return strings.TrimSpace(strings.ReplaceAll(string(text), "\r\n", "\n"))
}

// stated is what a module that has no file for it says of its license where it
// describes itself.
func stated(t *testing.T, dir string) string {
	t.Helper()
	readme, err := os.ReadFile(filepath.Join(dir, "README.md"))
	_, after, ok := strings.Cut(string(readme), "# License\n")
	if err != nil || !ok {
		t.Fatalf("%s has no license", filepath.Base(dir))
	}
	text, _, _ := strings.Cut(after, "\n#")
	return "It has no file for its license; its README says: " + strings.TrimSpace(text)
}

// kinds tell licenses apart by words that only they have. One that is in none
// of these rows is for a person to read first.
var kinds = []struct{ name, words string }{
	{"Apache-2.0", "Apache License"},
	{"CC-BY-4.0", "Creative Commons Attribution 4.0"},
	{"Unicode-3.0", "UNICODE LICENSE V3"},
	{"BSD-3-Clause", "Neither the name of"},
	{"BSD-3-Clause", "names of its contributors may"},
	{"BSD-2-Clause", "Redistribution and use in source and binary forms"},
	{"MIT (as stated)", "README says: MIT"},
	{"MIT", "Permission is hereby granted, free of charge"},
}

func kindOf(t *testing.T, name, text string) string {
	t.Helper()
	flat := strings.Join(strings.Fields(text), " ")
	for _, k := range kinds {
		if strings.Contains(flat, k.words) {
			return k.name
		}
	}
	t.Errorf("%s: the license is of no kind that is known: %.80q", name, text)
	return "?"
}
