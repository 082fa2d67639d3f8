package i18n

import (
	"strings"
	"testing"
)

// Names are small and big letters, digits and hyphens, sixty at most: what every editor
// and every program for translations keeps as it is.
func TestPlainKey(t *testing.T) {
	for _, key := range []string{"a", "z", "A", "Z", "0", "9", "-", "count-accusative", strings.Repeat("a", 60)} {
		if !plainKey(key) {
			t.Errorf("%q is refused", key)
		}
	}
	// Beside letters and digits in ASCII stand / : @ [ ` {
	for _, key := range []string{"", "/", ":", "@", "[", "`", "{", "_", ".", " ", "é", "٣", strings.Repeat("a", 61)} {
		if plainKey(key) {
			t.Errorf("%q is a name", key)
		}
	}
}

// What is missing belongs where its table begins; where there is none, behind the last
// message, whose table may not be the last that was written.
func TestLineNear(t *testing.T) {
	f := &File{}
	for i, id := range []string{"pages.next", "page.title", "page.skip", "thing.pot.count"} {
		f.Messages = append(f.Messages, &Message{Line: 10 * (i + 1)})
		f.Messages[i].ID = id
	}
	for id, want := range map[string]int{"page.back": 20, "pages.back": 10, "thing.pot.blank": 40, "thing.pan.blank": 40, "help.way": 40} {
		if got := f.lineNear(id); got != want {
			t.Errorf("%s belongs into line %d, want %d", id, got, want)
		}
	}
}

// A problem with a key of a message is told at its line, or else at the message's.
func TestLineOf(t *testing.T) {
	m := &Message{Line: 5}
	m.lines[Zero], m.lines[Other] = 6, 8
	for key, want := range map[string]int{"zero": 6, "other": 8, "few": 5, "hash": 5, "gender": 5} {
		if got := m.LineOf(key); got != want {
			t.Errorf("%s stands in line %d, want %d", key, got, want)
		}
	}
}
