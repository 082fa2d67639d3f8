package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
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
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return cmd.Help()
			}
			return unknownCommand(cmd, args[0])
		},
	}
	cmd.AddCommand(newLanguageNewCmd(s), newLanguageNextCmd(s), newLanguageCheckCmd(s), newLanguageSampleCmd(s),
		newLanguageStatusCmd(s), newLanguageStampCmd(s), newLanguageSignCmd(s))
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

// languageCommand is a command about a language and, if one likes, a folder.
func languageCommand(use, short string, do func(cmd *cobra.Command, from *folder, tag string) error) *cobra.Command {
	return &cobra.Command{Use: use, Short: short, ValidArgsFunction: tagsAndFolders, Args: tagAndFolder, RunE: func(cmd *cobra.Command, args []string) error {
		from, err := openLanguages(strings.Join(args[1:], ""))
		if err != nil {
			return err
		}
		defer from.close()
		return do(cmd, from, args[0])
	}}
}

// tagAndFolder is the rule for the words of such a command.
func tagAndFolder(cmd *cobra.Command, args []string) error {
	if len(args) < 1 || len(args) > 2 {
		return wrongUse(fmt.Sprintf("%s takes a language and, if you wish, a folder", cmd.Name()), fmt.Sprintf("%s so my-class", cmd.CommandPath()))
	}
	return nil
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
