package main

import (
	"errors"
	"fmt"
	"io/fs"
	"time"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/publish"
	"homebuild/internal/translate"
)

func newLanguageStampCmd(s *streams) *cobra.Command {
	return languageCommand("stamp xx [folder]", "note which English text each message was made from", func(_ *cobra.Command, from *folder, tag string) error {
		changed, err := from.rewrite(tag, func(languages []fs.FS) ([]byte, error) { return translate.Stamp(tag, languages...) })
		switch {
		case err != nil:
			return err
		case changed:
			s.say("%s: every message says which English it was made from", from.languagePath(tag))
		default:
			s.say("%s: nothing to stamp", from.languagePath(tag))
		}
		return nil
	})
}

func newLanguageSignCmd(s *streams) *cobra.Command {
	var by, date string
	cmd := languageCommand("sign xx [folder]", "a fluent reader stands for every word", func(_ *cobra.Command, from *folder, tag string) error {
		if by == "" || date == "" {
			return wrongUse("a signature needs a name and a day", `give both: --by "M. G." --date 2026-10-01`)
		}
		if _, err := time.Parse(time.DateOnly, date); err != nil {
			return wrongUse(fmt.Sprintf("--date cannot be %q", date), "write year, month and day: 2026-10-01")
		}
		if date > s.today {
			return wrongUse(fmt.Sprintf("--date %s is still to come", date), "give the day on which the reading was finished")
		}
		if _, err := from.rewrite(tag, func(languages []fs.FS) ([]byte, error) { return translate.Sign(tag, by, date, languages...) }); err != nil {
			return err
		}
		s.say("%s is signed: %s, %s", from.languagePath(tag), by, date)
		return nil
	})
	cmd.Flags().StringVar(&by, "by", "", "your `name` or initials")
	cmd.Flags().StringVar(&date, "date", "", "the `day` you finished reading: 2026-10-01")
	return cmd
}

// rewrite gives a language file of the folder the bytes that are made from it.
func (f *folder) rewrite(tag string, renew func([]fs.FS) ([]byte, error)) (changed bool, err error) {
	before, err := f.ownLanguage(tag)
	if err != nil {
		return false, err
	}
	after, err := renew(f.Languages())
	var problems diag.Diagnostics
	switch {
	case errors.As(err, &problems):
		return false, f.Locate(problems)
	case err != nil:
		return false, wrongUse(err.Error(), "")
	case string(after) == string(before):
		return false, nil
	}
	return true, publish.Replace(f.languagePath(tag), before, after)
}
