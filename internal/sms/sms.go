// Package sms counts the parts of a text message the way a phone network does,
// so that a teacher can keep the weekly message to one.
//
// Source: 3GPP TS 23.038 (alphabets) and 23.040 (joined messages). The table of
// letters is from memory; the sizes of the parts are confirmed in several
// sources.
package sms

import (
	"strings"
	"unicode/utf16"
)

// basic is the GSM 7-bit default alphabet, one unit a character. The escape
// character itself is not text.
const basic = "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?" +
	"¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà"

// extended is its extension table: an escape and a character, two units.
const extended = "\f^{}\\[~]|€"

// Units that fit a message alone, and a part of a joined one, which also
// carries how to join it.
const (
	sevenBitAlone = 160
	sevenBitPart  = 153
	wideAlone     = 70
	widePart      = 67
)

// Count is how a message is sent.
type Count struct {
	Wide  bool // UCS-2, since a character is not in the 7-bit alphabet
	Units int  // 7-bit characters or UCS-2 units
	Parts int
}

// Of counts a message. An empty one still is one part.
func Of(text string) Count {
	c := Count{}
	for _, r := range text {
		switch {
		case strings.ContainsRune(basic, r):
			c.Units++
		case strings.ContainsRune(extended, r):
			c.Units += 2
		default:
			c.Wide = true
		}
	}
	alone, part := sevenBitAlone, sevenBitPart
	if c.Wide {
		c.Units, alone, part = len(utf16.Encode([]rune(text))), wideAlone, widePart
	}
	c.Parts = 1
	if c.Units > alone {
		c.Parts = (c.Units + part - 1) / part
	}
	return c
}
