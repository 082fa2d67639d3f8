//go:build browser

package browser_test

import (
	"slices"
	"strings"
	"testing"
)

// The walk of a family: from the weekly link on a memory stick, through every
// step of the story, to an answer that is wrong and one that is right.
func TestFamilyWalk(t *testing.T) {
	t.Parallel()
	for _, tag := range languages(t) {
		t.Run(tag, func(t *testing.T) {
			t.Parallel()
			b := openTab(t)
			weekly, learn, try := file(week+".html"), file(tag+"/"+week+".html"), file(tag+"/"+week+"-try.html")
			b.visit(weekly)
			b.click(`.langs a[hreflang="` + tag + `"]`)
			b.wait(`document.querySelector(".walk") && document.readyState == "complete"`, "the learn page")
			if got := eval[string](b, "location.href"); got != learn {
				t.Fatalf("the language leads to %s, want %s", got, learn)
			}
			b.walkThrough()
			b.click(`#rest a[href="` + week + `-try.html"]`)
			b.wait(`document.querySelector(".story") && document.readyState == "complete"`, "the stories to try")
			b.answer("help", "again")
			b.answer("right", "found")
			b.quiet(weekly, learn, try)
		})
	}
}

// walkThrough goes through all steps by "next", one in view at a time.
func (b *tab) walkThrough() {
	b.t.Helper()
	var went []string
	b.click(".intro a.next")
	for range 40 {
		place := strings.TrimPrefix(eval[string](b, "location.hash"), "#")
		went = append(went, place)
		if place == "rest" {
			break
		}
		if n := eval[int](b, `[...document.querySelectorAll(".step")].filter(`+seen+`).length`); n != 1 {
			b.t.Errorf("#%s: %d steps are in view, want 1", place, n)
		}
		if !eval[bool](b, seen+`(document.getElementById(`+quoted(place)+`))`) {
			b.t.Errorf("#%s cannot be seen when it is its turn", place)
		}
		if eval[bool](b, seen+`(document.querySelector(".intro"))`) {
			b.t.Errorf("#%s: the introduction is still in view", place)
		}
		next := eval[string](b, `(() => { const a = [...document.querySelectorAll(".walk a.next")].filter(`+seen+`); return a.length == 1 ? a[0].getAttribute("href") : a.length + " ways on" })()`)
		if !strings.HasPrefix(next, "#") {
			b.t.Fatalf("#%s: there are %s", place, next)
		}
		b.click(`.walk a.next[href="` + next + `"]`)
		b.wait(`location.hash == `+quoted(next), "the step "+next)
	}
	want := []string{"see", "frame", "draw", "write", "work", "say", "sense", "rest"}
	if i := slices.Index(went, "see"); i < 2 || !slices.Equal(went[i:], want) {
		b.t.Errorf("the walk went %v, want the sentences one by one, then %v", went, want)
	}
}

// answer taps a number of the first story that gets a reply of a sort, and
// wants that reply alone, with what follows it.
func (b *tab) answer(sort, after string) {
	b.t.Helper()
	href := eval[string](b, `(() => { for (const a of document.querySelectorAll("#story-1 a.num")) {
		const box = document.querySelector(a.getAttribute("href")); if (box && box.classList.contains(`+quoted(sort)+`)) return a.getAttribute("href") } return "" })()`)
	if href == "" {
		b.t.Fatalf("no number of the first story gets a reply of the sort %q", sort)
	}
	b.click(`#story-1 a.num[href="` + href + `"]`)
	b.wait(`location.hash == `+quoted(href), "the reply "+href)
	if got := eval[[]string](b, `[...document.querySelectorAll(".reply")].filter(`+seen+`).map(e => "#" + e.id)`); !slices.Equal(got, []string{href}) {
		b.t.Errorf("the replies %v are in view, want %s alone", got, href)
	}
	if got := eval[[]string](b, `[...document.querySelectorAll(".after")].filter(`+seen+`).map(e => e.className + " " + e.closest("section").id)`); !slices.Equal(got, []string{"after " + after + " story-1"}) {
		b.t.Errorf("after the reply %q is in view, want what follows when it is %s", got, after)
	}
}
