package main

import (
	"fmt"
	"path/filepath"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/output"
	"homebuild/internal/publish"
	"homebuild/internal/sampleserver"
	"homebuild/internal/school"
)

func newLanguageSampleCmd(s *streams) *cobra.Command {
	var watch, hard bool
	var port int
	var reading hardReading
	cmd := languageCommand("sample xx [folder]", "everything the language says, on one page to read and sign", func(cmd *cobra.Command, from *folder, tag string) error {
		switch {
		case hard:
			return s.hardSample(from, tag, reading)
		case watch:
			return watchSample(s, cmd, from, tag, port)
		}
		return writeSample(s, from, tag)
	})
	cmd.Flags().BoolVar(&watch, "watch", false, "show it in the browser and follow while you write")
	cmd.Flags().IntVar(&port, "port", 0, "with --watch, use this `number`")
	cmd.Flags().BoolVar(&hard, "hard", false, "the sentences that numbers break most easily, as text to write remarks in")
	cmd.Flags().StringVar(&reading.out, "out", "", "with --hard, write it into a new `file`")
	cmd.Flags().IntVar(&reading.part, "part", 1, "with --hard, the part of this `number`: one takes about an hour")
	cmd.MarkFlagsMutuallyExclusive("hard", "watch")
	cmd.PreRunE = func(cmd *cobra.Command, _ []string) error {
		if !hard && (cmd.Flags().Changed("out") || cmd.Flags().Changed("part")) {
			return wrongUse("--out and --part go with --hard", cmd.CommandPath()+" xx --hard --out xx.txt")
		}
		return checkPort(port)
	}
	return cmd
}

// writeSample puts the page on the desk.
func writeSample(s *streams, from *folder, tag string) error {
	sample, begun, problems := school.Sample(from.School, tag)
	if len(problems) > 0 {
		return problems
	}
	desk := filepath.Join(from.path, deskFolder)
	report, err := publish.Write(desk, []output.File{sample}, publish.Options{Manifest: "sample-" + tag})
	if err != nil {
		return err
	}
	s.say("%s", begun.Summary())
	s.say("to read  %s", filepath.Join(desk, sample.Path))
	return s.foreign(desk, report)
}

// watchSample serves the sample until it is told to end.
func watchSample(s *streams, cmd *cobra.Command, from *folder, tag string, port int) error {
	if _, _, problems := school.Sample(from.School, tag); len(problems) > 0 {
		return problems // a slip in the language's name, most often
	}
	ctx, stop := untilTold(cmd.Context())
	defer stop()
	listener, err := s.listen(port, fmt.Sprintf("%s %s%s --watch", cmd.CommandPath(), tag, argument(from.path)))
	if err != nil {
		return err
	}
	s.say("the sample of %s at http://%s/", tag, listener.Addr())
	s.say("ctrl-c ends it")
	err = sampleserver.Run(ctx, sampleserver.Options{
		Listener: listener, Folder: from.place(), Files: school.Sources(), Make: func() sampleserver.Made { return s.makeSample(from, tag) },
	})
	if err == nil {
		s.say("the sample is no longer shown")
	}
	return err
}

// makeSample makes the sample from the files as they are now, and those of the
// families' pages that the language can say all of.
func (s *streams) makeSample(f *folder, tag string) sampleserver.Made {
	start := s.now()
	sample, begun, problems := school.Sample(f.School, tag)
	if len(problems) > 0 {
		s.problems(problems)
		return sampleserver.Made{Mend: problems}
	}
	made := sampleserver.Made{Pages: []output.File{sample}, Mend: f.fewProblems(tag, begun.Problems), Whole: len(begun.Problems) == 0}
	if made.Whole {
		pages, problems := school.PagesIn(f.School, tag)
		made.Pages, made.Mend = append(made.Pages, pages...), append(made.Mend, problems...)
		made.Whole = len(problems) == 0
	}
	s.say("%s  (%d ms)", begun.Summary(), s.now().Sub(start).Milliseconds())
	return made
}

// fewProblems are those that stand beside the page; check tells all.
func (f *folder) fewProblems(tag string, found diag.Diagnostics) diag.Diagnostics {
	const shown = 12
	if len(found) <= shown {
		return found
	}
	more := diag.Diagnostic{Text: fmt.Sprintf("and %d more", len(found)-shown), Hint: "homebuild language check " + tag + argument(f.path)}
	return append(found[:shown:shown], more)
}
