package main

import (
	"fmt"
	"maps"
	"os"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
)

// newRootCmd is the command without a word after it: it teaches.
func newRootCmd(s *streams) *cobra.Command {
	cmd := &cobra.Command{
		Use:           "homebuild",
		Short:         "make a week's practice pages for families, in their languages",
		Version:       versionLine(),
		Args:          cobra.ArbitraryArgs,
		SilenceErrors: true,
		SilenceUsage:  true,
		RunE:          helpOrUnknown,
	}
	on := cmd.PersistentFlags().String("on", "", "take this `date` for today: 2026-09-14")
	cmd.PersistentPreRunE = func(*cobra.Command, []string) (err error) {
		s.today, err = readToday(*on, os.Getenv("SOURCE_DATE_EPOCH"), s.now)
		return err
	}
	cmd.SetIn(s.in)
	cmd.SetOut(s.out)
	cmd.SetErr(s.err)
	cmd.SetFlagErrorFunc(wrongFlag)
	cmd.SetVersionTemplate("{{.Version}}\n")
	for _, part := range []struct {
		id, title string
		commands  []*cobra.Command
	}{
		{"week", "A week:", []*cobra.Command{newDeskCmd(s), newStartCmd(s), newWeekCmd(s), newSwapCmd(s), newCheckCmd(s), newBuildCmd(s), newShareCmd(s)}},
		{"year", "The year:", []*cobra.Command{newTargetsCmd(s), newPlanCmd(s)}},
		{"language", "Languages:", []*cobra.Command{newLanguageCmd(s)}},
	} {
		cmd.AddGroup(&cobra.Group{ID: part.id, Title: part.title})
		for _, c := range part.commands {
			c.GroupID = part.id
			cmd.AddCommand(c)
		}
	}
	helpful(cmd)
	cmd.AddCommand(newOwnStoriesTopic())
	cmd.InitDefaultHelpCmd()
	cmd.InitDefaultCompletionCmd()
	for _, c := range cmd.Commands() {
		switch c.Name() {
		case "help":
			c.Short = "say more about a command"
		case "completion":
			c.Short = "let the tab key finish words: how to set it up"
		}
	}
	return cmd
}

// otherWords are words that people try, and the command that does it.
var otherWords = map[string]string{
	"send": "share", "message": "share", "mail": "share", "families": "share", "print": "desk", "open": "desk", "show": "desk", "view": "desk", "look": "desk", "preview": "desk",
	"new": "start", "init": "start", "reuse": "start", "make": "build", "publish": "build", "remove": "build", "zip": "build", "test": "check",
	"change": "swap", "replace": "swap", "list": "targets", "next": "week", "year": "plan", "story": "help own-stories",
}

// helpOrUnknown runs a command that only holds others.
func helpOrUnknown(cmd *cobra.Command, args []string) error {
	if len(args) == 0 {
		return cmd.Help()
	}
	return unknownCommand(cmd, args[0])
}

// unknownCommand names the nearest command there is.
func unknownCommand(root *cobra.Command, typed string) error {
	var names []string
	for _, c := range root.Commands() {
		if c.IsAvailableCommand() {
			names = append(names, c.Name())
		}
	}
	hint := "there are: " + strings.Join(names, ", ")
	near := diag.Nearest(typed, append(names, slices.Sorted(maps.Keys(otherWords))...))
	if meant := otherWords[near]; meant != "" {
		hint = fmt.Sprintf("homebuild %s does that", meant)
	} else if near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	return wrongUse(fmt.Sprintf("%q is not a command", typed), hint)
}
