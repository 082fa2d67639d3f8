package desk

import (
	"slices"
	"strings"
	"testing"
	"time"

	"homebuild/internal/story"
	"homebuild/internal/week"
)

const first = "2026-09-14"

func line(t testing.TB, w Week, key string) Line {
	t.Helper()
	for _, l := range w.Lines {
		if l.Key == key {
			return l
		}
	}
	t.Fatalf("the sheet has no line %q", key)
	return Line{}
}

func sheetOf(t testing.TB, d *Desk) Week { return ask[Week](t, d, "week", Monday{first}) }

func set(t testing.TB, d *Desk, key, value string) Act {
	return lay(t, d, ask[Act](t, d, "set", Set{first, key, value}))
}

// TestPencilFollows chooses a sentence: way and picture follow, the week's stories are
// others, and what she chose herself stays.
func TestPencilFollows(t *testing.T) {
	d := newDesk(t, "en", "es")
	before := sheetOf(t, d)
	year := ask[Year](t, d, "year", None{})
	set(t, d, LineTarget, year.NotYet[3].ID)
	after := sheetOf(t, d)
	if !line(t, after, LineTarget).Ink || line(t, after, LineWay).Ink || line(t, after, LinePicture).Ink {
		t.Errorf("ink: %+v", after.Lines)
	}
	if after.Can == before.Can || after.Stories[1].Text[0] == before.Stories[1].Text[0] && after.Stories[1].Equation == before.Stories[1].Equation {
		t.Error("the sheet did not follow")
	}
	choices := ask[[]Choice](t, d, "choices", LineOf{first, LinePicture})
	set(t, d, LinePicture, choices[len(choices)-1].Value)
	set(t, d, LineTarget, year.NotYet[5].ID)
	if l := line(t, sheetOf(t, d), LinePicture); !l.Ink || l.Value != choices[len(choices)-1].Value {
		t.Errorf("what she chose changed by itself: %+v", l)
	}
	set(t, d, LinePicture, "")
	if l := line(t, sheetOf(t, d), LinePicture); l.Ink {
		t.Errorf("rubbed out, and still ink: %+v", l)
	}
}

// TestStoryInk keeps one story, and takes another place: that one stays, the others
// are told anew there.
func TestStoryInk(t *testing.T) {
	d := newDesk(t, "en")
	act := lay(t, d, ask[Act](t, d, "story", StoryWish{Date: first, Story: 2, Do: "numbers"}))
	if len(act.Moved.Stories) != 1 || act.Moved.Stories[0] != 2 {
		t.Errorf("moved: %+v", act.Moved)
	}
	kept := sheetOf(t, d)
	if !kept.Stories[2].Ink || kept.Stories[1].Ink {
		t.Errorf("ink: %v %v", kept.Stories[2].Ink, kept.Stories[1].Ink)
	}
	place := "market"
	if line(t, kept, LinePlace).Value == place {
		place = "forest"
	}
	set(t, d, LinePlace, place)
	after := sheetOf(t, d)
	if strings.Join(after.Stories[2].Text, " ") != strings.Join(kept.Stories[2].Text, " ") {
		t.Error("the story in ink was told anew")
	}
	if !strings.HasPrefix(after.Stories[0].Event, place+".") {
		t.Errorf("the first story is %s, not in %s", after.Stories[0].Event, place)
	}
	tales := map[string]bool{}
	for _, s := range after.Stories {
		if tales[s.Event] {
			t.Errorf("%s is told twice", s.Event)
		}
		tales[s.Event] = true
	}
	act = lay(t, d, ask[Act](t, d, "story", StoryWish{Date: first, Story: 2, Do: "release"}))
	if text, ok := act.Changes[week.StoriesPath(first)]; !ok || text != nil {
		t.Error("nothing is in ink, and the stories are still kept")
	}
}

