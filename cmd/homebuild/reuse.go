package main

import (
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/publish"
	"homebuild/internal/school"
)

// reuse is what a person asks of a school year that begins with an earlier one.
type reuse struct {
	school.Reuse
	from string // the folder of the earlier year; empty for none
}

// check refuses what the earlier year has settled.
func (r reuse) check(cmd *cobra.Command) error {
	for _, flag := range []string{"name", "languages", "grade", "target", "address"} {
		if r.from != "" && cmd.Flags().Changed(flag) {
			return wrongUse("--"+flag+" cannot go with --from: all settings come from "+r.from, "change site.toml in the new folder when it is there")
		}
	}
	if r.from == "" && len(r.DaysOff) > 0 {
		return wrongUse("--days-off goes with --from", "homebuild start my-class --from last-year")
	}
	return nil
}

// run makes the new school.
func (r reuse) run(s *streams, cmd *cobra.Command, folder string, ask bool) error {
	from, err := openSchool(cmd, r.from)
	if err != nil {
		return err
	}
	defer from.close()
	r.Today = s.today
	made, problems := from.Reuse(r.Reuse)
	if ask && len(problems) == 0 {
		if err := r.ask(s, from, made.Weeks[0].To); err != nil {
			return err
		}
		made, problems = from.Reuse(r.Reuse)
	}
	if len(problems) > 0 {
		return problems
	}
	if err := s.create(folder, made.Files, "this file is there already", "choose another folder, or move these away"); err != nil {
		return err
	}
	s.say("%q is ready, with %s:", filepath.ToSlash(folder), diag.Amount(len(made.Weeks), "week", "weeks"))
	for _, m := range made.Weeks {
		s.say("  %s  was %s", m.To, m.From)
	}
	pages, err := publish.Published(filepath.Join(r.from, publicFolder)) // they come along, so that old links live
	if err == nil && len(pages) > 0 {
		public := filepath.Join(folder, publicFolder)
		_, err = publish.Write(public, pages, publish.Options{})
		s.say("the pages of %s are in %s, too: old links stay alive", r.from, public)
	}
	if err != nil {
		return err
	}
	s.say("next: read each note once, it may name a day of the year before; homebuild desk%s shows all", argument(folder))
	return nil
}

// ask asks for the first Monday and for the days off.
func (r *reuse) ask(s *streams, from *folder, proposed string) error {
	a := &asker{streams: s}
	check := func(string) *diag.Diagnostic {
		if _, problems := from.Reuse(r.Reuse); len(problems) > 0 {
			return &problems[0]
		}
		return nil
	}
	if r.First == "" {
		r.First = proposed
		a.line("First Monday, year-month-day", &r.First, check)
	}
	if len(r.DaysOff) == 0 {
		a.ask("Days without school, such as 2027-11-25, 2027-12-20 to 2027-12-31; enter for none yet:", func(typed string) *diag.Diagnostic {
			r.DaysOff = strings.FieldsFunc(typed, func(c rune) bool { return c == ',' })
			return check(typed)
		})
	}
	return a.err
}
