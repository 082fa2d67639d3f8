package main

import (
	"embed"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/docs"
)

// helpTexts has a file for each command, named as it is typed: help/plan.txt,
// help/language-new.txt.
//
//go:embed help
var helpTexts embed.FS

// sayings stand in help texts wherever several commands say the same.
var sayings = strings.NewReplacer(
	"{folder}", `Without a folder it takes the one you are in, when "site.toml" is there.`,
	"{example}", `Without a folder it takes the one you are in, when "site.toml" is there; else
the example school, and says so.`,
)

// addHelp gives a command and those below it their texts.
func addHelp(cmd *cobra.Command, name string) {
	data, err := helpTexts.ReadFile("help/" + name + ".txt")
	if err != nil {
		panic(err) // every command has one
	}
	cmd.Long, cmd.Example, _ = strings.Cut(strings.TrimRight(sayings.Replace(string(data)), "\n"), "\n\nExamples:\n")
	for _, sub := range cmd.Commands() {
		addHelp(sub, strings.TrimPrefix(name+"-"+sub.Name(), "homebuild-"))
	}
}

// newOwnStoriesTopic is a page to read, not a command: help own-stories.
func newOwnStoriesTopic() *cobra.Command {
	topic := &cobra.Command{Use: "own-stories", Short: "how to write stories of your own", Long: strings.TrimSpace(docs.OwnStories)}
	topic.SetUsageTemplate("")
	return topic
}
