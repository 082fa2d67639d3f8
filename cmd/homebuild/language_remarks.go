package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/output"
	"homebuild/internal/publish"
	"homebuild/internal/school"
	"homebuild/internal/textfile"
)

// hardReading says which part of the hard sample is wanted, and where.
type hardReading struct {
	out  string // empty to print it
	part int
}

// hardSample prints a part of the hard sample, or writes it into a new file: one that is
// there may have a reader's remarks in it.
func (s *streams) hardSample(from *folder, tag string, want hardReading) error {
	parts, problems := school.HardSample(from.School, tag)
	switch {
	case len(problems) > 0:
		return problems
	case want.part < 1 || want.part > len(parts):
		return wrongUse(fmt.Sprintf("there is no part %d", want.part), fmt.Sprintf("the parts are --part 1 to --part %d", len(parts)))
	}
	reading := parts[want.part-1]
	if want.out == "" {
		s.say("%s", strings.TrimSuffix(reading.String(), "\n"))
		return nil
	}
	taken, err := publish.Create(filepath.Dir(want.out), []output.File{output.Text(filepath.Base(want.out), reading.String())})
	if err != nil {
		return err
	}
	if len(taken) > 0 {
		s.tell(fmt.Sprintf("there is already a file %q, and nothing was changed", want.out), "it may have remarks in it; choose another name")
		return errReported
	}
	s.say("to read  %s: %d sentences, part %d of %d", want.out, reading.Size(), reading.Part, reading.Parts)
	s.say("then     homebuild language remarks %s %s%s", tag, want.out, argument(from.path))
	return nil
}

func newLanguageRemarksCmd(s *streams) *cobra.Command {
	return &cobra.Command{
		Use: "remarks xx file [folder]", Short: "what a reader wrote into the hard sample, by message", ValidArgsFunction: tagsAndFiles,
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) < 2 || len(args) > 3 {
				return wrongUse("remarks takes a language, the file that came back and, if you wish, a folder", cmd.CommandPath()+" so so.txt my-class")
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			from, err := openLanguages(strings.Join(args[2:], ""))
			if err != nil {
				return err
			}
			defer from.close()
			return s.remarks(from, args[0], args[1])
		},
	}
}

// tagsAndFiles proposes languages, then files, then folders.
func tagsAndFiles(cmd *cobra.Command, args []string, word string) ([]string, cobra.ShellCompDirective) {
	if len(args) == 1 {
		return []string{"txt"}, cobra.ShellCompDirectiveFilterFileExt
	}
	return tagsAndFolders(cmd, args[:min(1, len(args))], word)
}

// remarks lists what a reader wrote, message by message.
func (s *streams) remarks(from *folder, tag, path string) error {
	text, problem := textfile.Read(os.DirFS(filepath.Dir(path)), filepath.Base(path))
	if problem != nil {
		problem.File = path
		return diag.Diagnostics{*problem}
	}
	all, problems := school.Remarks(from.School, tag, path, text)
	for _, r := range all {
		if r.At.Line == 0 {
			s.say("%s  (the language has it no longer)", r.ID)
		} else {
			s.say("%s", from.Locate(diag.Diagnostics{{File: "locales/" + tag + ".toml", Line: r.At.Line, Text: r.ID}}).Error())
			s.say("  file    %s", r.At.Text)
		}
		for _, x := range r.Reading {
			s.say("  %-6d  %s", x.Number, x.Said)
			s.say("  remark  %s", strings.ReplaceAll(x.Remark, "\n", "\n          "))
		}
	}
	if len(problems) > 0 {
		return problems
	}
	s.say("%s", diag.Amount(len(all), "message with a remark", "messages with a remark"))
	return nil
}
