package main

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os/signal"
	"syscall"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/preview"
	"homebuild/internal/site"
	"homebuild/internal/translate"
	"homebuild/internal/week"
)

// mostShown is how many things to mend stand beside the page; check tells all.
const mostShown = 12

// runLanguageWatch serves the sample until it is told to end.
func runLanguageWatch(ctx context.Context, opts sampleOptions) error {
	if opts.port < 0 || opts.port > 65535 {
		return wrongUse(fmt.Sprintf("--port cannot be %d", opts.port), "write a number from 1024 to 65535, or leave it out")
	}
	ctx, stop := signal.NotifyContext(ctx, syscall.SIGINT, syscall.SIGTERM)
	defer stop()
	b, err := openBench(opts.folder)
	if err != nil {
		return err
	}
	defer b.close()
	w := &watched{bench: b, tag: opts.tag}
	if w.made(); w.err != nil {
		return w.err // a slip in the language's name, most often
	}
	listener, err := preview.Listen(opts.port)
	if err != nil {
		return opts.noPort(err)
	}
	opts.say("the sample of %s at http://%s/", opts.tag, listener.Addr())
	opts.say("ctrl-c ends it")
	err = preview.Run(ctx, preview.Options{Listener: listener, Folder: b.folder, Make: w.made, Told: func(c preview.Changed) {
		opts.problems(c.Problems)
		if w.begun != nil {
			opts.say("%s  (%d ms)", begunSummary(w.begun), c.Took.Milliseconds())
		}
	}})
	if err == nil {
		opts.say("the sample is no longer shown")
	}
	return err
}

// noPort says what to do when a port cannot be had.
func (o sampleOptions) noPort(err error) error {
	var inUse *preview.InUse
	if !errors.As(err, &inUse) {
		return err
	}
	hint := "choose another --port"
	if inUse.Free > 0 {
		hint = fmt.Sprintf("it may be another preview; --port %d is free", inUse.Free)
	}
	o.tell(inUse.Error(), hint)
	return errTold
}

// watched is a language that somebody is writing.
type watched struct {
	*bench
	tag   string
	begun *translate.Draft // nil while the file cannot be understood
	err   error
}

// made makes the sample from the files as they are now, and the families'
// pages when the language is whole.
func (w *watched) made() preview.Made {
	var page site.File
	if page, w.begun, w.err = w.sample(w.tag); w.err != nil {
		return preview.Made{Problems: asProblems(w.err)}
	}
	made := preview.Made{First: page.Path, Notices: w.notices(), Pages: []preview.Page{{Path: page.Path, Render: page.Render}}}
	if !w.begun.Whole() {
		return made
	}
	pages, err := w.familyPages()
	if err != nil {
		made.Notices = append(made.Notices, asProblems(err)...)
	}
	made.Pages = append(made.Pages, pages...)
	return made
}

func (w *watched) notices() diag.Problems {
	found := w.begun.Problems
	if len(found) <= mostShown {
		return found
	}
	more := diag.Problem{Text: fmt.Sprintf("and %d more", len(found)-mostShown), Hint: "homebuild language check " + w.tag + argument(w.folder)}
	return append(found[:mostShown:mostShown], more)
}

func asProblems(err error) diag.Problems {
	var problems diag.Problems
	if errors.As(err, &problems) {
		return problems
	}
	return diag.Problems{{Text: err.Error()}}
}

// familyPages are the pages of the school, or of the example school, in the
// class's language and in this one.
func (w *watched) familyPages() ([]preview.Page, error) {
	from := w.school
	if _, err := fs.Stat(w.files, week.SiteFile); err != nil {
		if from, err = openSchool(""); err != nil {
			return nil, err
		}
	}
	in, err := from.input()
	if err != nil {
		return nil, err
	}
	in.Site.Languages = []string{in.Site.School}
	if w.tag != in.Site.School {
		in.Site.Languages = append(in.Site.Languages, w.tag)
	}
	var problems diag.Problems
	if in.Catalog, problems = i18n.Load(in.Site.Languages, w.languages()...); len(problems) > 0 {
		return nil, w.here(problems)
	}
	files, _, problems := site.Assemble(in)
	if len(problems) > 0 {
		return nil, from.here(problems)
	}
	pages := make([]preview.Page, len(files))
	for i, f := range files {
		pages[i] = preview.Page{Path: f.Path, Render: f.Render}
	}
	return pages, nil
}
