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

// helpful has a command and those below it say their texts, which are read when
// somebody asks for them.
func helpful(root *cobra.Command) {
	plain := root.HelpFunc()
	root.SetHelpFunc(func(cmd *cobra.Command, args []string) {
		if cmd.Long == "" {
			cmd.Long, cmd.Example = helpOf(cmd)
		}
		plain(cmd, args)
	})
}

// helpOf is the text of a command, and its examples.
func helpOf(cmd *cobra.Command) (text, examples string) {
	name := cmd.Name()
	if cmd.HasParent() {
		name = strings.ReplaceAll(strings.TrimPrefix(cmd.CommandPath(), cmd.Root().Name()+" "), " ", "-")
	}
	data, err := helpTexts.ReadFile("help/" + name + ".txt")
	if err != nil {
		panic(err) // every command has one
	}
	text, examples, _ = strings.Cut(strings.TrimRight(sayings.Replace(string(data)), "\n"), "\n\nExamples:\n")
	return text, examples
}

// newOwnStoriesTopic is a page to read, not a command: help own-stories.
func newOwnStoriesTopic() *cobra.Command {
	topic := &cobra.Command{Use: "own-stories", Short: "how to write stories of your own", Long: strings.TrimSpace(docs.OwnStories)}
	topic.SetUsageTemplate("")
	return topic
}
