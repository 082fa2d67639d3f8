//go:build browser

package browser_test

import (
	"testing"
)

// everyAnswer is a script that picks each answer of a story in turn and lists those
// to which another reply is shown than the one whose own label names the number:
// labels are what is read without style, and internal/recheck holds them against
// the mathematics. What is shown beside the question must be the number picked.
const everyAnswer = `(id => {
	const story = document.getElementById(id), faults = [];
	const places = [...story.querySelectorAll(".nums")].map(p => [...p.querySelectorAll("input")]);
	const two = !!story.querySelector(".two");
	const replies = [...story.querySelectorAll(".reply")].map(e => ({e, numbers:
		e.matches(".large, .small") || two ? [] : [...e.querySelector(".for").textContent.matchAll(/(\d+)(?:…(\d+))?/g)].map(m => [+m[1], +(m[2] || m[1])])}));
	const right = replies.find(r => r.e.matches(".right"));
	const whole = two ? +right.e.querySelector(".for + p").textContent.match(/\d+/)[0] : 0;
	const want = digits => {
		if (two) {
			const sum = digits[0] + digits[1];
			return sum == whole ? right : replies.find(r => r.e.matches(".large") == sum > whole && r != right);
		}
		const n = +digits.join("");
		return replies.find(r => r.numbers.some(([a, b]) => a <= n && n <= b)) || replies.find(r => r.e.matches(n < right.numbers[0][0] ? ".small" : ".large"));
	};
	let count = 0;
	const pick = digits => {
		if (digits.length < places.length) {
			places[digits.length].forEach((input, n) => { input.checked = true; pick([...digits, n]); });
			return;
		}
		count++;
		const shown = replies.filter(r => getComputedStyle(r.e).display != "none");
		if (shown.length != 1 || shown[0] != want(digits)) faults.push(digits + ": " + shown.map(r => r.e.className));
	};
	pick([]);
	const over = story.querySelector(".over"); // more than the tiles can say, whatever stands beside it
	for (const beside of over ? places.at(-1) : []) {
		beside.checked = true;
		over.checked = true;
		const shown = replies.filter(r => getComputedStyle(r.e).display != "none");
		if (shown.length != 1 || !shown[0].e.matches(".large")) faults.push("over: " + shown.map(r => r.e.className));
	}
	if (!over && !two) faults.push("no tile for a larger number");
	return [count + " answers", ...faults.slice(0, 5)];
})`

// To each answer that a child can pick exactly one reply is shown, and it is the one
// for that number: to every story of a week within 20, within 100, within 1,000, and
// to every pair.
func TestEveryAnswerHasItsReply(t *testing.T) {
	t.Parallel()
	b := openTab(t)
	met := map[string]bool{"21 answers": false, "110 answers": false, "1100 answers": false, "121 answers": false}
	for _, date := range []string{week, tens, places, pairs} {
		b.visit(file("en/" + date + "-try.html"))
		for _, id := range eval[[]string](b, `[...document.querySelectorAll(".story")].map(e => e.id)`) {
			got := eval[[]string](b, everyAnswer+"("+quoted(id)+")")
			met[got[0]] = true
			if len(got) != 1 {
				t.Errorf("%s %s: want each answer with its own reply, got %q", date, id, got)
			}
		}
	}
	for answers, ok := range met {
		if !ok {
			t.Errorf("no story has %s", answers)
		}
	}
}

// While a place of an answer is still empty no reply is shown; what is to be tapped is
// told, as plain words and not as a button.
func TestHalfAnAnswer(t *testing.T) {
	t.Parallel()
	b := openTab(t)
	for _, date := range []string{tens, pairs} {
		b.visit(file("en/" + date + "-try.html"))
		b.wait(`window.half = [...document.querySelectorAll(".story")].find(e => e.querySelectorAll(".places .nums").length > 1)`, "an answer of several places")
		eval[bool](b, `(half.querySelector(".places input").click(), true)`)
		if got := eval[string](b, replyOf+"(half.id.slice(6))"); got != "-1" {
			t.Errorf("%s: half an answer has the reply %q", date, got)
		}
		told := `(e => { const own = getComputedStyle(e); return ` + seen + `(e) && own.backgroundColor == "rgba(0, 0, 0, 0)" && getComputedStyle(e, "::after").content == "none" })`
		if !eval[bool](b, told+`(half.querySelector(".each"))`) {
			t.Errorf("%s: what is still to be tapped is not told in plain words", date)
		}
	}
}

// replyOf is a script that tells the reply that a story shows: its place and, in
// front, whether the question and the number stand on the screen with it.
const replyOf = `(n => {
	const sheet = document.querySelector("#story-" + n + " .sheet"), on = e => { const r = e.getBoundingClientRect(); return ` + seen + `(e) && r.top >= 0 && r.bottom <= innerHeight };
	const asked = sheet.querySelector(".asked"), reply = [...sheet.querySelectorAll(".reply")].findIndex(` + seen + `);
	return (on(asked) ? "asked " : "") + reply;
})`

// Ten answers are picked: the question is seen with each reply, the answer to the
// first story stays when the second is answered, "try again" comes back to the
// story, and one step back leaves the page.
func TestAnswersStay(t *testing.T) {
	t.Parallel()
	b := openTab(t)
	index, try := file("en/index.html"), file("en/"+week+"-try.html")
	b.visit(index)
	eval[bool](b, "!!setTimeout(() => location.href = "+quoted(try)+", 50)")
	b.wait(`document.querySelector(".story") && document.readyState == "complete"`, "the stories to try")
	for n := 1; n <= 5; n++ {
		b.click(`#story-1 .num:nth-child(` + string(rune('0'+n)) + `)`)
		if got := eval[string](b, replyOf+"(1)"); got[:6] != "asked " {
			t.Errorf("answer %d: the question is not seen with the reply: %q", n, got)
		}
	}
	first := eval[string](b, replyOf+"(1)")
	for n := 6; n <= 9; n++ {
		b.click(`#story-2 .num:nth-child(` + string(rune('0'+n)) + `)`)
	}
	if got := eval[string](b, replyOf+"(1)"); got[len(got)-1] != first[len(first)-1] {
		t.Errorf("the reply to the first story was %q and is %q", first, got)
	}
	b.click(`#story-2 .again`)
	if !eval[bool](b, `(r => r.top > -80 && r.top < innerHeight / 2)(document.querySelector("#story-2 h2").getBoundingClientRect())`) {
		t.Error("try again does not come back to the story")
	}
	if got := eval[string](b, replyOf+"(2)"); got != "-1" {
		t.Errorf("try again leaves the reply %q", got)
	}
	b.leave(index)
	b.quiet(index, try)
}
