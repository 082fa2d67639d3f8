package week

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/problem"
)

// amount is what a setting that takes a number can be.
type amount struct{ low, high, otherwise int }

// amounts are the settings that take a whole number.
var amounts = map[string]amount{
	"stories":            {1, MaxStories, DefaultStories},
	"minutes":            {1, MaxMinutes, DefaultMinutes},
	"own-target.largest": {activity.Smallest, problem.Largest, 20},
	"own-target.parts":   {2, 3, 2},
	"own-target.steps":   {1, 2, 1},
}

// switches are the settings that are true or false.
var switches = map[string]bool{"extra-sentence": true, "number-words": true, "review": true, "index": true}

// amountOf finds what a setting can be by its name on a line.
func amountOf(key string) (amount, bool) {
	if a, ok := amounts[key]; ok {
		return a, true
	}
	a, ok := amounts["own-target."+key]
	return a, ok
}

// numberNames are the numbers that people write as words where one is asked for.
var numberNames = []string{"zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"}

var (
	digits  = regexp.MustCompile(`^\d+`)
	letters = regexp.MustCompile(`^\p{L}+`)
)

// meant is the number that was meant by what was typed: "three", "3 stories",
// "3.0". What can mean two numbers, such as 3,5 or 4-6, means none.
func meant(typed string) (int, bool) {
	typed = strings.ToLower(strings.Trim(plainDigits(typed), " \t\"'“”„«»‘’.,;"))
	first := digits.FindString(typed)
	if rest := typed[len(first):]; first != "" {
		n, err := strconv.Atoi(first)
		return n, err == nil && (strings.Trim(rest, ".0") == "" || !strings.ContainsAny(rest, "0123456789"))
	}
	word := letters.FindString(typed)
	for n, name := range numberNames {
		if name == word {
			return n, true
		}
	}
	return 0, false
}

// plainDigits writes the digits of other scripts, and wide ones, as 0 to 9.
func plainDigits(text string) string {
	return strings.Map(func(c rune) rune {
		for _, zero := range []rune{'٠', '۰', '०', '০', '０'} {
			if c >= zero && c <= zero+9 {
				return '0' + c - zero
			}
		}
		return c
	}, text)
}

// plainNumber says what to write where a number was typed as something else.
func plainNumber(key string, a amount, typed string) string {
	if n, ok := meant(typed); ok && n >= a.low && n <= a.high {
		return fmt.Sprintf("write %s = %d, a number without letters or quotes", key, n)
	}
	return fmt.Sprintf("write a whole number from %d to %d: %s = %d", a.low, a.high, key, a.otherwise)
}

// plainSwitch says what to write where true or false was typed as something else.
func plainSwitch(key, typed string) string {
	switch strings.ToLower(strings.Trim(typed, " \t\"'“”„«»‘’.,;")) {
	case "yes", "y", "on", "true", "1":
		return fmt.Sprintf("write %s = true, in small letters and without quotes", key)
	case "no", "n", "off", "false", "0":
		return fmt.Sprintf("write %s = false, in small letters and without quotes", key)
	}
	return fmt.Sprintf("write %s = true or %s = false, without quotes", key, key)
}

var setting = regexp.MustCompile(`^\s*([\w-]+)\s*=\s*(.*?)\s*(?:#.*)?$`)

// explainValue says what is wrong with a number, or with true or false, that
// cannot be read.
func explainValue(line string) (text, hint string, ok bool) {
	m := setting.FindStringSubmatch(line)
	if m == nil || m[2] == "" {
		return "", "", false
	}
	key, typed := m[1], m[2]
	if letters := []rune(typed); len(letters) > maxWord {
		typed = string(letters[:maxWord]) + "..."
	}
	if a, isAmount := amountOf(key); isAmount {
		return fmt.Sprintf("%s cannot be %s", key, typed), plainNumber(key, a, typed), true
	}
	if switches[key] {
		return fmt.Sprintf("%s cannot be %s", key, typed), plainSwitch(key, typed), true
	}
	return "", "", false
}
