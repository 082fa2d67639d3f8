package i18n

import (
	"fmt"
	"testing"

	"homebuild/internal/phrase"
)

// What a language can say, message by message: its genders, its places, each once, and
// whether it has plural forms.
func TestForms(t *testing.T) {
	ru := in(t, fixtures(t), "ru")
	got := map[string]Form{}
	for _, f := range ru.Forms() {
		got[f.ID+" "+f.Gender] = f
	}
	for _, want := range []Form{
		{ID: "own.starter", Gender: "feminine", Places: []string{"Who"}, Written: true},
		{ID: "own.starter", Gender: "masculine", Places: []string{"Who"}, Written: true},
		{ID: "page.weeks", Plural: true, Places: []string{"N"}, Written: true},
		{ID: "own.has", Places: []string{"Who", "Gap"}, Written: true},
		{ID: "page.language", Written: true},
	} {
		if f := got[want.ID+" "+want.Gender]; fmt.Sprint(f) != fmt.Sprint(want) {
			t.Errorf("%s %s: %+v, want %+v", want.ID, want.Gender, f, want)
		}
	}
	if _, twice := got["own.starter "]; twice {
		t.Error("a message with genders has a form without one")
	}
}

func TestBlocks(t *testing.T) {
	ru := in(t, fixtures(t), "ru")
	for family, want := range map[string]string{"thing": "[thing.soup-bowl thing.floor]", "character": "[character.fox character.heron]", "page": "[]"} {
		if got := fmt.Sprint(ru.Blocks(family)); got != want {
			t.Errorf("%s: %s, want %s", family, got, want)
		}
	}
}

// The id of a sentence is that which stories of the groups say, wherever it stands.
func TestExactID(t *testing.T) {
	l := &Language{tales: map[string]tale{"event.kitchen.soup": {{group: "take-from", key: "open"}, {key: "open"}, {key: "out"}}}}
	for _, row := range []struct {
		id     string
		groups []string
		want   string
	}{
		{"event.kitchen.soup.open", []string{"take-from"}, "event.kitchen.soup.take-from.open"},
		{"event.kitchen.soup.open", nil, "event.kitchen.soup.open"},
		{"event.kitchen.soup.open", []string{"add-to"}, "event.kitchen.soup.open"},
		{"event.kitchen.soup.out", []string{"take-from"}, "event.kitchen.soup.out"},
		{"event.kitchen.soup.gone", []string{"take-from"}, "event.kitchen.soup.gone"},
		{"page.title", []string{"take-from"}, "page.title"},
	} {
		line := phrase.Say(row.id)
		line.Groups = row.groups
		if got := l.exactID(line); got != row.want {
			t.Errorf("%s in %v is %s, want %s", row.id, row.groups, got, row.want)
		}
	}
}
