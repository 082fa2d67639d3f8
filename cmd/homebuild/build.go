package main

import (
	"fmt"
	"path"
	"path/filepath"
	"sync"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/publish"
	"homebuild/internal/site"
)

// buildOptions is what a person asks of a build.
type buildOptions struct {
	*streams
	folder  string // empty for the example school
	out     string // where public goes; empty for the folder itself
	zip     string // a file that holds public, too; empty for none
	workers int
	shard   string // "3/8", or empty for the whole
	quiet   bool
}

// publicFolder and deskFolder are where pages go: those for families, and those
// for the teacher alone.
const (
	publicFolder = "public"
	deskFolder   = "desk"
)

func newBuildCmd(s *streams) *cobra.Command {
	opts := buildOptions{streams: s}
	cmd := &cobra.Command{
		Use:   "build [folder]",
		Short: "make the pages",
		Long: `Build reads a school's folder and writes its pages into "public" in that folder,
and what only the teacher needs (answer keys, messages to send, slips to cut)
into "desk" beside it.
Only pages that changed are written, and only pages that build made itself are
ever replaced or removed; what else you keep in "public" stays. You can stop it
at any time: every page is whole, and the next build goes on from there.

` + exampleFolder + ` It goes into "public" here.

If something in the files cannot be right, build says all of it at once, with
file and line, and changes nothing.`,
		Example: `  homebuild build my-class
  homebuild build my-class --out /media/stick
  homebuild build my-class --zip my-class.zip`,
		Args:              atMostOneFolder,
		ValidArgsFunction: folders,
		RunE: func(cmd *cobra.Command, args []string) error {
			folder, err := schoolOrExample(cmd, args)
			if err != nil {
				return err
			}
			opts.folder = folder
			return runBuild(opts)
		},
	}
	flags := cmd.Flags()
	flags.StringVar(&opts.out, "out", "", "put \"public\" into this `folder` instead, without the desk")
	flags.StringVar(&opts.zip, "zip", "", "also put all pages into this `file`, to send or to carry")
	flags.IntVar(&opts.workers, "workers", 0, "make this `many` pages at a time (default: one for each processor)")
	flags.StringVar(&opts.shard, "shard", "", "make `part` 3/8 of the pages, while other computers make the rest")
	flags.BoolVar(&opts.quiet, "quiet", false, "say nothing unless something needs you")
	return cmd
}

// runBuild reads, plans, publishes and tells.
func runBuild(opts buildOptions) error {
	shard, err := opts.understood()
	if err != nil {
		return err
	}
	program := sync.OnceValue(programSum)
	go program() // while the files are read
	from, err := openOne(opts.folder)
	if err != nil {
		return err
	}
	if opts.folder == "" && !opts.quiet {
		opts.tellExample()
	}
	defer from.close()
	in, err := from.input()
	if err != nil {
		return err
	}
	in.Program = program()
	planned, notices, problems := site.Plan(in)
	opts.notices(from.here(notices))
	if len(problems) > 0 {
		return from.here(problems)
	}
	public := filepath.Join(opts.place(), publicFolder)
	pages := published(planned.Pages())
	tuneMemory(len(pages))
	report, err := opts.write(public, pages, shard)
	if err != nil {
		return err
	}
	if opts.out == "" { // what only the teacher needs does not go on a stick with the pages
		if err := opts.writeDesk(filepath.Join(opts.place(), deskFolder), planned, shard); err != nil {
			return err
		}
	}
	opts.result(public, in, report)
	if err := opts.writeZip(pages); err != nil {
		return err
	}
	opts.next(public, in)
	return opts.inTheWay(public, report)
}

// understood checks the flags before anything is done.
func (o buildOptions) understood() (publish.Shard, error) {
	if o.workers < 0 {
		return publish.Shard{}, wrongUse(fmt.Sprintf("--workers cannot be %d", o.workers), "leave it out for one for each processor")
	}
	if o.zip != "" && !isFolder(filepath.Dir(o.zip)) {
		return publish.Shard{}, wrongUse(fmt.Sprintf("there is no folder %q to put the zip into", filepath.Dir(o.zip)), "--zip my-class.zip puts it here")
	}
	return readShard(o.shard)
}

