package main

import (
	"crypto/rand"
	"fmt"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/publish"
	"homebuild/internal/school"
	"homebuild/internal/wordserver"
)

func newLanguageWatchCmd(s *streams) *cobra.Command {
	var port int
	var closed bool
	cmd := languageCommand("watch xx [folder]", "write it on the family's page, sentence by sentence", func(cmd *cobra.Command, from *folder, tag string) error {
		return watchLanguage(s, cmd, from, tag, port, !closed)
	})
	cmd.Flags().IntVar(&port, "port", 0, "use this `number`")
	cmd.Flags().BoolVar(&closed, "closed", false, "open no browser; show the address alone")
	cmd.PreRunE = func(*cobra.Command, []string) error { return checkPort(port) }
	return cmd
}

// watchLanguage serves the family's page, to write on, until it is told to end. A file
// that is not there yet is begun.
func watchLanguage(s *streams, cmd *cobra.Command, from *folder, tag string, port int, open bool) error {
	if err := from.mustBeThere(cmd, tag); err != nil {
		return err
	}
	from.Today = s.today
	file := from.languagePath(tag)
	if _, err := from.ownLanguage(tag); err != nil {
		if _, _, err := from.beginLanguage(tag); err != nil {
			return err
		}
		s.say("%s is begun", file)
	}
	if _, problems := school.OpenBench(from.School, tag); len(problems) > 0 {
		s.problems(problems)
	}
	ctx, stop := untilTold(cmd.Context())
	defer stop()
	listener, err := s.listen(port, fmt.Sprintf("%s %s%s", cmd.CommandPath(), tag, argument(from.path)))
	if err != nil {
		return err
	}
	token := rand.Text()
	address := wordserver.Address(listener, token)
	s.say("write %s at %s", tag, address)
	s.say("what you save goes into %s; ctrl-c ends it", file)
	if open {
		s.openBrowser(address)
	}
	return wordserver.Run(ctx, wordserver.Options{
		Listener: listener, Token: token, Tag: tag, File: file,
		Open: func() (*school.Bench, diag.Diagnostics) { return school.OpenBench(from.School, tag) },
		Save: func(before, after []byte) error { return publish.Replace(file, before, after) },
	})
}
