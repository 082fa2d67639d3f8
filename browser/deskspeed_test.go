//go:build browser

package browser_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"

	deskengine "homebuild/internal/desk"
)

// wholeDesk opens the one file in a tab that keeps nothing yet. The tab writes down
// what keeps its page from answering.
func wholeDesk(t *testing.T) *tab {
	t.Helper()
	file, err := deskFile()
	must(t, err)
	b := newProfile(t)
	must(t, call(b, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{
		Source: `window.stalls = []; new PerformanceObserver(l => l.getEntries().forEach(e => stalls.push(e.duration))).observe({ type: "longtask", buffered: true })`,
	}))
	b.visit("file://" + file)
	return b
}

// long leaves a test that measures time to `make browser-all`: beside others it takes
// a minute, and measures them.
func long(t *testing.T) {
	t.Helper()
	if !*all {
		t.Skip("make browser-all measures it")
	}
}

// slow is how many times longer the page's thread takes for some work than that of
// a computer that has nothing else to do, as often as not: the tests share theirs.
func (b *tab) slow() float64 {
	b.t.Helper()
	const quiet = 14 // ms of processor time, once the loop is compiled
	var took []float64
	for range 5 {
		took = append(took, eval[float64](b, `(() => { const from = performance.now(); let x = 0; for (let i = 0; i < 1e7; i++) x = (x * 31 + i) | 0; return performance.now() - from + (x === 1 ? 1 : 0) })()`))
	}
	slices.Sort(took)
	return max(1, took[2]/quiet)
}

// moment is when the page reached a moment of its opening, in ms.
func (b *tab) moment(name string) float64 {
	b.t.Helper()
	b.wait(`performance.getEntriesByName(`+quoted(name)+`).length > 0`, name)
	return eval[float64](b, `performance.getEntriesByName(`+quoted(name)+`)[0].startTime`)
}

// How long a teacher waits: until something is to be seen, until she can begin, and
// until families' page shows what she changed. -v prints it; docs/speed.md has it.
func TestDeskSpeed(t *testing.T) {
	long(t)
	b := wholeDesk(t)
	painted, answered := b.moment("first-contentful-paint"), b.moment("engine")
	t.Logf("a computer %.1f times as slow as a quiet one: painted after %.0f ms, the engine answers after %.0f ms", b.slow(), painted, answered)
	if painted >= answered {
		t.Error("nothing was to be seen before the engine answered")
	}
	b.typeInto("#start-name", "Quarry Hill")
	b.tap("grade 2")
	b.tap("Español")
	b.tap("Lay out my first week")
	b.moment("families")
	b.reads(".ledge", "Saved in this browser")
	eval[bool](b, `!!location.reload() || true`)
	t.Logf("again: the engine answers after %.0f ms, the sheet lies there after %.0f ms, families' page after %.0f ms", b.moment("engine"), b.moment("sheet"), b.moment("families"))
	b.tap("Place")
	for range 3 {
		b.wait(`document.querySelectorAll(".of-place [role=radio]").length > 3`, "the places")
		took, err := chromedp.Run(b.ctx, chromedp.Evaluate[float64](`new Promise(done => {
			const phone = document.querySelector(".phone"), from = performance.now();
			new MutationObserver((_, o) => { if (phone.querySelector("iframe:not(.coming)") !== was) { o.disconnect(); done(performance.now() - from) } }).observe(phone, { childList: true, subtree: true, attributes: true });
			const was = phone.querySelector("iframe");
			document.querySelector(".of-place [role=radio][aria-checked=false]").click();
		})`, chromedp.EvalAwaitPromise))
		must(t, err)
		t.Logf("another place is seen after %.0f ms", took)
	}
}

// year is a copy of a desk with forty weeks, in a file.
func year(t *testing.T) string {
	t.Helper()
	d := deskengine.New(nil)
	_, err := d.Open(deskengine.Open{Today: "2026-09-10", Words: "en"})
	must(t, err)
	tags := strings.Fields("en es ar fr ht ko pt ru so uk vi zh-Hans")
	act, err := d.Begin(deskengine.Begin{Name: "Quarry Hill", Grade: 2, Languages: tags, Monday: "2026-09-14"})
	must(t, err)
	for {
		_, err = d.Put(deskengine.Put{Changes: act.Changes})
		must(t, err)
		now, err := d.Year(deskengine.None{})
		must(t, err)
		copied, err := d.Copy(deskengine.None{})
		must(t, err)
		if strings.Count(string(copied.Bytes), "weeks/2")/2 >= 40 { // each is named twice in a zip
			file := filepath.Join(t.TempDir(), copied.Name)
			must(t, os.WriteFile(file, copied.Bytes, 0o644))
			return file
		}
		act, err = d.Calendar(deskengine.CalendarWish{Date: now.Next, Do: "take"})
		must(t, err)
	}
}

// A year of weeks in every language does not keep the page from answering.
func TestDeskDoesNotStall(t *testing.T) {
	long(t)
	b := wholeDesk(t)
	b.wait(`document.querySelector("[name=language]")`, "the first questions")
	ctx, cancel := ofSeconds(b.ctx, 60)
	defer cancel()
	must(t, chromedp.Do(ctx, chromedp.SetUploadFiles(chromedp.CSS("input[type=file]"), []string{year(t)})))
	b.wait(`document.querySelectorAll(".line .monday.waits, .line .monday.shown").length >= 40`, "forty weeks")
	slow := b.slow()
	b.tap("Place")
	b.wait(`document.querySelectorAll(".of-place [role=radio]").length > 3`, "the places")
	b.choose("place")
	b.wait(`document.querySelector("#line-place").closest(".row").matches(".ink")`, "the place in ink")
	b.tap("Letter")
	b.typeInto("#letter-en", "Dear families, this week we add.")
	b.familiesRead("this week we add")
	b.tap("The year")
	b.wait(`document.querySelectorAll(".mondays > li").length >= 40`, "the year")
	b.tap("Send home")
	b.tap("A file in a message")
	b.wait(`document.querySelectorAll(".homes li").length == 12`, "twelve languages")
	slow = max(slow, b.slow())
	stalls := eval[[]float64](b, `stalls`)
	t.Logf("a computer %.1f times as slow as a quiet one; long tasks, ms: %.0f", slow, stalls)
	for _, ms := range stalls {
		if ms > 200*slow {
			t.Errorf("the page did not answer for %.0f ms", ms)
		}
	}
}
