//go:build browser

package browser_test

import (
	"strings"
	"testing"
)

// The walk of a family: from the weekly link on a memory stick through every screen
// of the story, out again by one "back" of the phone; then to the stories to try.
func TestFamilyWalk(t *testing.T) {
	t.Parallel()
	for _, tag := range languages(t) {
		t.Run(tag, func(t *testing.T) {
			t.Parallel()
			b := openTab(t)
			weekly, learn, try := file(week+".html"), file(tag+"/"+week+".html"), file(tag+"/"+week+"-try.html")
			b.visit(weekly)
			b.click(`.langs a[lang="` + tag + `"]`)
			b.wait(`document.querySelector(".walk") && document.readyState == "complete"`, "the learn page")
			if got := eval[string](b, "location.href"); got != learn {
				t.Fatalf("the language leads to %s, want %s", got, learn)
			}
			b.walkThrough()
			b.leave(weekly)
			b.visit(learn)
			b.walkThrough()
			b.click(`.step a[href="` + week + `-try.html"]`)
			b.wait(`document.querySelector(".story") && document.readyState == "complete"`, "the stories to try")
			b.quiet(weekly, learn, try)
		})
	}
}

// shownSteps is a script that lists the screens of the walk that are seen.
const shownSteps = `[...document.querySelectorAll(".step")].filter(` + seen + `)`

// walkThrough goes through all screens by "next": one is seen at a time, each has
// something to look at, none needs to be scrolled before it is uncovered, and the
// five parts come in their order.
func (b *tab) walkThrough() {
	b.t.Helper()
	b.click(".start .next")
	var parts []string
	screens := eval[int](b, `document.querySelectorAll(".step").length`)
	for n := 1; n <= screens; n++ {
		if got := eval[[]int](b, `[...document.querySelectorAll(".step")].flatMap((e, i) => `+seen+`(e) ? [i + 1] : [])`); len(got) != 1 || got[0] != n {
			b.t.Fatalf("screen %d of %d: the screens %v are seen", n, screens, got)
		}
		if part := eval[string](b, shownSteps+`[0].className.match(/in-(\w+)/)[1]`); len(parts) == 0 || parts[len(parts)-1] != part {
			parts = append(parts, part)
		}
		if !eval[bool](b, `[...`+shownSteps+`[0].querySelectorAll("svg")].some(`+seen+`)`) {
			b.t.Errorf("screen %d has nothing to look at", n)
		}
		if eval[bool](b, seen+`(document.querySelector(".intro"))`) {
			b.t.Errorf("screen %d: the introduction is still in view", n)
		}
		if n < screens {
			b.click(`.s` + eval[string](b, shownSteps+`[0].className.match(/\bs(\d+)/)[1]`) + ` .go .next`)
		}
	}
	if got := strings.Join(parts, " "); got != "tell gap show number back" {
		b.t.Errorf("the parts of the walk are %s", got)
	}
}

// leave goes back once and wants to be where the page was opened from.
func (b *tab) leave(from string) {
	b.t.Helper()
	eval[bool](b, "!!setTimeout(() => history.back(), 50)")
	b.wait("location.href == "+quoted(from), "one step back to leave the page")
}

// A page that is opened at a part of the walk, as from another language, shows
// that part, and goes on from there.
func TestWalkOpensAtAPart(t *testing.T) {
	t.Parallel()
	b := openTab(t)
	for _, part := range []string{"tell", "gap", "show", "number", "back"} {
		b.visit(file("en/" + week + ".html#" + part))
		if got := eval[[]string](b, shownSteps+`.map(e => e.id)`); len(got) != 1 || got[0] != part {
			t.Errorf("#%s shows %v", part, got)
		}
	}
}

// The languages at the head lead to the part of the walk that is seen, whether it
// was come to by the buttons or by such a link.
func TestLanguageKeepsThePart(t *testing.T) {
	t.Parallel()
	b := openTab(t)
	const menu = `[...new Set([...document.querySelectorAll(".tabs a[lang]")].filter(e => e.closest("nav").checkVisibility()).map(e => e.getAttribute("href").split("#")[1] || ""))].join(" ")`
	b.visit(file("ar/" + week + ".html"))
	if got := eval[string](b, menu); got != "" {
		t.Errorf("before the walk the languages lead to %q", got)
	}
	for n := range eval[int](b, `document.querySelectorAll(".step").length`) {
		eval[bool](b, "(() => {"+screen(n+1)+"return true})()")
		part := eval[string](b, shownSteps+`[0].className.match(/in-(\w+)/)[1]`)
		if got := eval[string](b, menu); got != part {
			t.Errorf("screen %d is of the part %s, and the languages lead to %q", n+1, part, got)
		}
	}
	eval[bool](b, "(() => {"+screen(6)+"return true})()")
	b.click(`.tabs.to-show a[lang="en"]`)
	b.wait(`document.documentElement.lang == "en" && document.readyState == "complete"`, "the page in English")
	if got := eval[[]string](b, shownSteps+`.map(e => e.id)`); len(got) != 1 || got[0] != "show" {
		t.Errorf("in English the walk is at %v", got)
	}
	if got := eval[string](b, menu); got != "show" {
		t.Errorf("in English the languages lead to %q", got)
	}
}

// beside is a script that tells what is wrong with the place of what there is to
// look at on a screen of the walk: it stands beside the buttons, and two thirds of
// the height are free for it where it is not smaller.
const beside = `(() => {
	const screen = ` + shownSteps + `[0], go = screen.querySelector(".go").getBoundingClientRect();
	const look = [...screen.querySelectorAll(":scope > :is(.k, .picture, .cover, .steps), .said .picture")].filter(` + seen + `)
		.map(e => e.getBoundingClientRect()).find(r => r.right <= go.left || r.left >= go.right);
	if (!look) return "nothing stands beside the buttons";
	if (look.bottom > innerHeight && innerHeight - look.top < innerHeight * 2 / 3) return "only " + Math.round(innerHeight - look.top) + " pixels are free";
	return "";
})()`

// On a phone held sideways there is room for the picture of each screen, without
// scrolling.
func TestWalkSideways(t *testing.T) {
	t.Parallel()
	for _, tag := range closely {
		b := openTab(t)
		b.size(740, 360)
		for _, date := range []string{week, heavy, places} {
			b.visit(file(tag + "/" + date + ".html"))
			for n := range eval[int](b, `document.querySelectorAll(".step").length`) {
				eval[bool](b, "(() => {"+screen(n+1)+"scrollTo(0, 0); return true})()")
				if fault := eval[string](b, beside); fault != "" {
					t.Errorf("%s %s, screen %d: %s", tag, date, n+1, fault)
				}
			}
		}
	}
}
