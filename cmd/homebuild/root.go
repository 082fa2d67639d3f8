package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/docs"
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
		Example: `  homebuild start my-class      once: a site of your own, with a first week
  homebuild week my-class       each week: the file of the next week
  homebuild preview my-class    look while you write
  homebuild build my-class      make the pages
  homebuild build               the example school, to see what comes out`,
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
	cmd.SetFlagErrorFunc(wrongFlag)
	cmd.SetVersionTemplate("{{.Version}}\n")
	for _, part := range []struct {
		id, title string
		commands  []*cobra.Command
	}{
		{"week", "A week:", []*cobra.Command{newStartCmd(s), newWeekCmd(s), newPreviewCmd(s), newCheckCmd(s), newBuildCmd(s), newShareCmd(s)}},
		{"year", "The year:", []*cobra.Command{newTargetsCmd(s), newPlanCmd(s)}},
		{"language", "Languages:", []*cobra.Command{newLanguageCmd(s)}},
	} {
		cmd.AddGroup(&cobra.Group{ID: part.id, Title: part.title})
		for _, c := range part.commands {
			c.GroupID = part.id
			cmd.AddCommand(c)
		}
	}
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

// newOwnStoriesTopic is a page to read, not a command: help own-stories.
func newOwnStoriesTopic() *cobra.Command {
	topic := &cobra.Command{Use: "own-stories", Short: "how to write stories of your own", Long: strings.TrimSpace(docs.OwnStories)}
	topic.SetUsageTemplate("")
	return topic
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

// noWords is the rule for commands that take no words.
func noWords(cmd *cobra.Command, args []string) error {
	if len(args) > 0 {
		return wrongUse(fmt.Sprintf("%s takes no word, and got %q", cmd.Name(), args[0]), seeHelp(cmd))
	}
	return nil
}

func seeHelp(cmd *cobra.Command) string { return fmt.Sprintf("%s --help says more", cmd.CommandPath()) }
