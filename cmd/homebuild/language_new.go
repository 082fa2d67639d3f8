package main

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"
	"slices"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/output"
	"homebuild/internal/publish"
	"homebuild/internal/translate"
	"homebuild/locales"
)

func newLanguageNewCmd(s *streams) *cobra.Command {
	return languageCommand("new xx [folder]", "begin the file of a language", func(_ *cobra.Command, from *folder, tag string) error {
		return newLanguage(s, from, tag)
	})
}

// newLanguage writes the file and says how to go on.
func newLanguage(s *streams, from *folder, tag string) error {
	if from.path == "" {
		return wrongUse(`there is neither "site.toml" nor a folder "locales" here`,
			"give a school's folder: homebuild language new "+tag+" my-class; homebuild start my-class makes one")
	}
	data, copied, err := newLanguageFile(from, tag)
	if err != nil {
		return err
	}
	file := from.languagePath(tag)
	taken, err := publish.Create(filepath.Dir(file), []output.File{output.Text(filepath.Base(file), string(data))})
	if err != nil {
		return err
	}
	if len(taken) > 0 {
		s.tell(fmt.Sprintf("there is already a file %q, and nothing was changed", file), "homebuild language check "+tag+argument(from.path)+" says what is still to do")
		return errReported
	}
	begun, problems := translate.Open(tag, from.Languages()...)
	switch {
	case copied:
		s.say("%s is a copy of the words that come with the program, to improve", file)
	case len(problems) == 0:
		s.say("%s is ready for %d messages, and for what it guessed:", file, begun.Status.Total)
		s.say(`  look for "please confirm" at its head`)
	}
	s.say("")
	s.say("write        open it in any editor that saves UTF-8 text")
	s.say("see it       homebuild language sample %s%s --watch", tag, argument(from.path))
	s.say("still to do  homebuild language check %s%s", tag, argument(from.path))
	s.say(`on pages     add "%s" to languages in site.toml when check finds nothing`, tag)
	return nil
}

// newLanguageFile is an empty file, or a copy of the program's own.
func newLanguageFile(from *folder, tag string) (data []byte, copied bool, err error) {
	if slices.Contains(languageWords(), tag) {
		data, err = fs.ReadFile(locales.Files, tag+".toml")
		return data, true, err
	}
	data, err = translate.NewFile(tag, from.Languages()...)
	var problems diag.Diagnostics
	if err != nil && !errors.As(err, &problems) {
		return nil, false, wrongUse(err.Error(), "")
	}
	return data, false, err
}