// TestStoryActs does everything that can be done to a story, on each.
func TestStoryActs(t *testing.T) {
	for _, do := range []string{"numbers", "tale", "easier", "harder", "up", "down", "keep", "remove"} {
		d := newDesk(t, "en")
		before := sheetOf(t, d)
		reply := send(t, d, "story", StoryWish{Date: first, Story: 1, Do: do})
		if reply.Fault != "" {
			t.Errorf("%s: %s", do, reply.Fault)
		}
		if len(reply.Wrong) > 0 {
			if do != "easier" && do != "harder" {
				t.Errorf("%s: %+v", do, reply.Wrong)
			}
			continue
		}
		lay(t, d, ask[Act](t, d, "story", StoryWish{Date: first, Story: 1, Do: do}))
		after := sheetOf(t, d)
		told := func(w Week, i int) string { return strings.Join(w.Stories[i].Text, " ") }
		switch do {
		case "numbers", "easier", "harder":
			if after.Stories[1].Equation == before.Stories[1].Equation {
				t.Errorf("%s: the equation is still %s", do, after.Stories[1].Equation)
			}
		case "tale":
			if after.Stories[1].Event == before.Stories[1].Event || after.Stories[1].Equation != before.Stories[1].Equation {
				t.Errorf("another tale: %+v", after.Stories[1])
			}
		case "up":
			if told(after, 0) != told(before, 1) || told(after, 1) != told(before, 0) {
				t.Error("up: the two did not change places")
			}
		case "down":
			if told(after, 2) != told(before, 1) {
				t.Error("down: the two did not change places")
			}
		case "remove":
			if len(after.Stories) != len(before.Stories)-1 || told(after, 1) != told(before, 2) {
				t.Error("remove: another story went")
			}
		}
	}
}

// TestLetter holds one language back for what stands in its letter, and no other.
func TestLetter(t *testing.T) {
	d := newDesk(t, "en", "es", "vi")
	set(t, d, "note.en", "Dear families,\n\nWe **add**.")
	set(t, d, "note.es", "Llame al 555-867-5309.")
	w := sheetOf(t, d)
	if w.Letters[0].Text != "Dear families,\n\nWe **add**." || len(w.Stories) == 0 {
		t.Errorf("the letter: %q", w.Letters[0].Text)
	}
	if len(w.Findings) != 1 || w.Findings[0].Key != "note.es" || w.Findings[0].Code != "private-phone" || w.Findings[0].Quote != "555-867-5309" {
		t.Errorf("findings: %+v", w.Findings)
	}
	sending := ask[Sending](t, d, "send", SendWish{Date: first, Tags: []string{"en", "es", "vi"}})
	for i, held := range []int{0, 1, 0} {
		home := sending.Homes[i]
		if len(home.Held) != held || (home.File == nil) != (held > 0) || home.Message == "" {
			t.Errorf("%s: held %+v, file %v", home.Language.Tag, home.Held, home.File != nil)
		}
	}
	if sending.Key.Name != "TEACHER-ONLY-key-2026-09-14.html" || len(sending.Key.Bytes) == 0 || sending.Slips != nil {
		t.Errorf("the key is called %s, of %d bytes", sending.Key.Name, len(sending.Key.Bytes))
	}
	ask[None](t, d, "put", Put{Changes: sending.Changes})
	for _, s := range sheetOf(t, d).Stories {
		if !s.Ink {
			t.Errorf("story %d went home, and is not kept", s.Number)
		}
	}
	set(t, d, "allow", "555-867-5309")
	if w := sheetOf(t, d); len(w.Findings) != 0 {
		t.Errorf("allowed, and still: %+v", w.Findings)
	}
}

