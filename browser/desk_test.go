//go:build browser

package browser_test

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	cdpbrowser "github.com/chromedp/cdproto/browser"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"

	deskpage "homebuild/internal/desk/page"
)

// inventedFile is the desk's page as one file with an invented engine inside, made
// once for all tests: the page's own code, policy and keeping, and answers that are
// always there.
var inventedFile = sync.OnceValues(func() (string, error) {
	worker := filepath.Join(workspace, "worker.js")
	if out, err := exec.Command("go", "tool", "esbuild", deskCode+"/fake-worker.ts", "--bundle", "--format=iife", "--outfile="+worker, "--log-level=warning").CombinedOutput(); err != nil {
		return "", fmt.Errorf("%w\n%s", err, out)
	}
	code, err := os.ReadFile(worker)
	if err != nil {
		return "", err
	}
	file := filepath.Join(workspace, "invented.html")
	return file, os.WriteFile(file, []byte(deskpage.Carrying(string(code), nil)), 0o644)
})

// inventedDesk is the address of that file.
func inventedDesk(t *testing.T) string {
	t.Helper()
	file, err := inventedFile()
	must(t, err)
	return "file://" + file
}

// newProfile opens a tab of a browser that keeps nothing yet, of the size of a
// small laptop.
func newProfile(t *testing.T) *tab {
	t.Helper()
	b := openTabIn(t, browser, chromedp.WithNewBrowserContext())
	b.size(1366, 768)
	return b
}

// tap taps the first button that can be seen whose name begins with a text, and
// wants nothing to lie over it.
func (b *tab) tap(name string) {
	b.t.Helper()
	b.wait(`(name => {
		const said = e => (e.getAttribute("aria-label") || e.textContent).trim().replace(/\s+/g, " ");
		const all = [...document.querySelectorAll("button, summary, label")].filter(`+seen+`);
		const e = all.find(e => said(e) === name) || all.find(e => said(e).startsWith(name));
		if (!e || e.disabled) return false;
		e.scrollIntoView({ block: "center", inline: "center" });
		const r = e.getBoundingClientRect();
		const top = document.elementFromPoint(r.x + r.width / 2, r.y + r.height / 2);
		if (!e.contains(top)) return false;
		e.focus();
		e.click();
		return true;
	})(`+quoted(name)+`)`, fmt.Sprintf("a button %q to tap", name))
}

// typeInto types into a field as a person does.
func (b *tab) typeInto(selector, text string) {
	b.t.Helper()
	b.wait(`document.querySelector(`+quoted(selector)+`)`, selector)
	eval[bool](b, `(e => { e.scrollIntoView({ block: "center" }); e.focus(); e.select?.(); return true })(document.querySelector(`+quoted(selector)+`))`)
	b.press(text)
}

// reads waits until a place says something.
func (b *tab) reads(selector, text string) {
	b.t.Helper()
	b.wait(`document.querySelector(`+quoted(selector)+`)?.textContent.includes(`+quoted(text)+`)`, fmt.Sprintf("%s to say %q", selector, text))
}

// familiesRead waits until the page in families' frame says something.
func (b *tab) familiesRead(text string) {
	b.t.Helper()
	b.wait(`document.querySelector(".phone iframe:not(.coming)")?.contentDocument?.body?.textContent.includes(`+quoted(text)+`)`, fmt.Sprintf("families to read %q", text))
}

// begins answers the four questions of a new desk.
func (b *tab) begins() {
	b.t.Helper()
	b.wait(`document.querySelector("[name=language]")`, "the first questions")
	b.typeInto("#start-name", "Quarry Hill")
	b.tap("grade 2")
	b.tap("español")
	eval[bool](b, `(e => { e.value = "2026-09-28"; return e.dispatchEvent(new InputEvent("input", { bubbles: true })) })(document.querySelector("#start-monday"))`)
	b.tap("Lay out my first week")
	b.reads("#week h2", "Week of Monday, September 28")
	b.reads(".ledge", "Saved in this browser")
}

// What she has answered stays while the page is drawn anew around it.
func TestDeskKeepsAnswers(t *testing.T) {
	t.Parallel()
	b := newProfile(t)
	b.visit(inventedDesk(t))
	b.wait(`document.querySelector("[name=language]")`, "the first questions")
	b.typeInto("#start-name", "Quarry Hill")
	b.tap("español")
	b.tap("Lay out my first week")
	b.wait(`document.activeElement.name == "grade"`, "the grade to be asked for")
	eval[bool](b, `!!requestAnimationFrame(() => requestAnimationFrame(() => window.drawn = true))`)
	b.wait(`window.drawn`, "the page to be drawn anew")
	const answers = `[...new FormData(document.querySelector("form")).entries()].slice(0, -1).join(" ")`
	if got, want := eval[string](b, answers), "name,Quarry Hill language,en language,es"; got != want {
		t.Errorf("after a question was left out the answers are %q, want %q", got, want)
	}
	b.tap("grade 2")
	b.tap("Lay out my first week")
	b.reads("#week h2", "Week of Monday")
}