// write publishes the pages, and shows a waiting person how far it is.
func (o buildOptions) write(public string, files []publish.File, shard publish.Shard) (publish.Report, error) {
	progress := &progress{}
	if !o.quiet {
		progress = o.progress("making pages")
	}
	defer progress.end()
	return publish.Write(public, progress.watch(files), publish.Options{Workers: o.workers, Shard: shard})
}

// writeZip puts the pages into one file to send, if one is asked for.
func (o buildOptions) writeZip(files []publish.File) error {
	if o.zip == "" {
		return nil
	}
	n, err := publish.Zip(o.zip, publicFolder, files)
	if err == nil && !o.quiet {
		o.say("to send      %s (%s)", o.zip, size(n))
	}
	return err
}

// writeDesk puts the teacher's own files beside the published folder.
func (o buildOptions) writeDesk(desk string, planned *site.Planned, shard publish.Shard) error {
	report, err := publish.Write(desk, published(planned.Desk()), publish.Options{Workers: o.workers, Shard: shard})
	if err != nil {
		return err
	}
	return o.inTheWay(desk, report)
}

// place is the folder that public goes into.
func (o buildOptions) place() string {
	switch {
	case o.out != "":
		return o.out
	case o.folder != "":
		return o.folder
	}
	return "."
}

func published(pages []site.File) []publish.File {
	files := make([]publish.File, len(pages))
	for i, p := range pages {
		files[i] = publish.File{Path: p.Path, Index: p.Index, Key: p.Key, Render: p.Render}
	}
	return files
}

// notices tells what a teacher may want to know and need not mend.
func (o buildOptions) notices(notices diag.Problems) {
	if o.quiet {
		return
	}
	for i := range notices {
		notices[i].Text = "note: " + notices[i].Text
	}
	o.problems(notices)
}

// result says what was done and where to look.
func (o buildOptions) result(public string, in site.Input, r publish.Report) {
	if o.quiet {
		return
	}
	o.say("%s written (%s), %d unchanged, %d removed", amount(r.Written, "page", "pages"), size(r.Bytes), r.Unchanged, r.Removed)
	o.say("open         %s", filepath.Join(public, "index.html"))
	last := in.Site.Weeks[len(in.Site.Weeks)-1]
	o.say("newest week  %s", filepath.Join(public, last.Date+".html"))
	if o.out == "" {
		o.say("answer key   %s", filepath.Join(o.place(), deskFolder, last.Date, "answer-key.html"))
	}
	if in.Site.Address != "" {
		o.say("to share     %s%s.html", in.Site.Address, last.Date)
	}
}

// next says how the pages get to families, where that is known.
func (o buildOptions) next(public string, in site.Input) {
	if in.Site.Address != "" && o.folder != "" && o.out == "" && !o.quiet {
		o.say("next: put all that is in %s where the link leads; homebuild share%s has the messages", public, argument(o.folder))
	}
}

// inTheWay tells about files in public that someone else put or edited there.
func (o buildOptions) inTheWay(public string, r publish.Report) error {
	for _, e := range r.Edited {
		file := path.Join(filepath.ToSlash(public), e.Path)
		o.problems(diag.Problems{{File: file, Text: "someone edited this page; it was made anew", Hint: fmt.Sprintf("the edited page is in %q", e.Copy)}})
	}
	for _, name := range r.Foreign {
		file := path.Join(filepath.ToSlash(public), name)
		o.problems(diag.Problems{{File: file, Text: "this is not a page that homebuild made, so it was left as it is", Hint: "move it away and build again"}})
	}
	if len(r.Foreign) > 0 {
		return errTold
	}
	return nil
}
