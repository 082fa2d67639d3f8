package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

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

// statusEntry is a language as people and other programs read it.
type statusEntry struct {
	translate.Status
	Missing int    `json:"missing"`
	Review  string `json:"review"` // "source", "draft", or who signed it and when
}

func languageStatus(s *streams, from *folder, asJSON bool) error {
	status, problems := translate.StatusOf(from.Languages()...)
	if len(problems) > 0 {
		return from.Locate(problems)
	}
	entries := each(status, newStatusEntry)
	if asJSON {
		return s.writeJSON(entries)
	}
	s.statusTable(entries)
	return nil
}

func newStatusEntry(s translate.Status) statusEntry {
	review := "draft"
	switch {
	case s.Source:
		review = "source"
	case s.Reviewed != "":
		review = s.Reviewed
	}
	s.LeftOut = append([]string{}, s.LeftOut...) // [] in JSON
	return statusEntry{s, s.Missing(), review}
}

// statusTable writes the own names last: not every script keeps to columns.
func (s *streams) statusTable(entries []statusEntry) {
	row := func(tag, done, missing, stale, left, mend, review, name any) {
		s.say("%s", strings.TrimRight(fmt.Sprintf("%-8v %6v %8v %6v %9v %8v  %-10v %v", tag, done, missing, stale, left, mend, review, name), " "))
	}
	row("", "done", "missing", "stale", "left out", "to mend", "review", "")
	for _, e := range entries {
		row(e.Tag, e.Done, e.Missing, e.Stale, len(e.LeftOut), e.Problems, e.Review, e.Name)
	}
}
