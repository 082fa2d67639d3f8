package i18n

import (
	"fmt"
	"strings"
)

// twoPeople are the places of two people in one sentence: who gives, and with whom.
var twoPeople = [2]string{characterPlace, "With"}

// slot is what stands directly before and behind a place.
type slot struct{ before, behind string }

// alike reports whether two places stand beside the same words.
func (s slot) alike(t slot) bool {
	return s.before != "" && s.before == t.before || s.behind != "" && s.behind == t.behind
}

// checkTwoPeople finds messages in which two people have changed places: beside the one
// stand the words that other messages have beside the other.
func (b *builder) checkTwoPeople() {
	type two struct {
		m     *Message
		slots [2]slot
	}
	var all []two
	for _, m := range b.file.Messages {
		if r := b.lang.messages[m.ID]; r != nil && m.Gender == "" && r.text.has(twoPeople[0]) && r.text.has(twoPeople[1]) {
			all = append(all, two{m, [2]slot{slotOf(r.text, twoPeople[0]), slotOf(r.text, twoPeople[1])}})
		}
	}
	for i, x := range all {
		against, with, other := 0, 0, ""
		for j, y := range all {
			straight := x.slots[0].alike(y.slots[0]) || x.slots[1].alike(y.slots[1])
			crossed := x.slots[0].alike(y.slots[1]) && x.slots[1].alike(y.slots[0])
			switch {
			case i == j:
			case crossed && !straight:
				against, other = against+1, y.m.ID
			case straight && !crossed:
				with++
			}
		}
		if against > with {
			b.problem(x.m.Line, fmt.Sprintf("%s: {{.%s}} and {{.%s}} stand the other way round in %s", x.m.ID, twoPeople[0], twoPeople[1], other), "look who does it, and to whom, in the English: "+x.m.English.Other)
		}
	}
}

// slotOf is what stands beside a place: the word before it and the one behind.
func slotOf(t template, place string) slot {
	for i, s := range t {
		if s.place != place {
			continue
		}
		var out slot
		if i > 0 && t[i-1].place == "" {
			out.before = lastWord(t[i-1].text)
		}
		if i+1 < len(t) && t[i+1].place == "" {
			out.behind = firstWord(t[i+1].text)
		}
		return out
	}
	return slot{}
}

func firstWord(text string) string {
	text = strings.TrimLeft(text, " ")
	if end := strings.IndexFunc(text, notInWord); end >= 0 {
		text = text[:end]
	}
	return strings.ToLower(text)
}

func lastWord(text string) string {
	text = strings.TrimRight(text, " ")
	return strings.ToLower(text[len(strings.TrimRightFunc(text, func(c rune) bool { return !notInWord(c) })):])
}
