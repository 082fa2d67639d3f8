//go:build browser

package browser_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// focusable is a script that lists what the keyboard must reach, in order: a
// group of cards is one stop.
const focusable = `(() => {
	const groups = {};
	return [...document.querySelectorAll("a[href], summary, input, button, [tabindex='0']")].filter(e => {
		if (!e.checkVisibility() || e.disabled) return false;
		if (e.type != "radio") return true;
		if (groups[e.name]) return false;
		return groups[e.name] = true;
	}).map(` + named + `);
})()`

// named is a script that names an element.
const named = `(e => e.type == "radio" ? e.name : e.tagName + " " + (e.getAttribute("href") || "") + " " + e.textContent.trim().replace(/\s+/g, " ").slice(0, 40))`

// focused is a script that tells where the keyboard is, and whether that can be
// seen: an outline at the element or at the card around it, at least 2 pixels,
// on the screen and not covered by anything; and whether it was here before.
const focused = `(() => {
	const e = document.activeElement;
	if (!e || e == document.body) return ["", "", ""];
	const again = e.stopped ? "again" : "";
	e.stopped = true;
	const around = e.closest("label") || (e.matches(".path > .none") ? e.parentElement : e), s = getComputedStyle(around), r = around.getBoundingClientRect();
	let fault = "";
	if (s.outlineStyle == "none" || parseFloat(s.outlineWidth) < 2) fault = "has no outline";
	else if (r.bottom < 1 || r.top > innerHeight - 1) fault = "is not on the screen";
	else {
		const at = document.elementFromPoint(Math.min(innerWidth - 1, Math.max(0, r.left + r.width / 2)), Math.min(innerHeight - 1, Math.max(0, r.top + r.height / 2)));
		if (at && !e.matches(".none") && !around.contains(at) && !at.contains(around)) fault = "lies under " + at.outerHTML.slice(0, 60);
	}
	return [` + named + `(e), fault, again];
})()`

// isReached wants the Tab key alone to reach everything, in the order of the page, and
// to show where one is (WCAG 2.2, 2.1.1, 2.4.3, 2.4.7, 2.4.11).
func (b *tab) isReached(v view) {
	b.t.Helper()
	want := eval[[]string](b, focusable)
	got := b.tabThrough(v.name, len(want)+5)
	if strings.Contains(v.path, "#") {
		// The keyboard begins at the step, not at the top.
		slices.Sort(got)
		slices.Sort(want)
	}
	if !slices.Equal(got, want) {
		b.t.Errorf("%s: the keyboard reaches\n%q\nwant\n%q", v.name, got, want)
	}
	eval[bool](b, backToTop)
}

// backToTop is a script that forgets where the keyboard was: the next Tab key goes to
// the first stop of the page.
const backToTop = `(() => {
	for (const e of document.querySelectorAll("*")) delete e.stopped;
	document.body.tabIndex = -1;
	document.body.focus();
	document.body.removeAttribute("tabindex");
	document.activeElement.blur();
	scrollTo(0, 0);
	return true;
})()`

// tabThrough presses Tab until it comes round to where it began, and names each
// stop.
func (b *tab) tabThrough(name string, most int) []string {
	b.t.Helper()
	var got []string
	for range most {
		b.press(kb.Tab)
		at := eval[[]string](b, focused)
		switch {
		case at[0] == "": // past the end, it goes on at the top
			continue
		case at[2] == "again":
			return got
		case at[1] != "":
			b.t.Errorf("%s: %q has the keyboard, and %s", name, at[0], at[1])
		}
		got = append(got, at[0])
	}
	return got
}

