package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
)

// newRootCmd is the command without a word after it: it teaches.
func newRootCmd(s *streams) *cobra.Command {
	cmd := &cobra.Command{
		Use:   "homebuild",
		Short: "make a week's practice pages for families, in their languages",
		Long: `homebuild makes pages for families from a short file a week: one story solved
the class's way, stories to try with help for any answer, and a sheet of paper.
They are plain pages for a phone, without scripts, in every language of the
site.

A school is a folder with "site.toml" and "weeks/2026-09-14.md", one file a
week. Build it, and put what is in "public" on any web host, a memory stick or
into a chat.`,
		Example: `  homebuild build               the example school, to see what comes out
  homebuild build my-class      your own folder
  homebuild targets             what a week can be about`,
		Version:       versionLine(),
		Args:          cobra.ArbitraryArgs,
		SilenceErrors: true,
		SilenceUsage:  true,
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return cmd.Help()
			}
			return unknownCommand(cmd, args[0])
		},
	}
	cmd.SetIn(s.in)
	cmd.SetOut(s.out)
	cmd.SetErr(s.err)
	cmd.CompletionOptions.HiddenDefaultCmd = true
	cmd.SetFlagErrorFunc(wrongFlag)
	cmd.SetVersionTemplate("{{.Version}}\n")
	cmd.AddCommand(newStartCmd(s), newWeekCmd(s), newBuildCmd(s), newPreviewCmd(s), newCheckCmd(s), newPlanCmd(s), newShareCmd(s), newTargetsCmd(s), newLanguageCmd(s))
	cmd.InitDefaultHelpCmd()
	for _, c := range cmd.Commands() {
		if c.Name() == "help" {
			c.Short = "say more about a command"
		}
	}
	return cmd
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
	if near := diag.Nearest(typed, names); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	return wrongUse(fmt.Sprintf("%q is not a command", typed), hint)
}

// atMostOneFolder is the rule for commands that take a folder or none.
func atMostOneFolder(cmd *cobra.Command, args []string) error {
	if len(args) > 1 {
		return wrongUse(fmt.Sprintf("%s takes one folder, not %d", cmd.Name(), len(args)), `put quotes around a name with spaces: "my class"`)
	}
	return nil
}

// noWords is the rule for commands that take no words.
func noWords(cmd *cobra.Command, args []string) error {
	if len(args) > 0 {
		return wrongUse(fmt.Sprintf("%s takes no word, and got %q", cmd.Name(), args[0]), seeHelp(cmd))
	}
	return nil
}

func seeHelp(cmd *cobra.Command) string { return fmt.Sprintf("%s --help says more", cmd.CommandPath()) }
