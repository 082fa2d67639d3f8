package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"homebuild/internal/check"
	"homebuild/internal/diag"
	"homebuild/internal/recheck"
)

// checkOptions is what a person asks of a check.
type checkOptions struct {
	*streams
	folder    string // empty for the example school
	json      bool
	published bool
}

func newCheckCmd(s *streams) *cobra.Command {
	opts := checkOptions{streams: s}
	cmd := &cobra.Command{
		Use:   "check [folder]",
		Short: "look for what could go wrong",
		Long: `Check looks for everything that could go wrong before families see it: slips in
the files, wishes of a week that could not be met, what a language leaves out,
notes that are in one language only, addresses and telephone numbers in notes,
pages that take long to open. Nothing is written. For a story of your own it
lists what its numbers can tell, each with the line that chooses it; "homebuild
help own-stories" tells all about that.

It tells apart what is to be mended and what is good to know. The exit code is 0
when nothing is to be mended, and 1 when something is.

With --published it also reads the pages in "public" as a stranger would, and
works every number on them out again.

` + exampleFolder,
		Example: `  homebuild check my-class
  homebuild check my-class --published
  homebuild check my-class --json      the same for another program`,
		Args: atMostOneFolder,
		RunE: func(cmd *cobra.Command, args []string) error {
			folder, err := schoolOrExample(cmd, args)
			if err != nil {
				return err
			}
			opts.folder = folder
			return runCheck(opts)
		},
		ValidArgsFunction: folders,
	}
	flags := cmd.Flags()
	flags.BoolVar(&opts.json, "json", false, "write JSON")
	flags.BoolVar(&opts.published, "published", false, "look at the pages in \"public\", too")
	return cmd
}

// runCheck looks at everything and tells.
func runCheck(opts checkOptions) error {
	from, err := openOne(opts.folder)
	if err != nil {
		return err
	}
	if opts.folder == "" {
		opts.tellExample()
	}
	defer from.close()
	report, again, problems, err := opts.look(from)
	if err != nil {
		return err
	}
	for i := range report.Findings {
		if f := &report.Findings[i]; f.About != check.Published && f.File != "" {
			f.Problem = from.here(diag.Problems{f.Problem})[0]
		}
	}
	if opts.json {
		return opts.writeJSON(report, problems)
	}
	if len(problems) > 0 {
		return problems
	}
	return opts.summary(report, again)
}

// look takes every look. Problems are those of files that cannot be built.
func (o checkOptions) look(from *school) (r check.Report, again recheck.Report, problems diag.Problems, err error) {
	in, err := from.input()
	if err != nil {
		if errors.As(err, &problems) {
			err = nil
		}
		return r, again, problems, err
	}
	progress := o.progress("checking")
	r, problems, err = check.Site(in, progress.step)
	progress.end()
	if err != nil || len(problems) > 0 {
		return r, again, from.here(problems), err
	}
	if o.published {
		again, err = o.lookAtPublished(&r)
	}
	return r, again, nil, err
}

// lookAtPublished reads what is in public.
func (o checkOptions) lookAtPublished(r *check.Report) (recheck.Report, error) {
	name := filepath.Join(o.folder, publicFolder)
	root, err := os.OpenRoot(name)
	if err != nil {
		return recheck.Report{}, wrongUse("there is no \""+name+"\" to look at", "homebuild build"+argument(o.folder)+" makes it")
	}
	defer root.Close()
	return r.Published(root.FS(), filepath.ToSlash(name))
}

