//go:build browser

package browser_test

import (
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// here is a script that says what has the keyboard; empty where nothing has, or where
// it cannot be seen.
const here = `(() => {
	const e = document.activeElement;
	if (!e || e == document.body) return "";
	const s = getComputedStyle(e), r = e.getBoundingClientRect();
	if (e.tagName != "IFRAME" && (s.outlineStyle == "none" || parseFloat(s.outlineWidth) < 2)) return "";
	if (r.bottom < 1 || r.top > innerHeight - 1) return "";
	return (e.id ? "#" + e.id + " " : "") + (e.getAttribute("aria-label") || e.textContent || e.name || e.tagName).trim().replace(/\s+/g, " ");
})()`

// key presses a key, and wants the keyboard to be somewhere that can be seen.
func (b *tab) key(keys string) string {
	b.t.Helper()
	b.press(keys)
	if at := eval[string](b, here); at != "" {
		return at
	}
	b.wait(here, "the keyboard to be seen after "+quoted(keys)+" at "+eval[string](b, `document.activeElement.outerHTML.slice(0, 200)`))
	return eval[string](b, here)
}

// keyTo presses a key until something that begins with a name has the keyboard.
func (b *tab) keyTo(key, name string) {
	b.t.Helper()
	var way []string
	for range 45 {
		at := b.key(key)
		if way = append(way, at); len(at) >= len(name) && at[:len(name)] == name {
			return
		}
	}
	b.t.Fatalf("%q does not lead to %q, but to %q", key, name, way)
}

// still wants the keyboard to be somewhere after what a key does was drawn.
func (b *tab) still(what string) {
	b.t.Helper()
	if eval[string](b, here) == "" {
		b.wait(here, "the keyboard not to be lost: "+what)
	}
}

// From the empty desk to a week sent with keys alone: where the keyboard is can be seen
// after each, whatever what it was on turned into.
func TestDeskKeys(t *testing.T) {
	t.Parallel()
	b := newProfile(t)
	b.visit(inventedDesk(t))
	files := b.downloads()
	b.wait(`document.querySelector("[name=language]")`, "the first questions")

	b.keyTo(kb.Tab, "#start-name")
	b.press("Quarry Hill")
	b.key(kb.Tab)
	b.key(kb.ArrowDown)
	b.keyTo(kb.Tab, "language")
	b.keyTo(kb.Tab, "#start-monday")
	b.keyTo(kb.Tab, "Lay out my first week")
	b.key(kb.Enter)
	b.reads("#week h2", "Week of Monday")
	b.still("the week lies there")

	b.keyTo(kb.Tab, "#line-target")
	b.key(kb.Enter)
	b.wait(`document.querySelector(".of-target [role=radio]")`, "the sentences")
	b.key(kb.Tab)
	b.press("missing")
	b.wait(`document.querySelectorAll(".of-target [role=radio]").length == 1`, "one sentence")
	b.keyTo(kb.Tab, "I can find the missing part.")
	b.key(kb.Enter)
	b.familiesRead("I can find the missing part.")
	b.still("a sentence was taken")
	if typed := eval[string](b, `document.querySelector("#target-words").value`); typed != "missing" {
		t.Errorf("what she looked for is %q now", typed)
	}
	b.key(kb.Escape)
	b.wait(`document.activeElement.id == "line-target"`, "the focus back on its line")

	b.keyTo(kb.Tab, "#line-focus")
	b.key(" ")
	b.wait(`document.querySelector(".of-focus [role=radio]")`, "the ways")
	b.keyTo(kb.Tab, "Make ten")
	b.keyTo(kb.ArrowDown, "Count on")
	b.key(" ")
	b.reads("#line-focus", "count-on")
	b.still("a way was taken")
	b.wait(`document.querySelector(".inside > .quiet")`, "the way back")
	b.keyTo(kb.Tab, "Back to what was proposed")
	b.key(kb.Enter)
	b.reads("#line-focus", "Make a ten first")
	b.still("the way was rubbed out")
	b.key(kb.Escape)

	b.keyTo(kb.Tab, "#line-note")
	b.key(kb.Enter)
	b.wait(`document.querySelector("#letter-en")`, "the letter")
	b.keyTo(kb.Tab, "#letter-en")
	b.press("Call me: 555-0123")
	b.familiesRead("Call me: 555-0123")
	b.reads("#week", "A phone number: 555-0123")
	b.keyTo(kb.Tab, "Take it out")
	b.key(kb.Enter)
	b.wait(`!document.querySelector(".ledge .alarm")`, "nothing to mend")
	b.still("the number was taken out")
	b.key(kb.Escape)

	for _, region := range []string{"#stories", "#families", "#ledge", "#line", "#week", "#stories"} {
		b.keyTo(kb.F6, region)
	}
	b.keyTo(kb.Tab, "Story 1")
	b.key(kb.Enter)
	b.wait(`document.querySelector("#desk-story-1 .acts")`, "what can be done to it")
	b.keyTo(kb.Tab, "Move down, Story 1")
	b.key(kb.Enter)
	b.wait(`document.activeElement.closest("#desk-story-2")`, "the focus to go along with the story")
	b.keyTo(kb.Tab, "Keep as it is, Story 2")
	b.key(kb.Escape)
	b.wait(`document.activeElement.closest("#desk-story-2")`, "the focus back on its story")

	b.keyTo(kb.F6, "#ledge")
	b.keyTo(kb.Tab, "Send home")
	b.key(kb.Enter)
	b.reads("#week h2", "Send home")
	b.wait(`document.activeElement.id == "week"`, "the focus on what goes home")
	b.wait(`document.querySelector(".ways [role=radio]")`, "how it goes home")
	b.keyTo(kb.Tab, "A file in a message")
	b.keyTo(kb.ArrowDown, "A web page")
	b.keyTo(kb.ArrowDown, "On paper")
	b.keyTo(kb.ArrowDown, "A file in a message")
	b.key(kb.Enter)
	b.wait(`document.querySelector(".homes button")`, "the files")
	b.keyTo(kb.Tab, "Save file, English")
	b.key(kb.Enter)
	saved(t, files, "week-")
	b.reads(".homes", "is in your downloads.")
	b.still("the file was saved")
	b.key(kb.Escape)
	b.reads("#week h2", "Week of Monday")
	b.still("back at the week")
}
