package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/school"
	"homebuild/internal/week"
)

func newLanguageCmd(s *streams) *cobra.Command {
	cmd := &cobra.Command{
		Use:   "language",
		Short: "add a language, or look after one",
		Args:  cobra.ArbitraryArgs,
		RunE:  helpOrUnknown,
	}
	cmd.AddCommand(newLanguageNewCmd(s), newLanguageWatchCmd(s), newLanguageNextCmd(s), newLanguageCheckCmd(s), newLanguageFindCmd(s), newLanguageExportCmd(s), newLanguageImportCmd(s),
		newLanguageSampleCmd(s), newLanguageRemarksCmd(s), newLanguageStatusCmd(s), newLanguageStampCmd(s), newLanguageSignCmd(s))
	return cmd
}

// openLanguages opens the folder that was typed, or the one that the person is
// in when it is a school's or has language files of its own. Its path is empty
// where only the program's own files are looked at.
func openLanguages(typed string) (*folder, error) {
	if typed == "" && (isThere(week.SiteFile) || isThere(school.LocalesFolder)) {
		typed = here
	}
	return openFolder(typed)
}

func isThere(name string) bool {
	_, err := os.Stat(name)
	return err == nil
}

// languagePath is where the file of a language stands in the folder.
func (f *folder) languagePath(tag string) string {
	return filepath.Join(f.path, school.LocalesFolder, tag+".toml")
}

// ownLanguage reads a language file of the folder itself.
func (f *folder) ownLanguage(tag string) ([]byte, error) {
	data, err := fs.ReadFile(f.files, school.LocalesFolder+"/"+tag+".toml")
	if f.path == "" || errors.Is(err, fs.ErrNotExist) {
		return nil, wrongUse(fmt.Sprintf("there is no file %q", f.languagePath(tag)), "homebuild language new "+tag+argument(f.path)+" makes one")
	}
	return data, err
}

// languageCommand is a command about a language and, if one likes, a folder. With
// "[xx]" in its use the language may be left out, too: a word alone is a folder when
// there is one of that name and no such language.
func languageCommand(use, short string, do func(cmd *cobra.Command, from *folder, tag string) error) *cobra.Command {
	open := strings.Contains(use, "[xx]")
	cmd := &cobra.Command{Use: use, Short: short, ValidArgsFunction: tagsAndFolders, RunE: func(cmd *cobra.Command, args []string) error {
		words := append(slices.Clone(args), "")
		if open && (len(args) == 0 || len(args) == 1 && isFolder(args[0]) && !slices.Contains(languageWords(), args[0])) {
			words = append([]string{""}, words...) // no language
		}
		tag, path := words[0], words[1]
		from, err := openLanguages(path)
		if err != nil {
			return err
		}
		defer from.close()
		return do(cmd, from, tag)
	}}
	cmd.Args = func(cmd *cobra.Command, args []string) error {
		if len(args) > 2 || len(args) < 1 && !open {
			return wrongUse(fmt.Sprintf("%s takes a language and, if you wish, a folder", cmd.Name()), fmt.Sprintf("%s so my-class", cmd.CommandPath()))
		}
		return nil
	}
	return cmd
}

// tagsAndFolders proposes languages first, then folders.
func tagsAndFolders(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
	switch len(args) {
	case 0:
		return languageWords(), cobra.ShellCompDirectiveNoFileComp
	case 1:
		return nil, cobra.ShellCompDirectiveFilterDirs
	}
	return nil, cobra.ShellCompDirectiveNoFileComp
}
