//go:build browser

package browser_test

import (
	"crypto/sha256"
	"fmt"
	"io/fs"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/debugger"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// acts writes down whatever a page does that is more than being read.
type acts struct {
	*tab
	mu  sync.Mutex
	did []string
}

func openActs(t *testing.T) *acts {
	t.Helper()
	a := &acts{tab: openTab(t)}
	must(t, chromedp.Listen(a.ctx, func(event any) {
		a.mu.Lock()
		defer a.mu.Unlock()
		switch e := event.(type) {
		case *page.EventJavascriptDialogOpening:
			a.did = append(a.did, "a dialog: "+e.Message)
		case *debugger.EventScriptParsed:
			if e.URL != "" { // what a test asks of a page has no address
				a.did = append(a.did, "a script")
			}
		}
	}))
	must(t, call(a.tab, debugger.Enable, debugger.EnableParams{}))
	return a
}

// of visits a page and lists what it did, said and asked for.
func (a *acts) of(url string) []string {
	a.t.Helper()
	a.visit(url)
	return a.since(url)
}

// since lists what a page did since it was last asked about.
func (a *acts) since(url string) []string {
	a.mu.Lock()
	out := a.did
	a.did = nil
	a.mu.Unlock()
	a.tab.mu.Lock()
	defer a.tab.mu.Unlock()
	for _, said := range a.said {
		if !strings.Contains(said, "favicon.ico") && !strings.Contains(said, "404") {
			out = append(out, "said "+said)
		}
	}
	for _, asked := range a.requests {
		if asked != url && asked != strings.TrimSuffix(url, "index.html") && asked != "about:blank" && !strings.HasSuffix(asked, "/favicon.ico") {
			out = append(out, "asked for "+asked)
		}
	}
	a.said, a.requests = nil, nil
	return out
}

// The pages of schools with an attack in them that a build lets through are opened, of
// one school in three or with -all of every one: no script is parsed, no dialog opens, nothing is
// asked for, and the security policy has nothing to refuse.
func TestAttacksDoNothing(t *testing.T) {
	t.Parallel()
	dir := t.TempDir()
	oneIn := "3"
	if *all {
		oneIn = "1"
	}
	build := exec.Command("go", "test", "-count=1", "../cmd/homebuild", "-run", "^TestAttacks$", "-attacks", dir, "-one-in", oneIn)
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	sites := httptest.NewServer(http.FileServer(http.Dir(dir)))
	defer sites.Close()
	browser := openActs(t)
	checkActsAreSeen(t, browser, dir, sites.URL)
	schools, _ := os.ReadDir(dir)
	seen := map[[sha256.Size]byte]bool{}
	pages, opened := 0, 0
	for _, school := range schools {
		t.Run(school.Name(), func(t *testing.T) {
			err := filepath.WalkDir(filepath.Join(dir, school.Name(), "public"), func(name string, e fs.DirEntry, err error) error {
				if err != nil || filepath.Ext(name) != ".html" {
					return err
				}
				pages++
				if !*all && regexp.MustCompile(`/check/|-(story|print)\.html$`).MatchString(filepath.ToSlash(name)) {
					return nil // these show the same texts in the same places
				}
				html, err := os.ReadFile(name)
				if sum := sha256.Sum256(html); err != nil || seen[sum] {
					return err
				} else {
					seen[sum] = true
				}
				opened++
				rel, _ := filepath.Rel(dir, name)
				if did := browser.of(sites.URL + "/" + filepath.ToSlash(rel)); len(did) > 0 {
					t.Errorf("%s: %q", rel, did)
				}
				return nil
			})
			must(t, err)
		})
	}
	t.Logf("%d schools, %d pages, %d of them different and opened", len(schools), pages, opened)
	if len(schools) < 10 || opened < 40 {
		t.Errorf("only %d schools and %d pages were looked at", len(schools), opened)
	}
}

// checkActsAreSeen opens pages that do what no page may, so that seeing nothing
// means something.
func checkActsAreSeen(t *testing.T, browser *acts, dir, url string) {
	t.Helper()
	const policy = `<meta http-equiv="Content-Security-Policy" content="default-src 'none'">`
	for i, test := range []struct{ html, want string }{
		{`<script>document.title = "x"</script>`, "a script"},
		{policy + `<script>document.title = "x"</script>`, "said security"},
		{policy + `<img src="x.png">`, "said security"},
		{`<img src="x.png">`, "asked for"},
		{policy + `<p style="color:red">`, "said security"},
	} {
		name := fmt.Sprintf("acts-%d.html", i)
		must(t, os.WriteFile(filepath.Join(dir, name), []byte("<!DOCTYPE html><title>x</title>"+test.html), 0o644))
		did := browser.of(url + "/" + name)
		seen := func() bool {
			return slices.ContainsFunc(did, func(s string) bool { return strings.HasPrefix(s, test.want) })
		}
		for range 40 { // the browser tells some of it a moment later
			if seen() {
				break
			}
			time.Sleep(50 * time.Millisecond)
			did = append(did, browser.since(url+"/"+name)...)
		}
		if !seen() {
			t.Fatalf("%s: want %q seen, got %q", test.html, test.want, did)
		}
		must(t, os.Remove(filepath.Join(dir, name)))
	}
}
