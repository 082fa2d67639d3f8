package main

import (
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/school"
	"homebuild/internal/story"
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
	Missing   int      `json:"missing"`
	WeeksLose []string `json:"weeksLose"` // kinds of stories that it cannot tell
	Review    string   `json:"review"`    // "source", "draft", or who signed it and when
}

func languageStatus(s *streams, from *folder, asJSON bool) error {
	status, problems := translate.StatusOf(from.Languages()...)
	if len(problems) > 0 {
		return from.Locate(problems)
	}
	english := school.English()
	entries := each(status, func(s translate.Status) statusEntry { return newStatusEntry(s, english) })
	if asJSON {
		return s.writeJSON(entries)
	}
	s.statusTable(entries)
	return nil
}

func newStatusEntry(s translate.Status, english *i18n.Language) statusEntry {
	review := "draft"
	switch {
	case s.Source:
		review = "source"
	case s.Reviewed != "":
		review = s.Reviewed
	}
	s.LeftOut = append([]string{}, s.LeftOut...) // [] in JSON
	return statusEntry{s, s.Missing(), losses(s.Lost, english), review}
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
	for _, e := range entries {
		if len(e.Lost) > 0 {
			s.say("weeks that have %s lose: %s", e.Tag, strings.Join(e.WeeksLose, "; "))
		}
	}
}

// losses says what weeks lose by the events that a language leaves out, in the
// words of the answer key.
func losses(lost []story.Loss, english *i18n.Language) []string {
	if len(lost) == len(problem.Kinds()) && !slices.ContainsFunc(lost, func(l story.Loss) bool { return l.Beyond > 0 }) {
		return []string{"every kind of story"}
	}
	out := []string{} // [] in JSON
	for _, l := range lost {
		name := english.Plain(phrase.Say("kind." + l.Kind.String() + ".name"))
		if l.Beyond > 0 {
			name += fmt.Sprintf(" beyond %d", l.Beyond)
		}
		out = append(out, name)
	}
	return out
}
