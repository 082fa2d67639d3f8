package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/atotto/clipboard"
	"github.com/spf13/cobra"

	"homebuild/internal/publish"
	"homebuild/internal/site"
)

func newShareCmd(s *streams) *cobra.Command {
	var date, language string
	cmd := s.schoolCommand("share [folder] [week]", "a ready message and a file to send, in each language", noExample, func(_ *cobra.Command, from *folder) error {
		return runShare(s, from, date, language)
	})
	share := cmd.RunE
	// A date after the folder, or alone, is the week.
	withoutDate := func(args []string) []string {
		if last := len(args) - 1; last >= 0 && looksLikeWeek(args[last]) {
			date = args[last]
			return args[:last]
		}
		return args
	}
	cmd.Args = func(cmd *cobra.Command, args []string) error { return atMostOneFolder(cmd, withoutDate(args)) }
	cmd.RunE = func(cmd *cobra.Command, args []string) error { return share(cmd, withoutDate(args)) }
	cmd.Flags().StringVar(&language, "copy", "", "copy the message in this `language` to the clipboard")
	return cmd
}

// looksLikeWeek reports whether a word is a date, in whatever form, and no
// folder.
func looksLikeWeek(word string) bool {
	return len(word) >= len("1.9.26") && strings.Trim(word, "0123456789-./") == "" && !isSchool(word)
}

// runShare prints the messages of a week, of the newest without a date, and puts
// the share kit on the desk.
func runShare(s *streams, from *folder, date, language string) error {
	made, problems := from.Assemble(s.program)
	if len(problems) > 0 {
		return problems
	}
	if date == "" {
		newest, ok := made.Newest()
		if !ok {
			newest = made.Site.Weeks[0]
		}
		date = newest.Date
	}
	messages, wrong := made.Messages(date)
	if wrong != nil {
		return refused(wrong)
	}
	if err := s.copyMessage(messages, language); err != nil {
		return err
	}
	desk := filepath.Join(from.path, deskFolder)
	if _, err := publish.Write(desk, made.Desk(date), publish.Options{}); err != nil {
		return err
	}
	for _, m := range messages {
		s.say("%s  (%s)\n%s\n", m.Tag, amount(m.SMS.Parts, "text message", "text messages"), m.Text)
	}
	s.say("on the desk  %s", filepath.Join(desk, date))
	s.say("to send      %s, one file for each language", filepath.Join(desk, date, "to-send"))
	s.say("to print     %s, a sheet for each language", filepath.Join(desk, filepath.FromSlash(site.SheetsPath(date))))
	if made.Site.Address == "" {
		s.say("with an address in site.toml there is a link as well, its code to photograph, and slips to cut")
		return nil
	}
	if _, err := os.Stat(filepath.Join(from.path, publicFolder, date+".html")); err != nil {
		s.tell("the page of this week is not made yet", "homebuild build"+argument(from.path)+", and put what is in "+publicFolder+" where the link leads, before you send the message")
	}
	return nil
}

// copyMessage puts one message on the clipboard, if asked. It is worth a small
// library: what is marked and copied in a terminal loses its line ends, and
// Arabic its order.
func (s *streams) copyMessage(messages []site.Message, language string) error {
	if language == "" {
		return nil
	}
	i := slices.IndexFunc(messages, func(m site.Message) bool { return m.Tag == language })
	if i < 0 {
		tags := each(messages, func(m site.Message) string { return m.Tag })
		return wrongUse(fmt.Sprintf("the site has no language %q", language), "languages: "+strings.Join(tags, ", "))
	}
	if err := clipboard.WriteAll(messages[i].Text); err != nil {
		s.tell("this machine has no clipboard to copy to", "the message stands below")
	}
	return nil
}
