//go:build browser

// Package browser_test looks at the published pages as families, validators and
// printers do: in a real browser, from a file and from a server. It needs
// Chromium, poppler, Java and the npm packages in package.json; setup.sh
// installs them.
package browser_test

import (
	"context"
	"flag"
	"fmt"
	"log"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

var (
	screenshots = flag.String("screenshots", "", "put phone and paper pictures of the pages into this `folder`")
	published   = flag.String("public", "", "look at the pages in this `folder`; without it the example school is built")
	lighthouse  = flag.Bool("lighthouse", false, "run Lighthouse, which takes minutes")
	all         = flag.Bool("all", false, "look at every language, not only at those that differ most; takes many minutes on two cores")
)

// The example school, built once, and one browser for all tests.
var (
	workspace string // a folder for what is made once
	public    string // the folder of the pages
	server    *httptest.Server
	browser   context.Context
)

// The weeks of the example year that the tests look at.
const (
	week   = "2026-09-14" // sums within 20, a bar model
	pairs  = "2026-10-05" // every pair is right
	heavy  = "2027-01-18" // two steps: the most of everything
	places = "2027-02-15" // answers of hundreds, tens and ones
	tens   = "2026-12-07"
)

func TestMain(m *testing.M) {
	flag.Parse()
	os.Exit(run(m))
}

func run(m *testing.M) int {
	dir, err := os.MkdirTemp("", "homebuild-browser")
	if err != nil {
		log.Fatal(err)
	}
	defer os.RemoveAll(dir)
	workspace = dir
	if public, err = pages(dir); err != nil {
		fmt.Fprintln(os.Stderr, err)
		return 1
	}
	server = httptest.NewServer(http.FileServer(http.Dir(public)))
	defer server.Close()

	options := append(slices.Clone(chromedp.DefaultExecAllocatorOptions[:]),
		chromedp.NoSandbox, // the tests may run as root
		chromedp.DisableGPU,
		chromedp.ExecPath("chromium"),
		chromedp.UserDataDir(filepath.Join(dir, "profile")),
		chromedp.Flag("disable-component-update", true),
		chromedp.Flag("disable-background-networking", true),
		chromedp.Flag("disable-sync", true),
		chromedp.Flag("force-device-scale-factor", "1"),
	)
	allocator, stop := chromedp.NewExecAllocator(context.Background(), options...)
	defer stop()
	var cancel context.CancelFunc
	browser, cancel = chromedp.NewContext(allocator)
	defer cancel()
	if err := chromedp.Do(browser, chromedp.Navigate("about:blank")); err != nil {
		fmt.Fprintf(os.Stderr, "Chromium does not start: %v\nsh browser/setup.sh installs it\n", err)
		return 1
	}
	return m.Run()
}

// program is homebuild, built once.
var program = sync.OnceValues(func() (string, error) {
	file := filepath.Join(workspace, "homebuild")
	if out, err := exec.Command("go", "build", "-o", file, "../cmd/homebuild").CombinedOutput(); err != nil {
		return "", fmt.Errorf("%w\n%s", err, out)
	}
	return file, nil
})

// pages builds the example school, as a teacher does, unless a folder is given.
func pages(dir string) (string, error) {
	if *published != "" {
		return filepath.Abs(*published)
	}
	program, err := program()
	if err != nil {
		return "", err
	}
	out, err := exec.Command(program, "build", "--quiet", "--out", dir, "--on", "2027-03-01").CombinedOutput()
	if err != nil {
		return "", fmt.Errorf("the example school cannot be built: %w\n%s", err, out)
	}
	return filepath.Join(dir, "public"), nil
}

// usual are the languages that a quick run looks at: left to right and right to
// left, without spaces between words, and with the longest words and pages.
var usual = []string{"en", "ar", "zh-Hans"}

// languages are the language folders, the class's first: the usual ones, or with
// -all every one.
func languages(t *testing.T) []string {
	t.Helper()
	entries, err := os.ReadDir(public)
	if err != nil {
		t.Fatal(err)
	}
	tags := []string{"en"}
	for _, e := range entries {
		if e.IsDir() && e.Name() != "en" && (*all || slices.Contains(usual, e.Name())) {
			tags = append(tags, e.Name())
		}
	}
	if len(tags) < 3 && *published == "" {
		t.Fatalf("only the languages %v are published", tags)
	}
	return tags
}

// A view is a page as a family can have it before them.
type view struct {
	name string // short, for the names of tests and pictures
	path string // in the folder, with the place in the page
	do   string // a script that taps what a family does; empty for nothing
}

// topViews are the pages of no language.
func topViews() []view {
	return []view{{"front", "index.html", ""}, {"weekly", week + ".html", ""}, {"missing", "404.html", ""}}
}

// closely are the languages in which every screen and paper is looked at: left to
// right, and right to left. The others show all kinds of pages, and the walk once.
var closely = []string{"en", "ar"}

// views are all kinds of pages of a language; in some languages, each screen of
// the walk, with all uncovered that it covers.
func views(tag string) []view {
	learn, try := tag+"/"+week+".html", tag+"/"+week+"-try.html"
	out := []view{
		{"home", tag + "/index.html", ""},
		{"learn", learn, ""},
		{"try", try, answered(1, false)},
		{"try-heavy", tag + "/" + heavy + "-try.html", uncovered},
		{"try-pairs", tag + "/" + pairs + "-try.html", answered(1, true)},
		{"try-places", tag + "/" + places + "-try.html", answered(1, false)},
		{"story", tag + "/" + week + "-story.html", ""},
		{"print", tag + "/" + week + "-print.html", ""},
		{"check", tag + "/check/index.html", ""},
		{"check-7", tag + "/check/7.html#with-5", ""},
		{"learn-number", learn + "#number", ""},
	}
	if slices.Contains(closely, tag) {
		for i := 1; i <= 12; i++ {
			out = append(out, view{"learn-" + strconv.Itoa(i), learn, screen(i) + uncovered})
		}
	}
	return out
}

// uncovered is a script that taps whatever hides something.
const uncovered = `for (const d of document.querySelectorAll("main details")) d.open = true;`

// screen is a script that goes to a screen of the walk.
func screen(n int) string { return fmt.Sprintf(`document.getElementById("w%d").click();`, n) }

// answered is a script that picks an answer of a story: in each place the first
// tile of those that are right, or of the others.
func answered(story int, right bool) string {
	return fmt.Sprintf(`for (const p of document.querySelectorAll("#story-%d .nums"))
		[...p.querySelectorAll("input")].find(e => /\b(e|k1)\b/.test(e.className) == %t).click();`, story, right)
}

// isScreen reports whether a view is a screen of the walk.
func (v view) isScreen() bool { return strings.HasSuffix(v.do, uncovered) && v.do != uncovered }

// inEachLanguage runs a test with the views of every language, and of none (the tag
// is empty), in a tab of its own: as many at a time as there are processors.
func inEachLanguage(t *testing.T, do func(b *tab, tag string, views []view)) {
	t.Helper()
	t.Run("top", func(t *testing.T) {
		t.Parallel()
		do(openTab(t), "", topViews())
	})
	for _, tag := range languages(t) {
		t.Run(tag, func(t *testing.T) {
			t.Parallel()
			do(openTab(t), tag, views(tag))
		})
	}
}

// file is the address of a page on disk, as from a memory stick.
func file(path string) string { return "file://" + public + "/" + path }

// ofSeconds limits one action in a tab.
func ofSeconds(ctx context.Context, n int) (context.Context, context.CancelFunc) {
	return context.WithTimeout(ctx, time.Duration(n)*time.Second)
}
