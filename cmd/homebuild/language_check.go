package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/translate"
)

func newLanguageCheckCmd(s *streams) *cobra.Command {
	return &cobra.Command{
		Use:   "check [xx] [folder]",
		Short: "what is still to mend, line by line",
		Long: `Check reads a language's file and says everything that keeps it from being used,
and everything that is surely a slip, with the line and what to write instead:
texts that are missing or still English, places such as {{.Start}} that are lost
or misspelt, forms that a sentence asks for and a thing does not have, letters of
another script, end marks.

Without xx it looks at every language of the folder. For one language it also
tells, as a note, what you may leave as it is: texts much longer than the English.`,
		Example: `  homebuild language check so my-class
  homebuild language check my-class`,
		Args: atMostTagAndFolder,
		RunE: func(_ *cobra.Command, args []string) error {
			tag, folder := tagOrFolder(args)
			return runLanguageCheck(s, tag, folder)
		},
		ValidArgsFunction: tagsAndFolders,
	}
}

// runLanguageCheck tells the problems of one language, or of all.
func runLanguageCheck(s *streams, tag, folder string) error {
	b, err := openBench(folder)
	if err != nil {
		return err
	}
	defer b.close()
	tags := []string{tag}
	if tag == "" {
		tags = b.tags()
	}
	toMend := 0
	var summary []string
	for _, each := range tags {
		begun, problems := translate.Open(each, b.languages()...)
		if begun != nil {
			problems = begun.Problems
			summary = append(summary, begunSummary(begun))
			toMend += len(begun.Empty)
		}
		toMend += len(problems)
		if begun != nil && tag != "" {
			s.problems(b.here(notes(begun.Advice)))
		}
		s.problems(b.here(problems))
		if begun != nil {
			s.empty(b.here(begun.Empty))
		}
	}
	for _, line := range summary {
		s.say("%s", line)
	}
	if toMend > 0 {
		s.tell(amount(toMend, "thing", "things")+" to do", "")
		return errTold
	}
	return nil
}

// mostEmpty is how many texts that are still to be written are told one by one.
const mostEmpty = 8

// empty tells which texts are still to be written; of a file that was just begun,
// the first ones.
func (s *streams) empty(texts diag.Problems) {
	shown := min(len(texts), mostEmpty)
	s.problems(texts[:shown])
	if more := len(texts) - shown; more > 0 {
		s.tell(fmt.Sprintf("%s %s still to be written", s.bold(texts[0].File+":"), amount(more, "more text", "more texts")), "")
	}
}

// notes are what a person may leave as it is.
func notes(advice diag.Problems) diag.Problems {
	out := make(diag.Problems, len(advice))
	for i, p := range advice {
		p.Text = "note: " + p.Text
		out[i] = p
	}
	return out
}

// begunSummary is one line about a language.
func begunSummary(b *translate.Draft) string {
	st := b.Status
	line := fmt.Sprintf("%-8s %d of %d messages", st.Tag, st.Done, st.Total)
	if len(st.LeftOut) > 0 {
		line += fmt.Sprintf(", %s left out", amount(len(st.LeftOut), "story or thing", "stories and things"))
	}
	if len(b.Advice) > 0 {
		line += ", " + amount(len(b.Advice), "note", "notes")
	}
	switch {
	case !b.Whole():
		line += fmt.Sprintf("; %s to write and %s to mend before it can be used", amount(len(b.Empty), "text", "texts"), amount(len(b.Problems), "thing", "things"))
	case st.Source:
		line += "; the source"
	case st.Reviewed != "":
		line += "; signed by " + st.Reviewed
	default:
		line += "; a draft, ready for pages"
	}
	return line
}
