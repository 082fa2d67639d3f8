package main

import (
	"path/filepath"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/output"
	"homebuild/internal/publish"
	"homebuild/internal/school"
)

func newPlanCmd(s *streams) *cobra.Command {
	var asJSON bool
	cmd := s.schoolCommand("plan [folder]", "see the year: what the class has met, and what is missing", orExample, func(_ *cobra.Command, from *folder) error {
		return runPlan(s, from, asJSON)
	})
	cmd.Flags().BoolVar(&asJSON, "json", false, "write JSON")
	return cmd
}

// runPlan shows the year and puts it on the desk.
func runPlan(s *streams, from *folder, asJSON bool) error {
	year, problems := from.Year()
	if len(problems) == 0 && len(year.Weeks) == 0 {
		_, problems = from.Load() // says so
	}
	if len(problems) > 0 {
		return problems
	}
	overview := year.Overview()
	if asJSON {
		return s.writeJSON(overview)
	}
	s.say("%s: %s, %s", overview.Name, diag.Amount(len(overview.Weeks), "week", "weeks"), school.GradeName(overview.Grade))
	s.say("%s", overview.Text())
	desk := filepath.Join(from.place(), deskFolder)
	report, err := publish.Write(desk, []output.File{{Path: "plan.html", Render: overview.Sheet}}, publish.Options{Manifest: "plan"})
	if err != nil {
		return err
	}
	s.say("to print  %s", filepath.Join(desk, "plan.html"))
	return s.foreign(desk, report)
}
