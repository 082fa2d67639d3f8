package main

import (
	"fmt"
	"path/filepath"

	"github.com/spf13/cobra"

	"homebuild/internal/output"
	"homebuild/internal/publish"
	"homebuild/internal/translate"
)

func newLanguageNewCmd(s *streams) *cobra.Command {
	return languageCommand("new xx [folder]", "begin the file of a language", s.newLanguage)
}

// newLanguage writes the file and says how to go on.
func (s *streams) newLanguage(cmd *cobra.Command, from *folder, tag string) error {
	if err := from.mustBeThere(cmd, tag); err != nil {
		return err
	}
	file := from.languagePath(tag)
	taken, copied, err := from.beginLanguage(tag)
	if err != nil {
		return err
	}
	if taken {
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
	s.say("write        homebuild language watch %s%s, or any editor that saves UTF-8 text", tag, argument(from.path))
	s.say("see it all   homebuild language sample %s%s --watch", tag, argument(from.path))
	s.say("still to do  homebuild language check %s%s", tag, argument(from.path))
	s.say(`on pages     add "%s" to languages in site.toml; a build makes each page whose texts are all there`, tag)
	return nil
}

// mustBeThere wants a folder that a language's file can be written into.
func (f *folder) mustBeThere(cmd *cobra.Command, tag string) error {
	if f.path != "" {
		return nil
	}
	return wrongUse(`there is neither "site.toml" nor a folder "locales" here`,
		"give a school's folder: "+cmd.CommandPath()+" "+tag+" my-class; homebuild start my-class makes one")
}

// beginLanguage writes the file of a language, unless there is one already.
func (f *folder) beginLanguage(tag string) (taken, copied bool, err error) {
	data, copied, err := translate.Begin(tag, f.Languages()...)
	if err != nil {
		return false, false, err
	}
	file := f.languagePath(tag)
	have, err := publish.Create(filepath.Dir(file), []output.File{output.Text(filepath.Base(file), string(data))})
	return len(have) > 0, copied, err
}