// downloads lets the tab save files, into a folder that it gives.
func (b *tab) downloads() string {
	b.t.Helper()
	dir := b.t.TempDir()
	must(b.t, call(b, cdpbrowser.SetDownloadBehavior, cdpbrowser.SetDownloadBehaviorParams{
		Behavior: cdpbrowser.SetDownloadBehaviorBehaviorAllow, DownloadPath: dir, BrowserContextID: chromedp.FromContext(b.ctx).BrowserContextID,
	}))
	return dir
}

// saved waits for a file whose name has a text.
func saved(t *testing.T, dir, name string) string {
	t.Helper()
	for range 500 {
		found, err := filepath.Glob(filepath.Join(dir, "*"+name+"*"))
		must(t, err)
		if len(found) == 1 && !strings.HasSuffix(found[0], ".crdownload") {
			if text, err := os.ReadFile(found[0]); err == nil && len(text) > 0 {
				return string(text)
			}
		}
		time.Sleep(20 * time.Millisecond)
	}
	t.Fatalf("no file %q was saved", name)
	return ""
}

// accessible wants nothing to be wrong for those who use a keyboard or a screen
// reader.
func (b *tab) accessible(where string) {
	b.t.Helper()
	for _, r := range b.axe() {
		b.t.Errorf("%s: %s: %s: %s", where, r.Rule, r.Help, strings.Join(r.Places, " | "))
	}
}

// From an empty desk to a week sent, and found again.
func TestDeskWalk(t *testing.T) {
	t.Parallel()
	b := newProfile(t)
	b.visit(inventedDesk(t))
	files := b.downloads()
	b.begins()

	b.tap("Children learn")
	b.tap("I can find the missing part.")
	b.familiesRead("I can find the missing part.")
	b.reads(".last", "Kept: story 2.")

	b.tap("Letter")
	b.typeInto("#letter-en", "Call me: 555-0123")
	eval[bool](b, `(e => (e.focus(), e.value != ""))(document.querySelector("#letter-es"))`)
	b.wait(`document.querySelector("#letter-es").value == ""`, "the letter proposed in Spanish to be gone, as the families get hers in English")
	b.familiesRead("Call me: 555-0123")
	b.tap("1 to fix")
	b.tap("Take it out: 555-0123")
	b.wait(`!document.querySelector(".ledge .alarm")`, "nothing to mend")

	b.tap("Story 2")
	b.tap("Other numbers, Story 2")
	b.reads("#desk-story-2", "10 + 6 = ?")
	if at := eval[string](b, `document.activeElement.textContent`); at != "Other numbers" {
		t.Errorf("the focus went to %q, want it to stay on the act", at)
	}
	b.tap("Undo: Other numbers, story 2")
	b.reads("#desk-story-2", "10 + 5 = ?")

	b.tap("Our class")
	b.tap("العربية") // a child has come who speaks it
	b.wait(`[...document.querySelectorAll(".families .tab")].some(t => t.textContent === "العربية")`, "the families' new language")
	b.tap("Undo: Languages at home")
	b.wait(`![...document.querySelectorAll(".families .tab")].some(t => t.textContent === "العربية")`, "one language fewer")

	b.tap("Send home")
	b.tap("A file in a message")
	b.tap("Save file, English")
	saved(t, files, "week-2026-09-28-en")
	b.reads(".homes", "is in your downloads.")
	eval[bool](b, `navigator.canShare = () => true, navigator.share = async (d) => { window.shared = d }, window.matchMedia = (q) => ({ matches: q.includes("coarse") }), true`)
	b.tap("A file in a message") // as on a phone, which hands the file to another app
	b.tap("Share, English")
	b.reads(".homes", "was shared.")
	if got := eval[string](b, `window.shared.files[0].name + ", " + (window.shared.text.length > 0)`); !strings.HasPrefix(got, "week-2026-09-28-en") || !strings.HasSuffix(got, ", true") {
		t.Errorf("shared was %q", got)
	}
	b.tap("Save file, answer key")
	if key := saved(t, files, "TEACHER-ONLY-key"); !strings.Contains(key, "For the teacher. Do not send.") {
		t.Errorf("the key begins %.80q", key)
	}

	eval[bool](b, `!!location.reload() || true`)
	b.reads("#week h2", "Week of Monday, September 28")
	b.reads("#line-target", "I can find the missing part.")
	b.reads("#line-note", "English")
	b.tap("Undo: Taken out of the letter")
	b.reads(".ledge", "1 to fix")
	b.mu.Lock()
	defer b.mu.Unlock()
	for _, text := range b.said {
		t.Errorf("the console says: %s", text)
	}
}