// summary tells a teacher what was found.
func (o checkOptions) summary(r check.Report, again recheck.Report) error {
	o.say("%s in %s, %s", amount(r.Weeks, "week", "weeks"), amount(len(r.Languages), "language", "languages"), amount(r.Pages, "page", "pages"))
	o.say("heaviest page   %s, compressed: %s", size(int64(r.Heaviest.Bytes)), r.Heaviest.Name)
	o.say("heaviest week   %s, compressed: %s", size(int64(r.Week.Bytes)), r.Week.Name)
	for _, l := range r.Reading {
		o.say("%s", readingLevel(l))
	}
	if o.published {
		o.say("worked out again on %s: %s, %s, %s", amount(again.Pages, "published page", "published pages"),
			amount(again.Equations, "equation", "equations"), amount(again.Stories, "story", "stories"), amount(again.Choices, "answer to tap", "answers to tap"))
	}
	mend := 0
	for _, about := range check.Parts() {
		told := false
		for _, f := range r.Findings {
			if f.About != about || f.Mend {
				continue
			}
			if !told {
				o.say("\n%s", about)
				told = true
			}
			o.sayProblem(f.Problem)
		}
	}
	var problems diag.Problems
	for _, f := range r.Findings {
		if f.Mend {
			problems = append(problems, f.Problem)
			mend++
		}
	}
	nothing := "nothing"
	toMend, toKnow := nothing, nothing
	if mend > 0 {
		toMend = amount(mend, "thing", "things")
	}
	if know := len(r.Findings) - mend; know > 0 {
		toKnow = amount(know, "thing", "things")
	}
	o.say("\n%s to mend, %s to know", toMend, toKnow)
	if mend > 0 {
		o.problems(problems)
		return errTold
	}
	if o.folder != "" && !o.published {
		o.say("next: homebuild build%s", argument(o.folder))
	}
	return nil
}

// sayProblem writes something to know as part of the result.
func (s *streams) sayProblem(p diag.Problem) {
	hint := p.Hint
	p.Hint = ""
	s.say("  %s", p)
	if hint != "" {
		s.say("    hint: %s", hint)
	}
}

// checkEntry is a finding as other programs read it.
type checkEntry struct {
	About string `json:"about"`
	Mend  bool   `json:"mend"`
	File  string `json:"file"`
	Line  int    `json:"line,omitempty"`
	Text  string `json:"text"`
	Hint  string `json:"hint,omitempty"`
}

// checkWeight is a weight as other programs read it.
type checkWeight struct {
	Name  string `json:"name"`
	Bytes int    `json:"bytes"`
}

// writeJSON writes what was found for another program.
func (o checkOptions) writeJSON(r check.Report, problems diag.Problems) error {
	out := struct {
		Weeks         int          `json:"weeks"`
		Languages     []string     `json:"languages"`
		Pages         int          `json:"pages"`
		HeaviestPage  checkWeight  `json:"heaviest-page"`
		HeaviestWeek  checkWeight  `json:"heaviest-week"`
		ThingsToMend  int          `json:"to-mend"`
		AllThingsSeen []checkEntry `json:"findings"`
	}{r.Weeks, append([]string{}, r.Languages...), r.Pages, checkWeight(r.Heaviest), checkWeight(r.Week), 0, []checkEntry{}}
	add := func(about check.About, mend bool, p diag.Problem) {
		out.AllThingsSeen = append(out.AllThingsSeen, checkEntry{string(about), mend, p.File, p.Line, p.Text, p.Hint})
		if mend {
			out.ThingsToMend++
		}
	}
	for _, p := range problems {
		add("files", true, p)
	}
	for _, f := range r.Findings {
		add(f.About, f.Mend, f.Problem)
	}
	if err := writeJSON(o.out, out); err != nil {
		return err
	}
	if out.ThingsToMend > 0 {
		return errTold
	}
	return nil
}

// writeJSON writes a value for another program.
func writeJSON(to interface{ Write([]byte) (int, error) }, value any) error {
	encoder := json.NewEncoder(to)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	return encoder.Encode(value)
}

// readingLevel says how hard a language's pages are to read, with the source of
// the formula.
func readingLevel(l check.ReadingLevel) string {
	if l.Tag == "es" {
		return fmt.Sprintf("reading level   es: words to families %.0f, stories %.0f (Szigriszt 1993, INFLESZ scale: above 65 is fairly easy)",
			l.Family.Szigriszt, l.Stories.Szigriszt)
	}
	return fmt.Sprintf("reading level   %s: words to families grade %.1f (Flesch-Kincaid, Kincaid et al. 1975), stories grade %.1f (Spache 1974)",
		l.Tag, l.Family.Grade, l.Stories.Spache)
}
