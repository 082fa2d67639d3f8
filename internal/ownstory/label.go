package ownstory

import (
	"unicode"
	"unicode/utf8"
)

// longestLabel is how many letters a label takes beside its number.
const longestLabel = 14

// Label is a number as a person knows it again: with the word that stands behind it,
// "58 cans", or before it where it belongs to a name, "Room 4".
func (t Text) Label(place int) string {
	n := t.Numerals[place]
	start, end := withSigns(t.Plain, n.Start, n.End)
	if n.behindName {
		start = wordBefore(t.Plain, n.Start)
	} else if !n.Marked && !n.Name {
		end = wordBehind(t.Plain, end)
	}
	return t.Plain[start:end]
}

// wordBehind is where the word ends that follows a place, a space apart or at once.
// Scripts without spaces end it after a measure and what it measures.
func wordBehind(s string, from int) int {
	end, letters := from, 0
	for i, c := range s[from:] {
		switch {
		case c == ' ' && letters == 0 && i == 0:
			continue
		case !unicode.IsLetter(c) && !unicode.IsMark(c) && c != '\'' && c != '’' && c != '-', letters == longestLabel:
			return end
		case unicode.Is(unicode.Han, c) && letters == 2:
			return end
		}
		letters++
		end = from + i + utf8.RuneLen(c)
	}
	return end
}

// wordBefore is where the word begins that stands before a place, a space apart.
func wordBefore(s string, from int) int {
	at := from
	for at > 0 {
		c, size := utf8.DecodeLastRuneInString(s[:at])
		if c == ' ' && at != from || c != ' ' && !unicode.IsLetter(c) && !unicode.IsMark(c) {
			break
		}
		at -= size
	}
	return at
}
