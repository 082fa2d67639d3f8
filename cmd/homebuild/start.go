package main

import (
	"errors"
	"fmt"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/publish"
	"homebuild/locales"
)

// startOptions is what a person asks of a new school.
type startOptions struct {
	*streams
	folder    string
	name      string
	languages []string
	monday    string
	target    string
	address   string
	yes       bool
}

func newStartCmd(s *streams) *cobra.Command {
	opts := startOptions{streams: s}
	cmd := &cobra.Command{
		Use:   "start folder",
		Short: "begin a site of your own",
		Long: `Start makes a folder with all that a site needs: "site.toml" with the settings of
the year, a first week with a note to families, and "README.txt", which says how
to go on. Each setting has a remark above it.

It asks a few questions. In a script, or to answer beforehand, give the flags;
--yes takes what is proposed for all others. What is in the folder already is
never changed: when a file is in the way, start says so and writes nothing.

One folder holds one school. Its first page and "This week" show the week with
the latest date, whatever day it is.`,
		Example: `  homebuild start my-class
  homebuild start my-class --name "Pebble Lane School" --languages en,es --monday 2026-09-14 --yes`,
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return wrongUse("start needs the name of a folder", "homebuild start my-class")
			}
			return atMostOneFolder(cmd, args)
		},
		RunE: func(_ *cobra.Command, args []string) error {
			opts.folder = args[0]
			return runStart(opts)
		},
		ValidArgsFunction: folders,
	}
	flags := cmd.Flags()
	flags.StringVar(&opts.name, "name", "", "the `name` of the school or the class, as families know it")
	flags.StringSliceVar(&opts.languages, "languages", nil, "the `languages` of the pages, the class's own first: en,es")
	flags.StringVar(&opts.monday, "monday", "", "the `date` of the first week: 2026-09-14 (default: the next Monday)")
	flags.StringVar(&opts.target, "target", "", "what the first week is about, a `word` of \"homebuild targets\" (default: "+firstTarget+")")
	flags.StringVar(&opts.address, "address", "", "the web `address` where the pages will live, if there is one")
	flags.BoolVar(&opts.yes, "yes", false, "ask nothing")
	proposes(cmd, "languages", languageWords)
	proposes(cmd, "target", targetWords)
	return cmd
}

// firstTarget is proposed for a first week.
const firstTarget = "add-within-20"

// runStart asks, checks and writes.
func runStart(opts startOptions) error {
	ready, names, err := readyLanguages()
	if err != nil {
		return err
	}
	targets, err := activity.Targets()
	if err != nil {
		return err
	}
	english, err := englishWords()
	if err != nil {
		return err
	}
	if opts.person && !opts.yes {
		err = opts.askStart(ready, names, targets, english)
	} else {
		err = opts.propose()
	}
	if err != nil {
		return err
	}
	school, err := opts.school(ready, targets)
	if err != nil {
		return err
	}
	files, err := school.files(spoken{english: english, school: school.languages[0], tags: school.languages})
	if err != nil {
		return err
	}
	taken, err := publish.Create(opts.folder, files)
	if err != nil {
		return err
	}
	if len(taken) > 0 {
		return opts.taken(taken)
	}
	return opts.started(school)
}

// englishWords are the words of the command line's own language.
func englishWords() (*i18n.Language, error) {
	catalog, problems := i18n.Load([]string{i18n.SourceTag}, locales.Files)
	if len(problems) > 0 {
		return nil, problems
	}
	return catalog.Source(), nil
}

