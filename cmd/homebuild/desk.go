package main

import (
	"crypto/rand"
	"errors"
	"io"
	"io/fs"
	"os"
	"os/signal"
	"path/filepath"
	"slices"
	"strings"
	"syscall"

	"github.com/cli/browser"
	"github.com/spf13/cobra"

	"homebuild/internal/desk"
	"homebuild/internal/deskserver"
	"homebuild/internal/preview"
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
			return s.desk(cmd, folder, port, !closed)
		},
	}
	cmd.Flags().IntVar(&port, "port", 0, "use this `number` (default: the next that is free)")
	cmd.Flags().BoolVar(&closed, "closed", false, "open no browser; show the address alone")
	return cmd
}

// desk serves the desk of a folder until it is told to end.
func (s *streams) desk(cmd *cobra.Command, folder string, port int, open bool) error {
	if !isFolder(folder) {
		return wrongUse("there is no folder \""+folder+"\"", "make it first; the desk writes its files there")
	}
	ctx, stop := signal.NotifyContext(cmd.Context(), syscall.SIGINT, syscall.SIGTERM)
	defer stop()
	listener, err := preview.Listen(port)
	if err != nil {
		return err
	}
	token := rand.Text()
	address := deskserver.Address(listener, token)
	s.say("your desk is at %s", address)
	s.say("its files are in %s; ctrl-c ends it", deskFiles(folder).Name())
	if open {
		browser.Stdout, browser.Stderr = io.Discard, io.Discard
		if err := browser.OpenURL(address); err != nil {
			s.tell("no browser could be opened", "open that address in one")
		}
	}
	return deskserver.Run(ctx, listener, desk.New(deskFiles(folder)), token)
}

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

// Read reads the files that pages are made from, and what tells how to go on.
func (f deskFiles) Read() (desk.Files, error) {
	root, err := os.OpenRoot(string(f))
	if err != nil {
		return nil, err
	}
	defer root.Close()
	out := desk.Files{}
	for _, source := range append(school.Sources(), "README.txt") {
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
		if top, _, _ := strings.Cut(name, "/"); !slices.Contains(append(school.Sources(), "README.txt"), top) {
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
