package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/school"
	"homebuild/internal/translate"
)

func newLanguageStatusCmd(s *streams) *cobra.Command {
	var asJSON bool
	cmd := &cobra.Command{
		Use:   "status [folder]",
		Short: "how far each language has come",
		Args:  atMostOneFolder,
		RunE: func(_ *cobra.Command, args []string) error {
			from, err := openLanguages(strings.Join(args, ""))
			if err != nil {
				return err
			}
			defer from.close()
			return languageStatus(s, from, asJSON)
		},
		ValidArgsFunction: folders,
	}
	cmd.Flags().BoolVar(&asJSON, "json", false, "write JSON")
	return cmd
}

func languageStatus(s *streams, from *folder, asJSON bool) error {
	status, problems := translate.StatusOf(from.Languages()...)
	if len(problems) > 0 {
		return from.Locate(problems)
	}
	english := school.English()
	summaries := each(status, func(s translate.Status) translate.Summary { return s.Summary(english) })
	if asJSON {
		return s.writeJSON(summaries)
	}
	s.statusTable(summaries)
	return nil
}

// statusTable writes the own names last: not every script keeps to columns.
func (s *streams) statusTable(summaries []translate.Summary) {
	row := func(tag, done, missing, stale, left, mend, review, name any) {
		s.say("%s", strings.TrimRight(fmt.Sprintf("%-8v %6v %8v %6v %9v %8v  %-10v %v", tag, done, missing, stale, left, mend, review, name), " "))
	}
	row("", "done", "missing", "stale", "left out", "to mend", "review", "")
	for _, e := range summaries {
		row(e.Tag, e.Done, e.Missing, e.Stale, len(e.LeftOut), e.Problems, e.Review, e.Name)
	}
	for _, e := range summaries {
		if len(e.Lost) > 0 {
			s.say("weeks that have %s lose: %s", e.Tag, strings.Join(e.WeeksLose, "; "))
		}
	}
}
