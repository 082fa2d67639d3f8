package desk

import (
	"slices"
	"strings"
	"testing"

	"homebuild/internal/week"
)

// TestLanguages gives families another language in the middle of the year, and takes
// one back. A language that pages cannot be made in is refused, and nothing is lost.
func TestLanguages(t *testing.T) {
	d := newDesk(t, "en", "es")
	families := func() (tags []string) {
		for _, l := range ask[Year](t, d, "year", None{}).Languages {
			tags = append(tags, l.Tag)
		}
		slices.Sort(tags)
		return tags
	}
	for _, test := range []struct {
		value string
		want  []string
	}{
		{"en es so", []string{"en", "es", "so"}},
		{"en so", []string{"en", "so"}},
	} {
		lay(t, d, ask[Act](t, d, "settings", Setting{"languages", test.value}))
		if got := families(); !slices.Equal(got, test.want) {
			t.Errorf("%q: families have %v, want %v", test.value, got, test.want)
		}
	}
	if page := ask[Page](t, d, "page", PageOf{first, "so", "learn", ""}); page.HTML == "" {
		t.Error("the first week has no page in the new language")
	}
	if reply := send(t, d, "settings", Setting{"languages", "en xx"}); len(reply.Wrong) == 0 || reply.Wrong[0].Key != "languages" {
		t.Errorf("xx is not refused at the languages: %+v", reply.Wrong)
	}
	if reply := send(t, d, "settings", Setting{"languages", ""}); len(reply.Wrong) == 0 {
		t.Error("a class without a language is not refused")
	}
	if got := families(); !slices.Equal(got, []string{"en", "so"}) {
		t.Errorf("after what was refused families have %v", got)
	}
}

// TestClassWords writes what the class calls a way: families read it, an empty line takes
// it away again, and what is private is refused.
func TestClassWords(t *testing.T) {
	d := newDesk(t, "en", "es")
	for _, w := range ask[Year](t, d, "year", None{}).Words {
		if w.Name == "" || w.Own != "" {
			t.Errorf("%+v", w)
		}
	}
	way := line(t, sheetOf(t, d), LineWay).Value
	word := func(own string) answered { return send(t, d, "settings", Setting{wordsOf + way, own}) }
	families := func() bool {
		return strings.Contains(ask[Page](t, d, "page", PageOf{Date: first, Tag: "es", Page: "learn"}).HTML, "ten friends")
	}
	lay(t, d, ask[Act](t, d, "settings", Setting{wordsOf + way, "ten friends"}))
	if !families() {
		t.Errorf("families do not read it: %s", d.text(week.SiteFile))
	}
	lay(t, d, ask[Act](t, d, "settings", Setting{wordsOf + way, ""}))
	if families() {
		t.Error("taken away, and families read it")
	}
	if wrongs := word("call 555-867-5309").Wrong; len(wrongs) != 1 || wrongs[0].Key != wordsOf+way || wrongs[0].Code != "private-phone" {
		t.Errorf("%+v", wrongs)
	}
	if wrongs := send(t, d, "settings", Setting{wordsOf + "no-way", "x"}).Wrong; len(wrongs) != 1 {
		t.Errorf("no way: %+v", wrongs)
	}
}
