package week

import (
	"html"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"homebuild/internal/diag"
	"homebuild/internal/pattern"
)

// finding is something in a text that does not belong on a public page.
type finding struct {
	code string // of [diag]
	text string // as typed
}

// what names the finding: "an e-mail address".
func (f finding) what() string {
	return map[string]string{
		diag.PrivateMail: "an e-mail address", diag.PrivatePhone: "a phone number", diag.PrivateID: "an id number", diag.PrivateNumber: "a phone or id number",
	}[f.code]
}

var (
	email = pattern.Of(`[\p{L}\p{N}._%+-]+[@＠][\p{L}\p{N}-]+(?:\.[\p{L}\p{N}-]+)+`)
	// An address spelled so that machines miss it: office (at) school.
	spelled = pattern.Of(`(?i)[\p{L}\p{N}._-]+ ?[\[({] ?at ?[\])}] ?[\p{L}\p{N}-]+(?: ?[\[({.] ?(?:dot|punkt|punto)? ?[\])}]? ?[\p{L}\p{N}-]+)*`)
	// Digits of any script with the marks that people put between them. Wide
	// gaps count only where a number begins as telephone numbers do, so that
	// 1000 - 350 stays a calculation.
	digitRun = pattern.Of(`(?:\+|\(0|\(\+|0)\p{Nd}+(?:(?: ?[-–./‑] ?|[ \x{a0}\x{202f}]|\) ?-?| ?\()\p{Nd}+)*` +
		`|\(?\p{Nd}+(?:(?:[-./‑ \x{a0}\x{202f}]|\) ?-?| ?\()\p{Nd}+)*`)
	idNumber = pattern.Of(`^\p{Nd}{3}[- ]\p{Nd}{2}[- ]\p{Nd}{4}$`)
	// Dates, and school years such as 2026-2027.
	date = pattern.Of(`\b(?:(?:19|20)\d\d[-./](?:0?[1-9]|1[0-2])[-./](?:0?[1-9]|[12]\d|3[01])` +
		`|(?:0?[1-9]|[12]\d|3[01])[-./](?:0?[1-9]|[12]\d|3[01])[-./](?:19|20)\d\d` +
		`|(?:19|20)\d\d[-/–](?:19|20)\d\d)\b`)
	clock = pattern.Of(`\b\d{1,2}\.\d{2} ?[-–] ?\d{1,2}\.\d{2}\b`)
)

// Lengths of numbers that lead to a person. Telephone numbers have at most 15
// digits (ITU-T E.164) and, with their area, seldom fewer than 7; what is
// counted here never has more than 4.
const (
	phoneDigits = 7
	idDigits    = 6
)

// private finds e-mail addresses, telephone numbers and id numbers in a line.
func private(line string) []finding {
	line = plain(line)
	var found []finding
	for _, look := range []*regexp.Regexp{email(), spelled()} {
		line = take(look, line, func(text string) bool {
			found = append(found, finding{diag.PrivateMail, text})
			return true
		})
	}
	blank := func(string) bool { return true }
	line = take(clock(), take(date(), line, blank), blank)
	take(digitRun(), line, func(text string) bool {
		if code := numberOf(text); code != "" {
			found = append(found, finding{code, text})
		}
		return true
	})
	return found
}

// plain undoes what Markdown lets a writer do to single letters.
func plain(line string) string {
	return html.UnescapeString(strings.NewReplacer(`\@`, "@", `\.`, ".", `\-`, "-", `\(`, "(", `\)`, ")", `\+`, "+").Replace(line))
}

// take shows every match to see and blanks those it keeps.
func take(look *regexp.Regexp, line string, see func(string) bool) string {
	return look.ReplaceAllStringFunc(line, func(text string) string {
		if !see(text) {
			return text
		}
		return strings.Repeat("\x00", len(text))
	})
}

// numberOf is the code of what a run of digits looks like, or "" for numbers of a lesson.
func numberOf(run string) string {
	groups := strings.FieldsFunc(run, func(c rune) bool { return !unicode.IsDigit(c) })
	digits := 0
	for _, g := range groups {
		digits += len([]rune(g))
	}
	switch {
	case len(groups) == 1 && digits >= idDigits && run[0] != '+':
		return diag.PrivateNumber
	case digits < phoneDigits || lesson(run, groups):
		return ""
	case idNumber().MatchString(run):
		return diag.PrivateID
	}
	return diag.PrivatePhone
}

// lesson reports whether groups of digits are numbers to count with: a list of
// small ones (telephone numbers in pairs begin with 0 or +), a row with equal
// steps, or a calculation within 1000.
func lesson(run string, groups []string) bool {
	if run[0] == '+' || run[0] == '0' || run[0] == '(' {
		return false
	}
	numbers := make([]int, len(groups))
	small, steps := true, len(groups) > 2
	for i, g := range groups {
		numbers[i], _ = strconv.Atoi(g)
		small = small && len(g) <= 2
		steps = steps && (i < 2 || numbers[i]-numbers[i-1] == numbers[1]-numbers[0])
	}
	return small || steps && numbers[1] != numbers[0] || len(groups) == 2 && groups[0] == "1000" && numbers[1] <= 1000
}

// wholePrivate reports whether a text is one address or number and no more.
func wholePrivate(text string) bool {
	if bareLink().FindString(text) == text && strings.HasPrefix(text, "https://") {
		return true
	}
	found := private(text)
	return len(found) == 1 && found[0].text == text
}

// allowed reports whether a teacher allows a finding by name. Numbers are
// compared by their digits.
func allowed(text string, allow []string) bool {
	return slices.ContainsFunc(allow, func(a string) bool { return bare(a) == bare(text) })
}

func bare(text string) string {
	if strings.ContainsFunc(text, unicode.IsLetter) {
		return strings.ToLower(text)
	}
	return strings.Map(func(c rune) rune {
		if unicode.IsDigit(c) {
			return c
		}
		return -1
	}, text)
}
