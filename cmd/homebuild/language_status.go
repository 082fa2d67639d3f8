package main

import (
	"encoding/json"
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/translate"
)

// statusOptions is what a person asks of the state of the languages.
type statusOptions struct {
	*streams
	folder string
	json   bool
}

func newLanguageStatusCmd(s *streams) *cobra.Command {
	opts := statusOptions{streams: s}
	cmd := &cobra.Command{
		Use:   "status [folder]",
		Short: "how far each language has come",
		Long: `Status lists the languages, the folder's own and the program's: how many messages
have a text and how many are missing, in how many the English has changed since
they were translated, what the language leaves out, and who signed it.`,
		Example: `  homebuild language status
  homebuild language status my-class --json`,
		Args: atMostOneFolder,
		RunE: func(_ *cobra.Command, args []string) error {
			opts.folder = strings.Join(args, "")
			return runLanguageStatus(opts)
		},
		ValidArgsFunction: folders,
	}
	cmd.Flags().BoolVar(&opts.json, "json", false, "write JSON")
	return cmd
}

// statusEntry is a language as other programs read it.
type statusEntry struct {
	Tag      string   `json:"tag"`
	Name     string   `json:"name"`
	Total    int      `json:"total"`
	Done     int      `json:"done"`
	Missing  int      `json:"missing"`
	Stale    int      `json:"stale"`
	Problems int      `json:"problems"`
	LeftOut  []string `json:"leftOut"`
	Review   string   `json:"review"` // "source", "draft", or who signed it and when
}

func runLanguageStatus(opts statusOptions) error {
	b, err := openBench(opts.folder)
	if err != nil {
		return err
	}
	defer b.close()
	status, problems := translate.StatusOf(b.languages()...)
	if len(problems) > 0 {
		return b.here(problems)
	}
	entries := make([]statusEntry, len(status))
	for i, st := range status {
		entries[i] = newStatusEntry(st)
	}
	if opts.json {
		out := json.NewEncoder(opts.out)
		out.SetEscapeHTML(false)
		out.SetIndent("", "  ")
		return out.Encode(entries)
	}
	opts.table(entries)
	return nil
}

func newStatusEntry(s translate.Status) statusEntry {
	e := statusEntry{
		Tag: s.Tag, Name: s.Name, Total: s.Total, Done: s.Done, Missing: s.Missing(), Stale: s.Stale,
		Problems: s.Problems, LeftOut: append([]string{}, s.LeftOut...), Review: "draft",
	}
	switch {
	case s.Source:
		e.Review = "source"
	case s.Reviewed != "":
		e.Review = s.Reviewed
	}
	return e
}

// table writes the own names last: not every script keeps to columns.
func (o statusOptions) table(entries []statusEntry) {
	row := func(tag, done, missing, stale, left, mend, review, name any) {
		o.say("%s", strings.TrimRight(fmt.Sprintf("%-8v %6v %8v %6v %9v %8v  %-10v %v", tag, done, missing, stale, left, mend, review, name), " "))
	}
	row("", "done", "missing", "stale", "left out", "to mend", "review", "")
	for _, e := range entries {
		row(e.Tag, e.Done, e.Missing, e.Stale, len(e.LeftOut), e.Problems, e.Review, e.Name)
	}
}
