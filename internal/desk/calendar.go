package desk

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
)

// Calendar does something to a whole week: see [Calls].
func (d *Desk) Calendar(wish CalendarWish) (Act, error) {
	out := Act{Changes: Changes{}, Monday: wish.Date}
	weekPath, storiesPath := week.Path(wish.Date), week.StoriesPath(wish.Date)
	switch wish.Do {
	case "take":
		s, err := d.open(wish.Date)
		if err != nil {
			return Act{}, err
		}
		out.Changes[weekPath] = &s.text
	case "remove":
		for _, path := range []string{weekPath, storiesPath} {
			if d.files[path] != nil {
				out.Changes[path] = nil
			}
		}
	case "off", "open":
		text := d.daysOff(wish.Date, wish.Do == "off")
		out.Changes[week.SiteFile] = &text
	case "move", "again":
		return d.elsewhere(wish)
	default:
		return Act{}, fmt.Errorf("nothing to do to a week is called %q", wish.Do)
	}
	return out, nil
}

// elsewhere moves a week to another Monday, or lays it there once more: with other
// stories, and a letter yet to be written.
func (d *Desk) elsewhere(wish CalendarWish) (Act, error) {
	if d.files[week.Path(wish.To)] != nil {
		return Act{}, refuse(wish.To, diag.Diagnostic{Text: fmt.Sprintf("the week of %s is there already", wish.To), Code: diag.Taken, Value: wish.To})
	}
	if _, diagnostic := week.ParseDay(wish.To); diagnostic != nil {
		return Act{}, refuse(wish.Date, *diagnostic)
	}
	s, err := d.open(wish.Date)
	if err != nil {
		return Act{}, err
	}
	out := Act{Changes: Changes{}, Monday: wish.To}
	text := tomlfile.Remove(s.text, LineShowFrom)
	text = strings.ReplaceAll(text, "# The week of "+week.DayName(wish.Date), "# The week of "+week.DayName(wish.To))
	if wish.Do == "again" {
		text = tomlfile.Remove(text, LineNote)
		out.Changes[week.Path(wish.To)] = &text
		return out, nil
	}
	out.Changes[week.Path(wish.To)] = &text
	if s.laid {
		out.Changes[week.Path(wish.Date)] = nil
	}
	if stories := d.text(week.StoriesPath(wish.Date)); stories != "" {
		out.Changes[week.StoriesPath(wish.Date)] = nil
		out.Changes[week.StoriesPath(wish.To)] = &stories
	}
	return out, nil
}

// daysOff writes a whole week into the days off, or takes its days out.
func (d *Desk) daysOff(monday string, off bool) string {
	s := d.read()
	last := dayBefore(monday, -4)
	var days []string
	for _, had := range s.Site.DaysOff {
		if off || had.Last < monday || had.First > last {
			days = append(days, had.String())
			continue
		}
		if had.First < monday {
			days = append(days, week.Days{First: had.First, Last: dayBefore(monday, 1)}.String())
		}
		if had.Last > last {
			days = append(days, week.Days{First: dayBefore(last, -1), Last: had.Last}.String())
		}
	}
	if off {
		days = append(days, week.Days{First: monday, Last: last}.String())
	}
	slices.Sort(days)
	return d.site("days-off", days)
}

// site is the text of the site's settings with another list; without the setting
// where nothing is in it.
func (d *Desk) site(key string, list []string) string {
	if len(list) == 0 {
		return tomlfile.Remove(d.text(week.SiteFile), key)
	}
	return tomlfile.Set(d.text(week.SiteFile), key, tomlfile.QuoteList(list))
}

// siteKeys are the names in the file of what [Settings] has.
var siteKeys = map[string]string{
	"name": "name", "class": "class", "address": "address", "languages": "languages", "look": "theme", "answers": "answers", "index": "index", "daysOff": "days-off",
}

// wordsOf begins the names of what the class calls a way or a picture, before its id.
const wordsOf = "words."

// Settings writes something that holds all year: see [Calls]. What would keep the
// pages from being made is refused.
func (d *Desk) Settings(wish Setting) (Act, error) {
	key, known := siteKeys[wish.Key]
	if strings.HasPrefix(wish.Key, wordsOf) {
		key, known = wish.Key, true
	}
	if !known {
		return Act{}, fmt.Errorf("no setting is called %q", wish.Key)
	}
	text := d.text(week.SiteFile)
	value := strings.TrimSpace(wish.Value)
	switch {
	case key == "languages" || key == "days-off":
		text = d.site(key, strings.Fields(value))
		if key == "days-off" {
			text = d.site(key, listed(value))
		}
	case value == "":
		text = tomlfile.Remove(text, key)
	case key == "index":
		on, err := strconv.ParseBool(value)
		if err != nil {
			return Act{}, err
		}
		text = tomlfile.Set(text, key, strconv.FormatBool(on))
	default:
		text = tomlfile.Set(text, key, tomlfile.Quote(value))
	}
	was := d.read()
	now := d.read(fileText{week.SiteFile, text})
	for _, p := range now.problems {
		if p.File == week.SiteFile && !slices.Contains(was.problems, p) {
			return Act{}, wrong{now.finding(p, true)}
		}
	}
	return Act{Changes: Changes{week.SiteFile: &text}}, nil
}

// listed are the lines of a value.
func listed(value string) []string {
	var out []string
	for line := range strings.Lines(value) {
		if line = strings.TrimSpace(line); line != "" {
			out = append(out, line)
		}
	}
	return out
}

func (s sheets) settings() Settings {
	out := Settings{
		Name: s.Site.Name.In(s.Site.School, s.Site.School), Class: s.Site.Class.In(s.Site.School, s.Site.School), Address: s.Site.Address,
		Languages: s.Site.Languages, Look: s.Site.Theme, Answers: s.Site.Answers, Index: s.Site.Index,
	}
	for _, days := range s.Site.DaysOff {
		out.DaysOff = append(out.DaysOff, days.String())
	}
	return out
}
