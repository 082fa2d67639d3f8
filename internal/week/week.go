package week

import (
	"cmp"
	"fmt"
	"slices"
	"time"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/problem"
	"homebuild/internal/tomlfile"
)

// Localized is a few words of the school's own: one text for every language, or one
// for each.
type Localized struct {
	Plain string            // the text when it is the same everywhere
	By    map[string]string // the text by language tag
}

// In gives the text for a language, or that of the school's language, or the
// plain one.
func (t Localized) In(language, school string) string {
	if s := t.By[language]; s != "" {
		return s
	}
	if s := t.By[school]; s != "" {
		return s
	}
	return t.Plain
}

// Site is a school's folder, read and checked.
type Site struct {
	Name      Localized         // the school or the class, as families know it
	Class     Localized         // a label such as "Room 4"; may be empty
	Address   string            // where the site will live, ending in "/"; may be empty
	Languages []string          // tags, largest page language first
	Grade     *problem.Grade    // of the class; nil where the file does not say
	School    string            // the tag of the class's own language, one of Languages
	Theme     string            // empty for the plain theme
	Key       string            // any word; another word gives other numbers
	Answers   string            // where families who print find the answers: AnswersFoot or AnswersLink
	Index     bool              // whether search engines may list the pages
	DaysOff   []Days            // on which there is no school
	Words     map[string]string // what the class calls a way or a picture, by its id, in the class's own language
	Review    bool              // whether weeks bring back what earlier ones were about, where they do not say
	Weeks     []Week            // oldest first
}

// Week is one week file with its notes.
type Week struct {
	Date          string         // 2026-09-14
	ShowFrom      string         // the day from which families see it
	OddDate       bool           // whether a date that looks like a slip is meant
	Target        string         // a target's id; empty when Spec is set
	Spec          *activity.Spec // a target spelled out
	Focus         string         // the strategy the class practices; may be empty
	Picture       string         // may be empty
	Stories       int            // to try at home, 1 to 8
	Place         string         // where the week's stories begin; may be empty
	ExtraSentence bool           // one sentence that is not needed
	NumberWords   bool           // numbers written as words
	Ladder        bool           // whether easier and harder stories stand beside the week's own
	WarmUp        string         // one minute of moving first; may be empty
	Review        bool           // whether a story brings back what an earlier week was about
	Minutes       int            // the time it takes at home
	Allow         []string
	Notes         map[string]string // Markdown by language tag
	HasNote       bool              // whether the file has a note, be it an empty one; without it families read a greeting of ours
	Proposed      []string          // settings that the plan proposed and nobody chose: the desk lets them follow the others
	OwnStories    []OwnStory        // told by the teacher, in the file's order
	Kept          []KeptStory       // the stories as families had them, the worked one first, those of the ladder last; none until then

	file     string
	settings *tomlfile.Section
	kept     *tomlfile.Section
	keptText string
}

// OwnStory is a story in the teacher's own words. Its texts are plain, on one
// line; they may hold marks such as [6 kites], which internal/ownstory knows.
type OwnStory struct {
	Text   string            // in the class's language
	Answer string            // the answer as a sentence, in the class's language; may be empty
	In     map[string]string // translations of Text by language tag

	// What it tells, as the teacher chose; all empty until then. Any of these can
	// be enough: see ownstory.Wish.
	Happens, Kind, Equation string
	Choice                  int
}

// StorySetting names a setting of the i-th own story for [Week.Problem]: "text",
// "kind", "answer" or "in.es".
func StorySetting(i int, setting string) string { return fmt.Sprintf("own-story[%d].%s", i, setting) }

// Problem says something about a week that only a later room can know, at the
// line of the setting it is about; without a line when the file leaves the
// setting out.
func (w Week) Problem(setting, text, hint string) diag.Diagnostic {
	p := diag.Diagnostic{File: w.file, Text: text, Hint: hint}
	if w.settings != nil {
		p.Line = w.settings.LineOf(setting)
	}
	return p
}

// KeptProblem says something about the i-th kept story, at the line of a setting.
func (w Week) KeptProblem(i int, setting, text, hint string) diag.Diagnostic {
	p := diag.Diagnostic{File: StoriesPath(w.Date), Text: text, Hint: hint}
	if w.kept != nil {
		rung, place := w.Kept[i].Rung, 0 // in its list of tables
		for _, before := range w.Kept[:i] {
			if before.Rung == rung {
				place++
			}
		}
		p.Line = w.kept.LineOf(fmt.Sprintf("%s[%d].%s", rung, place, setting))
	}
	return p
}

// OwnTarget is the target that the week spells out.
func (w Week) OwnTarget() (activity.Target, error) {
	if w.Spec == nil {
		return activity.Target{}, fmt.Errorf("the week spells no target out")
	}
	return w.Spec.Target()
}

// Writes reports whether the week's file has a setting.
func (w Week) Writes(setting string) bool { return w.settings != nil && w.settings.Has(setting) }

// Weekday is the day of the week that the date is.
func (w Week) Weekday() time.Weekday {
	return mustDay(w.Date).Weekday()
}

// Allowed holds the words that other rooms know. Where a list is empty, no
// word is right.
type Allowed struct {
	Targets []string // ids
	// TargetsNamed are the ids of targets that words name without doubt, the whole
	// sentence of one or the code of a standard; nil where only ids are known.
	TargetsNamed func(words string) []string
	Strategies   []string
	Pictures     []string
	Places       []string // where stories happen
	WarmUps      []string
	Themes       []string
	Kinds        []string // situations, for a target spelled out
	Languages    []string // tags that have a language file
}

// Where families find the answers to the printed stories.
const (
	AnswersFoot = "foot" // on the paper, upside down at its foot
	AnswersLink = "link" // on the pages that the code on the paper leads to
)

// Answers are the words for where the answers are.
func Answers() []string { return []string{AnswersFoot, AnswersLink} }

// Limits of what a week can ask.
const (
	MaxStories     = activity.MostStories
	MaxMinutes     = 60
	DefaultStories = 4
	DefaultMinutes = 10
)

// sortWeeks puts the oldest week first.
func sortWeeks(weeks []Week) {
	slices.SortFunc(weeks, func(a, b Week) int { return cmp.Compare(a.Date, b.Date) })
}