// TestOwn writes a story of her own: what it could mean, and which one she meant.
func TestOwn(t *testing.T) {
	d := newDesk(t, "en", "es")
	own := OwnStory{Date: first, Texts: map[string]string{"en": "Ana has 58 cans. Leo has 36 cans. How many more has Ana?", "es": "Ana tiene 58 latas. Leo tiene 36 latas. ¿Cuántas más tiene Ana?"}}
	offer := ask[Offer](t, d, "own", own)
	if len(offer.Numbers) != 2 || len(offer.Readings) < 5 || len(offer.Findings) != 0 {
		t.Fatalf("offered: %d numbers, %d readings, %+v", len(offer.Numbers), len(offer.Readings), offer.Findings)
	}
	var meant Reading
	for _, r := range offer.Readings {
		if r.Kind.ID == "compare-difference-more" {
			meant = r
		}
	}
	if meant.Answer != "22" || meant.Kind.Happens != "compared" || meant.Kind.Asks != "difference" {
		t.Fatalf("the difference: %+v", meant)
	}
	before := sheetOf(t, d)
	lay(t, d, ask[Act](t, d, "use", UseOwn{OwnStory: own, Line: meant.Line}))
	after := sheetOf(t, d)
	if s := after.Stories[1]; s.Own == nil || s.Own.Texts["es"] == "" || s.Equation != meant.Equation || len(after.Stories) != len(before.Stories) {
		t.Errorf("used: %+v", s)
	}
	own.Texts["es"] = "Ana tiene 59 latas. Leo tiene 36."
	if offer := ask[Offer](t, d, "own", own); len(offer.Findings) != 1 || offer.Findings[0].Tag != "es" {
		t.Errorf("another number in Spanish: %+v", offer.Findings)
	}
	lay(t, d, ask[Act](t, d, "story", StoryWish{Date: first, Story: 1, Do: "remove"}))
	if s := sheetOf(t, d).Stories[1]; s.Own != nil {
		t.Error("her story is still there")
	}
}

// A number that she puts aside does not count, and what she marked stays marked.
func TestOwnNumbers(t *testing.T) {
	d := newDesk(t, "en")
	own := OwnStory{Date: first, Texts: map[string]string{"en": "[Room 4 =] has 12 kites, 3 shells and 5 more kites. How many kites?"}}
	own.Numbers = []OwnNumber{} // as the page asks while she put none aside
	own.Numbers = ask[Offer](t, d, "own", own).Numbers
	if len(own.Numbers) != 4 {
		t.Fatalf("her text tells four numbers, and to tap are %+v", own.Numbers)
	}
	for i := range own.Numbers {
		own.Numbers[i].Counts = own.Numbers[i].Value == 12 || own.Numbers[i].Value == 5
	}
	offer := ask[Offer](t, d, "own", own)
	at := slices.IndexFunc(offer.Readings, func(r Reading) bool { return r.Kind.ID == "together-total" })
	if at < 0 || offer.Readings[at].Answer != "17" {
		t.Fatalf("12 and 5 count: %+v", offer.Readings)
	}
	lay(t, d, ask[Act](t, d, "use", UseOwn{OwnStory: own, Line: offer.Readings[at].Line}))
	if text := d.text(week.Path(first)); !strings.Contains(text, `"[Room 4 =] has [12] kites, 3 shells and [5] more kites. How many kites?"`) {
		t.Errorf("her marks:\n%s", text)
	}
}

// TestCalendar goes through what can be done to a week.
func TestCalendar(t *testing.T) {
	d := newDesk(t, "en")
	do := func(what, date, to string) { lay(t, d, ask[Act](t, d, "calendar", CalendarWish{date, what, to})) }
	state := func(date string) State {
		for _, w := range ask[Year](t, d, "year", None{}).Weeks {
			if w.Date == date {
				return w.State
			}
		}
		return ""
	}
	do("off", "2026-09-21", "")
	if state("2026-09-21") != StateOff || state("2026-09-28") != StateProposed {
		t.Errorf("off: %s, then %s", state("2026-09-21"), state("2026-09-28"))
	}
	do("open", "2026-09-21", "")
	if state("2026-09-21") != StateProposed {
		t.Errorf("open again: %s", state("2026-09-21"))
	}
	do("take", "2026-09-21", "")
	if state("2026-09-21") != StateWaits {
		t.Errorf("taken: %s", state("2026-09-21"))
	}
	do("move", "2026-09-21", "2026-10-05")
	if state("2026-10-05") != StateWaits || d.text(week.Path("2026-09-21")) != "" {
		t.Errorf("moved: %s", state("2026-10-05"))
	}
	do("again", first, "2026-11-02")
	if state("2026-11-02") != StateWaits || !strings.Contains(d.text(week.Path("2026-11-02")), "November") && !strings.Contains(d.text(week.Path("2026-11-02")), "2026-11-02") {
		t.Errorf("again: %s", state("2026-11-02"))
	}
	do("remove", "2026-10-05", "")
	if d.text(week.Path("2026-10-05")) != "" {
		t.Error("removed, and still there")
	}
}

