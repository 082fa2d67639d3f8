package main

import (
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/school"
)

func newLanguageFindCmd(s *streams) *cobra.Command {
	return &cobra.Command{
		Use: "find xx|page words [folder]", Short: "where words on a page come from", ValidArgsFunction: tagsAndFolders,
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) > 3 || len(args) == 0 || !isPage(args[0]) && (len(args) < 2 || strings.TrimSpace(args[1]) == "") {
				return wrongUse("find takes a language, words of a page in quotes and, if you wish, a folder; or the name at the foot of a page", cmd.CommandPath()+` so "words of the page" my-class`)
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			in, words, path := args[0], "", ""
			switch rest := args[1:]; {
			case len(rest) == 2:
				words, path = rest[0], rest[1]
			case len(rest) == 1 && isPage(in) && isFolder(rest[0]):
				path = rest[0]
			case len(rest) == 1:
				words = rest[0]
			}
			from, err := openLanguages(path)
			if err != nil {
				return err
			}
			defer from.close()
			return s.findWords(from, in, words)
		},
	}
}

// isPage reports whether a word is the name of a page, "es/2026-09-14-try", and not
// that of a language.
func isPage(word string) bool { return strings.Contains(word, "/") }

// findWords tells which messages say some words, the nearest first; without words, all
// that a page says, numbered in its order.
func (s *streams) findWords(from *folder, in, words string) error {
	found, problems := school.Find(from.School, in, words)
	if len(problems) > 0 {
		return from.Locate(problems)
	}
	if len(found) == 0 {
		s.tell("no page of "+in+" says these words", "copy them from the page; a few in a row are enough")
		return errReported
	}
	tag, _, _ := strings.Cut(in, "/")
	for i, f := range found {
		line := from.Locate(diag.Diagnostics{{File: "locales/" + tag + ".toml", Line: f.Line, Text: f.ID}}).Error()
		if words == "" {
			s.say("%3d  %s", i+1, line)
		} else {
			s.say("%s  %s", line, f.Page)
		}
		if f.Page != "" {
			s.say("  page  %s", f.Said)
		}
		s.say("  file  %s", f.Text)
	}
	return nil
}
