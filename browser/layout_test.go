//go:build browser

package browser_test

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// targets is a script that lists what is too small to tap, in CSS pixels. WCAG
// 2.2, 2.5.8 "Target Size (Minimum)" asks for 24 and lets links within a
// sentence be; 44 for what a child taps is 2.5.5 "Target Size (Enhanced)".
const targets = `(() => {
	// The path of the walk does what its buttons do (2.5.8, exception "Equivalent").
	const main = ".btn, .num:not(.chart .num), .langs a, .weeks a, .big-link, .more a, .cards label, summary, .tabs > a";
	const out = [];
	for (const e of document.querySelectorAll("a[href], summary, label, button, input")) {
		if (!` + seen + `(e) || e.matches(".hide, .skip") || e.matches("label input, .none, .path label")) continue;
		const r = e.getBoundingClientRect(), after = getComputedStyle(e, "::after");
		let h = r.height;
		if (after.position == "absolute" && after.content != "none") h -= parseFloat(after.top) + parseFloat(after.bottom);
		const inline = getComputedStyle(e).display == "inline" && e.closest("p, li, .note");
		const least = e.matches(main) ? 44 : 24;
		if (!inline && (h < least - .5 || r.width < least - .5)) out.push(Math.round(r.width) + "x" + Math.round(h) + " (want " + least + "): " + e.outerHTML.slice(0, 90));
	}
	return out.slice(0, 5);
})()`

// wide is a script that lists what sticks out of the screen, or is cut off.
const wide = `(() => {
	const out = [], root = document.scrollingElement, w = document.documentElement.clientWidth;
	if (root.scrollWidth > w) out.push("the page is " + root.scrollWidth + " wide on a screen of " + w);
	for (const e of document.querySelectorAll("body *")) {
		if (!e.checkVisibility() || e.closest(".hide, .skip, .defs") || e.matches("input")) continue;
		const r = e.getBoundingClientRect(), s = getComputedStyle(e), svg = e.closest("svg");
		if (r.width <= 1 || s.clipPath != "none") continue;
		if (svg && svg != e && e.tagName != "text" && getComputedStyle(svg).overflowX != "visible") continue; // a scene is larger than its window
		if (r.right > w + 1 || r.left < -1) out.push("sticks out by " + Math.round(Math.max(r.right - w, -r.left)) + ": " + e.outerHTML.slice(0, 90));
		if (e.closest("svg")) {
			if (e.tagName == "text") {
				const svg = e.closest("svg").getBoundingClientRect();
				if (r.left < svg.left - 1 || r.right > svg.right + 1) out.push("a number sticks out of its picture: " + e.outerHTML);
			}
			continue;
		}
		const cut = s.overflowX != "visible" && e.scrollWidth > e.clientWidth + 1 || s.overflowY != "visible" && s.overflowY != "auto" && e.scrollHeight > e.clientHeight + 1;
		if (cut) out.push("is cut off: " + e.outerHTML.slice(0, 90));
		if (e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0 && s.display != "inline" && !e.querySelector(".go, .replies")) out.push("its content is " + e.scrollWidth + " wide in " + e.clientWidth + ": " + e.outerHTML.slice(0, 90));
	}
	return out.slice(0, 5);
})()`

// overlaps is a script that lists links that lie on each other.
const overlaps = `(() => {
	const all = [...document.querySelectorAll("main a[href], main label, main summary")].filter(` + seen + `), out = [];
	const box = e => e.getBoundingClientRect();
	for (let i = 0; i < all.length; i++) for (let j = 0; j < i; j++) {
		const a = box(all[i]), b = box(all[j]);
		if (all[i].closest(".go, .sheet") || all[j].closest(".go, .sheet")) continue;
		const x = Math.min(a.right, b.right) - Math.max(a.left, b.left), y = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
		if (x > 1 && y > 1 && !all[i].contains(all[j]) && !all[j].contains(all[i])) out.push(all[i].outerHTML.slice(0, 80) + " lies on " + all[j].outerHTML.slice(0, 80));
	}
	return out.slice(0, 3);
})()`

// broken is a script that lists words that are cut in two at the end of a line.
// Scripts without spaces break between any two letters.
const broken = `(() => {
	const out = [];
	if (/^(zh|ja|ko|th|km|my|lo)/.test(document.documentElement.lang)) return out;
	const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
	for (let n; n = walk.nextNode();) {
		const e = n.parentElement;
		if (!e.checkVisibility() || e.closest(".hide, .skip, svg, style, [lang]:not(html)") || getComputedStyle(e).clipPath != "none") continue;
		for (const m of n.data.matchAll(/[\p{L}\p{M}\p{N}'’-]+/gu)) {
			const r = document.createRange();
			r.setStart(n, m.index); r.setEnd(n, m.index + m[0].length);
			const tops = new Set([...r.getClientRects()].filter(b => b.width > 0).map(b => Math.round(b.top)));
			if (tops.size > 1 && !m[0].includes("-")) out.push("the word " + m[0] + " is cut in two: " + e.closest("p, li, label, a, h1, h2, h3, td").outerHTML.slice(0, 80));
		}
	}
	return out.slice(0, 5);
})()`

// fitsAPhone wants everything to tap to be large enough for a thumb and to lie apart,
// no word to be cut in two, and numbers to run as the number line does.
func (b *tab) fitsAPhone(v view) {
	b.t.Helper()
	for _, script := range []string{targets, overlaps, broken, turned} {
		b.none(v.name, script)
	}
	if slices.Contains(withNumbers, v.name) && eval[int](b, `document.querySelectorAll(".nums:not(.pairs)").length`) == 0 {
		b.t.Errorf("%s has no grid of numbers", v.name)
	}
}

