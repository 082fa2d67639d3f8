package main

import (
	"errors"
	"fmt"
	"path"
	"path/filepath"
	"strings"
	"sync"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/output"
	"homebuild/internal/publish"
	"homebuild/internal/school"
)

// build is what a person asks of a build.
type build struct {
	*streams
	from    *folder
	out     string // where public goes; empty for the folder itself
	zip     string // a file that holds public, too; empty for none
	workers int
	part    string   // "3/8", or empty for the whole
	remove  []string // weeks whose pages are to go
	adopt   bool     // show which pages of an unknown origin would become ours
	yes     bool     // and do it
	shard   publish.Shard
	quiet   bool
}

func newBuildCmd(s *streams) *cobra.Command {
	b := build{streams: s}
	cmd := s.schoolCommand("build [folder...]", "make the pages", orExample, func(_ *cobra.Command, from *folder) error {
		b.from = from
		return b.run()
	})
	cmd.Args = anyFolders
	one := cmd.RunE
	cmd.RunE = func(cmd *cobra.Command, args []string) error {
		if len(args) > 1 {
			return b.classes(cmd, args)
		}
		return one(cmd, args)
	}
	cmd.PreRunE = func(*cobra.Command, []string) (err error) {
		b.shard, err = b.checkFlags()
		return err
	}
	flags := cmd.Flags()
	flags.StringVar(&b.out, "out", "", "put \"public\" into this `folder` instead, without the desk")
	flags.StringVar(&b.zip, "zip", "", "also put all pages into this `file`, to send or to carry")
	flags.IntVar(&b.workers, "workers", 0, "make this `many` pages at a time (default: one for each processor)")
	flags.StringVar(&b.part, "shard", "", "make `part` 3/8 of the pages, while other computers make the rest")
	flags.StringSliceVar(&b.remove, "remove", nil, "take away the pages of `weeks` that you no longer have: 2026-09-14, or \"all\"")
	flags.BoolVar(&b.adopt, "adopt", false, "show which pages in the folder are homebuild's and not in its record; with --yes they are from now on")
	flags.BoolVar(&b.yes, "yes", false, "do what --adopt shows")
	flags.BoolVar(&b.quiet, "quiet", false, "say nothing unless something needs you")
	return cmd
}

// run reads, plans, publishes and tells.
func (b build) run() error {
	program := sync.OnceValue(b.program)
	go program() // while the files are read
	made, problems := b.from.Assemble(program)
	if b.quiet {
		b.streams = b.silenced()
	} else {
		b.notices(made.Notices)
	}
	if len(problems) > 0 {
		return problems
	}
	if err := b.outside(); err != nil {
		return err
	}
	public, desk := filepath.Join(b.place(), publicFolder), filepath.Join(b.place(), deskFolder)
	if _, ok := made.Newest(); !ok {
		b.nothingShows(made.Site.Waiting(made.On))
		return b.writeDesk(desk, made)
	}
	pages := made.Pages()
	stays, wrong := made.Stays(b.remove)
	if wrong != nil {
		return refused(wrong)
	}
	if b.adopt {
		if err := b.takeOver(public, pages, desk, made.Desk(), stays); err != nil || !b.yes {
			return err
		}
	}
	step, end := b.progress("making pages")
	report, err := publish.Write(public, pages, publish.Options{Workers: b.workers, Shard: b.shard, Program: made.Program, Keep: stays, Rendered: step})
	end()
	if err != nil {
		return err
	}
	inTheWay := errors.Join(b.foreign(public, report), b.writeDesk(desk, made))
	if inTheWay != nil && !errors.Is(inTheWay, errReported) {
		return inTheWay
	}
	b.keep(made)
	b.result(public, desk, made, report)
	if err := b.writeZip(pages); err != nil {
		return err
	}
	if made.Site.Address != "" && b.from.path != "" && b.out == "" {
		b.say("next: put all that is in %s where the link leads; homebuild share%s has the messages", public, argument(b.from.path))
	}
	return inTheWay
}

// keep writes the stories that families see from now on beside their weeks; in a
// file that is there all that it has stays. Where it cannot, the pages are made all
// the same.
func (b build) keep(made *school.Site) {
	if b.from.path == "" {
		return
	}
	for _, f := range made.Keep() {
		if err := publish.Put(b.from.path, f); err != nil {
			b.tell(fmt.Sprintf("the stories of a week could not be kept: %v", err), "without "+f.Path+" they may change when something else does")
			return
		}
	}
}

