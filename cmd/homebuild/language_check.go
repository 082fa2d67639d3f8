package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/translate"
)

func newLanguageCheckCmd(s *streams) *cobra.Command {
	return languageCommand("check [xx] [folder]", "what is still to mend, line by line", s.checkLanguages)
}

// checkLanguages tells the problems of one language, or of all.
func (s *streams) checkLanguages(_ *cobra.Command, from *folder, tag string) error {
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
		summary = append(summary, begun.Summary())
		if tag != "" {
			s.notices(from.Locate(begun.Advice))
		}
		s.notices(from.Locate(from.fewProblems(each, begun.Unused)))
		s.notices(from.Locate(begun.Stale))
		s.notices(from.Locate(from.fewProblems(each, begun.Unread)))
		s.problems(from.Locate(begun.Problems))
		s.untranslated(from.Locate(begun.Missing))
	}
	for _, line := range summary {
		s.say("%s", line)
	}
	if toMend > 0 {
		s.tell(diag.Amount(toMend, "thing", "things")+" to mend", "")
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
		s.tell(fmt.Sprintf("%s %s still to be written", s.bold(texts[0].File+":"), diag.Amount(more, "more text", "more texts")), "")
	}
}