// propose fills in what nobody is there to be asked.
func (o *startOptions) propose() error {
	if !o.yes {
		var missing []string
		if o.name == "" {
			missing = append(missing, "--name")
		}
		if len(o.languages) == 0 {
			missing = append(missing, "--languages")
		}
		if len(missing) > 0 {
			return wrongUse("nobody is there to be asked, so start needs "+strings.Join(missing, " and "),
				`homebuild start my-class --name "Pebble Lane School" --languages en,es`)
		}
	}
	if o.name == "" {
		o.name = nameOf(o.folder)
	}
	if len(o.languages) == 0 {
		o.languages = []string{i18n.SourceTag}
	}
	if o.monday == "" {
		o.monday = mondayFrom(o.today())
	}
	if o.target == "" {
		o.target = firstTarget
	}
	return nil
}

// nameOf makes a name of a folder's: "my-class" is "My class".
func nameOf(folder string) string {
	if full, err := filepath.Abs(folder); err == nil {
		folder = full
	}
	words := []rune(strings.NewReplacer("-", " ", "_", " ").Replace(filepath.Base(folder)))
	return strings.ToUpper(string(words[:1])) + string(words[1:])
}

// school checks the answers.
func (o startOptions) school(ready []string, targets []activity.Target) (newSchool, error) {
	n := newSchool{folder: o.folder, name: strings.TrimSpace(o.name), address: strings.TrimSpace(o.address)}
	for _, tag := range o.languages {
		tag = strings.TrimSpace(tag)
		i := slices.IndexFunc(ready, func(r string) bool { return strings.EqualFold(r, tag) })
		switch {
		case i >= 0 && slices.Contains(n.languages, ready[i]):
			return n, wrongUse(fmt.Sprintf("%q is in --languages twice", tag), "name each language once")
		case i >= 0:
			n.languages = append(n.languages, ready[i])
		case slices.Contains(languageWords(), tag):
			return n, wrongUse(fmt.Sprintf("the language file of %q is not whole yet", tag), "ready are: "+strings.Join(ready, ", "))
		default:
			return n, wrongUse(fmt.Sprintf("--languages cannot hold %q", tag), choice(tag, ready))
		}
	}
	for _, check := range []error{checkName(n.name), checkMonday(o.monday), checkTarget(o.target, targets), checkAddress(n.address)} {
		if check != nil {
			return n, check
		}
	}
	if n.address != "" && !strings.HasSuffix(n.address, "/") {
		n.address += "/"
	}
	target := targets[slices.IndexFunc(targets, func(t activity.Target) bool { return t.ID == o.target })]
	n.first = newWeek{date: o.monday, target: target}
	request := activity.Request{Week: o.monday, Key: keyOf(n.name), Target: target, Stories: 4}
	n.first.focus, _, _ = activity.BestFocus(nil, request)
	request.Focus = n.first.focus
	n.first.picture, _, _ = activity.BestPicture(nil, request)
	return n, nil
}

// taken says what is in the way of new files.
func (o startOptions) taken(names []string) error {
	var problems diag.Problems
	for _, name := range names {
		problems = append(problems, diag.Problem{File: path.Join(filepath.ToSlash(o.folder), name), Text: "this file is there already"})
	}
	o.problems(problems)
	o.tell("nothing was written", "choose another folder, or move these away")
	return errTold
}

// started says what there is now and how to go on. What only a reading of the
// whole folder finds is told, too.
func (o startOptions) started(n newSchool) error {
	file := path.Join("weeks", n.first.date+".md")
	o.say("%q is ready:", filepath.ToSlash(o.folder))
	o.say("  site.toml             the settings of the year")
	o.say("  %s   the first week: %s", file, n.first.target.ID)
	o.say("  README.txt            how to go on, week by week")
	o.say("next: homebuild preview%s", argument(o.folder))
	o.say("then open %s in a text editor, change your note and save: the page follows", path.Join(filepath.ToSlash(o.folder), file))
	from, err := openSchool(o.folder)
	if err != nil {
		return err
	}
	defer from.close()
	var problems diag.Problems
	if _, err := from.input(); errors.As(err, &problems) {
		o.problems(problems)
		o.tell("the files are written; mend this in them before you build", "")
		return errTold
	}
	return err
}