// Of two tabs one works, the other only shows, until she takes it up there.
func TestDeskInTwoTabs(t *testing.T) {
	t.Parallel()
	url := inventedDesk(t)
	first := newProfile(t)
	first.visit(url)
	first.begins()
	second := openTabIn(t, first.ctx)
	second.size(1366, 768)
	second.visit(url)
	second.reads(".ledge", "Your desk is open in another tab. This one only shows.")
	second.reads("#week h2", "September 28")
	second.tap("Work here")
	second.reads(".ledge", "Saved in this browser")
	first.reads(".ledge", "Your desk is open in another tab. This one only shows.")
	second.tap("Strategy")
	second.tap("Count on")
	second.reads(".last", "Strategy.")
	first.tap("Work here")
	first.reads("#line-focus", "count-on")
	second.reads(".ledge", "Your desk is open in another tab.")
}

// A browser that keeps nothing, or has no room, says so, and gives a copy.
func TestDeskCannotBeKept(t *testing.T) {
	t.Parallel()
	for name, c := range map[string]struct{ script, says string }{
		"refused": {`Object.defineProperty(window, "indexedDB", { get() { throw new DOMException("no", "SecurityError") } })`, "This browser will forget your desk when it closes."},
		"full":    {`{ const put = IDBObjectStore.prototype.put; IDBObjectStore.prototype.put = function(v, k) { if (window.full) throw new DOMException("full", "QuotaExceededError"); return put.call(this, v, k) } }`, "No room left: changes since"},
	} {
		t.Run(name, func(t *testing.T) {
			b := newProfile(t)
			must(t, call(b, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: c.script}))
			files := b.downloads()
			b.visit(inventedDesk(t))
			b.wait(`document.querySelector("[name=language]")`, "the first questions")
			b.typeInto("#start-name", "Quarry Hill")
			b.tap("grade 2")
			b.tap("Lay out my first week")
			b.wait(`document.querySelector("#line-focus")`, "the week")
			eval[bool](b, `window.full = true`)
			b.tap("Strategy")
			b.tap("Count on")
			b.reads("[role=alert]", c.says)
			b.tap("Take a copy")
			saved(t, files, "TEACHER-ONLY-copy")
			b.reads(".ledge", "Copy taken")
			b.tap("Make ten")
			b.reads("[role=alert]", c.says)
		})
	}
}

// An engine that stops starts again, and nothing is lost.
func TestDeskEngineStops(t *testing.T) {
	t.Parallel()
	b := newProfile(t)
	must(t, call(b, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{
		Source: `window.workers = []; const W = Worker; window.Worker = class extends W { constructor(u) { super(u); window.workers.push(this) } }`,
	}))
	b.visit(inventedDesk(t))
	b.begins()
	eval[bool](b, `(w => { w.terminate(); w.onerror(new ErrorEvent("error", { message: "killed" })); return true })(window.workers.at(-1))`)
	b.tap("Strategy")
	b.tap("Count on")
	b.reads("#line-focus", "count-on")
	if n := eval[int](b, `window.workers.length`); n != 2 {
		t.Errorf("%d workers were started, want 2", n)
	}
}

// Every paper of the desk, at its three sizes and in the dark. In a quick run the engine
// reads it at the largest and the smallest.
func TestDeskIsAccessible(t *testing.T) {
	t.Parallel()
	b := newProfile(t)
	b.trusted()
	b.visit(inventedDesk(t))
	axe, err := os.ReadFile("node_modules/axe-core/axe.min.js")
	must(t, err)
	eval[int](b, string(axe)+"; 1")
	b.wait(`document.querySelector("[name=language]")`, "the first questions")
	b.accessible("start")
	b.begins()
	for _, size := range [][2]int64{{1366, 768}, {768, 1024}, {390, 780}} {
		b.size(size[0], size[1])
		for _, at := range []string{"Children learn", "Picture", "Stories", "Letter", "Shows from", "Story 2", "The year", "Our class", "Copies", "Help", "Send home"} {
			b.tap(at)
			if *all || size[0] != 768 {
				b.accessible(fmt.Sprint(at, size))
			}
			if wide := eval[int](b, `document.documentElement.scrollWidth - innerWidth`); wide > 0 {
				t.Errorf("%s at %d: %d px too wide", at, size[0], wide)
			}
		}
		b.tap("Back to the week")
	}
	b.scheme("dark")
	b.accessible("dark")
}
