package main

import (
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
	"homebuild/internal/school"
)

func newPreviewCmd(s *streams) *cobra.Command {
	var port int
	cmd := s.schoolCommand("preview [folder]", "look at the pages while you write", orExample, func(cmd *cobra.Command, from *folder) error {
		return s.serve(cmd, from, port, serving{
			command: cmd.CommandPath() + argument(from.path), begins: "preview", ends: "the preview has ended",
			build: from.preview, notify: s.previewed,
		})
	})
	cmd.Flags().IntVar(&port, "port", 0, fmt.Sprintf("use this `number` (default: %d, or the next that is free)", preview.Port))
	cmd.PreRunE = func(*cobra.Command, []string) error { return checkPort(port) }
	return cmd
}

func checkPort(port int) error {
	if port < 0 || port > 65535 {
		return wrongUse(fmt.Sprintf("--port cannot be %d", port), "write a number from 1024 to 65535, or leave it out")
	}
	return nil
}

// serving is what a preview shows and says.
type serving struct {
	command      string // as typed
	begins, ends string // said
	build        func() preview.Result
	notify       func(preview.Changed)
}

// serve shows pages until it is told to end.
func (s *streams) serve(cmd *cobra.Command, from *folder, port int, what serving) error {
	ctx, stop := signal.NotifyContext(cmd.Context(), syscall.SIGINT, syscall.SIGTERM)
	defer stop()
	listener, err := preview.Listen(port)
	var inUse *preview.InUse
	if errors.As(err, &inUse) {
		hint := "end the other preview, or choose another --port"
		if inUse.Free > 0 {
			hint = fmt.Sprintf("it may be another preview; port %d is free: %s --port %d", inUse.Free, what.command, inUse.Free)
		}
		s.tell(inUse.Error(), hint)
		return errReported
	}
	if err != nil {
		return err
	}
	s.say("%s at http://%s/", what.begins, listener.Addr())
	s.say("ctrl-c ends it")
	if err := preview.Run(ctx, preview.Options{
		Listener: listener, Folder: from.path, Watch: school.Sources(), Build: what.build, Notify: what.notify,
	}); err != nil {
		return err
	}
	s.say("%s", what.ends)
	return nil
}

// preview makes the site from the files as they are now.
func (f *folder) preview() preview.Result {
	f.Today = "" // weeks to come are shown, too
	made, problems := f.Assemble(nil)
	result := preview.Result{Notices: made.Notices, Problems: problems}
	if len(problems) == 0 {
		result.Pages = made.Pages()
		newest, _ := made.Newest() // all show
		result.First = made.Site.School + "/" + newest.Date + ".html"
	}
	return result
}

// previewed says on the terminal what the preview shows in the browser, too.
func (s *streams) previewed(c preview.Changed) {
	s.problems(c.Problems)
	if len(c.Problems) > 0 {
		s.tell(diag.Amount(len(c.Problems), "thing", "things")+" to mend; the last good pages stay", "")
		return
	}
	// What an editor writes beside a file for a moment has no ending.
	files := slices.DeleteFunc(slices.Clone(c.Files), func(name string) bool { return path.Ext(name) == "" })
	if len(files) == 0 {
		s.say("%s ready", diag.Amount(len(c.Pages), "page", "pages"))
		return
	}
	s.say("%s: made anew in %d ms", strings.Join(files, ", "), c.Took.Milliseconds())
}
