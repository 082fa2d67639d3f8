//go:build unix

package main

import (
	"flag"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"
)

var programKills = flag.Int("kills", 6, "how many builds TestKillTheProgram kills")

var linkOf = regexp.MustCompile(`(?:href|content)="([^":#?]+\.html)`)

// The program is killed at any moment, over a site that is there, and between
// two versions of it: every page is that of one of the two, whole, and every
// link of every page that can be reached from the first leads to a page. The next build finishes what was begun.
func TestKillTheProgram(t *testing.T) {
	program, err := exec.LookPath("homebuild") // this one, as TestMain makes it a command
	if err != nil {
		t.Fatal(err)
	}
	weeks := 5
	if *programKills > 6 { // make kill-test
		weeks = 10
	}
	school := ownSchool(t, weeks, "en", "ar")
	settings, err := os.ReadFile(filepath.Join(school, "site.toml"))
	if err != nil {
		t.Fatal(err)
	}
	// Two years that share their check pages and differ in everything else; one
	// lacks a week and a language. No story is kept from one to the other.
	forget := func() {
		kept, _ := filepath.Glob(filepath.Join(school, "weeks", "*.stories.toml"))
		for _, name := range kept {
			_ = os.Remove(name)
		}
	}
	versions := map[string]func(){
		"a": func() {
			forget()
			putFile(t, filepath.Join(school, "site.toml"), string(settings))
			putFile(t, filepath.Join(school, "weeks/2027-06-07.toml"), plainWeek)
		},
		"b": func() {
			forget()
			putFile(t, filepath.Join(school, "site.toml"), strings.Replace(strings.Replace(string(settings), "puddle", "pond", 1), `, "ar"`, "", 1))
			_ = os.Remove(filepath.Join(school, "weeks/2027-06-07.toml"))
		},
	}
	whole := map[string]map[string]string{}
	for _, v := range []string{"a", "b"} {
		versions[v]()
		fresh := copied(t, school)
		homebuild(t, "build", fresh, "--quiet")
		whole[v] = tree(t, fresh)
	}
	build := func() *exec.Cmd { return exec.Command(program, "build", school, "--quiet", "--remove", "all") }
	took := time.Hour
	for _, v := range []string{"b", "a", "b", "a"} { // the quickest, so that most kills come before the end
		versions[v]()
		start := time.Now()
		if err := build().Run(); err != nil {
			t.Fatal(err)
		}
		took = min(took, time.Since(start))
	}
	killed, between := 0, 0
	for i := range *programKills {
		versions[[]string{"b", "a"}[i%2]]()
		before := tree(t, school)
		cmd := build()
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		time.Sleep(took * time.Duration(2*i+1) / time.Duration(2**programKills))
		_ = cmd.Process.Kill()
		stopped := cmd.Wait() != nil
		if stopped {
			killed++
		}
		after := tree(t, school)
		checkKilled(t, i, after, whole)
		for name := range after {
			if stopped && before[name] != after[name] {
				between++
				break
			}
		}
	}
	t.Logf("a whole build took %v; %d of %d builds were killed before their end, %d of these had begun to change the folder", took, killed, *programKills, between)
	if killed == 0 {
		t.Error("no build was killed in time: nothing was tried")
	}
	for _, v := range []string{"b", "a"} {
		versions[v]()
		if out, err := build().CombinedOutput(); err != nil {
			t.Fatalf("%v\n%s", err, out)
		}
		got := tree(t, school)
		for name, want := range whole[v] {
			if got[name] != want {
				t.Errorf("after the kills: %s is not as in a first build", name)
			}
		}
		if len(got) != len(whole[v]) {
			t.Errorf("after the kills: want %d files, got %d", len(whole[v]), len(got))
		}
	}
}

// checkKilled looks at what a kill left.
func checkKilled(t *testing.T, kill int, files map[string]string, whole map[string]map[string]string) {
	t.Helper()
	for name, page := range files {
		if strings.HasSuffix(name, ".homebuild-part") {
			continue
		}
		if page != whole["a"][name] && page != whole["b"][name] {
			t.Errorf("kill %d: %s is whole in neither version", kill, name)
		}
	}
	reached := map[string]bool{}
	var todo []string // the first page, and those that families hold a link to
	for name := range files {
		if path.Dir(name) == publicFolder && path.Ext(name) == ".html" {
			todo, reached[name] = append(todo, name), true
		}
	}
	for len(todo) > 0 {
		from := todo[0]
		todo = todo[1:]
		for _, m := range linkOf.FindAllStringSubmatch(files[from], -1) {
			to := filepath.ToSlash(filepath.Join(filepath.Dir(from), m[1]))
			if _, ok := files[to]; !ok {
				t.Errorf("kill %d: %s leads to %s, which is not there", kill, from, to)
			}
			if !reached[to] {
				reached[to] = true
				todo = append(todo, to)
			}
		}
	}
	if len(reached) < 40 { // one language of version b
		t.Errorf("kill %d: only %d pages can be reached", kill, len(reached))
	}
}
