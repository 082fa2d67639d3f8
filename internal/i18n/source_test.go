package i18n

import "testing"

// What every language must have: each message, each name and what a thing counts; forms
// and genders are its own affair, and so are its head and its number words.
func TestNeeded(t *testing.T) {
	for id, want := range map[string]bool{
		"page.title": true, "language.name": false, "words.7": false, "character.fox.name": true, "character.fox.genitive": false,
		"thing.pot.count": true, "thing.pot.blank": true, "thing.pot.gender": false, "thing.pot.count-accusative": false, "setting.harbour.at": true,
	} {
		m := &Message{}
		m.ID = id
		if m.split(); m.Needed() != want {
			t.Errorf("%s is needed: %v, want %v", id, m.Needed(), want)
		}
	}
}

// A translation is stale when its English has changed, and not held when it does not say
// what it was made from.
func TestStale(t *testing.T) {
	english := &Message{source: source{hash: "new"}}
	for _, row := range []struct {
		name           string
		hash           string
		english        *Message
		stale, notHeld bool
	}{
		{"of this English", "new", english, false, false},
		{"of another", "old", english, true, false},
		{"of this, and read", "new 0123456789 1", english, false, false},
		{"of another, and read", "old 0123456789 1", english, true, false},
		{"does not say", "", english, false, true},
		{"has no English", "old", noEnglish, false, false},
	} {
		m := &Message{Family: "page", Key: "title", English: row.english}
		m.Hash = row.hash
		if m.Stale() != row.stale || m.Unheld() != row.notHeld {
			t.Errorf("%s: stale %v, not held %v; want %v, %v", row.name, m.Stale(), m.Unheld(), row.stale, row.notHeld)
		}
	}
}