// TestSteps holds what easier and harder are said to lead to against where they do
// lead; where nothing is said there is no such step.
func TestSteps(t *testing.T) {
	for _, do := range []string{"easier", "harder"} {
		d := newDesk(t, "en")
		for range 3 {
			steps := ask[Steps](t, d, "steps", StoryOf{first, 1})
			want := map[string]*Size{"easier": steps.Easier, "harder": steps.Harder}[do]
			reply := send(t, d, "story", StoryWish{Date: first, Story: 1, Do: do})
			if (want == nil) != (len(reply.Wrong) > 0) {
				t.Fatalf("%s: said %v, and the act comes to %+v", do, want, reply.Wrong)
			}
			if want == nil {
				break
			}
			lay(t, d, ask[Act](t, d, "story", StoryWish{Date: first, Story: 1, Do: do}))
			if got := sheetOf(t, d).Stories[1].Size; got != *want {
				t.Errorf("%s: said %+v, led to %+v", do, *want, got)
			}
		}
	}
}

// TestStepsFar opens the stories of a target whose harder one goes to 1000, where a
// story of small things bears none of a million pairs of numbers.
func TestStepsFar(t *testing.T) {
	d := newDesk(t, "en")
	lay(t, d, set(t, d, "target", "find-the-part-within-100"))
	lay(t, d, set(t, d, "place", "library"))
	for i := range sheetOf(t, d).Stories {
		start := time.Now()
		if s := ask[Steps](t, d, "steps", StoryOf{first, i}); s.Harder == nil || s.Harder.Within != 1000 {
			t.Errorf("story %d: harder leads to %+v", i, s.Harder)
		}
		if took := time.Since(start); took > 5*time.Second {
			t.Errorf("story %d: it took %v to see where easier and harder lead", i, took)
		}
	}
}

// TestSwitches turns every switch of the sheet on and off again.
func TestSwitches(t *testing.T) {
	d := newDesk(t, "en")
	for _, key := range []string{LineExtra, LineReview, LineLadder, LineWords} {
		was := line(t, sheetOf(t, d), key).Value
		for _, value := range []string{"true", "false"} {
			set(t, d, key, value)
			if got := line(t, sheetOf(t, d), key).Value; got != value {
				t.Errorf("%s: %s after %s was set; it was %s", key, got, value, was)
			}
		}
	}
}

// TestWarmUp chooses each warm-up, and none.
func TestWarmUp(t *testing.T) {
	d := newDesk(t, "en")
	choices := ask[[]Choice](t, d, "choices", LineOf{first, LineWarmUp})
	if len(choices) < 3 {
		t.Fatalf("warm-ups: %+v", choices)
	}
	for _, c := range choices {
		set(t, d, LineWarmUp, c.Value)
		if l := line(t, sheetOf(t, d), LineWarmUp); l.Words != c.Words {
			t.Errorf("%s: the line says %q, want %q", c.Value, l.Words, c.Words)
		}
	}
}

