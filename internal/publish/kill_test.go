package publish

import (
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
)

var kills = flag.Int("kills", 20, "how many builds TestKill kills")

// childEnv makes the test binary a builder: "b /path/of/public".
const childEnv = "HOMEBUILD_PUBLISH_CHILD"

func TestMain(m *testing.M) {
	flag.Parse() // linkedSite asks whether the run is a quick one
	if job := os.Getenv(childEnv); job != "" {
		version, dir, _ := strings.Cut(job, " ")
		if _, err := Write(dir, linkedSite(version), Options{}); err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(1)
		}
		os.Exit(0)
	}
	os.Exit(m.Run())
}

// linkedPages is how many pages a language of a large version has.
func linkedPages() int {
	if testing.Short() {
		return 24
	}
	return 120
}

// linkedSite is a site whose pages lead to their neighbors and whose indexes
// lead to every page of their language; the link that families hold leads to a page
// in each language. The versions a and b share half their pages; c is a with few of its
// pages left.
func linkedSite(version string) []File {
	all := linkedPages()
	from := map[string]int{"a": 0, "b": all / 2, "c": 0}[version]
	count := map[string]int{"a": all, "b": all, "c": all / 12}[version]
	languages := map[string][]string{"a": {"en", "es"}, "b": {"en", "ar"}, "c": {"en"}}[version]
	var files []File
	var roots []string
	for _, tag := range languages {
		var pages []string
		for i := range count {
			pages = append(pages, fmt.Sprintf("%s/%d.html", tag, from+i))
		}
		for i, name := range pages {
			files = append(files, linked(version, name, pages[(i+1)%count], pages[(i+count-1)%count], languages[0]+"/index.html"))
		}
		roots = append(roots, tag+"/index.html")
		files = append(files, linked(version, tag+"/index.html", pages...))
	}
	for i := range count {
		var pages []string
		for _, tag := range languages {
			pages = append(pages, fmt.Sprintf("%s/%d.html", tag, from+i))
		}
		files = append(files, linked(version, fmt.Sprintf("%d.html", from+i), pages...))
	}
	return append(files, linked(version, "index.html", roots...))
}

// linked is a page that can tell whether it is whole: its last line is the sum
// of the rest.
func linked(version, name string, to ...string) File {
	return File{Path: name, Index: path.Base(name) == "index.html", Render: func() ([]byte, error) {
		body := fmt.Sprintf("%s of %s\n%s\n<%s>\n", name, version, strings.Repeat("story ", 2000), strings.Join(to, ">\n<"))
		return []byte(body + sumOf([]byte(body)).String()), nil
	}}
}

// most is how many pages of a large version can be reached, and nearly all are.
func most() int { return linkedPages() * 5 / 3 }

var linkIn = regexp.MustCompile(`<(.*)>`)

// checkWhole looks at every page on the disk, and at every page that can be
// reached from the lists and from those that families hold a link to, of which there are
// at least so many.
func checkWhole(t *testing.T, when string, files map[string]string, least int) {
	t.Helper()
	for name, data := range files {
		if isTemp(path.Base(name)) || name == "theirs.txt" {
			continue
		}
		at := max(0, len(data)-64)
		if sumOf([]byte(data[:at])).String() != data[at:] || !strings.HasPrefix(data, name+" of ") {
			t.Errorf("%s: %s is not whole", when, name)
		}
	}
	if files["index.html"] == "" {
		return // nobody can be here yet
	}
	reached, todo := map[string]bool{}, []string{}
	for name := range files {
		if (path.Dir(name) == "." && path.Ext(name) == ".html" || path.Base(name) == "index.html") && !isTemp(path.Base(name)) {
			reached[name], todo = true, append(todo, name)
		}
	}
	for len(todo) > 0 {
		from := todo[0]
		todo = todo[1:]
		for _, m := range linkIn.FindAllStringSubmatch(files[from], -1) {
			if _, ok := files[m[1]]; !ok {
				t.Errorf("%s: %s leads to %s, which is not there", when, from, m[1])
			}
			if !reached[m[1]] {
				reached[m[1]] = true
				todo = append(todo, m[1])
			}
		}
	}
	if len(reached) < least {
		t.Errorf("%s: only %d pages can be reached", when, len(reached))
	}
}

// builder is a process that builds a version of the site.
func builder(version, dir string) *exec.Cmd {
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), childEnv+"="+version+" "+dir)
	cmd.Stderr = os.Stderr
	return cmd
}

// byTheClock leaves a test out of a quick run: where a kill falls, the clock decides.
// TestStopAtEveryTurn and TestStopRemoving stop at the same places without it.
func byTheClock(t *testing.T) {
	if testing.Short() {
		t.Skip("builds are not killed in a quick run")
	}
}

// A build that is killed at any moment leaves whole pages and links that
// resolve, and the next build puts everything right.
func TestKill(t *testing.T) {
	byTheClock(t)
	dir := filepath.Join(inMemory(t), "public")
	child := func(version string) *exec.Cmd { return builder(version, dir) }
	put(t, filepath.Join(dir, "theirs.txt"), "theirs")
	// How long a whole build takes, to spread the kills over it.
	start := time.Now()
	if err := child("a").Run(); err != nil {
		t.Fatal(err)
	}
	whole := time.Since(start)
	killed := 0
	for i := range *kills {
		version := []string{"b", "a"}[i%2]
		cmd := child(version)
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		wait := whole * time.Duration(2*i+1) / time.Duration(2**kills)
		time.Sleep(wait)
		_ = cmd.Process.Kill()
		if cmd.Wait() != nil {
			killed++
		}
		checkWhole(t, fmt.Sprintf("kill %d, after %v", i, wait), disk(t, dir), most())
	}
	if killed == 0 {
		t.Errorf("no build was killed in time: nothing was tried")
	}
	t.Logf("a whole build took %v; %d of %d builds were killed before their end", whole, killed, *kills)
	checkAfterKills(t, dir)
}

