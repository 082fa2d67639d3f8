package main

import (
	"io/fs"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// district is a folder with classes, in which the blocks of docs/district.md are run
// as they stand there.
type district struct {
	*testing.T
	dir  string
	docs string
}

func newDistrict(t *testing.T, classes ...string) district {
	t.Helper()
	for _, tool := range []string{"rclone", "parallel", "make"} {
		if _, err := exec.LookPath(tool); err != nil {
			t.Skipf("there is no %s here: sh browser/setup.sh installs it, and make test calls that", tool)
		}
	}
	docs, err := os.ReadFile("../../docs/district.md")
	if err != nil {
		t.Fatal(err)
	}
	d := district{t, t.TempDir(), string(docs)}
	program, err := os.Executable() // which is homebuild under that name: see TestMain
	d.must(err)
	real := filepath.Join(d.dir, "program", "homebuild")
	d.must(os.Mkdir(filepath.Dir(real), 0o755))
	d.must(os.Symlink(program, real))
	// The program is killed at the class that the file "kill" names.
	d.put("bin/homebuild", "#!/bin/sh\nif [ -e kill ]; then case \"$*\" in *\"$(cat kill)\"*) kill -KILL $$;; esac; fi\nexec "+real+" \"$@\"\n")
	d.put("store/elsewhere/keep.txt", "theirs")
	for _, class := range classes {
		d.class(class, "add-within-20")
	}
	return d
}

// class writes the files of a class with one week.
func (d district) class(name, target string) {
	d.put("classes/"+name+"/site.toml", "name = \""+name+"\"\nlanguages = [\"en\"]\n")
	d.put("classes/"+name+"/weeks/2026-09-14.toml", "target = \""+target+"\"\n")
}

func (d district) put(name, text string) {
	d.Helper()
	path := filepath.Join(d.dir, name)
	d.must(os.MkdirAll(filepath.Dir(path), 0o755))
	d.must(os.WriteFile(path, []byte(text), 0o755))
}

func (d district) must(err error) {
	d.Helper()
	if err != nil {
		d.Fatal(err)
	}
}

// block is the n-th block of code below a heading, from 0.
func (d district) block(heading string, n int) string {
	d.Helper()
	_, part, ok := strings.Cut(d.docs, "\n## "+heading+"\n")
	part, _, _ = strings.Cut(part, "\n## ")
	all := regexp.MustCompile("(?s)```[a-z]+\n(.*?)```").FindAllStringSubmatch(part, -1)
	if !ok || len(all) <= n {
		d.Fatalf("docs/district.md has no block %d below %q", n, heading)
	}
	return all[n][1]
}

// run runs a script and wants its exit code, and words on standard error.
func (d district) run(script string, env []string, code int, says ...string) {
	d.Helper()
	cmd := exec.Command("sh", "-c", script)
	cmd.Dir = d.dir
	cmd.Env = slices.Concat(os.Environ(), []string{oneProgram + "=1", "STORE=store", "PATH=" + filepath.Join(d.dir, "bin") + ":" + os.Getenv("PATH")}, env)
	var told strings.Builder
	cmd.Stderr = &told
	_ = cmd.Run()
	if got := cmd.ProcessState.ExitCode(); got != code {
		d.Errorf("exit code %d, want %d\n%s", got, code, told.String())
	}
	for _, text := range says {
		if !strings.Contains(told.String(), text) {
			d.Errorf("it does not say %q:\n%s", text, told.String())
		}
	}
}

// files are those of a folder, by path.
func (d district) files(folder string) map[string]string {
	d.Helper()
	all := map[string]string{}
	root := os.DirFS(d.dir)
	err := fs.WalkDir(root, folder, func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			return err
		}
		data, err := fs.ReadFile(root, name)
		all[strings.TrimPrefix(name, folder+"/")] = string(data)
		return err
	})
	if err != nil {
		d.Fatal(err)
	}
	return all
}

// same wants two folders, or one at two times, to hold the same.
func (d district) same(what string, want, got map[string]string) {
	d.Helper()
	if diff := cmp.Diff(slices.Sorted(maps.Keys(want)), slices.Sorted(maps.Keys(got))); diff != "" {
		d.Errorf("%s: other files (-want +got):\n%s", what, diff)
	}
	for name := range want {
		if want[name] != got[name] {
			d.Errorf("%s: %s is another", what, name)
		}
	}
}

