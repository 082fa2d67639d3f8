package main

import (
	"fmt"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/publish"
	"homebuild/internal/site"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
)

// weekOptions is what a person asks of a new week.
type weekOptions struct {
	*streams
	folder  string
	monday  string
	target  string
	focus   string
	picture string
	yes     bool
}

func newWeekCmd(s *streams) *cobra.Command {
	opts := weekOptions{streams: s}
	cmd := &cobra.Command{
		Use:   "week [folder]",
		Short: "begin the file of the next week",
		Long: `Week makes the file of the next week, with a remark above each setting and a note
for you to change, and says what it chose and why:

  the Monday   after the newest week; the next Monday when there is no week
  the target   from the grade of the newest week, in the order of "homebuild
               targets": the first with a kind of story that no week had yet;
               when all kinds were met, the first that no week was about; when
               all had their week, the one that was longest ago
  the focus    the way of working that helps with the most of its stories
  the picture  the one that can show the most of them

It asks whether that is right. In a script, or to answer beforehand, give the
flags. A file that is there already is never changed.

Families see the newest week first: the one with the latest date when you build,
whatever day it is. Keep a week that must wait in another folder, and move it into
"weeks" in its time.

A story of your own goes below the settings of the week. The file has an example
to change; "homebuild help own-stories" tells all about it.

` + someFolder,
		Example: `  homebuild week my-class
  homebuild week my-class --target compare-within-20 --yes`,
		Args: atMostOneFolder,
		RunE: func(cmd *cobra.Command, args []string) (err error) {
			if opts.folder, err = schoolFolder(cmd, args); err != nil {
				return err
			}
			return runWeek(opts)
		},
		ValidArgsFunction: folders,
	}
	flags := cmd.Flags()
	flags.StringVar(&opts.monday, "monday", "", "the `date` of the week: 2026-09-21")
	flags.StringVar(&opts.target, "target", "", "what it is about, a `word` of \"homebuild targets\"")
	flags.StringVar(&opts.focus, "focus", "", "the way of working that the class practises, or \"none\"")
	flags.StringVar(&opts.picture, "picture", "", "how the class draws, or \"none\"")
	flags.BoolVar(&opts.yes, "yes", false, "ask nothing")
	proposes(cmd, "target", targetWords)
	proposes(cmd, "focus", func() []string { return append(focusWords(), none) })
	proposes(cmd, "picture", func() []string { return append(pictureWords(), none) })
	return cmd
}

// none is the answer that leaves a setting out.
const none = "none"

// chosen is a week that was chosen, with the reasons.
type chosen struct {
	newWeek
	why                      activity.Suggestion
	suggested                bool // by rule, not by the person
	helps, shows, stories    int
	focusAsked, pictureAsked bool
}

// runWeek chooses, asks and writes.
func runWeek(opts weekOptions) error {
	from, err := openOne(opts.folder)
	if err != nil {
		return err
	}
	defer from.close()
	from.mayBeEmpty = true
	in, earlier, err := from.yearSoFar()
	if err != nil {
		return err
	}
	english, err := englishWords()
	if err != nil {
		return err
	}
	c, err := opts.choose(in, earlier, english)
	if err != nil {
		return err
	}
	file, err := c.file(spoken{english: english, school: in.Site.School, tags: in.Site.Languages})
	if err != nil {
		return err
	}
	if err := opts.free(in, file.Path); err != nil {
		return err
	}
	taken, err := publish.Create(opts.folder, []publish.File{file})
	if err != nil {
		return err
	}
	if len(taken) > 0 {
		return opts.there(file.Path)
	}
	opts.explain(c, file.Path, english)
	return nil
}

// yearSoFar reads the school and plans its weeks.
func (s *school) yearSoFar() (site.Input, []activity.WeekPlan, error) {
	in, err := s.input()
	if err != nil {
		return in, nil, err
	}
	earlier, problems := site.Year(in)
	if len(problems) > 0 {
		return in, nil, s.here(problems)
	}
	return in, earlier, nil
}

// choose proposes a week, and lets the person choose another.
func (o weekOptions) choose(in site.Input, earlier []activity.WeekPlan, english *i18n.Language) (chosen, error) {
	targets := tellable(in)
	c := chosen{}
	c.date = o.monday
	if c.date == "" {
		c.date = o.nextMonday(in.Site.Weeks)
	}
	next, ok := activity.Next(earlier, targets)
	if ok && o.target == "" {
		c.target, c.why, c.suggested = next.Target, next, true
	}
	if i := slices.IndexFunc(targets, func(t activity.Target) bool { return t.ID == firstTarget }); len(earlier) == 0 && i >= 0 {
		c.target = targets[i]
	}
	asks := o.person && !o.yes
	if asks {
		if err := o.askWeek(&c, targets, english); err != nil {
			return c, err
		}
	} else if o.target != "" {
		if err := checkTarget(o.target, in.Targets); err != nil {
			return c, err
		}
		i := slices.IndexFunc(targets, func(t activity.Target) bool { return t.ID == o.target })
		if i < 0 {
			return c, wrongUse(fmt.Sprintf("%q cannot be told in all languages of the site yet", o.target), `"homebuild check" says which language holds what back`)
		}
		c.target = targets[i]
	}
	if c.target.ID == "" {
		return c, wrongUse("there is no target to propose", "give one: --target "+firstTarget)
	}
	if err := checkMonday(c.date); err != nil {
		return c, err
	}
	return c, o.fit(&c, in, earlier, asks)
}

