package main

import (
	"context"
	"errors"
	"fmt"
	"os/signal"
	"path"
	"slices"
	"strings"
	"syscall"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/preview"
	"homebuild/internal/site"
	"homebuild/internal/week"
)

// previewOptions is what a person asks of a preview.
type previewOptions struct {
	*streams
	folder string // empty for the example school
	port   int
}

func newPreviewCmd(s *streams) *cobra.Command {
	opts := previewOptions{streams: s}
	cmd := &cobra.Command{
		Use:   "preview [folder]",
		Short: "look at the pages while you write",
		Long: `Preview shows the pages in your browser as a phone shows them, and follows while
you write: save a week file, and the page is there a moment later. A slip is
shown with file, line and what to write instead, and the last good page stays.

Only this computer can see it, and nothing is written. Open the address that it
says; press ctrl-c to end it.

` + exampleFolder,
		Example: `  homebuild preview my-class
  homebuild preview my-class --port 9000`,
		Args: atMostOneFolder,
		RunE: func(cmd *cobra.Command, args []string) error {
			folder, err := schoolOrExample(cmd, args)
			if err != nil {
				return err
			}
			opts.folder = folder
			ctx, stop := signal.NotifyContext(cmd.Context(), syscall.SIGINT, syscall.SIGTERM)
			defer stop()
			return runPreview(ctx, opts)
		},
		ValidArgsFunction: folders,
	}
	cmd.Flags().IntVar(&opts.port, "port", 0, fmt.Sprintf("use this `number` (default: %d, or the next that is free)", preview.Port))
	return cmd
}

// runPreview serves until it is told to end.
func runPreview(ctx context.Context, opts previewOptions) error {
	if opts.port < 0 || opts.port > 65535 {
		return wrongUse(fmt.Sprintf("--port cannot be %d", opts.port), "write a number from 1024 to 65535, or leave it out")
	}
	from, err := openOne(opts.folder)
	if err != nil {
		return err
	}
	defer from.close()
	listener, err := preview.Listen(opts.port)
	if err != nil {
		return opts.noPort(err)
	}
	if opts.folder == "" {
		opts.tellExample()
	}
	opts.say("preview at http://%s/", listener.Addr())
	opts.say("ctrl-c ends it")
	err = preview.Run(ctx, preview.Options{Listener: listener, Folder: opts.folder, Watch: []string{week.SiteFile, week.Folder, localesFolder, themesFolder}, Build: from.made, Notify: opts.told})
	if err == nil {
		opts.say("the preview has ended")
	}
	return err
}

// noPort says what to do when a port cannot be had.
func (o previewOptions) noPort(err error) error {
	var inUse *preview.InUse
	if !errors.As(err, &inUse) {
		return err
	}
	hint := "end the other preview, or choose another --port"
	if inUse.Free > 0 {
		hint = fmt.Sprintf("it may be another preview; port %d is free: homebuild preview%s --port %d", inUse.Free, argument(o.folder), inUse.Free)
	}
	o.tell(inUse.Error(), hint)
	return errTold
}

// argument is a folder as one types it after a command.
func argument(folder string) string {
	switch {
	case folder == "" || folder == ".":
		return ""
	case strings.ContainsAny(folder, " '()&;"):
		return fmt.Sprintf(" %q", folder)
	}
	return " " + folder
}

// made makes the site from the files as they are now.
func (s *school) made() preview.Result {
	in, err := s.input()
	if err != nil {
		var problems diag.Problems
		if !errors.As(err, &problems) {
			problems = diag.Problems{{Text: err.Error()}}
		}
		return preview.Result{Problems: problems}
	}
	files, notices, problems := site.Assemble(in)
	made := preview.Result{Notices: s.here(notices), Problems: s.here(problems)}
	if len(problems) > 0 {
		return made
	}
	for _, f := range files {
		made.Pages = append(made.Pages, preview.Page{Path: f.Path, Render: f.Render})
	}
	newest := in.Site.Weeks[len(in.Site.Weeks)-1]
	made.First = in.Site.School + "/" + newest.Date + ".html"
	return made
}

// told says on the terminal what the preview shows in the browser, too.
func (o previewOptions) told(c preview.Changed) {
	o.problems(c.Problems)
	if len(c.Problems) > 0 {
		o.tell(amount(len(c.Problems), "thing", "things")+" to mend; the last good pages stay", "")
		return
	}
	// What an editor writes beside a file for a moment has no ending.
	files := slices.DeleteFunc(slices.Clone(c.Files), func(name string) bool { return path.Ext(name) == "" })
	if len(files) == 0 {
		o.say("%s ready", amount(len(c.Pages), "page", "pages"))
		return
	}
	o.say("%s: made anew in %d ms", strings.Join(files, ", "), c.Took.Milliseconds())
}
