package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/atotto/clipboard"
	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/publish"
	"homebuild/internal/school"
	"homebuild/internal/site"
)

func newShareCmd(s *streams) *cobra.Command {
	var date, language string
	cmd := s.schoolCommand("share [folder] [week]", "a ready message and a file to send, in each language", noExample, func(_ *cobra.Command, from *folder) error {
		return runShare(s, from, date, language)
	})
	takesWeek(cmd, &date)
	cmd.Flags().StringVar(&language, "copy", "", "copy the message in this `language` to the clipboard")
	return cmd
}

// runShare prints the messages of a week, of the newest without a date, and puts
// the share kit on the desk.
func runShare(s *streams, from *folder, date, language string) error {
	made, problems := from.Week(date, s.program)
	if len(problems) > 0 {
		return problems
	}
	date, messages, files := made.Send()
	if err := s.copyMessage(messages, language); err != nil {
		return err
	}
	desk := filepath.Join(from.path, deskFolder)
	others := func(path string) bool { return !school.InWeekFolder(path, date) }
	if _, err := publish.Write(desk, files, publish.Options{Keep: others}); err != nil {
		return err
	}
	for _, m := range messages {
		s.say("%s  (%s)\n%s\n", m.Tag, diag.Amount(m.SMS.Parts, "text message", "text messages"), m.Text)
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
