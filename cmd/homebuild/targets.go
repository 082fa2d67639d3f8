package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/problem"
	"homebuild/internal/school"
)

func newTargetsCmd(s *streams) *cobra.Command {
	var asJSON bool
	var grade string
	cmd := &cobra.Command{
		Use:   "targets [words]",
		Short: "list what a week can be about",
		RunE: func(_ *cobra.Command, words []string) error {
			if of, wrong := school.ParseGrade(grade); wrong != nil {
				return refused(wrong)
			} else if of != nil {
				words = append([]string{school.GradeName(*of)}, words...)
			}
			query := strings.Join(words, " ")
			found := school.FindTargets(query)
			if len(found) == 0 {
				return wrongUse(fmt.Sprintf("no target is about %q", query), `"homebuild targets" lists them all`)
			}
			if asJSON {
				return s.writeJSON(found)
			}
			s.targets(found)
			return nil
		},
	}
	cmd.Flags().StringVar(&grade, "grade", "", "only those of this `grade`: 1, 2, 3, or K for kindergarten")
	cmd.Flags().BoolVar(&asJSON, "json", false, "write JSON")
	return cmd
}

// targets lists targets for people, by grade.
func (s *streams) targets(list []school.Target) {
	grade := problem.Grade(-1)
	for _, t := range list {
		if t.Grade != grade {
			grade = t.Grade
			s.say("%s\n", school.GradeName(grade))
		}
		s.say("  %s\n      %s\n      %s\n", t.ID, t.Can, strings.Join(t.Standards, ", "))
	}
}
