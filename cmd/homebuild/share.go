package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/atotto/clipboard"
	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/publish"
	"homebuild/internal/site"
)

// shareOptions is what a person asks of sharing a week.
type shareOptions struct {
	*streams
	folder string
	week   string // empty for the newest
	copyIn string // language whose message goes to the clipboard; empty for none
}

func newShareCmd(s *streams) *cobra.Command {
	opts := shareOptions{streams: s}
	cmd := &cobra.Command{
		Use:   "share [folder] [week]",
		Short: "a ready message with the link, in each language",
		Long: `Share prints one short message for each language, with the link of the week and
with how many text messages it takes on a phone. The same texts, the code of the
link as pictures and a sheet of slips to cut are put on the desk, in
"desk/2026-09-14".

Without a week it takes the newest, the one with the latest date. Nothing goes to
the clipboard unless you ask with --copy.

` + someFolder,
		Example: `  homebuild share my-class
  homebuild share                             in the folder itself, the newest week
  homebuild share 2026-09-14                  in the folder itself, an earlier week
  homebuild share my-class 2026-09-14 --copy es`,
		Args: func(cmd *cobra.Command, args []string) error {
			if last := len(args) - 1; last >= 0 && looksLikeWeek(args[last]) {
				args = args[:last]
			}
			return atMostOneFolder(cmd, args)
		},
		RunE: func(cmd *cobra.Command, args []string) (err error) {
			if last := len(args) - 1; last >= 0 && looksLikeWeek(args[last]) {
				args, opts.week = args[:last], args[last]
			}
			if opts.folder, err = schoolFolder(cmd, args); err != nil {
				return err
			}
			return runShare(opts)
		},
		ValidArgsFunction: folders,
	}
	cmd.Flags().StringVar(&opts.copyIn, "copy", "", "copy the message in this `language` to the clipboard")
	return cmd
}

// looksLikeWeek reports whether a word is a date, in whatever form, and no
// folder.
func looksLikeWeek(word string) bool {
	return len(word) >= len("1.9.26") && strings.Trim(word, "0123456789-./") == "" && !isSchool(word)
}

// runShare prints the messages and puts the share kit on the desk.
func runShare(opts shareOptions) error {
	from, err := openOne(opts.folder)
	if err != nil {
		return err
	}
	defer from.close()
	in, err := from.input()
	if err != nil {
		return err
	}
	if in.Site.Address == "" {
		return from.here(diag.Problems{{File: "site.toml", Text: "the site has no address, so there is no link to send",
			Hint: `write where the pages will be, such as address = "https://school.example/home/"`}})
	}
	date, err := opts.date(in)
	if err != nil {
		return err
	}
	messages := site.Messages(in, date)
	if err := opts.copy(messages); err != nil {
		return err
	}
	desk := filepath.Join(opts.folder, "desk")
	in.Program = programSum()
	planned, _, problems := site.Plan(in)
	if len(problems) > 0 {
		return from.here(problems)
	}
	if _, err := publish.Write(desk, published(planned.Desk()), publish.Options{}); err != nil {
		return err
	}
	for _, m := range messages {
		opts.say("%s  (%s)\n%s\n", m.Tag, amount(m.SMS.Parts, "text message", "text messages"), m.Text)
	}
	opts.say("on the desk  %s", filepath.Join(desk, date))
	if _, err := os.Stat(filepath.Join(opts.folder, publicFolder, date+".html")); err != nil {
		opts.tell("the page of this week is not made yet", "homebuild build"+argument(opts.folder)+", and put what is in "+publicFolder+" where the link leads, before you send the message")
	}
	return nil
}

// date is the week that was asked for, or the newest.
func (o shareOptions) date(in site.Input) (string, error) {
	var dates []string
	for _, w := range in.Site.Weeks {
		dates = append(dates, w.Date)
	}
	switch {
	case o.week == "":
		return dates[len(dates)-1], nil
	case !slices.Contains(dates, o.week):
		return "", wrongUse(fmt.Sprintf("there is no week %q", o.week), "the newest are: "+strings.Join(newest(dates), ", "))
	}
	return o.week, nil
}

// newest are the latest few dates, the last first.
func newest(dates []string) []string {
	const most = 6
	out := slices.Clone(dates[max(0, len(dates)-most):])
	slices.Reverse(out)
	return out
}

// copy puts one message on the clipboard, if asked.
func (o shareOptions) copy(messages []site.Message) error {
	if o.copyIn == "" {
		return nil
	}
	var tags []string
	for _, m := range messages {
		if tags = append(tags, m.Tag); m.Tag != o.copyIn {
			continue
		}
		if err := clipboard.WriteAll(m.Text); err != nil {
			o.tell("this machine has no clipboard to copy to", "the message stands below")
		}
		return nil
	}
	return wrongUse(fmt.Sprintf("the site has no language %q", o.copyIn), "languages: "+strings.Join(tags, ", "))
}