// One computer, week after week: a slip in one class, an empty folder, a kill, a week
// taken back, a class put back, and nothing there at all.
func TestDistrictOnOneComputer(t *testing.T) {
	t.Parallel()
	d := newDistrict(t, "1a", "2b", "3c")
	publish := d.block("One computer", 0)
	d.run(publish, []string{"RUN=first"}, 0)
	for _, class := range []string{"1a", "2b", "3c"} {
		d.same(class, d.files("built/"+class+"/public"), d.files("store/"+class))
	}
	first := d.files("store")
	if len(first) < 3*5 {
		t.Fatalf("only %d files were sent", len(first))
	}

	d.put("kill", "build classes")
	d.class("1a", "subtract-within-20")
	d.run(publish, []string{"RUN=killed"}, 137)
	d.same("after a kill", first, d.files("store"))
	d.must(os.Remove(filepath.Join(d.dir, "kill")))

	d.class("2b", "add-within-2O")
	d.must(os.MkdirAll(filepath.Join(d.dir, "classes", "empty"), 0o755))
	d.run(publish, []string{"RUN=second"}, 1, "classes/2b/weeks/2026-09-14.toml:1: ", "not built: classes/2b/, classes/empty/", "empty has no pages yet")
	second := d.files("store")
	d.same("the class with a slip", d.files("runs/first/2b"), d.files("store/2b"))
	d.same("the class that changed", d.files("built/1a/public"), d.files("store/1a"))
	if second["elsewhere/keep.txt"] != "theirs" || second["1a/en/2026-09-14.html"] == first["1a/en/2026-09-14.html"] {
		t.Error("what is elsewhere in the store has changed, or 1a has not")
	}

	d.run(d.block("One computer", 1), []string{"RUN=first", "CLASS=1a"}, 0)
	d.same("the class put back", d.files("runs/first/1a"), d.files("store/1a"))
	d.same("the others", d.files("runs/second/3c"), d.files("store/3c"))
	d.run(d.block("Look before you send", 0), nil, 0, "built/2b/: look at it")

	before := d.files("store")
	d.must(os.RemoveAll(filepath.Join(d.dir, "classes")))
	d.run(publish, []string{"RUN=nothing"}, 2, "there is no folder")
	d.same("where there is no class", before, d.files("store"))
}

// make and parallel go on past a class with a slip and one that is killed.
func TestDistrictSideBySide(t *testing.T) {
	t.Parallel()
	d := newDistrict(t, "1a", "2b", "3c")
	d.class("2b", "add-within-2O")
	d.put("kill", "classes/3c")
	d.put("Makefile", d.block("With make or GNU parallel", 0))
	_, command, _ := strings.Cut(d.docs, "without spaces), `")
	command, _, _ = strings.Cut(command, "`")
	for script, code := range map[string]int{command: 2, d.block("With make or GNU parallel", 1): 2} {
		d.must(os.RemoveAll(filepath.Join(d.dir, "built")))
		d.run(script, nil, code, "classes/2b/weeks/2026-09-14.toml:1: ")
		if pages, _ := filepath.Glob(filepath.Join(d.dir, "built", "*", "public", "index.html")); len(pages) != 1 || !strings.Contains(pages[0], "1a") {
			t.Errorf("%s made %v, want the pages of 1a", script, pages)
		}
	}
	d.must(os.RemoveAll(filepath.Join(d.dir, "classes")))
	d.must(os.Mkdir(filepath.Join(d.dir, "classes"), 0o755))
	d.run(command, nil, 2, "there is no class")
	d.run(d.block("With make or GNU parallel", 1), nil, 1, "there is no class")
}

// The job's pods, one after the other: the class with a slip keeps its pages in the
// store, what is replaced is kept, and what was not built is counted.
func TestDistrictInAJob(t *testing.T) {
	t.Parallel()
	d := newDistrict(t, "1a", "2b", "3c")
	_, command, ok := strings.Cut(d.block("On Kubernetes", 0), "            - |\n")
	command, _, _ = strings.Cut(command, "          resources:")
	if !ok {
		t.Fatal("the job has no command")
	}
	count := d.block("On Kubernetes", 1)
	job := func(run string) {
		t.Helper()
		d.must(os.RemoveAll(filepath.Join(d.dir, "store", "classes")))
		d.must(os.CopyFS(filepath.Join(d.dir, "store", "classes"), os.DirFS(filepath.Join(d.dir, "classes"))))
		for _, pod := range []string{"0", "1"} { // each begins on an empty disk
			place := filepath.Join(d.dir, run, pod)
			d.must(os.MkdirAll(place, 0o755))
			d.run("cd "+place+"; set -eu\n"+command, []string{"PARTS=2", "JOB_COMPLETION_INDEX=" + pod, "RUN=" + run, "STORE=" + filepath.Join(d.dir, "store")}, 0)
		}
	}
	job("first")
	d.run(count, []string{"RUN=first"}, 0)
	first := d.files("store/site")
	d.class("1a", "subtract-within-20")
	d.class("2b", "add-within-2O")
	job("second")
	d.run(count, []string{"RUN=second"}, 1, "not built: 2b")
	second := d.files("store/site")
	if second["2b/en/2026-09-14.html"] != first["2b/en/2026-09-14.html"] || second["1a/en/2026-09-14.html"] == first["1a/en/2026-09-14.html"] {
		t.Error("2b has changed, or 1a has not")
	}
	if d.files("store/replaced/second/1a")["en/2026-09-14.html"] != first["1a/en/2026-09-14.html"] {
		t.Error("what was replaced is not kept")
	}
	d.must(os.RemoveAll(filepath.Join(d.dir, "store", "classes")))
	d.must(os.Mkdir(filepath.Join(d.dir, "store", "classes"), 0o755))
	d.run(count, []string{"RUN=third"}, 1, "there is no class")
}
