package main

import (
	"path"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/output"
	"homebuild/internal/publish"
	"homebuild/internal/school"
)

func newStartCmd(s *streams) *cobra.Command {
	var draft school.Draft
	var earlier reuse
	var yes bool
	var grade string
	cmd := &cobra.Command{
		Use:   "start folder",
		Short: "begin a site of your own",
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return wrongUse("start needs the name of a folder", "homebuild start my-class")
			}
			return atMostOneFolder(cmd, args)
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			if err := earlier.check(cmd); err != nil {
				return err
			}
			if earlier.from != "" {
				earlier.First = draft.Week.Date
				return earlier.run(s, cmd, args[0], s.person && !yes)
			}
			var wrong *diag.Diagnostic
			if draft.Grade, wrong = school.ParseGrade(grade); wrong != nil {
				return refused(wrong)
			}
			return runStart(s, args[0], draft, yes)
		},
		ValidArgsFunction: folders,
	}
	flags := cmd.Flags()
	flags.StringVar(&draft.Name, "name", "", "the `name` of the school or the class, as families know it")
	flags.StringSliceVar(&draft.Languages, "languages", nil, "the `languages` of the pages, the class's own first: en,es")
	flags.StringVar(&grade, "grade", "", "the `grade` of the class: 1, 2, 3, or K for kindergarten")
	flags.StringVar(&draft.Week.Date, "monday", "", "the `date` of the first week: 2026-09-14 (default: the next Monday)")
	flags.StringVar(&draft.Week.Target, "target", "", "what the first week is about, a `word` of \"homebuild targets\" (default: the first of the grade)")
	flags.StringVar(&draft.Address, "address", "", "the web `address` where the pages will live, if there is one")
	flags.StringVar(&earlier.from, "from", "", "begin with the weeks of an earlier year, in this `folder`")
	flags.StringSliceVar(&earlier.DaysOff, "days-off", nil, "with --from, the `days` without school: \"2027-11-25,2027-12-20 to 2027-12-31\"")
	flags.BoolVar(&yes, "yes", false, "ask nothing")
	proposes(cmd, "languages", languageWords)
	proposes(cmd, "target", targetWords)
	return cmd
}

// runStart asks, checks and writes.
func runStart(s *streams, folder string, draft school.Draft, yes bool) error {
	asked := s.person && !yes
	if err := missing(draft); err != nil && !asked && !yes {
		return err
	}
	draft.Today = s.today
	proposed := draft.Proposed(folder)
	if asked && draft.Name == "" {
		proposed.Name = "School" // until it is asked for
	}
	if err := refused(proposed.Check()); err != nil {
		return err
	}
	if asked {
		if err := s.askStart(draft, &proposed); err != nil {
			return err
		}
	}
	files, wrong := proposed.Files()
	if wrong != nil {
		return refused(wrong)
	}
	if err := s.create(folder, files, "this file is there already", "choose another folder, or move these away"); err != nil {
		return err
	}
	s.started(folder, files, proposed.Week.Target)
	return nil
}

// missing says what nobody is there to be asked.
func missing(d school.Draft) error {
	var flags []string
	if d.Name == "" {
		flags = append(flags, "--name")
	}
	if len(d.Languages) == 0 {
		flags = append(flags, "--languages")
	}
	if len(flags) == 0 {
		return nil
	}
	return wrongUse("nobody is there to be asked, so start needs "+strings.Join(flags, " and "),
		`homebuild start my-class --name "Pebble Lane School" --languages en,es`)
}

// askStart asks what no flag has answered. Each answer is checked among the
// others as they stand.
func (s *streams) askStart(given school.Draft, d *school.Draft) error {
	a := &asker{streams: s}
	check := func(string) *diag.Diagnostic { return d.Check() }
	if given.Name == "" {
		d.Name = ""
		a.line("School or class, as families know it", &d.Name, check)
	}
	if len(given.Languages) == 0 {
		d.Languages = a.languages()
	}
	if given.Week.Date == "" {
		a.line("First Monday, year-month-day", &d.Week.Date, check)
	}
	if given.Week.Target == "" {
		if given.Grade == nil {
			grades := school.Grades()
			d.Grade = &grades[a.choose("Grade", each(grades, school.GradeName), slices.Index(grades, school.UsualGrade))]
		}
		d.Week.Target = a.target("What is the first week about?", school.FirstTargetOf(*d.Grade), school.TargetsOf(*d.Grade))
	}
	if given.Address == "" {
		a.line("Where will the pages live? A web address; enter for none yet", &d.Address, check)
	}
	return a.err
}

// languages asks for the class's language and for the others at home.
func (a *asker) languages() []string {
	ready := school.Ready()
	english := slices.IndexFunc(ready, func(l school.Language) bool { return l.Tag == i18n.SourceTag })
	i := a.choose("Language of the class", each(ready, school.Language.String), english)
	tags, others := []string{ready[i].Tag}, slices.Delete(slices.Clone(ready), i, i+1)
	for _, i := range a.chooseSome("Other languages at home", each(others, school.Language.String)) {
		tags = append(tags, others[i].Tag)
	}
	return tags
}

// target asks for a target by what a child can say at the end of the week. Where the
// proposed one is not among them, the first is.
func (a *asker) target(question, proposed string, targets []school.Target) string {
	at := max(0, slices.IndexFunc(targets, func(t school.Target) bool { return t.ID == proposed }))
	return targets[a.choose(question, each(targets, func(t school.Target) string { return t.Can + "  " + t.ID }), at)].ID
}

// started says what there is now and how to go on.
func (s *streams) started(folder string, files []output.File, target string) {
	about := []string{"the settings of the year", "the first week: " + target, "how to go on, week by week"}
	s.say("%q is ready:", filepath.ToSlash(folder))
	for i, f := range files {
		s.say("  %-21s  %s", f.Path, about[i])
	}
	s.say("next: homebuild desk%s", argument(folder))
	s.say("there you write your letter, or open %s in a text editor: the page follows", path.Join(filepath.ToSlash(folder), files[1].Path))
}

// create writes new files into a folder. What is there already is told, and then
// nothing is written.
func (s *streams) create(folder string, files []output.File, there, hint string) error {
	taken, err := publish.Create(folder, files)
	if err != nil || len(taken) == 0 {
		return err
	}
	s.problems(each(taken, func(name string) diag.Diagnostic {
		return diag.Diagnostic{File: path.Join(filepath.ToSlash(folder), name), Text: there}
	}))
	s.tell("nothing was written", hint)
	return errReported
}
