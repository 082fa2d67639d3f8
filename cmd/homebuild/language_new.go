package main

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"
	"slices"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/publish"
	"homebuild/internal/translate"
	"homebuild/locales"
)

func newLanguageNewCmd(s *streams) *cobra.Command {
	return &cobra.Command{
		Use:   "new xx [folder]",
		Short: "begin the file of a language",
		Long: `New writes "locales/xx.toml" into the folder: every message with a note, the
English text, and an empty text to fill in, with as many plural forms as the
language needs. What it guesses about the language is marked "please confirm".

Where the program brings the language along, new writes a copy of its file, for
you to improve; your folder's own file is then the one that is used.

A file that is there already is never changed.`,
		Example: `  homebuild language new so my-class
  homebuild language new pt-BR`,
		Args: tagAndFolder,
		RunE: func(_ *cobra.Command, args []string) error {
			return runLanguageNew(s, args[0], secondWord(args))
		},
		ValidArgsFunction: tagsAndFolders,
	}
}

// runLanguageNew writes the file and says how to go on.
func runLanguageNew(s *streams, tag, folder string) error {
	b, err := openBench(folder)
	if err != nil {
		return err
	}
	defer b.close()
	if b.folder == "" {
		return wrongUse(`there is neither "site.toml" nor a folder "locales" here`,
			"give a school's folder: homebuild language new "+tag+" my-class; homebuild start my-class makes one")
	}
	data, copied, err := newLanguageFile(b, tag)
	if err != nil {
		return err
	}
	path := filepath.Join(b.folder, localesFolder, tag+".toml")
	taken, err := publish.Create(filepath.Join(b.folder, localesFolder), []publish.File{{Path: tag + ".toml", Render: func() ([]byte, error) { return data, nil }}})
	if err != nil {
		return err
	}
	if len(taken) > 0 {
		s.tell(fmt.Sprintf("there is already a file %q, and nothing was changed", path), "homebuild language check "+tag+argument(b.folder)+" says what is still to do")
		return errTold
	}
	sayBegun(s, b, tag, path, copied)
	return nil
}

// newLanguageFile is an empty file, or a copy of the program's own.
func newLanguageFile(b *bench, tag string) (data []byte, copied bool, err error) {
	if slices.Contains(i18n.Tags(locales.Files), tag) {
		data, err = fs.ReadFile(locales.Files, tag+".toml")
		return data, true, err
	}
	data, err = translate.NewFile(tag, b.languages()...)
	var problems diag.Problems
	if err != nil && !errors.As(err, &problems) {
		return nil, false, wrongUse(err.Error(), "")
	}
	return data, false, err
}

func sayBegun(s *streams, b *bench, tag, path string, copied bool) {
	begun, problems := translate.Open(tag, b.languages()...)
	switch {
	case copied:
		s.say("%s is a copy of the words that come with the program, to improve", path)
	case len(problems) == 0:
		s.say("%s is ready for %d messages, and for what it guessed:", path, begun.Status.Total)
		s.say(`  look for "please confirm" at its head`)
	}
	s.say("")
	s.say("write        open it in any editor that saves UTF-8 text")
	s.say("see it       homebuild language sample %s%s --watch", tag, argument(b.folder))
	s.say("still to do  homebuild language check %s%s", tag, argument(b.folder))
	s.say(`on pages     add "%s" to languages in site.toml when check finds nothing`, tag)
}