// writeDesk writes what only the teacher needs; it does not go on a stick with the
// pages.
func (b build) writeDesk(desk string, made *school.Site) error {
	if b.out != "" {
		return nil
	}
	report, err := publish.Write(desk, made.Desk(), publish.Options{Workers: b.workers, Shard: b.shard})
	if err != nil {
		return err
	}
	return b.foreign(desk, report)
}

// checkFlags looks at the flags before anything is done.
func (b build) checkFlags() (publish.Shard, error) {
	if b.workers < 0 {
		return publish.Shard{}, wrongUse(fmt.Sprintf("--workers cannot be %d", b.workers), "leave it out for one for each processor")
	}
	if b.zip != "" && !isFolder(filepath.Dir(b.zip)) {
		return publish.Shard{}, wrongUse(fmt.Sprintf("there is no folder %q to put the zip into", filepath.Dir(b.zip)), "--zip my-class.zip puts it here")
	}
	shard, ok := publish.ParseShard(b.part)
	if !ok {
		return shard, wrongUse(fmt.Sprintf("--shard cannot be %q", b.part), "write the part and the number of parts, such as 3/8 for the third of eight")
	}
	return shard, nil
}

// place is the folder that public goes into.
func (b build) place() string {
	if b.out != "" {
		return b.out
	}
	return b.from.place()
}

// outside refuses a place for the pages among the files that they are made from:
// the next build would read them.
func (b build) outside() error {
	if b.out == "" || b.from.path == "" {
		return nil
	}
	from, err := filepath.Abs(b.from.path)
	if err != nil {
		return err
	}
	out, err := filepath.Abs(b.out)
	if err != nil {
		return err
	}
	for _, source := range school.Sources() {
		if inside, err := filepath.Rel(filepath.Join(from, source), out); err == nil && filepath.IsLocal(inside) {
			return wrongUse(fmt.Sprintf("--out cannot be %q: the pages are made from what is in %q", b.out, source), "leave --out out, or give a folder elsewhere")
		}
	}
	return nil
}

// writeZip puts the pages into one file to send, if one is asked for.
func (b build) writeZip(files []output.File) error {
	if b.zip == "" {
		return nil
	}
	n, err := publish.Zip(b.zip, publicFolder, files)
	if err == nil {
		b.say("to send      %s (%s)", b.zip, size(n))
	}
	return err
}

// result says what was done and where to look.
func (b build) result(public, desk string, made *school.Site, r publish.Report) {
	week, _ := made.Newest()
	newest := week.Date
	b.say("%s written (%s), %d unchanged, %d removed", diag.Amount(r.Written, "page", "pages"), size(r.Bytes), r.Unchanged, r.Removed)
	if len(b.remove) > 0 && r.Removed == 0 {
		b.say("to remove    no page was there that --remove %s names", strings.Join(b.remove, ","))
	}
	b.say("open         %s", filepath.Join(public, "index.html"))
	b.say("newest week  %s", filepath.Join(public, newest+".html"))
	if b.out == "" {
		b.say("answer key   %s", filepath.Join(desk, newest, "answer-key.html"))
	}
	for _, line := range waiting(made.Site.Waiting(made.On)) {
		b.say("%s", line)
	}
	if made.Site.Address != "" {
		b.say("to share     %s%s.html", made.Site.Address, newest)
	}
	if names, all := made.StillThere(r.Kept); names != "" {
		b.say("still there  what families had of %s: old links work", names)
		b.say("             homebuild build%s --remove %s takes it away", argument(b.from.path), all)
	}
}

// foreign tells about files in a folder of ours that someone else put or edited
// there.
func (s *streams) foreign(folder string, r publish.Report) error {
	in := filepath.ToSlash(folder)
	for _, e := range r.Edited {
		s.problems(diag.Diagnostics{{File: path.Join(in, e.Path), Text: "someone edited this page; it was made anew", Hint: fmt.Sprintf("the edited page is in %q", e.Copy)}})
	}
	for _, name := range r.Foreign {
		s.problems(diag.Diagnostics{{File: path.Join(in, name), Text: "this is not a page that homebuild made, so it was left as it is", Hint: "move it away and build again"}})
	}
	if many := 3; len(r.Foreign) > many {
		s.tell(fmt.Sprintf("homebuild has no record of %d files in %q", len(r.Foreign), in), "where it made them and the record was lost, homebuild build --adopt shows what they are")
	}
	if len(r.Foreign) > 0 {
		return errReported
	}
	return nil
}
