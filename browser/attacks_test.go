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
	dir, url string // what is served, and where
	mu       sync.Mutex
	did      []string
	frames   string // the page around those that are looked at, all of which lie in view
	opened   int
}

func openActs(t *testing.T, dir, url string) *acts {
	t.Helper()
	a := &acts{tab: openTab(t), dir: dir, url: url}
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

// of opens pages, each in a frame as large as the screen, and lists what they did, said
// and asked for. A frame on the same server has its page's own policy and is heard as
// the page itself is.
func (a *acts) of(pages ...string) []string {
	a.t.Helper()
	html := `<!DOCTYPE html><meta charset="utf-8"><title>x</title>`
	for _, p := range pages {
		html += `<iframe style="position: fixed; inset: 0; width: 100%; height: 100%; border: 0" src="` + p + `"></iframe>`
	}
	a.opened++
	a.frames = fmt.Sprintf("frames-%d.html", a.opened) // one of the same name and second would come from the cache
	must(a.t, os.WriteFile(filepath.Join(a.dir, a.frames), []byte(html), 0o644))
	a.visit(a.url + "/" + a.frames)
	if n := eval[int](a.tab, `[...document.querySelectorAll("iframe")].filter(f => f.contentDocument?.body && f.contentDocument.URL != "about:blank").length`); n != len(pages) {
		a.t.Fatalf("%d frames of %d have a page", n, len(pages))
	}
	return a.since(pages...)
}

// since lists what pages did since they were last asked about.
func (a *acts) since(pages ...string) []string {
	a.mu.Lock()
	out := a.did
	a.did = nil
	a.mu.Unlock()
	a.tab.mu.Lock()
	defer a.tab.mu.Unlock()
	for _, said := range a.said {
		if !strings.Contains(said, "favicon.ico") && !strings.Contains(said, "a status of 404") { // the number alone may be in a port
			out = append(out, "said "+said)
		}
	}
	for _, asked := range a.requests {
		page, ours := strings.CutPrefix(asked, a.url+"/")
		ours = ours && (page == a.frames || slices.ContainsFunc(pages, func(p string) bool { return page == p || page == strings.TrimSuffix(p, "index.html") }))
		if !ours && asked != "about:blank" && !strings.HasSuffix(asked, "/favicon.ico") {
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
	schools, err := os.ReadDir(dir)
	must(t, err)
	browser := openActs(t, dir, sites.URL)
	checkActsAreSeen(t, browser)
	seen := map[[sha256.Size]byte]bool{}
	pages, opened := 0, 0
	for _, school := range schools {
		t.Run(school.Name(), func(t *testing.T) {
			var batch []string
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
				rel, err := filepath.Rel(dir, name)
				batch = append(batch, filepath.ToSlash(rel))
				return err
			})
			must(t, err)
			for pages := range slices.Chunk(batch, 20) {
				if did := browser.of(pages...); len(did) > 0 {
					t.Errorf("one of %q: %q", pages, did)
				}
			}
		})
	}
	t.Logf("%d schools, %d pages, %d of them different and opened", len(schools), pages, opened)
	if len(schools) < 10 || opened < 40 {
		t.Errorf("only %d schools and %d pages were looked at", len(schools), opened)
	}
}

// checkActsAreSeen opens pages that do what no page may, so that seeing nothing
// means something.
func checkActsAreSeen(t *testing.T, browser *acts) {
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
		must(t, os.WriteFile(filepath.Join(browser.dir, name), []byte("<!DOCTYPE html><title>x</title>"+test.html), 0o644))
		did := browser.of(name)
		seen := func() bool {
			return slices.ContainsFunc(did, func(s string) bool { return strings.HasPrefix(s, test.want) })
		}
		for range 40 { // the browser tells some of it a moment later
			if seen() {
				break
			}
			time.Sleep(50 * time.Millisecond)
			did = append(did, browser.since(name)...)
		}
		if !seen() {
			t.Fatalf("%s: want %q seen, got %q", test.html, test.want, did)
		}
		must(t, os.Remove(filepath.Join(browser.dir, name)))
	}
}
