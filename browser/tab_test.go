//go:build browser

package browser_test

import (
	"context"
	"encoding/json"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	cdplog "github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// tab is a page of the browser that writes down what happens in it.
type tab struct {
	t   *testing.T
	ctx context.Context

	mu       sync.Mutex
	said     []string // errors and warnings of the console, the security policy's too
	requests []string // addresses that were asked for
}

// openTab opens a tab the size of a small phone.
func openTab(t *testing.T) *tab {
	t.Helper()
	return openTabIn(t, browser)
}

// openTabIn opens a tab of a browser, or beside another tab.
func openTabIn(t *testing.T, parent context.Context, options ...chromedp.ContextOption) *tab {
	t.Helper()
	ctx, cancel := chromedp.NewContext(parent, options...)
	t.Cleanup(cancel)
	b := &tab{t: t, ctx: ctx}
	if err := chromedp.Listen(ctx, b.note); err != nil {
		t.Fatal(err)
	}
	must(t, call(b, network.Enable, network.EnableParams{}))
	// Several tabs are open at a time, and each thinks that it is before a reader.
	must(t, call(b, emulation.SetFocusEmulationEnabled, emulation.SetFocusEmulationEnabledParams{Enabled: true}))
	b.size(360, 740)
	b.scheme("light")
	return b
}

// note keeps what a page does that it should not do, and what it asks for.
func (b *tab) note(event any) {
	b.mu.Lock()
	defer b.mu.Unlock()
	switch e := event.(type) {
	case *runtime.EventExceptionThrown:
		b.said = append(b.said, e.ExceptionDetails.Text)
	case *runtime.EventConsoleAPICalled:
		b.said = append(b.said, "console: "+string(e.Type))
	case *cdplog.EventEntryAdded:
		b.said = append(b.said, string(e.Entry.Source)+": "+e.Entry.Text)
	case *network.EventRequestWillBeSent:
		b.requests = append(b.requests, e.Request.URL)
	}
}

// size sets the screen, in CSS pixels.
func (b *tab) size(width, height int64) {
	b.t.Helper()
	must(b.t, call(b, emulation.SetDeviceMetricsOverride, emulation.SetDeviceMetricsOverrideParams{
		Width: width, Height: height, DeviceScaleFactor: 1, Mobile: true,
	}))
}

// scheme asks for light or dark, and for scrolling at once: what is measured
// must stand still.
func (b *tab) scheme(name string) {
	b.t.Helper()
	must(b.t, call(b, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{
		{Name: "prefers-color-scheme", Value: name}, {Name: "prefers-reduced-motion", Value: "reduce"},
	}}))
}

// trusted lets a test put its own tools into the page.
func (b *tab) trusted() {
	b.t.Helper()
	must(b.t, call(b, page.SetBypassCSP, page.SetBypassCSPParams{Enabled: true}))
}

// visit opens a page afresh, also when only the place in it is another.
func (b *tab) visit(url string) {
	b.t.Helper()
	ctx, cancel := ofSeconds(b.ctx, 30)
	defer cancel()
	page, _, _ := strings.Cut(url, "#")
	if eval[bool](b, `location.href.split("#")[0] == `+quoted(page)) { // would only scroll
		must(b.t, chromedp.Do(ctx, chromedp.Navigate("about:blank")))
	}
	if err := chromedp.Do(ctx, chromedp.Navigate(url)); err != nil {
		b.t.Fatalf("%s: %v", url, err)
	}
	b.wait(`document.readyState == "complete"`, "the page to be there")
}

// open shows a view of the published pages.
func (b *tab) open(v view) {
	b.t.Helper()
	b.openAt(file(""), v)
}

// openAt shows a view of the pages in another folder.
func (b *tab) openAt(folder string, v view) {
	b.t.Helper()
	b.visit(folder + v.path)
	b.do(v)
}

// do taps what a family does in a view.
func (b *tab) do(v view) {
	b.t.Helper()
	if v.do != "" {
		eval[bool](b, "(() => {"+v.do+"return true})()")
	}
}

// none wants a script that lists faults to list none.
func (b *tab) none(where, script string) {
	b.t.Helper()
	for _, fault := range eval[[]string](b, script) {
		b.t.Errorf("%s: %s", where, fault)
	}
}

// click taps what the selector finds first, with a real pointer.
func (b *tab) click(selector string) {
	b.t.Helper()
	ctx, cancel := ofSeconds(b.ctx, 10)
	defer cancel()
	if err := chromedp.Do(ctx, chromedp.Click(chromedp.CSS(selector), chromedp.NodeVisible)); err != nil {
		b.t.Fatalf("tap %s at %s: %v", selector, eval[string](b, "location.href"), err)
	}
}

// press presses a key.
func (b *tab) press(keys string) {
	b.t.Helper()
	if err := chromedp.Do(b.ctx, chromedp.KeyEvent(keys)); err != nil {
		b.t.Fatalf("press %q: %v", keys, err)
	}
}

// wait waits until something is true in the page.
func (b *tab) wait(js, what string) {
	b.t.Helper()
	for range 3000 { // a minute: the machine may be busy
		// On the way from one page to the next there is none to ask: not yet.
		if yes, err := chromedp.Run(b.ctx, chromedp.Evaluate[bool]("!!("+js+")")); err == nil && yes {
			return
		}
		time.Sleep(20 * time.Millisecond)
	}
	b.t.Fatalf("waited in vain for %s at %s", what, eval[string](b, "location.href"))
}

// eval asks the page something. The script stands outside the page's own: its
// policy, which allows none, stays in force.
func eval[T any](b *tab, js string) T {
	b.t.Helper()
	v, err := chromedp.Run(b.ctx, chromedp.Evaluate[T](js))
	if err != nil {
		b.t.Fatalf("%.80s: %v", js, err)
	}
	return v
}

// call runs a command of the browser's protocol.
func call[P, R any](b *tab, cmd cdp.Command[P, R], params P) error {
	_, err := chromedp.Call(b.ctx, cmd, params)
	return err
}

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

// quiet wants the console to have stayed empty, and nothing to have been asked
// for but the pages that were opened.
func (b *tab) quiet(pages ...string) {
	b.t.Helper()
	b.mu.Lock()
	defer b.mu.Unlock()
	for _, text := range b.said {
		b.t.Errorf("the console says: %s", text)
	}
	for _, url := range b.requests {
		own := url == "about:blank"
		for _, p := range pages {
			address, _, _ := strings.Cut(p, "#")
			own = own || url == address
		}
		if !own {
			b.t.Errorf("the page asks for %s", url)
		}
	}
}

// quoted writes a text as a script does.
func quoted(s string) string {
	b, err := json.Marshal(s)
	if err != nil {
		panic(err) // a string can always be written
	}
	return string(b)
}

// seen is a script that tells whether an element can be seen.
const seen = `(e => { const r = e.getBoundingClientRect(); return e.checkVisibility() && r.width > 1 && r.height > 1 })`
