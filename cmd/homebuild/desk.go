package main

import (
	"context"
	"crypto/rand"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"net"
	"os"
	"os/signal"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
	"time"

	"github.com/cli/browser"
	"github.com/spf13/cobra"

	"homebuild/internal/desk"
	"homebuild/internal/deskserver"
	"homebuild/internal/loopback"
	"homebuild/internal/publish"
	"homebuild/internal/school"
	"homebuild/internal/textfile"
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
			if !isFolder(folder) {
				return folderMissing(folder)
			}
			listener, err := s.listen(port, cmd.CommandPath()+argument(folder))
			if err != nil {
				return err
			}
			return s.desk(cmd.Context(), folder, listener, deskWishes{open: !closed})
		},
	}
	cmd.Flags().IntVar(&port, "port", 0, fmt.Sprintf("use this `number` (default: %d, or the next that is free)", loopback.Port))
	cmd.Flags().BoolVar(&closed, "closed", false, "open no browser; show the address alone")
	return cmd
}

func checkPort(port int) error {
	if port < 0 || port > 65535 {
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
}

// desk serves the desk of a folder until it is told to end.
func (s *streams) desk(ctx context.Context, folder string, listener net.Listener, wishes deskWishes) error {
	ctx, stop := untilTold(ctx)
	defer stop()
	token := rand.Text()
	address := deskserver.Address(listener, token)
	s.say("your desk is at %s", address)
	end := "ctrl-c ends it"
	if wishes.alone > 0 {
		end = "it ends when its page was closed"
	}
	s.say("its files are in %s; %s", deskFiles(folder).Name(), end)
	if wishes.open {
		browser.Stdout, browser.Stderr = io.Discard, io.Discard
		if err := browser.OpenURL(address); err != nil {
			s.tell("no browser could be opened", "open that address in one")
		}
	}
	if err := deskserver.Run(ctx, deskserver.Options{
		Listener: listener, Desk: desk.New(deskFiles(folder)), Token: token, Folder: folder, Files: deskSources(), Alone: wishes.alone,
	}); err != nil {
		return err
	}
	s.say("the desk has ended")
	return nil
}

// untilTold gives a context that ends with ctrl-c.
func untilTold(ctx context.Context) (context.Context, context.CancelFunc) {
	return signal.NotifyContext(ctx, syscall.SIGINT, syscall.SIGTERM)
}

// deskSources are the files and folders that the desk reads and writes: those that
// pages are made from, and what tells how to go on.
func deskSources() []string { return append(school.Sources(), "README.txt") }

// deskFiles is a folder on the disk as the desk keeps its files there.
type deskFiles string

// Name is the whole path.
func (f deskFiles) Name() string {
	whole, err := filepath.Abs(string(f))
	if err != nil {
		return string(f)
	}
	return whole
}

// Read reads the files of the desk.
func (f deskFiles) Read() (desk.Files, error) {
	root, err := os.OpenRoot(string(f))
	if err != nil {
		return nil, err
	}
	defer root.Close()
	out := desk.Files{}
	for _, source := range deskSources() {
		err := fs.WalkDir(root.FS(), source, func(name string, entry fs.DirEntry, err error) error {
			switch {
			case errors.Is(err, fs.ErrNotExist), err == nil && entry.IsDir():
				return nil
			case err != nil:
				return err
			}
			if text, problem := textfile.Read(root.FS(), name); problem == nil {
				out[name] = text
			}
			return nil
		})
		if err != nil {
			return nil, err
		}
	}
	return out, nil
}

// Write changes files of the desk, and no others of the folder.
func (f deskFiles) Write(changes, before desk.Changes) error {
	root, err := os.OpenRoot(string(f))
	if err != nil {
		return err
	}
	defer root.Close()
	var all []publish.Change
	for name, text := range changes {
		if top, _, _ := strings.Cut(name, "/"); !slices.Contains(deskSources(), top) {
			return errors.New("the desk has no file " + name)
		}
		change := publish.Change{Path: name}
		if text != nil {
			change.After = []byte(*text)
		}
		// A text may stand on the disk with the line ends of another computer; and
		// without any word of what was there, she wants hers in its place.
		now, problem := textfile.Read(root.FS(), name)
		switch was := before[name]; {
		case problem == nil && (before == nil || was != nil && *was == now):
			if change.Before, err = root.ReadFile(name); err != nil {
				return err
			}
		case was != nil:
			change.Before = []byte(*was)
		}
		all = append(all, change)
	}
	err = publish.ChangeFiles(string(f), all)
	if changed := (*publish.Changed)(nil); errors.As(err, &changed) {
		return desk.ErrChanged
	}
	return err
}
