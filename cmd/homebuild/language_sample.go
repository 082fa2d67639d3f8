package main

import (
	"fmt"
	"path/filepath"

	"homebuild/internal/translate"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/output"
	"homebuild/internal/preview"
	"homebuild/internal/publish"
)

func newLanguageSampleCmd(s *streams) *cobra.Command {
	var watch bool
	var port int
	cmd := languageCommand("sample xx [folder]", "everything the language says, on one page to read and sign", func(cmd *cobra.Command, from *folder, tag string) error {
		if watch {
			return watchSample(s, cmd, from, tag, port)
		}
		return writeSample(s, from, tag)
	})
	cmd.Flags().BoolVar(&watch, "watch", false, "show it in the browser and follow while you write")
	cmd.Flags().IntVar(&port, "port", 0, "with --watch, use this `number`")
	cmd.PreRunE = func(*cobra.Command, []string) error { return checkPort(port) }
	return cmd
}

// writeSample puts the page on the desk.
func writeSample(s *streams, from *folder, tag string) error {
	sample, begun, problems := from.Sample(tag)
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
	if _, _, problems := from.Sample(tag); len(problems) > 0 {
		return problems // a slip in the language's name, most often
	}
	var begun *translate.Draft // nil while the file cannot be understood
	return s.serve(cmd, from, port, serving{
		command: fmt.Sprintf("%s %s%s --watch", cmd.CommandPath(), tag, argument(from.path)),
		begins:  "the sample of " + tag, ends: "the sample is no longer shown",
		build: func() (result preview.Result) {
			result, begun = from.previewSample(tag)
			return result
		},
		notify: func(c preview.Changed) {
			s.problems(c.Problems)
			if begun != nil {
				s.say("%s  (%d ms)", begun.Summary(), c.Took.Milliseconds())
			}
		},
	})
}

// previewSample makes the sample from the files as they are now, and the
// families' pages when the language is whole.
func (f *folder) previewSample(tag string) (preview.Result, *translate.Draft) {
	sample, begun, problems := f.Sample(tag)
	if len(problems) > 0 {
		return preview.Result{Problems: problems}, nil
	}
	result := preview.Result{First: sample.Path, Notices: f.fewProblems(tag, begun.Problems)}
	result.Pages = []output.File{sample}
	if begun.Whole() {
		pages, problems := f.PagesIn(tag)
		result.Pages, result.Notices = append(result.Pages, pages...), append(result.Notices, problems...)
	}
	return result, begun
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
