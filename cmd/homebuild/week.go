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
	"homebuild/internal/output"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/school"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
)

func newWeekCmd(s *streams) *cobra.Command {
	var wishes school.Wishes
	var yes bool
	var old string
	cmd := s.schoolCommand("week [folder] [week]", "begin the file of the next week", noExample, func(_ *cobra.Command, from *folder) error {
		if old != "" {
			return renewWeeks(s, from, old)
		}
		return runWeek(s, from, wishes, s.person && !yes)
	})
	takesWeek(cmd, &wishes.Date)
	flags := cmd.Flags()
	flags.StringVar(&wishes.Date, "monday", "", "the `date` of the week: 2026-09-21")
	flags.StringVar(&wishes.Target, "target", "", "what it is about, a `word` of \"homebuild targets\"")
	flags.StringVar(&wishes.Focus, "focus", "", "the way of working that the class practises, or \"none\"")
	flags.StringVar(&wishes.Picture, "picture", "", "how the class draws, or \"none\"")
	flags.BoolVar(&wishes.Ladder, "ladder", false, "two easier and two harder stories beside the week's own")
	flags.StringVar(&old, "from", "", "turn a `file` of the older form, weeks/2026-09-14.md, into the form of today; \"weeks\" for all")
	flags.BoolVar(&wishes.OddDate, "anyway", false, "take a date that looks like a slip")
	flags.BoolVar(&yes, "yes", false, "ask nothing")
	proposes(cmd, "target", targetWords)
	proposes(cmd, "focus", focusWords)
	proposes(cmd, "picture", pictureWords)
	return cmd
}

// renewWeeks turns weeks of the older form into the form of today. What they were
// made from stays for its owner to take away.
func renewWeeks(s *streams, from *folder, old string) error {
	name := filepath.ToSlash(old)
	if inside, err := filepath.Rel(from.path, old); err == nil && filepath.IsLocal(inside) {
		name = filepath.ToSlash(inside)
	}
	renewed, wrong := from.Renew(name)
	if wrong != nil {
		return told(diag.Diagnostics{*wrong})
	}
	files := each(renewed, func(r week.Renewed) output.File { return output.Text(week.Path(r.Date), r.Text) })
	if err := s.create(from.path, files, "this week is there already", "take the older file away, if nothing in it is missing from the new one"); err != nil {
		return err
	}
	for i, r := range renewed {
		s.say("%s is new, made from %s", path.Join(filepath.ToSlash(from.path), files[i].Path), strings.Join(r.From, " and "))
	}
	s.say("next: take the older files away, all that end in .md")
	return nil
}

// runWeek chooses, asks and writes.
func runWeek(s *streams, from *folder, wishes school.Wishes, ask bool) error {
	year, problems := from.Year()
	if len(problems) > 0 {
		return problems
	}
	proposal, wrong := year.Propose(wishes)
	if wrong == nil && ask {
		given := wishes
		if err := s.askWeek(year, proposal, given, &wishes); err != nil {
			return err
		}
		if proposal, wrong = year.Propose(wishes); wrong == nil {
			if err := s.askWays(proposal, given, &wishes); err != nil {
				return err
			}
			proposal, wrong = year.Propose(wishes)
		}
	}
	if wrong != nil {
		return refused(wrong)
	}
	file := year.WeekFile(proposal)
	if err := s.create(from.path, []output.File{file}, "this week is there already", "give another Monday with --monday, or open the file"); err != nil {
		return err
	}
	s.explain(proposal, path.Join(filepath.ToSlash(from.path), file.Path), year, from)
	return nil
}

// askWeek asks for the date and the target, proposing what was chosen.
func (s *streams) askWeek(year *school.Year, p school.Proposal, given school.Wishes, w *school.Wishes) error {
	w.Date, w.Target = p.Date, p.Target.ID
	var ask []func() error
	if given.Date == "" {
		ask = append(ask, func() error {
			return s.line("Monday of the week, year-month-day", &w.Date, func(string) *diag.Diagnostic { return year.Check(*w) })
		})
	}
	if given.Target == "" {
		ask = append(ask, func() error {
			question := "What is it about?"
			if p.ByRule {
				question += " Proposed: " + because(p.Why, year)
			}
			tellable := year.Tellable()
			return s.askTarget(question, &w.Target, slices.DeleteFunc(school.Targets(), func(t school.Target) bool {
				return t.Grade != p.Target.Grade || !slices.ContainsFunc(tellable, func(told activity.Target) bool { return told.ID == t.ID })
			}))
		})
	}
	return inTurn(ask)
}

// askWays asks for the focus and the picture, proposing what fits best.
func (s *streams) askWays(p school.Proposal, given school.Wishes, w *school.Wishes) error {
	var ask []func() error
	question := func(text string, wish *string, proposed string, words []string) {
		words = append(words, school.None)
		ask = append(ask, func() error {
			i := slices.Index(words, proposed)
			if i < 0 { // none, or one that only this class practises
				i = len(words) - 1
			}
			i, err := s.choose(text, words, i)
			*wish = words[i]
			return err
		})
	}
	if given.Focus == "" {
		question("Which way of working do you practise?", &w.Focus, p.Focus, each(p.Target.Strategies, strategy.Name.String))
	}
	if given.Picture == "" {
		question("How does the class draw?", &w.Picture, p.Picture, each(p.Target.Pictures, picture.Kind.String))
	}
	return inTurn(ask)
}

// explain says what was chosen and why, and what comes next.
func (s *streams) explain(p school.Proposal, file string, year *school.Year, from *folder) {
	s.say("%s is new", file)
	s.say("  target   %s: %s", p.Target.ID, year.Catalog.Source().Plain(p.Target.CanLine()))
	if p.ByRule {
		s.say("           %s", because(p.Why, year))
	}
	s.say("  focus    %s", fits(p.Focus, p.FocusAsked, "helps with", p.Helps, p.Stories))
	s.say("  picture  %s", fits(p.Picture, p.PictureAsked, "can show", p.Shows, p.Stories))
	if settings := year.Settings(p.Habits); len(settings) > 0 {
		s.say("  wishes   %s, as last week", strings.Join(settings, ", "))
	}
	s.say("next: open the file and write your note; homebuild desk%s shows it", argument(from.path))
}

// because says why a target is next.
func because(why activity.Suggestion, year *school.Year) string {
	grade := school.GradeName(why.Target.Grade)
	switch {
	case why.Before == 0 && len(why.New) > 0:
		names := each(why.New, func(k problem.Kind) string { return year.Catalog.Source().Plain(activity.KindName(k)) })
		return fmt.Sprintf("the next target of %s that no week was about; its new kinds of stories: %s", grade, strings.Join(names, "; "))
	case why.Before == 0:
		return fmt.Sprintf("the next target of %s that no week was about", grade)
	case why.Facts > 0:
		return fmt.Sprintf("it was there before; it can show %s that no week had", amount(why.Facts, "addition fact", "addition facts"))
	}
	return fmt.Sprintf("every target of %s had its week; the class met this one least, or longest ago", grade)
}

// fits says how well a choice suits the week's stories.
func fits(word string, asked bool, does string, n, of int) string {
	switch {
	case word == "":
		return school.None
	case asked:
		return word + ", as you asked"
	case n == of:
		return fmt.Sprintf("%s, which %s all %d stories", word, does, of)
	}
	return fmt.Sprintf("%s, which %s %d of the %d stories, more than others", word, does, n, of)
}