// nextMonday is the one after the newest week, or the next of the calendar for
// the first week there is.
func (o weekOptions) nextMonday(weeks []week.Week) string {
	if len(weeks) == 0 {
		return mondayFrom(o.today())
	}
	return mondayAfter(weeks[len(weeks)-1].Date)
}

// fit chooses the focus and the picture that suit the target.
func (o weekOptions) fit(c *chosen, in site.Input, earlier []activity.WeekPlan, asks bool) error {
	var before []activity.Request
	for _, w := range earlier {
		before = append(before, w.Request)
	}
	r := activity.Request{Week: c.date, Key: in.Site.Key, Target: c.target, Stories: 4}
	c.focus, c.helps, c.stories = activity.BestFocus(before, r)
	if o.focus != "" {
		name, ok := strategy.ParseName(o.focus)
		if !ok && o.focus != none {
			return wrongUse(fmt.Sprintf("%q is not a way of working", o.focus), choice(o.focus, each(c.target.Strategies, strategy.Name.String)))
		}
		c.focus, c.focusAsked = name, true
	}
	r.Focus = c.focus
	c.picture, c.shows, c.stories = activity.BestPicture(before, r)
	if o.picture != "" {
		kind, ok := picture.ParseKind(o.picture)
		if !ok && o.picture != none {
			return wrongUse(fmt.Sprintf("%q is not a picture", o.picture), choice(o.picture, each(c.target.Pictures, picture.Kind.String)))
		}
		c.picture, c.pictureAsked = kind, true
	}
	if asks {
		return o.askFit(c)
	}
	return nil
}

// tellable lists the targets whose stories every language of the site can tell.
func tellable(in site.Input) []activity.Target {
	told := map[problem.Kind]bool{}
	for _, f := range in.Stock.Frames {
		if len(in.Catalog.Without("story."+f.ID)) == 0 {
			if kind, ok := f.Kind(); ok {
				told[kind] = true
			}
		}
	}
	return slices.DeleteFunc(slices.Clone(in.Targets), func(t activity.Target) bool {
		return slices.ContainsFunc(t.Kinds, func(k problem.Kind) bool { return !told[k] })
	})
}

// free wants no other week to have the date.
func (o weekOptions) free(in site.Input, file string) error {
	date := strings.TrimSuffix(path.Base(file), ".md")
	if slices.ContainsFunc(in.Site.Weeks, func(w week.Week) bool { return w.Date == date }) {
		return o.there(file)
	}
	return nil
}

// there says that the week is there already.
func (o weekOptions) there(file string) error {
	o.problems(diag.Problems{{File: path.Join(filepath.ToSlash(o.folder), file), Text: "this week is there already"}})
	o.tell("nothing was written", "give another Monday with --monday, or open the file")
	return errTold
}

// explain says what was chosen and why, and what comes next.
func (o weekOptions) explain(c chosen, file string, english *i18n.Language) {
	o.say("%s is new", path.Join(filepath.ToSlash(o.folder), file))
	o.say("  target   %s: %s", c.target.ID, english.Plain(c.target.CanLine()))
	if c.suggested {
		o.say("           %s", because(c.why, english))
	}
	o.say("  focus    %s", fits(c.focus.Valid(), c.focusAsked, c.focus.String(), "helps with", c.helps, c.stories))
	o.say("  picture  %s", fits(c.picture.Valid(), c.pictureAsked, c.picture.String(), "can show", c.shows, c.stories))
	o.say("next: open the file and write your note; homebuild preview%s shows it", argument(o.folder))
}

// because says why a target is next.
func because(s activity.Suggestion, english *i18n.Language) string {
	grade := gradeName(int(s.Target.Grade))
	switch {
	case len(s.New) > 0:
		names := each(s.New, func(k problem.Kind) string { return english.Plain(activity.KindName(k)) })
		return fmt.Sprintf("the first target of %s with a kind of story that no week had yet: %s", grade, strings.Join(names, "; "))
	case s.Before == 0:
		return fmt.Sprintf("all kinds of stories were met; the first target of %s that no week was about", grade)
	}
	return fmt.Sprintf("every target of %s had its week; this one's is longest ago", grade)
}

// fits says how well a choice suits the week's stories.
func fits(any, asked bool, word, does string, n, of int) string {
	switch {
	case !any:
		return "none"
	case asked:
		return word + ", as you asked"
	case n == of:
		return fmt.Sprintf("%s, which %s all %d stories", word, does, of)
	}
	return fmt.Sprintf("%s, which %s %d of the %d stories, more than others", word, does, n, of)
}
