package main

import (
	"path"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/output"
	"homebuild/internal/picture"
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
	flags.StringVar(&wishes.Focus, "focus", "", "the way of working that the class practices, or \"none\"")
	flags.StringVar(&wishes.Picture, "picture", "", "how the class draws, or \"none\"")
	flags.BoolVar(&wishes.Ladder, "ladder", false, "two easier and two harder stories beside the week's own")
	flags.StringVar(&old, "from", "", "turn a `file` of the older form, weeks/2026-09-14.md, into the form of today; \"weeks\" for all")
	flags.BoolVar(&wishes.OddDate, "anyway", false, "take a date that looks like a slip")
	flags.BoolVar(&yes, "yes", false, "ask nothing")
	proposes(cmd, "target", targetWords)
	proposes(cmd, "focus", wordsOf(strategy.Names(), school.None))
	proposes(cmd, "picture", wordsOf(picture.Kinds(), school.None))
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
		return diag.Diagnostics{*wrong}
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
		given, a := wishes, &asker{streams: s}
		a.week(year, proposal, given, &wishes)
		if proposal, wrong = year.Propose(wishes); wrong == nil && a.err == nil {
			a.ways(proposal, given, &wishes)
			proposal, wrong = year.Propose(wishes)
		}
		if a.err != nil {
			return a.err
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

// week asks for the date and the target, proposing what was chosen.
func (a *asker) week(year *school.Year, p school.Proposal, given school.Wishes, w *school.Wishes) {
	w.Date, w.Target = p.Date, p.Target.ID
	if given.Date == "" {
		a.line("Monday of the week, year-month-day", &w.Date, func(string) *diag.Diagnostic { return year.Check(*w) })
	}
	if given.Target == "" {
		question := "What is it about?"
		if why := year.Reasons(p).Target; why != "" {
			question += " Proposed: " + why
		}
		w.Target = a.target(question, w.Target, year.TargetsOf(p.Target.Grade))
	}
}

// ways asks for the focus and the picture, proposing what fits best.
func (a *asker) ways(p school.Proposal, given school.Wishes, w *school.Wishes) {
	word := func(question, proposed string, words []string) string {
		words = append(words, school.None)
		i := slices.Index(words, proposed)
		if i < 0 { // none, or one that only this class practices
			i = len(words) - 1
		}
		return words[a.choose(question, words, i)]
	}
	if given.Focus == "" {
		w.Focus = word("Which way of working do you practice?", p.Focus, each(p.Target.Strategies, strategy.Name.String))
	}
	if given.Picture == "" {
		w.Picture = word("How does the class draw?", p.Picture, each(p.Target.Pictures, picture.Kind.String))
	}
}

// explain says what was chosen and why, and what comes next.
func (s *streams) explain(p school.Proposal, file string, year *school.Year, from *folder) {
	s.say("%s is new", file)
	s.say("  target   %s: %s", p.Target.ID, year.Catalog.Source().Plain(p.Target.CanLine()))
	why := year.Reasons(p)
	if why.Target != "" {
		s.say("           %s", why.Target)
	}
	s.say("  focus    %s", why.Focus)
	s.say("  picture  %s", why.Picture)
	if settings := year.Settings(p.Habits); len(settings) > 0 {
		s.say("  wishes   %s, as last week", strings.Join(settings, ", "))
	}
	s.say("next: open the file and write your note; homebuild desk%s shows it", argument(from.path))
}