// withNumbers are the views that have grids of numbers.
var withNumbers = []string{"try", "try-places", "story", "check", "check-7"}

// turned is a script that lists grids of numbers that do not run from left to right, in
// languages that are written from right to left, too, or in which the order that is
// heard is another than the one that is seen.
const turned = `[...document.querySelectorAll(".nums:not(.pairs)")].flatMap(grid => {
	const all = [...grid.querySelectorAll(".num")].filter(` + seen + `).map(e => ({n: +e.textContent, r: e.getBoundingClientRect()}));
	return all.slice(1).flatMap((b, i) => {
		const a = all[i], below = b.r.top > a.r.top + 1;
		return b.n > a.n && (below ? b.r.left <= a.r.left : b.r.left > a.r.left) ? [] : [a.n + " before " + b.n];
	});
})`

// apart lists the blanks whose noun stands on another line, and how many blanks have
// one kept beside them by a no-break space.
const apart = `(() => {
	const faults = []; let kept = 0;
	for (const gap of document.querySelectorAll(".gap")) {
		const next = gap.nextSibling;
		if (!gap.checkVisibility() || next?.nodeType != 3 || next.data.length < 2 || next.data[0] != "\u00a0") continue;
		kept++;
		const noun = document.createRange();
		noun.setStart(next, 1); noun.setEnd(next, 2);
		const line = gap.getBoundingClientRect(), at = noun.getBoundingClientRect();
		if (at.bottom < line.top || at.top > line.bottom) faults.push(gap.parentElement.textContent);
	}
	return [String(kept), ...faults];
})()`

// A blank to write a number on and its noun stay on one line, on every story of a
// language with spaces, on a small phone.
func TestBlankKeepsItsNoun(t *testing.T) {
	t.Parallel()
	b := openTab(t)
	b.size(320, 640)
	for _, tag := range []string{"en", "ru", "vi"} {
		found := 0
		for _, path := range []string{week + "-try.html", heavy + "-try.html", places + "-try.html"} {
			b.visit(file(tag + "/" + path))
			said := eval[[]string](b, apart)
			n, err := strconv.Atoi(said[0])
			must(t, err)
			found += n
			for _, sentence := range said[1:] {
				t.Errorf("%s/%s: a blank is parted from its noun: %s", tag, path, sentence)
			}
		}
		if found < 5 {
			t.Errorf("%s: only %d blanks have a noun", tag, found)
		}
	}
}

// looks are the ways of reading that nothing may be lost in.
var looks = []struct {
	name     string
	width    int64
	do, undo string // scripts that change the page, and change it back
	source   string
}{
	{"narrow", 320, "", "", "WCAG 2.2, 1.4.10 Reflow: 320 CSS pixels"},
	{"large text", 360, `document.documentElement.style.fontSize = "200%"`, `document.documentElement.style.fontSize = ""`, "WCAG 2.2, 1.4.4 Resize Text: 200 %"},
	{"wide spacing", 360, spacing, `document.adoptedStyleSheets = []`, "WCAG 2.2, 1.4.12 Text Spacing"},
}

// spacing is line height 1.5, paragraph gap 2, letters 0.12, words 0.16 times
// the size of the text. Letters of a script that are joined are not set apart:
// such scripts are exempt. A style sheet of a script is no element: the page's policy
// lets it be.
const spacing = `(() => {
	const joined = document.documentElement.dir == "rtl", sheet = new CSSStyleSheet();
	sheet.replaceSync("* { line-height: 1.5 !important; word-spacing: .16em !important;" + (joined ? "" : "letter-spacing: .12em !important") + "} p { margin-block-end: 2em !important }");
	document.adoptedStyleSheets = [sheet];
})()`

// losesNothing wants nothing to be cut off, and nothing to have to be scrolled
// sideways, on a narrow screen, with text twice as large, and with text set wide.
func (b *tab) losesNothing(v view) {
	b.t.Helper()
	for _, look := range looks {
		b.size(look.width, 740)
		eval[bool](b, look.do+";true")
		b.none(fmt.Sprintf("%s, %s (%s)", v.name, look.name, look.source), wide)
		eval[bool](b, look.undo+";true")
	}
	b.size(360, 740)
}

// The scripts above find what they are for.
func TestLayoutScriptsFind(t *testing.T) {
	t.Parallel()
	b := openTab(t)
	b.trusted()
	b.visit(file("en/" + week + ".html"))
	eval[bool](b, `(() => {
		const next = document.querySelector(".start .next"); next.style = "min-height: 0; height: 20px; padding: 0";
		const h1 = document.querySelector("h1"); h1.style = "width: 500px; height: 10px; overflow: hidden";
		document.querySelector(".need li").style = "width: 3em; overflow-wrap: anywhere"; return true })()`)
	if got := strings.Join(eval[[]string](b, broken), "\n"); !strings.Contains(got, "is cut in two") {
		t.Errorf("a word cut in two is not found: %q", got)
	}
	if got := strings.Join(eval[[]string](b, targets), "\n"); !strings.Contains(got, "want 44") {
		t.Errorf("a button of 20 pixels is not found: %q", got)
	}
	got := strings.Join(eval[[]string](b, wide), "\n")
	for _, want := range []string{"sticks out", "is cut off", "wide on a screen"} {
		if !strings.Contains(got, want) {
			t.Errorf("what %s is not found: %q", want, got)
		}
	}
}
