//go:build browser

package browser_test

import (
	"bufio"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/page"
)

// The desk with its own engine inside, from one file, as by a double click.
func TestDeskFromAFile(t *testing.T) {
	t.Parallel()
	file, err := deskFile()
	must(t, err)
	url := "file://" + file
	b := newProfile(t)
	b.visit(url)
	b.twoWeeks("Saved in this browser")
	b.mu.Lock()
	defer b.mu.Unlock()
	for _, asked := range b.requests {
		if asked != url && asked != "about:blank" && asked != "about:srcdoc" && !strings.HasPrefix(asked, "blob:") && !strings.HasPrefix(asked, "data:") {
			t.Errorf("the desk asks for %.100s", asked)
		}
	}
}

// The desk of a folder, with the engine in the program.
func TestDeskOverLoopback(t *testing.T) {
	t.Parallel()
	folder := filepath.Join(t.TempDir(), "class")
	must(t, os.Mkdir(folder, 0o755))
	b := newProfile(t)
	must(t, call(b, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{
		Source: `window.sources = []; const E = EventSource; window.EventSource = class extends E { constructor(u) { super(u); window.sources.push(this) } }`,
	}))
	b.visit(servedDesk(t, folder))
	b.twoWeeks("Saved in its folder")
	weeks, err := filepath.Glob(filepath.Join(folder, "weeks", "????-??-??.toml"))
	must(t, err)
	if len(weeks) < 2 {
		t.Errorf("the folder has %v, want two weeks", weeks)
	}

	b.tap("The year")
	b.wait(`(e => e && (e.click(), true))(document.querySelector(".mondays .monday"))`, "the first week")
	b.wait(`document.querySelector("[aria-current=date]")?.closest("li").dataset.key == `+quoted(strings.TrimSuffix(filepath.Base(weeks[0]), ".toml"))+` && document.querySelector("#line-place")`, "the first week to lie there")

	// What an editor saves is there at once; a slip is told with its line.
	edit := func(old, new string) {
		t.Helper()
		text, err := os.ReadFile(weeks[0])
		must(t, err)
		must(t, os.WriteFile(weeks[0], []byte(strings.Replace(string(text), old, new, 1)), 0o644))
	}
	edit("Dear families, call", "Words of an editor")
	saved := time.Now()
	b.familiesRead("Words of an editor")
	t.Logf("from saving to the page: %v", time.Since(saved))
	b.reads(".last", "Files of the folder changed")
	edit("\ntarget = \"", "\ntarget = \"x")
	b.reads("#week", "The desk knows no sentence called “x")
	edit("\ntarget = \"x", "\ntarget \"")
	b.reads(".last", "weeks/"+filepath.Base(weeks[0])+", line ")
	edit("\ntarget \"", "\ntarget = \"")
	b.reads(".last", "Files of the folder changed")

	// Where it stands in the way of an act of hers, she is asked.
	const note = "# by another program\n"
	eval[bool](b, `!sources.forEach(s => s.close())`)
	edit("\ntarget", "\n"+note+"target")
	b.choose("place")
	b.reads("[role=alert]", "Another program changed this week.")
	b.tap("Take that one")
	b.reads(".ledge", "Saved in its folder")
	if text, err := os.ReadFile(weeks[0]); err != nil || !strings.Contains(string(text), note) {
		t.Errorf("the other program's words are gone: %v", err)
	}
}

// servedDesk starts the program on a folder, and gives the address that it says.
func servedDesk(t *testing.T, folder string) string {
	t.Helper()
	program, err := program()
	must(t, err)
	run := exec.Command(program, "desk", folder, "--closed")
	said, err := run.StdoutPipe()
	must(t, err)
	must(t, run.Start())
	t.Cleanup(func() {
		must(t, run.Process.Signal(os.Interrupt))
		if err := run.Wait(); err != nil {
			t.Errorf("ctrl-c: want a clean end, got %v", err)
		}
	})
	for words := bufio.NewScanner(said); words.Scan(); {
		if url, ok := strings.CutPrefix(words.Text(), "your desk is at "); ok {
			return url
		}
	}
	t.Fatal("the program says no address")
	return ""
}

// choose opens a line and takes a choice that is not the one that stands there.
func (b *tab) choose(line string) {
	b.t.Helper()
	b.wait(`document.querySelector("#line-`+line+`")`, line)
	eval[bool](b, `(e => { if (e.getAttribute("aria-expanded") != "true") e.click(); return true })(document.querySelector("#line-`+line+`"))`)
	b.wait(`(e => e && (e.click(), true))(document.querySelector(".row[data-key=`+line+`] .inside [role=radio][aria-checked=false]"))`, "a choice of "+line)
}

// twoWeeks walks as a teacher does, from an empty desk to a second week sent.
func (b *tab) twoWeeks(kept string) {
	b.t.Helper()
	files := b.downloads()
	b.wait(`document.querySelector("[name=language]")`, "the first questions")
	b.typeInto("#start-name", "Quarry Hill")
	b.tap("grade 2")
	b.tap("Español")
	b.tap("Lay out my first week")
	b.reads(".ledge", kept)
	b.wait(`document.querySelectorAll(".story").length > 3`, "the stories")
	monday := eval[string](b, `document.querySelector("#start-monday")?.value || document.querySelector("[aria-current=date]").closest("li").dataset.key`)

	b.choose("target")
	b.wait(`document.querySelector("#line-target").closest(".row").matches(".ink")`, "the sentence in ink")
	b.choose("place")
	b.wait(`document.querySelector("#line-place").closest(".row").matches(".ink")`, "the place in ink")
	b.familiesRead(eval[string](b, `document.querySelector("#line-target .value").firstChild.data`))

	b.tap("Letter")
	b.typeInto("#letter-en", "Dear families, call 555-0123.")
	b.reads(".ledge", "1 to fix")
	b.tap("Take it out: 555-0123")
	b.familiesRead("Dear families")

	b.tap("Write my own story")
	b.typeInto("#own-en", "Ana has 58 cans. Leo has 36 cans. How many more cans has Ana?")
	b.tap("Two are compared")
	b.wait(`(e => e && (e.click(), true))(document.querySelector(".reading"))`, "what she meant")
	b.reads(".own", "The answer will be 22.")
	b.tap("Use this story")
	b.wait(`[...document.querySelectorAll(".story")].some(e => e.textContent.includes("58 cans"))`, "her story among the others")

	b.sends(files, monday)
	b.tap("Save file, answer key")
	saved(b.t, files, "TEACHER-ONLY-key-"+monday)

	b.tap("The year")
	b.tap("Take it")
	b.wait(`(m => m && m.closest("li").dataset.key != `+quoted(monday)+`)(document.querySelector("[aria-current=date]")) && document.querySelector("#line-target")`, "the second week")
	second := eval[string](b, `document.querySelector("[aria-current=date]").closest("li").dataset.key`)
	b.sends(files, second)

	eval[bool](b, `!!location.reload() || true`)
	b.wait(`document.querySelector("[aria-current=date]")?.closest("li").dataset.key == `+quoted(second), "the desk to be found again")
}

// sends saves the week in both languages.
func (b *tab) sends(files, monday string) {
	b.t.Helper()
	b.tap("Send home")
	b.tap("A file in a message")
	for tag, name := range map[string]string{"en": "English", "es": "Español"} {
		b.tap("Save file, " + name)
		if text := saved(b.t, files, monday+"-"+tag); strings.Contains(text, "TEACHER-ONLY") {
			b.t.Errorf("%s: what goes home has the key", tag)
		}
	}
}
