package i18n

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/pattern"
)

// A signature stands for the very words that were read. The head of the file says who
// has read and when, one after the other; each message keeps, behind the hash of its
// English, the hash of its own text as it was read and the number of the signature:
//
//	hash = "66f3bb1bcb 1a2b3c4d5e 1"
//
// and so does the source of an event. What has neither, number words, genders and the
// head itself, is named by the key "read" of the head.

// Signatures are who has read a file, in the order in which they signed: "M. G.,
// 2026-10-01".
type Signatures []string

const betweenSignatures = "; "

// ParseSignatures reads what the head says; ok is false for one that is not a name or
// initials, a comma and a day.
func ParseSignatures(text string) (all Signatures, ok bool) {
	all = strings.Split(text, betweenSignatures)
	return all, !slices.ContainsFunc(all, func(s string) bool { return !IsSignature(s) })
}

// String is how the head says them.
func (s Signatures) String() string { return strings.Join(s, betweenSignatures) }

var signature = pattern.Of(`^[^ ,;].*, \d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$`)

// IsSignature reports whether a text is a name or initials, a comma and a day.
func IsSignature(text string) bool { return signature().MatchString(text) }

// mark is what a message or an event keeps of the English that it was made from, and
// of what was read.
type mark struct {
	english string
	read    string // the hash of the text that was read; empty where nobody has
}

func parseMark(text string) mark {
	english, rest, _ := strings.Cut(text, " ")
	read, _, _ := strings.Cut(rest, " ")
	return mark{english, read}
}

func marked(english, own string, by int) string {
	return english + " " + own + " " + strconv.Itoa(by)
}

// Signed is the hash that the message keeps once its text, as it is now, was read for
// the signature with a number.
func (m *Message) Signed(by int) string { return marked(m.English.hash, hashOf(m), by) }

// IsRead reports whether the text is the one that was read.
func (m *Message) IsRead() bool { return !m.translated() || parseMark(m.Hash).read == hashOf(m) }

// Signed is the source that the event keeps once its sentences were read.
func (e *Event) Signed(by int) string { return marked(e.English.hash, hashSentences(e), by) }

// IsRead reports whether the sentences are those that were read.
func (e *Event) IsRead() bool { return !e.translated() || parseMark(e.Source).read == hashSentences(e) }

// Unmarked names all in the file that keeps no hash: the head, number words, genders.
func (f *File) Unmarked() string {
	sum := sha256.New()
	for _, m := range f.Messages {
		if signature := m.ID == "language.review" || m.ID == "language.reviewed" || m.ID == "language.read"; !signature && !m.translated() {
			fmt.Fprintf(sum, "%s\x00%s\x00", m.ID, hashOf(m))
		}
	}
	return hex.EncodeToString(sum.Sum(nil)[:5])
}

// unread lists what has changed, or is new, since the file was signed.
func (b *builder) unread() {
	tell := func(line int, id string) {
		b.proof.Unread = append(b.proof.Unread, diag.Diagnostic{
			File: b.file.Path, Line: line, Text: id + " is not what was read and signed",
			Hint: "a fluent reader reads it and signs again: homebuild language sign " + b.file.Tag,
		})
	}
	for _, m := range b.file.Messages {
		if !m.IsRead() {
			tell(m.Line, m.ID)
		}
	}
	for _, e := range b.file.Events {
		if !e.IsRead() {
			tell(e.Line, e.ID)
		}
	}
	if read := b.file.Message("language.read"); read == nil || read.Other != b.file.Unmarked() {
		tell(b.headerLine("reviewed"), "the head of the file, a number word or a gender")
	}
}
