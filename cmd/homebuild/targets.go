package main

import (
	"encoding/json"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
	"homebuild/locales"
)

// targetsOptions is what a person asks of the list of targets.
type targetsOptions struct {
	*streams
	json bool
}

func newTargetsCmd(s *streams) *cobra.Command {
	opts := targetsOptions{streams: s}
	cmd := &cobra.Command{
		Use:   "targets",
		Short: "list what a week can be about",
		Long: `Targets lists what a week can be about: the word to write after "target =" in a
week file, what a child can say at the end of the week, and the published
standards it belongs to.`,
		Example: `  homebuild targets
  homebuild targets --json      the same for another program`,
		Args: noWords,
		RunE: func(*cobra.Command, []string) error { return runTargets(opts) },
	}
	cmd.Flags().BoolVar(&opts.json, "json", false, "write JSON")
	return cmd
}

// targetEntry is a target as other programs read it.
type targetEntry struct {
	ID         string   `json:"id"`
	Grade      int      `json:"grade"` // 0 is kindergarten
	Can        string   `json:"can"`
	Standards  []string `json:"standards"`
	Within     int      `json:"within"`
	Kinds      []string `json:"kinds"`
	Strategies []string `json:"strategies"`
	Pictures   []string `json:"pictures"`
}

func runTargets(opts targetsOptions) error {
	targets, err := activity.Targets()
	if err != nil {
		return err
	}
	catalog, problems := i18n.Load([]string{i18n.SourceTag}, locales.Files)
	if len(problems) > 0 {
		return problems
	}
	english := catalog.Source()
	entries := make([]targetEntry, len(targets))
	for i, t := range targets {
		entries[i] = targetEntry{
			ID: t.ID, Grade: int(t.Grade), Can: english.Plain(t.CanLine()), Standards: t.Standards, Within: t.Within,
			Kinds:      each(t.Kinds, problem.Kind.String),
			Strategies: each(t.Strategies, strategy.Name.String),
			Pictures:   each(t.Pictures, picture.Kind.String),
		}
	}
	if opts.json {
		out := json.NewEncoder(opts.out)
		out.SetIndent("", "  ")
		return out.Encode(entries)
	}
	opts.list(entries)
	return nil
}

// list writes targets for people, by grade.
func (o targetsOptions) list(entries []targetEntry) {
	grade := -1
	for _, e := range entries {
		if e.Grade != grade {
			grade = e.Grade
			o.say("%s\n", gradeName(grade))
		}
		o.say("  %s\n      %s\n      %s\n", e.ID, e.Can, strings.Join(e.Standards, ", "))
	}
}

func gradeName(grade int) string {
	return []string{"kindergarten", "grade 1", "grade 2", "grade 3"}[grade]
}
