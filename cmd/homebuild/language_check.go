package main

import (
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/translate"
)

func newLanguageCheckCmd(s *streams) *cobra.Command {
	return &cobra.Command{
		Use: "check [xx] [folder]", Short: "what is still to mend, line by line", ValidArgsFunction: tagsAndFolders,
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) > 2 {
				return wrongUse(fmt.Sprintf("%s takes a language and a folder, not %d words", cmd.Name(), len(args)), seeHelp(cmd))
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			tag, path := tagOrFolder(args)
			from, err := openLanguages(path)
			if err != nil {
				return err
			}
			defer from.close()
			return checkLanguages(s, from, tag)
		},
	}
}

// tagOrFolder reads the words of a command that takes either, both or none. One
// word is a folder when there is one of that name and no such language.
func tagOrFolder(args []string) (tag, path string) {
	switch len(args) {
	case 0:
		return "", ""
	case 1:
		if isFolder(args[0]) && !slices.Contains(languageWords(), args[0]) {
			return "", args[0]
		}
		return args[0], ""
	}
	return args[0], args[1]
}

// checkLanguages tells the problems of one language, or of all.
func checkLanguages(s *streams, from *folder, tag string) error {
	tags := []string{tag}
	if tag == "" {
		if tags = from.OwnLanguages(); len(tags) == 0 {
			tags = languageWords()
		}
	}
	toMend := 0
	var summary []string
	for _, each := range tags {
		begun, problems := translate.Open(each, from.Languages()...)
		if begun == nil {
			toMend += len(problems)
			s.problems(from.Locate(problems))
			continue
		}
		toMend += len(begun.Problems)
		summary = append(summary, languageSummary(begun))
		if tag != "" {
			s.notices(from.Locate(begun.Advice))
		}
		s.notices(from.Locate(begun.Stale))
		s.notices(from.Locate(from.fewProblems(each, begun.Unread)))
		s.problems(from.Locate(begun.Problems))
		s.untranslated(from.Locate(begun.Missing))
	}
	for _, line := range summary {
		s.say("%s", line)
	}
	if toMend > 0 {
		s.tell(amount(toMend, "thing", "things")+" to mend", "")
		return errReported
	}
	return nil
}

// maxEmpty is how many texts that are still to be written are told one by one.
const maxEmpty = 8

// untranslated tells which texts are still to be written; of a file that was just begun,
// the first ones.
func (s *streams) untranslated(texts diag.Diagnostics) {
	shown := min(len(texts), maxEmpty)
	s.notices(texts[:shown])
	if more := len(texts) - shown; more > 0 {
		s.tell(fmt.Sprintf("%s %s still to be written", s.bold(texts[0].File+":"), amount(more, "more text", "more texts")), "")
	}
}

// languageSummary is one line about a language.
func languageSummary(b *translate.Draft) string {
	st := b.Status
	line := fmt.Sprintf("%-8s %d of %d messages", st.Tag, st.Done, st.Total)
	if len(st.LeftOut) > 0 {
		line += fmt.Sprintf(", %s left out", amount(len(st.LeftOut), "story or thing", "stories and things"))
	}
	if n := len(b.Stale) + len(b.Unread); n > 0 {
		line += fmt.Sprintf(", %d to read again", n)
	}
	if len(b.Advice) > 0 {
		line += ", " + amount(len(b.Advice), "note", "notes")
	}
	switch {
	case len(b.Problems) > 0:
		line += fmt.Sprintf("; %s to write and %s to mend before it can be used", amount(len(b.Missing), "text", "texts"), amount(len(b.Problems), "thing", "things"))
	case len(b.Missing) > 0:
		line += fmt.Sprintf("; %s to write; pages that need none of them can be made", amount(len(b.Missing), "text", "texts"))
	case st.Source:
		line += "; the source"
	case st.Reviewed != "":
		line += "; signed by " + st.Reviewed
	default:
		line += "; a draft, ready for pages"
	}
	return line
}
