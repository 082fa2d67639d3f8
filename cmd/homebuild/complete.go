package main

import (
	"github.com/spf13/cobra"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/picture"
	"homebuild/internal/strategy"
	"homebuild/locales"
)

// What a shell proposes when the tab key is pressed.

// folders proposes folders, for commands that take one.
func folders(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
	if len(args) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	return nil, cobra.ShellCompDirectiveFilterDirs
}

// proposes gives a flag its words. A flag that the command does not have is a
// bug.
func proposes(cmd *cobra.Command, flag string, words func() []string) {
	err := cmd.RegisterFlagCompletionFunc(flag, func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
		return words(), cobra.ShellCompDirectiveNoFileComp
	})
	if err != nil {
		panic(err)
	}
}

func targetWords() []string {
	targets, err := activity.Targets()
	if err != nil {
		return nil
	}
	return each(targets, func(t activity.Target) string { return t.ID })
}

func focusWords() []string    { return each(strategy.Names(), strategy.Name.String) }
func pictureWords() []string  { return each(picture.Kinds(), picture.Kind.String) }
func languageWords() []string { return i18n.Tags(locales.Files) }
