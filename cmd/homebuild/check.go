package main

import (
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/check"
	"homebuild/internal/diag"
	"homebuild/internal/recheck"
	"homebuild/internal/week"
)

// checking is what a person asks of a check, and what was found.
type checking struct {
	*streams
	from      *folder
	json      bool
	published bool
	out       string // where public is; empty for the folder itself
	report    check.Report
	again     recheck.Report // of the published pages
	waiting   []week.Week    // that families do not see yet
}

func newCheckCmd(s *streams) *cobra.Command {
	c := checking{streams: s}
	cmd := s.schoolCommand("check [folder]", "look for what could go wrong", orExample, func(_ *cobra.Command, from *folder) error {
		c.from = from
		return c.run()
	})
	flags := cmd.Flags()
	flags.BoolVar(&c.json, "json", false, "write JSON")
	flags.BoolVar(&c.published, "published", false, "look at the pages in \"public\", too")
	flags.StringVar(&c.out, "out", "", "with --published: look at \"public\" in this `folder` instead")
	return cmd
}

// run looks at everything and tells.
func (c checking) run() error {
	problems, err := c.look()
	switch {
	case err != nil:
		return err
	case c.json:
		return c.writeReport(problems)
	case len(problems) > 0:
		return problems
	}
	return c.summary()
}

// look takes every look. Problems are those of files that cannot be built.
func (c *checking) look() (diag.Diagnostics, error) {
	in, problems := c.from.Load()
	if len(problems) > 0 {
		return problems, nil
	}
	c.waiting = in.Site.Waiting(in.On)
	if !c.published { // weeks to come are looked at, too, but not looked for
		in.On = ""
	}
	step, end := c.progress("checking")
	report, problems, err := check.Site(in, step)
	end()
	if err != nil || len(problems) > 0 {
		return c.from.Locate(problems), err
	}
	for i := range report.Findings {
		if f := &report.Findings[i]; f.File != "" {
			f.Diagnostic = c.from.Locate(diag.Diagnostics{f.Diagnostic})[0]
		}
	}
	c.report = report
	if !c.published {
		return nil, nil
	}
	name := filepath.Join(c.place(), publicFolder)
	root, err := os.OpenRoot(name)
	if err != nil {
		return nil, wrongUse("there is no \""+name+"\" to look at", "homebuild build"+argument(c.from.path)+c.outFlag()+" makes it")
	}
	defer root.Close()
	again, found := recheck.Site(root.FS())
	c.again = again
	return nil, c.report.Published(root.FS(), filepath.ToSlash(name), found)
}

// place is the folder that public is in.
func (c checking) place() string {
	if c.out != "" {
		return c.out
	}
	return c.from.path
}

// outFlag is --out as it is typed after a build.
func (c checking) outFlag() string {
	if c.out == "" {
		return ""
	}
	return " --out" + argument(c.out)
}

// summary tells a teacher what was found.
func (c checking) summary() error {
	r := c.report
	c.say("%s in %s, %s", diag.Amount(r.Weeks, "week", "weeks"), diag.Amount(len(r.Languages), "language", "languages"), diag.Amount(r.Pages, "page", "pages"))
	c.say("heaviest page   %s, compressed: %s", size(int64(r.Heaviest.Bytes)), r.Heaviest.Name)
	c.say("heaviest week   %s, compressed: %s", size(int64(r.Week.Bytes)), r.Week.Name)
	for _, l := range r.Reading {
		c.say("reading level   %s", l)
	}
	if c.published {
		c.say("worked out again on %s: %s, %s, %s", diag.Amount(c.again.Pages, "published page", "published pages"),
			diag.Amount(c.again.Equations, "equation", "equations"), diag.Amount(c.again.Stories, "story", "stories"), diag.Amount(c.again.Choices, "answer to tap", "answers to tap"))
	}
	for _, line := range waiting(c.waiting) {
		c.say("%s", line)
	}
	toMend, toKnow := r.ToMend(), 0
	for _, about := range check.Parts() {
		before := toKnow
		for _, f := range r.Findings {
			if f.About != about || f.Mend {
				continue
			}
			if toKnow == before {
				c.say("\n%s", about)
			}
			toKnow++
			c.say("  %s", strings.ReplaceAll(f.String(), "\n", "\n  "))
		}
	}
	c.say("\n%s to mend, %s to know", amountOrNothing(len(toMend)), amountOrNothing(toKnow))
	if len(toMend) > 0 {
		c.problems(toMend)
		return errReported
	}
	if c.from.path != "" && !c.published {
		c.say("next: homebuild build%s", argument(c.from.path))
	}
	return nil
}

func amountOrNothing(n int) string {
	if n == 0 {
		return "nothing"
	}
	return diag.Amount(n, "thing", "things")
}

// writeReport writes what was found for another program.
func (c checking) writeReport(problems diag.Diagnostics) error {
	r := c.report
	r.Languages, r.Findings = append([]string{}, r.Languages...), append([]check.Finding{}, r.Findings...) // [] in JSON
	for _, p := range problems {
		r.Findings = append(r.Findings, check.Finding{About: check.Files, Diagnostic: p, Mend: true})
	}
	toMend := len(r.ToMend())
	if err := c.writeJSON(struct {
		check.Report
		ToMend int `json:"to-mend"`
	}{r, toMend}); err != nil {
		return err
	}
	if toMend > 0 {
		return errReported
	}
	return nil
}
