package week

import (
	"errors"
	"fmt"
	"net/url"
	"slices"
	"strings"

	"github.com/pelletier/go-toml/v2"
)

// table is a decoded TOML text: it hands out values of the right sort and says
// where one is not. Values are decoded as they come (any), so that one wrong
// sort does not hide the next slip.
type table struct {
	r      *reader
	file   string
	first  int             // the line of the file that text begins on
	lines  map[string]int  // the line of the file that each setting stands on
	broken map[string]bool // settings that could not be read, and were said to be so
	known  []string        // the settings there are
}

// maxSlips is how many unreadable lines of a file are told at once.
const maxSlips = 20

// decode reads TOML into keys, a pointer to a struct of any fields. After an
// unreadable line it goes on without that line.
func (t *table) decode(text string, keys any) {
	t.broken = map[string]bool{}
	t.place(text)
	for range maxSlips {
		decoder := toml.NewDecoder(strings.NewReader(text))
		decoder.DisallowUnknownFields()
		err := decoder.Decode(keys)
		var extra *toml.StrictMissingError
		var slip *toml.DecodeError
		switch {
		case err == nil:
			return
		case errors.As(err, &extra):
			t.extra(extra)
			return
		case !errors.As(err, &slip):
			t.r.add(t.file, t.first, "the settings cannot be read: "+err.Error(), "")
			return
		}
		row, _ := slip.Position()
		row = listStart(text, row, cause(slip))
		line, rest, ok := cutLine(text, row)
		if !ok {
			t.r.add(t.file, t.first+row-1, "the settings cannot be read: "+cause(slip), "")
			return
		}
		t.broken[keyOf(line)] = true
		what, hint := explain(line, cause(slip))
		t.r.add(t.file, t.first+row-1, what, hint)
		text = rest
	}
}

// listStart is the line of a list that was never closed: the TOML library finds
// out lines later, at the next setting.
func listStart(text string, row int, cause string) int {
	all := strings.Split(text, "\n")
	if !strings.Contains(cause, "array") || row > len(all) || strings.Contains(all[row-1], "[") && row < len(all) {
		return row
	}
	for i := row - 1; i >= 0; i-- {
		line := strings.TrimSpace(all[i])
		if _, value, ok := strings.Cut(line, "="); ok && !strings.HasPrefix(line, "#") && strings.HasPrefix(strings.TrimSpace(value), "[") {
			return i + 1
		}
	}
	return row
}

// cutLine returns a line of text and the text with that line left blank, or
// with the line above a story as it should be, so that its settings stay its
// own.
func cutLine(text string, row int) (line, rest string, ok bool) {
	all := strings.Split(text, "\n")
	if row < 1 || row > len(all) || strings.TrimSpace(all[row-1]) == "" {
		return "", text, false
	}
	line, all[row-1] = all[row-1], ""
	if strings.TrimSpace(line) != storyHeading && storyHead.MatchString(line) {
		all[row-1] = storyHeading
	}
	return line, strings.Join(all, "\n"), true
}

func cause(slip *toml.DecodeError) string { return strings.TrimPrefix(slip.Error(), "toml: ") }

// extra says which settings there are not.
func (t *table) extra(err *toml.StrictMissingError) {
	for _, e := range err.Errors {
		row, _ := e.Position()
		key := strings.Join(e.Key(), ".")
		t.r.unknown(t.file, t.first+row-1, "a setting", key, t.known)
	}
}

// line is where a setting stands; the first line when it is left out.
func (t *table) line(key string) int {
	if number, ok := t.lines[key]; ok {
		return number
	}
	return t.first
}

// place notes the line of each setting: "own-target.largest" for one that
// stands below [own-target], "own-story[1].text" for the second [[own-story]].
func (t *table) place(text string) {
	t.lines = map[string]int{}
	table := ""
	told := -1
	for number, line := range lines(text) {
		key := keyOf(line)
		switch {
		case strings.HasPrefix(strings.TrimSpace(line), "["):
			if key == "own-story" {
				told++
			}
			if rest, ok := strings.CutPrefix(key, "own-story"); ok {
				key = fmt.Sprintf("own-story[%d]%s", max(told, 0), rest)
				t.lines[key] = t.first + number - 1
			}
			table = key + "."
		case strings.Contains(line, "="):
			key = table + key
		default:
			continue
		}
		if _, ok := t.lines[key]; !ok && key != "" {
			t.lines[key] = t.first + number - 1
		}
	}
}