// The keyboard comes to the end of each page in few steps: a group of tiles or cards,
// and the path of the walk, is one of them.
func TestTabStops(t *testing.T) {
	t.Parallel()
	b := openTab(t)
	for _, x := range []struct {
		path, do string
		most     int
	}{
		{"index.html", "", 16},
		{"en/index.html", "", 30},
		{"en/" + week + ".html", "", 9},
		{"en/" + week + ".html", screen(6), 9},
		{"en/" + places + "-try.html", answered(1, false), 30},
		{"en/" + week + "-story.html", "", 36},
		{"en/" + places + "-story.html", "", 20},
		{"en/check/7.html", "", 30},
	} {
		b.open(view{path: x.path, do: x.do})
		if got := len(eval[[]string](b, focusable)); got > x.most {
			t.Errorf("%s %s: %d stops, want at most %d", x.path, x.do, got, x.most)
		} else {
			t.Log(x.path, x.do, got)
		}
	}
}

// The whole walk can be done with the keyboard: the path is one stop, and the arrow
// keys go from screen to screen. A number is picked and changed with the arrow keys.
func TestKeyboardWalk(t *testing.T) {
	t.Parallel()
	for _, tag := range closely {
		b := openTab(t)
		b.visit(file(tag + "/" + week + ".html"))
		b.tabTo(`document.activeElement.name == "walk"`)
		for n := range eval[int](b, `document.querySelectorAll(".step").length`) {
			b.press(kb.ArrowDown)
			if got := eval[[]string](b, shownSteps+`.map(e => e.className)`); len(got) != 1 || !strings.Contains(got[0]+" ", fmt.Sprintf(" s%d ", n+1)) {
				t.Errorf("%s: arrow key %d shows %q", tag, n+1, got)
			}
		}
		b.visit(file(tag + "/" + week + "-try.html"))
		b.tabTo(`!!document.activeElement.closest(".pick")`)
		for n := range 3 {
			b.press(kb.ArrowDown)
			if got := eval[[]string](b, `[...document.querySelectorAll(".reply")].filter(`+seen+`).map(e => e.closest(".story").id)`); len(got) != 1 || got[0] != "story-1" {
				t.Errorf("%s: after arrow key %d the replies of %q are seen", tag, n+1, got)
			}
		}
		b.tabTo(`document.activeElement.matches(".sheet")`) // the next stop, so that it is read to who listens
	}
}

// tabTo presses Tab until something is true.
func (b *tab) tabTo(js string) {
	b.t.Helper()
	for range 60 {
		b.press(kb.Tab)
		if eval[bool](b, js) {
			return
		}
	}
	b.t.Fatalf("the Tab key does not come to %s at %s", js, eval[string](b, "location.href"))
}

// Cards are picked with the keyboard, and the scene shows who was picked.
func TestKeyboardCards(t *testing.T) {
	t.Parallel()
	for _, tag := range closely {
		b := openTab(t)
		b.visit(file(tag + "/" + week + "-story.html"))
		for _, group := range []string{"who", "with", "where"} {
			b.tabTo(`document.activeElement.name == ` + quoted(group))
			b.press(" ")
			b.press(kb.ArrowRight)
			picked := eval[string](b, `(document.querySelector("input[name=`+group+`]:checked") || {id: ""}).id`)
			if picked == "" || picked == group+"-1" {
				t.Errorf("%s: an arrow key picks no other card: %q", tag, picked)
			}
			shown := eval[[]string](b, `[...document.querySelectorAll("#scene span[class^=`+group+`-]")].filter(e => e.checkVisibility()).map(e => e.className)`)
			if group == "with" { // who goes along is drawn; the first sentence is about one
				shown = append(shown, picked)
			}
			if len(shown) != 1 || !strings.Contains(shown[0], picked) {
				t.Errorf("%s: %q is picked, and the scene says %q", tag, picked, shown)
			}
			drawn := eval[[]string](b, `[...document.querySelectorAll(".stage [class^=`+group+`-]")].filter(e => e.checkVisibility()).map(e => e.getAttribute("class"))`)
			if len(drawn) == 0 || slices.ContainsFunc(drawn, func(s string) bool { return !strings.Contains(s+" ", picked+" ") }) {
				t.Errorf("%s: %q is picked, and the scene draws %q", tag, picked, drawn)
			}
		}
		b.quiet(file(tag + "/" + week + "-story.html"))
	}
}
