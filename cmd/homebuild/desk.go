package main

import (
	"context"
	"crypto/rand"
	"errors"
	"fmt"
	"io"
	"net"
	"os"
	"os/signal"
	"path/filepath"
	"syscall"
	"time"

	"github.com/cli/browser"
	"github.com/spf13/cobra"

	"homebuild/internal/desk"
	"homebuild/internal/deskfolder"
	"homebuild/internal/deskserver"
	"homebuild/internal/loopback"
)

func newDeskCmd(s *streams) *cobra.Command {
	var port int
	var closed bool
	cmd := &cobra.Command{
		Use: "desk [folder]", Short: "make a week on a page in your browser", Args: atMostOneFolder, ValidArgsFunction: folders,
		PreRunE: func(*cobra.Command, []string) error { return checkPort(port) },
		RunE: func(cmd *cobra.Command, args []string) error {
			folder := here
			if len(args) > 0 {
				folder = args[0]
			}
			remove, err := newFolderOf(folder)
			if err != nil {
				return err
			}
			defer remove()
			begun := begin(cmd.Context(), folder)
			defer begun()
			if port == 0 && s.runs(cmd.Context(), folder, !closed) {
				return nil
			}
			listener, err := s.listen(port, cmd.CommandPath()+argument(folder))
			if err != nil {
				return err
			}
			return s.desk(cmd.Context(), folder, listener, deskWishes{open: !closed, begun: begun})
		},
	}
	cmd.Flags().IntVar(&port, "port", 0, fmt.Sprintf("use this `number` (default: %d, or the next that is free)", loopback.Port))
	cmd.Flags().BoolVar(&closed, "closed", false, "open no browser; show the address alone")
	return cmd
}

// newFolderOf makes the folder of a new desk where there is none; remove takes it away
// again while it is empty. A name that is near another's is taken for a slip.
func newFolderOf(folder string) (remove func(), err error) {
	if isFolder(folder) {
		return func() {}, nil
	}
	if !isFolder(filepath.Dir(folder)) || nearFolder(folder) != "" {
		return nil, folderMissing(folder)
	}
	if err := os.Mkdir(folder, 0o755); err != nil {
		return nil, err
	}
	return func() { _ = os.Remove(folder) }, nil // which does nothing once there is a file in it
}

// begin keeps a second start of the desk of a folder waiting until begun is called.
func begin(ctx context.Context, folder string) (begun func()) {
	cache, err := os.UserCacheDir()
	if err != nil {
		return func() {}
	}
	return deskserver.Lock(ctx, cache, folder)
}

// runs reports whether the desk of a folder runs already, and shows it.
func (s *streams) runs(ctx context.Context, folder string, open bool) bool {
	cache, err := os.UserCacheDir()
	if err != nil {
		return false
	}
	address := deskserver.Running(ctx, cache, folder)
	if address == "" {
		return false
	}
	s.say("your desk is open already, at %s", address)
	if open {
		s.openBrowser(address)
	}
	return true
}

// note writes down where a desk runs, for a second start. One that cannot be registered
// works all the same.
func note(folder, address string) (remove func()) {
	if cache, err := os.UserCacheDir(); err == nil {
		if remove, err := deskserver.Register(cache, folder, address); err == nil {
			return remove
		}
	}
	return func() {}
}

func checkPort(port int) error {
	if port != 0 && port < 1024 || port > 65535 { // below 1024 are those of the system
		return wrongUse(fmt.Sprintf("--port cannot be %d", port), "write a number from 1024 to 65535, or leave it out")
	}
	return nil
}

// listen opens a port for a command, or says which one is free.
func (s *streams) listen(port int, command string) (net.Listener, error) {
	listener, err := loopback.Listen(port)
	if inUse := (*loopback.InUse)(nil); errors.As(err, &inUse) {
		hint := "end what uses it, or choose another --port"
		if inUse.Free > 0 {
			hint = fmt.Sprintf("it may be another desk; port %d is free: %s --port %d", inUse.Free, command, inUse.Free)
		}
		s.tell(inUse.Error(), hint)
		return nil, errReported
	}
	return listener, err
}

// deskWishes are how a desk is begun and ended.
type deskWishes struct {
	open  bool          // the browser
	alone time.Duration // ends when its page was not open for so long; 0 for never
	begun func()        // tells that it is noted where it runs
}

// desk serves the desk of a folder until it is told to end.
func (s *streams) desk(ctx context.Context, folder string, listener net.Listener, wishes deskWishes) error {
	ctx, stop := untilTold(ctx)
	defer stop()
	files, token := deskfolder.Folder(folder), rand.Text()
	address := deskserver.Address(listener, token)
	s.say("your desk is at %s", address)
	end := "ctrl-c ends it"
	if wishes.alone > 0 {
		end = "it ends when its page was closed"
	}
	s.say("its files are in %s; %s", files.Name(), end)
	defer note(folder, address)()
	if wishes.open {
		s.openBrowser(address)
	}
	wishes.begun()
	if err := deskserver.Run(ctx, deskserver.Options{
		Listener: listener, Desk: desk.New(files), Token: token, Folder: folder, Files: deskfolder.Sources(), Alone: wishes.alone,
	}); err != nil {
		return err
	}
	s.say("the desk has ended")
	return nil
}

// openBrowser shows an address to the person.
func (s *streams) openBrowser(address string) {
	browser.Stdout, browser.Stderr = io.Discard, io.Discard
	if err := browser.OpenURL(address); err != nil {
		s.tell("no browser could be opened", "open that address in one")
	}
}

// untilTold gives a context that ends with ctrl-c.
func untilTold(ctx context.Context) (context.Context, context.CancelFunc) {
	return signal.NotifyContext(ctx, syscall.SIGINT, syscall.SIGTERM)
}
