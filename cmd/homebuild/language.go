package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"

	"github.com/spf13/cobra"

	"homebuild/internal/i18n"
	"homebuild/internal/week"
	"homebuild/locales"
)

func newLanguageCmd(s *streams) *cobra.Command {
	cmd := &cobra.Command{
		Use:   "language",
		Short: "add a language, or look after one",
		Long: `Language is the translator's bench. A language is one file of words,
"locales/xx.toml", in the school's folder. From nothing to a page on your phone:

  homebuild language new xx             the file, with a note for each message
  homebuild language sample xx --watch  see it while you write
  homebuild language check xx           what is still to mend, line by line
  homebuild language sign xx            a fluent reader stands for every word

xx is the language's tag (BCP 47): "so" Somali, "pt-BR" Portuguese of Brazil,
"zh-Hant" Chinese in traditional letters. A file that is not whole is never used
for a page that families see, so nothing can break while you work.

Without a folder all of these take the one you are in.`,
		Args: cobra.ArbitraryArgs,
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return cmd.Help()
			}
			return unknownCommand(cmd, args[0])
		},
	}
	cmd.AddCommand(newLanguageNewCmd(s), newLanguageCheckCmd(s), newLanguageSampleCmd(s),
		newLanguageStatusCmd(s), newLanguageStampCmd(s), newLanguageSignCmd(s))
	return cmd
}

// bench is a folder with language files.
type bench struct {
	*school
	folder string // as typed; empty where only the program's own files are looked at
}

// openBench opens the folder that was typed, or the one that the person is in
// when it is a school's or has language files of its own.
func openBench(typed string) (*bench, error) {
	folder := typed
	if folder == "" && (isThere(week.SiteFile) || isThere(localesFolder)) {
		folder = "."
	}
	from, err := openSchool(folder)
	if err != nil {
		return nil, err
	}
	return &bench{school: from, folder: folder}, nil
}

func isThere(name string) bool {
	_, err := os.Stat(name)
	return err == nil
}

// own reads a language file of the folder itself; the path is for writing it.
func (b *bench) own(tag string) (path string, data []byte, err error) {
	path = filepath.Join(b.folder, localesFolder, tag+".toml")
	data, err = fs.ReadFile(b.files, localesFolder+"/"+tag+".toml")
	if b.folder == "" || errors.Is(err, fs.ErrNotExist) {
		return "", nil, wrongUse(fmt.Sprintf("there is no file %q", path), "homebuild language new "+tag+argument(b.folder)+" makes one")
	}
	return path, data, err
}

// tags lists the languages of the folder itself, or the program's where it has
// none.
func (b *bench) tags() []string {
	if own, ok := b.school.folder(localesFolder); ok && b.folder != "" {
		if tags := i18n.Tags(own); len(tags) > 0 {
			return tags
		}
	}
	return i18n.Tags(locales.Files)
}

// tagAndFolder reads the words after a command that takes a language and, if
// one likes, a folder.
func tagAndFolder(cmd *cobra.Command, args []string) error {
	if len(args) < 1 || len(args) > 2 {
		return wrongUse(fmt.Sprintf("%s takes a language and, if you wish, a folder", cmd.Name()), fmt.Sprintf("%s so my-class", cmd.CommandPath()))
	}
	return nil
}

// secondWord is the folder of tagAndFolder; empty when none was typed.
func secondWord(args []string) string {
	if len(args) == 2 {
		return args[1]
	}
	return ""
}

// tagOrFolder reads the words of a command that takes either, both or none. One
// word is a folder when there is one of that name and no such language.
func tagOrFolder(args []string) (tag, folder string) {
	switch len(args) {
	case 0:
		return "", ""
	case 1:
		if info, err := os.Stat(args[0]); err == nil && info.IsDir() && !slices.Contains(languageWords(), args[0]) {
			return "", args[0]
		}
		return args[0], ""
	}
	return args[0], args[1]
}

// atMostTagAndFolder is the rule for such commands.
func atMostTagAndFolder(cmd *cobra.Command, args []string) error {
	if len(args) > 2 {
		return wrongUse(fmt.Sprintf("%s takes a language and a folder, not %d words", cmd.Name(), len(args)), seeHelp(cmd))
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
