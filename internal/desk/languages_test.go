package desk

import (
	"slices"
	"testing"
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
