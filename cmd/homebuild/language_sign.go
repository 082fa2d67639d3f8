package main

import (
	"errors"
	"fmt"
	"time"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/publish"
	"homebuild/internal/translate"
)

func newLanguageStampCmd(s *streams) *cobra.Command {
	return &cobra.Command{
		Use:   "stamp xx [folder]",
		Short: "note which English text each message was made from",
		Long: `Stamp gives every message that has none a hash of the English text of today, so
that a later change of the English shows. Use it for a file that was written by
hand from this English; the files of "language new" have their hashes already. A
message that has one is left alone.`,
		Example: `  homebuild language stamp so my-class`,
		Args:    tagAndFolder,
		RunE: func(_ *cobra.Command, args []string) error {
			return runLanguageStamp(s, args[0], secondWord(args))
		},
		ValidArgsFunction: tagsAndFolders,
	}
}

func runLanguageStamp(s *streams, tag, folder string) error {
	changed, path, err := rewrite(tag, folder, func(b *bench) ([]byte, error) { return translate.Stamp(tag, b.languages()...) })
	switch {
	case err != nil:
		return err
	case changed:
		s.say("%s: every message says which English it was made from", path)
	default:
		s.say("%s: nothing to stamp", path)
	}
	return nil
}

// signOptions is what a person signs with.
type signOptions struct {
	*streams
	tag, folder string
	by, date    string
}

func newLanguageSignCmd(s *streams) *cobra.Command {
	opts := signOptions{streams: s}
	cmd := &cobra.Command{
		Use:   "sign xx [folder]",
		Short: "a fluent reader stands for every word",
		Long: `Sign is for a fluent reader who has read the whole sample. It writes what you give
with --by and --date into the file, in the place of "draft"; the pages then no
longer say that the words are a first draft. Initials are enough.

It refuses while check finds something to mend, and while an English text has
changed since it was translated. When one changes later, the language is a draft
again by itself.`,
		Example: `  homebuild language sign so my-class --by "M. G." --date 2026-10-01`,
		Args:    tagAndFolder,
		RunE: func(_ *cobra.Command, args []string) error {
			opts.tag, opts.folder = args[0], secondWord(args)
			return runLanguageSign(opts)
		},
		ValidArgsFunction: tagsAndFolders,
	}
	cmd.Flags().StringVar(&opts.by, "by", "", "your `name` or initials")
	cmd.Flags().StringVar(&opts.date, "date", "", "the `day` you finished reading: 2026-10-01")
	return cmd
}

func runLanguageSign(opts signOptions) error {
	if opts.by == "" || opts.date == "" {
		return wrongUse("a signature needs a name and a day", `give both: --by "M. G." --date 2026-10-01`)
	}
	if _, err := time.Parse(time.DateOnly, opts.date); err != nil {
		return wrongUse(fmt.Sprintf("--date cannot be %q", opts.date), "write year, month and day: 2026-10-01")
	}
	_, path, err := rewrite(opts.tag, opts.folder, func(b *bench) ([]byte, error) {
		return translate.Sign(opts.tag, opts.by, opts.date, b.languages()...)
	})
	if err != nil {
		return err
	}
	opts.say("%s is signed: %s, %s", path, opts.by, opts.date)
	return nil
}

// rewrite gives a language file of the folder the bytes that were made from it.
func rewrite(tag, folder string, renew func(*bench) ([]byte, error)) (changed bool, path string, err error) {
	b, err := openBench(folder)
	if err != nil {
		return false, "", err
	}
	defer b.close()
	path, before, err := b.own(tag)
	if err != nil {
		return false, path, err
	}
	after, err := renew(b)
	var problems diag.Problems
	switch {
	case errors.As(err, &problems):
		return false, path, b.here(problems)
	case err != nil:
		return false, path, wrongUse(err.Error(), "")
	case string(after) == string(before):
		return false, path, nil
	}
	return true, path, publish.Replace(path, before, after)
}
