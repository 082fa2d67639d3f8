package main

import (
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
)

func newLanguageFindCmd(s *streams) *cobra.Command {
	return &cobra.Command{
		Use: "find xx words [folder]", Short: "where words on a page come from", ValidArgsFunction: tagsAndFolders,
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) < 2 || len(args) > 3 || strings.TrimSpace(args[1]) == "" {
				return wrongUse("find takes a language, words of a page in quotes and, if you wish, a folder", cmd.CommandPath()+` so "words of the page" my-class`)
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			from, err := openLanguages(strings.Join(args[2:], ""))
			if err != nil {
				return err
			}
			defer from.close()
			return s.findWords(from, args[0], args[1])
		},
	}
}

// findWords tells which messages say some words, the nearest first.
func (s *streams) findWords(from *folder, tag, words string) error {
	found, problems := from.Find(tag, words)
	if len(problems) > 0 {
		return from.Locate(problems)
	}
	if len(found) == 0 {
		s.tell("no page of "+tag+" says these words", "copy them from the page; a few in a row are enough")
		return errReported
	}
	for _, f := range found {
		s.say("%s  %s", from.Locate(diag.Diagnostics{{File: "locales/" + tag + ".toml", Line: f.Line, Text: f.ID}}).Error(), f.Page)
		if f.Page != "" {
			s.say("  page  %s", f.Said)
		}
		s.say("  file  %s", f.Text)
	}
	return nil
}