// TestCodes meets what she can meet at the desk: each thing has a code, for which
// the page has words in her language.
func TestCodes(t *testing.T) {
	d := newDesk(t, "en", "es")
	letter := set(t, d, "note.en", "Dear families, we add this week.")
	own := func(texts map[string]string) Offer {
		return ask[Offer](t, d, "own", OwnStory{Date: first, Texts: texts})
	}
	const story = "Ana has 8 cans. She gets 5 more. How many cans has she now?"
	wrongs := func(call string, args any) []Finding { return send(t, d, call, args).Wrong }
	lay(t, d, ask[Act](t, d, "calendar", CalendarWish{Date: first, Do: "again", To: "2026-09-21"}))
	lay(t, d, ask[Act](t, d, "set", Set{"2026-09-21", "note.en", "Dear families, we add this week."}))
	for code, found := range map[string][]Finding{
		"untold/5":                own(map[string]string{"en": story, "es": "Ana tiene 8 latas. Le dan más. ¿Cuántas tiene?"}).Findings,
		"overtold/9":              own(map[string]string{"en": story, "es": "Ana tiene 8 latas. Le dan 5 de 9. ¿Cuántas tiene?"}).Findings,
		"brackets/":               wrongs("own", OwnStory{Date: first, Texts: map[string]string{"en": "Ana has ] 8 cans."}}),
		"address/x":               wrongs("settings", Setting{"address", "x"}),
		"nameless/":               wrongs("settings", Setting{"name", ""}),
		"taken/" + first:          wrongs("calendar", CalendarWish{Date: "2026-09-21", Do: "move", To: first}),
		"copied/" + first:         ask[Week](t, d, "week", Monday{"2026-09-21"}).Findings,
		"private-phone/555-01234": of(lettersFindings(t, d, "Call 555-01234."), first),
	} {
		code, quote, _ := strings.Cut(code, "/")
		if len(found) == 0 || found[0].Code != code || found[0].Quote != quote {
			t.Errorf("want %s %q, got %+v", code, quote, found)
		}
	}
	if len(letter.Changes) != 1 {
		t.Errorf("%+v", letter)
	}
}

// lettersFindings writes a letter and says what is found.
func lettersFindings(t *testing.T, d *Desk, text string) []Finding {
	set(t, d, "note.en", text)
	return sheetOf(t, d).Findings
}

// TestOnItsMonday begins on the week's own Monday: families have it once it was sent,
// or when it is over.
func TestOnItsMonday(t *testing.T) {
	on := func(today string, sent bool) State {
		d := newDesk(t, "en")
		files := func() Files {
			out := Files{}
			for path, f := range d.files {
				out[path] = string(f.Data)
			}
			return out
		}
		if sent {
			ask[Opened](t, d, "open", Open{Files: files(), Today: first, Words: "en"})
			ask[None](t, d, "put", Put{Changes: ask[Sending](t, d, "send", SendWish{Date: first, Tags: []string{"en"}}).Changes})
		}
		ask[Opened](t, d, "open", Open{Files: files(), Today: today, Words: "en"})
		return sheetOf(t, d).State
	}
	for _, c := range []struct {
		today string
		sent  bool
		want  State
	}{{first, false, StateWaits}, {"2026-09-18", false, StateWaits}, {first, true, StateShown}, {"2026-09-21", false, StateShown}} {
		if got := on(c.today, c.sent); got != c.want {
			t.Errorf("on %s, sent %t: %s, want %s", c.today, c.sent, got, c.want)
		}
	}
}

// TestMergeKeepsPlace tells a tale in pencil anew that stands in ink, too: in its own
// place while that has another.
func TestMergeKeepsPlace(t *testing.T) {
	d := newDesk(t, "en")
	s, err := d.open(first)
	if err != nil {
		t.Fatal(err)
	}
	told, p := s.SharedEvents(), s.exercises()[1].Story.Problem
	events := told.Telling(p)
	last := events[len(events)-1].Place
	here := slices.DeleteFunc(events, func(e *story.Event) bool { return e.Place != last })
	if len(here) < 2 || told.Telling(p)[0].Place == last {
		t.Fatalf("the last place has %d tales of %v, choose another problem", len(here), p)
	}
	kept := func(e string, proposed bool) week.KeptStory {
		k := week.KeptStory{Proposed: proposed}
		k.Event, k.Problem = e, p
		return k
	}
	same := here[0].ID
	out := merge([]week.KeptStory{kept(same, true), kept("a.one", true)}, []week.KeptStory{kept("a.two", true), kept(same, false)}, told)
	if got := told.Event(out[0].Event); got == nil || got.Place != last || got.ID == here[0].ID {
		t.Errorf("story 1 became %s, want another one of %s", out[0].Event, last)
	}
}
