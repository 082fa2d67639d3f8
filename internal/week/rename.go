package week

import (
	"fmt"
	"path"
	"slices"
	"strconv"
	"strings"
	"time"

	"homebuild/internal/pattern"
)

// renamed says what to do with a file that was surely meant as a week and is
// called otherwise.
func renamed(name string, languages []string) string {
	const rule = "name the file year-month-day, such as 2026-09-14.toml"
	stem, endings := cutEndings(name)
	day, rest, ok := dayIn(stem)
	if !ok {
		return rule
	}
	date := day.Format(time.DateOnly)
	file, last := path.Base(Path(date)), weekEnding
	if len(endings) > 0 {
		last = endings[len(endings)-1]
	}
	tag, isTag := sameWord(rest, languages)
	switch {
	case isTag:
		return fmt.Sprintf("a note stands in the file of its week: write it into %s, below a line [note], as %s", file, tag)
	case looksCopied().MatchString(rest) || looksCopied().MatchString(stem):
		return fmt.Sprintf("if it is another week, name it by the Monday of that week, such as %s; if it is only a copy, take it away", path.Base(Path(day.AddDate(0, 0, 7).Format(time.DateOnly))))
	case strings.EqualFold(rest, "stories"):
		file = path.Base(StoriesPath(date))
	case rest != "":
		return rule
	}
	switch {
	case slices.Contains(wordProcessors, last):
		return fmt.Sprintf("a word processor keeps more than text in such a file: copy the words into a plain text file named %s, and take this one away", file)
	case slices.Contains(endings, oldEnding):
		old := oldPath(date)
		return fmt.Sprintf("this is an older form of a week: name it %s, and homebuild week --from %s turns it into the form of today", path.Base(old), old)
	case last != weekEnding && slices.Contains(endings, weekEnding):
		return fmt.Sprintf("name it %s, without %s", file, last)
	case last != weekEnding:
		return fmt.Sprintf("name it %s, with %s in place of %s", file, weekEnding, last)
	}
	return "name it " + file
}

var (
	wordProcessors = []string{".docx", ".doc", ".odt", ".rtf", ".pages"}
	textEndings    = append([]string{weekEnding, oldEnding, ".txt", ".text"}, wordProcessors...)

	looksCopied = pattern.Of(`(?i)^(?:copy|copie|kopie|copia)\b|\b(?:copy|copie|kopie|copia)(?:\s*\(?\d*\)?)$|^\(?\d\)?$`)
	copyOf      = pattern.Of(`(?i)^(?:copy of|copie de|kopie von|copia de)\s+`)
	yearFirst   = pattern.Of(`^(\d{4})[-._ ]?(\d{1,2})[-._ ]?(\d{1,2})\b`)
	yearLast    = pattern.Of(`^(\d{1,2})[-._ ](\d{1,2})[-._ ](\d{4})\b`)
)

// cutEndings cuts the endings that texts have off a file's name.
func cutEndings(name string) (stem string, endings []string) {
	for {
		ending := path.Ext(name)
		if !slices.Contains(textEndings, strings.ToLower(ending)) {
			return name, endings
		}
		name = strings.TrimSuffix(name, ending)
		endings = append([]string{strings.ToLower(ending)}, endings...)
	}
}

// dayIn finds the day that the name of a file begins with, and what stands
// after it. A day that can be meant in two ways is the one that is a Monday.
func dayIn(stem string) (day time.Time, rest string, ok bool) {
	stem = copyOf().ReplaceAllString(stem, "")
	if m := yearFirst().FindStringSubmatch(stem); m != nil {
		day, ok = dayOf(m[1], m[2], m[3])
		return day, trimmed(stem[len(m[0]):]), ok
	}
	m := yearLast().FindStringSubmatch(stem)
	if m == nil {
		return day, "", false
	}
	first, ok1 := dayOf(m[3], m[2], m[1])
	second, ok2 := dayOf(m[3], m[1], m[2])
	switch rest = trimmed(stem[len(m[0]):]); {
	case ok1 && (!ok2 || first.Weekday() == time.Monday && second.Weekday() != time.Monday):
		return first, rest, true
	case ok2 && (!ok1 || second.Weekday() == time.Monday && first.Weekday() != time.Monday):
		return second, rest, true
	}
	return first, rest, ok1 && first.Equal(second)
}

func trimmed(rest string) string { return strings.Trim(rest, " -_.") }

func dayOf(year, month, day string) (time.Time, bool) {
	y, _ := strconv.Atoi(year)
	m, _ := strconv.Atoi(month)
	d, _ := strconv.Atoi(day)
	t := time.Date(y, time.Month(m), d, 0, 0, 0, 0, time.UTC)
	return t, t.Day() == d && int(t.Month()) == m
}
