package tomlfile

import (
	"fmt"
	"strconv"
	"strings"
)

// numberNames are the numbers that people write as words where one is asked for.
var numberNames = []string{"zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"}

// marks are what people put around a value.
const marks = " \t\"'“”„«»‘’.,;"

// meant is the number that was meant by what was typed: "three", "3 stories",
// "3.0". What can mean two numbers, such as 3,5 or 4-6, means none.
func meant(typed string) (int, bool) {
	const digits = "0123456789"
	typed = strings.ToLower(strings.Trim(plainDigits(typed), marks))
	rest := strings.TrimLeft(typed, digits)
	if first := typed[:len(typed)-len(rest)]; first != "" {
		n, err := strconv.Atoi(first)
		return n, err == nil && (strings.Trim(rest, ".0") == "" || !strings.ContainsAny(rest, digits))
	}
	for n, name := range numberNames {
		if word, _, _ := strings.Cut(typed, " "); word == name {
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
func (k *key) plainNumber(typed string) string {
	if n, ok := meant(typed); ok && n >= k.low && n <= k.high {
		return fmt.Sprintf("write %s = %d, a number without letters or quotes", k.name, n)
	}
	return fmt.Sprintf("write a whole number from %d to %d: %s = %d", k.low, k.high, k.name, max(k.low, k.usual))
}

// plainSwitch says what to write where true or false was typed as something else.
func (k *key) plainSwitch(typed string) string {
	switch strings.ToLower(strings.Trim(typed, marks)) {
	case "yes", "y", "on", "true", "1":
		return fmt.Sprintf("write %s = true, in small letters and without quotes", k.name)
	case "no", "n", "off", "false", "0":
		return fmt.Sprintf("write %s = false, in small letters and without quotes", k.name)
	}
	return fmt.Sprintf("write %s = true or %s = false, without quotes", k.name, k.name)
}
