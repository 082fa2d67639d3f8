package school

import (
	"io/fs"
	"slices"
	"strings"
	"testing/fstest"
	"time"

	"homebuild/internal/diag"
	"homebuild/internal/output"
	"homebuild/internal/pattern"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
)

// Reuse is the wish to begin a school year with the weeks of an earlier one.
type Reuse struct {
	First   string   // the first Monday, or the first day of school after it; empty: a year after the earlier one
	DaysOff []string // of the new year, as site.toml writes them; beside those that it has already
	Today   string   // no first Monday is proposed before it
}

// Reused is a new school with the weeks of an earlier one.
type Reused struct {
	Files []output.File
	Weeks []Moved // oldest first
}

// Moved is a week that has come to another Monday.
type Moved struct{ From, To string }

// Reuse gives the files of a new school: the settings of this one, its languages and
// themes, and its weeks with their notes and kept stories on new Mondays. They follow
// each other as they did: days off are passed over, those of either year; where only
// the new year says its days off, a week follows in each week of school. A week
// without kept stories has others. Problems are those of this school, or, without a
// file, a wish that cannot stand.
func (s *School) Reuse(wish Reuse) (Reused, diag.Diagnostics) {
	in, problems := s.Load()
	if len(problems) > 0 {
		return Reused{}, problems
	}
	old := in.Site
	if wish.First == "" {
		wish.First = max(mustMonday(old.Weeks[0].Date, 52*7), MondayFrom(wish.Today))
	}
	if wrong := checkMonday(wish.First); wrong != nil {
		return Reused{}, diag.Diagnostics{*wrong}
	}
	now, wrong := old.WithDaysOff(wish.First, wish.DaysOff)
	if wrong != nil {
		return Reused{}, diag.Diagnostics{*wrong}
	}
	out := Reused{Weeks: movedWeeks(old, now, wish.First)}
	folder := fstest.MapFS{}
	for _, source := range append(Sources(), readmeFile) {
		_ = fs.WalkDir(s.files, source, func(name string, entry fs.DirEntry, err error) error {
			if err != nil || !entry.Type().IsRegular() {
				return nil // it was read a moment ago, or is nothing of ours
			}
			data, _ := fs.ReadFile(s.files, name)
			to, text := out.moved(name, string(data), now.DaysOff)
			folder[to] = &fstest.MapFile{Data: []byte(text)}
			out.Files = append(out.Files, output.Text(to, text))
			return nil
		})
	}
	_, problems = Open("", folder).Assemble(nil)
	return out, problems
}

// mustMonday is the Monday of the week of a date, some days later.
func mustMonday(date string, later int) string {
	return monday(must(time.Parse(time.DateOnly, date)).AddDate(0, 0, later-6))
}

// movedWeeks gives each week its new Monday.
func movedWeeks(old, now week.Site, first string) []Moved {
	to := first
	for now.Off(to) {
		to = mondayAfter(to)
	}
	out := []Moved{{old.Weeks[0].Date, to}}
	oneByOne := len(now.DaysOff) > 0 && len(old.DaysOff) == 0
	for i, w := range old.Weeks[1:] {
		steps := schoolWeeks(old, old.Weeks[i].Date, w.Date)
		if oneByOne {
			steps = 1
		}
		for range max(1, steps) {
			for to = mondayAfter(to); now.Off(to); to = mondayAfter(to) {
			}
		}
		out = append(out, Moved{w.Date, to})
	}
	return out
}

// schoolWeeks counts the weeks of school from one to another.
func schoolWeeks(site week.Site, from, to string) int {
	count := 0
	for day := mustMonday(from, 7); day <= to; day = mondayAfter(day) {
		if !site.Off(day) {
			count++
		}
	}
	return count
}

var (
	showFromDay    = pattern.Of(`(?m)^((?:# )?show-from\s*=\s*["']?)(\d{4}-\d\d-\d\d)`)
	oddDateSetting = pattern.Of(`(?m)^(?:# The date is meant as it is:\n)?odd-date\s*=.*\n`)
)

// moved is a file of the earlier school, at its new place and with its new days.
func (r Reused) moved(name, text string, daysOff []week.Days) (string, string) {
	if name == week.SiteFile {
		if len(daysOff) > 0 {
			text = tomlfile.Set(text, "days-off", tomlfile.QuoteList(each(daysOff, week.Days.String)))
		}
		return name, text
	}
	if name == readmeFile {
		return name, strings.ReplaceAll(text, r.Weeks[0].From, r.Weeks[0].To)
	}
	i := slices.IndexFunc(r.Weeks, func(m Moved) bool { return name == week.Path(m.From) || name == week.StoriesPath(m.From) })
	if i < 0 {
		return name, text
	}
	m := r.Weeks[i]
	text = strings.Replace(text, week.DayName(m.From), week.DayName(m.To), 1)
	if name == week.StoriesPath(m.From) {
		return week.StoriesPath(m.To), strings.Replace(text, "homebuild swap "+m.From, "homebuild swap "+m.To, 1)
	}
	text = showFromDay().ReplaceAllStringFunc(text, func(setting string) string {
		parts := showFromDay().FindStringSubmatch(setting)
		day := must(time.Parse(time.DateOnly, parts[2]))
		before := must(time.Parse(time.DateOnly, m.From)).Sub(day)
		return parts[1] + must(time.Parse(time.DateOnly, m.To)).Add(-before).Format(time.DateOnly)
	})
	return week.Path(m.To), oddDateSetting().ReplaceAllString(text, "")
}