// wrong says that a value is not of the sort that the setting takes.
func (t *table) wrong(key string, value any, hint string) {
	t.r.add(t.file, t.line(key), fmt.Sprintf("%s cannot be %s", key, shown(value)), hint)
}

// shown is a value as a person would write it.
func shown(value any) string {
	switch v := value.(type) {
	case string:
		return fmt.Sprintf("%q", v)
	case []any:
		return "a list"
	case map[string]any:
		return "a table"
	}
	return fmt.Sprint(value)
}

// word is a text; "" when left out.
func (t *table) word(key string, value any) string {
	switch v := value.(type) {
	case nil:
		return ""
	case string:
		return strings.TrimSpace(v)
	}
	t.wrong(key, value, fmt.Sprintf("write a word in quotes: %s = \"...\"", key))
	return ""
}

// oneOf is a word of a list; "" when left out or wrong.
func (t *table) oneOf(key, what string, value any, list []string) string {
	typed := t.word(key, value)
	if typed == "" || slices.Contains(list, typed) {
		return typed
	}
	t.r.unknown(t.file, t.line(key), what, typed, list)
	return ""
}

// whole is a whole number that the setting can be; its usual one when left out
// or wrong.
func (t *table) whole(key string, value any) int {
	a := amounts[key]
	if value == nil {
		return a.otherwise
	}
	n, ok := value.(int64)
	if !ok {
		t.wrong(key, value, plainNumber(key, a, fmt.Sprint(value)))
		return a.otherwise
	}
	if n < int64(a.low) || n > int64(a.high) {
		t.r.add(t.file, t.line(key), fmt.Sprintf("%s = %d is not from %d to %d", key, n, a.low, a.high), plainNumber(key, a, ""))
		return a.otherwise
	}
	return int(n)
}

// yes is true or false; otherwise when left out or wrong.
func (t *table) yes(key string, value any, otherwise bool) bool {
	switch v := value.(type) {
	case nil:
		return otherwise
	case bool:
		return v
	}
	t.wrong(key, value, plainSwitch(key, fmt.Sprint(value)))
	return otherwise
}

// list is a list of words; nil when left out.
func (t *table) list(key string, value any) []string {
	if value == nil {
		return nil
	}
	items, ok := value.([]any)
	if !ok {
		t.wrong(key, value, fmt.Sprintf("write a list: %s = [%s]", key, listed(value)))
		return nil
	}
	words := make([]string, 0, len(items))
	for _, item := range items {
		word, ok := item.(string)
		if !ok {
			t.r.add(t.file, t.line(key), fmt.Sprintf("%s holds %s, which is not a word", key, shown(item)), "write each in quotes")
			continue
		}
		words = append(words, strings.TrimSpace(word))
	}
	return words
}

// listed is a value as a list would hold it: "en, es" is two words.
func listed(value any) string {
	typed, _ := value.(string)
	words := strings.FieldsFunc(typed, func(c rune) bool { return c == ',' || c == ';' || c == ' ' })
	if len(words) == 0 {
		return `"...", "..."`
	}
	for i, word := range words {
		words[i] = fmt.Sprintf("%q", word)
	}
	return strings.Join(words, ", ")
}

// webAddress is an https address of a place, ending in "/".
func (t *table) webAddress(key string, value any) string {
	typed := t.word(key, value)
	if typed == "" {
		return ""
	}
	u, err := url.Parse(typed)
	if err != nil || u.Scheme != "https" || u.Host == "" || u.User != nil || u.RawQuery != "" || u.Fragment != "" ||
		strings.ContainsAny(typed, " \"'<>\\`{}|^") || strings.Contains(typed, "/..") {
		t.r.add(t.file, t.line(key), fmt.Sprintf("%q is not where a site can live", typed), `write the whole address, such as "https://school.example/families/"`)
		return ""
	}
	if len(typed) > maxAddress {
		t.r.add(t.file, t.line(key), fmt.Sprintf("%s has %d letters", key, len(typed)), fmt.Sprintf("keep it to %d: the code on the paper cannot hold more", maxAddress))
		return ""
	}
	return strings.TrimSuffix(typed, "/") + "/"
}