// A build that is killed while it removes pages leaves no dead link: not on a page that
// families hold a link to and that still waits for its removal, nor behind it. Each kill
// comes when another page is seen to be gone, from the first to the last.
func TestKillRemoving(t *testing.T) {
	byTheClock(t)
	dir := filepath.Join(inMemory(t), "public")
	put(t, filepath.Join(dir, "theirs.txt"), "theirs")
	left := map[string]bool{}
	for _, f := range linkedSite("c") {
		left[f.Path] = true
	}
	var gone []string
	for _, f := range linkedSite("a") {
		if !left[f.Path] {
			gone = append(gone, f.Path)
		}
	}
	slices.SortFunc(gone, leadingFirst)
	within := 0 // kills that came between the first and the last removal
	for i := range *kills {
		write(t, dir, linkedSite("a")...)
		cmd := builder("c", dir)
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		ended := make(chan error, 1)
		go func() { ended <- cmd.Wait() }()
		next := filepath.Join(dir, gone[i*len(gone) / *kills])
		for running := true; running; {
			if _, err := os.Lstat(next); err != nil {
				break
			}
			select {
			case err := <-ended:
				ended <- err
				running = false
			default:
			}
		}
		_ = cmd.Process.Kill()
		<-ended
		now := disk(t, dir)
		if len(now) < len(linkedSite("a"))+1 && len(now) > len(linkedSite("c"))+1 {
			within++
		}
		checkWhole(t, fmt.Sprintf("kill %d, when %s was gone and %d of %d pages were left to remove", i, next, len(now)-len(left)-1, len(gone)), now, len(left))
	}
	if within < *kills/2 {
		t.Errorf("only %d of %d kills came while pages were removed", within, *kills)
	}
	t.Logf("%d of %d kills came while pages were removed", within, *kills)
	checkAfterKills(t, dir)
}

// checkAfterKills builds once more and wants exactly the site, with nothing
// left over, nothing mistaken for someone else's and their file untouched.
func checkAfterKills(t *testing.T, dir string) {
	t.Helper()
	for _, version := range []string{"b", "a"} {
		report := write(t, dir, linkedSite(version)...)
		if report.Foreign != nil || report.Edited != nil {
			t.Errorf("after the kills: want nothing foreign or edited, got %v and %v", report.Foreign, report.Edited)
		}
		want := map[string]string{"theirs.txt": "theirs"}
		for _, f := range linkedSite(version) {
			data, _ := f.Render()
			want[f.Path] = string(data)
		}
		if diff := cmp.Diff(want, disk(t, dir)); diff != "" {
			t.Errorf("after the kills, version %s: folder mismatch (-want +got):\n%s", version, diff)
		}
	}
}

// inTheMiddle is a build that has made its pages and changes the folder next, where
// another site stands.
func inTheMiddle(t *testing.T, next []File) (dir string, r *run) {
	t.Helper()
	dir = filepath.Join(inMemory(t), "public")
	put(t, filepath.Join(dir, "theirs.txt"), "theirs")
	write(t, dir, linkedSite("a")...)
	r, err := open(dir, next, Options{})
	if err == nil {
		err = r.prepare()
	}
	if err == nil {
		err = r.writeJournal()
	}
	if err != nil {
		t.Fatal(err)
	}
	return dir, r
}

// A build that stops at any of its steps on the disk leaves the site whole,
// whatever the clock: each step is stopped at in turn.
func TestStopAtEveryTurn(t *testing.T) {
	for stop := range len(phases()) + 1 {
		dir, r := inTheMiddle(t, linkedSite("b"))
		for _, phase := range phases()[:stop] {
			if err := r.move(phase); err != nil {
				t.Fatal(err)
			}
		}
		r.close() // as a kill would: nothing is tidied
		checkWhole(t, fmt.Sprintf("stopped after phase %d", stop), disk(t, dir), most())
		checkAfterKills(t, dir)
	}
}

// A build that stops after any of its removals leaves no dead link, and the next one
// removes the rest: nothing, some and all of what goes is removed in turn.
func TestStopRemoving(t *testing.T) {
	for sixths := range 7 {
		dir, r := inTheMiddle(t, linkedSite("c"))
		for _, phase := range phases() {
			if err := r.move(phase); err != nil {
				t.Fatal(err)
			}
		}
		gone, _ := r.obsolete()
		stop := len(gone) * sixths / 6
		for _, name := range gone[:stop] {
			if err := r.removeOne(name); err != nil {
				t.Fatal(err)
			}
		}
		r.close() // as a kill would: nothing is tidied
		when := fmt.Sprintf("stopped when %d of %d pages were removed", stop, len(gone))
		if left, want := len(disk(t, dir)), len(linkedSite("c"))+1+len(gone)-stop; left != want {
			t.Errorf("%s: want %d files left, got %d", when, want, left)
		}
		checkWhole(t, when, disk(t, dir), len(linkedSite("c")))
		checkAfterKills(t, dir)
	}
}
