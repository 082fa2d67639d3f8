package main

import (
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/school"
	"homebuild/locales"
)

// wrongFlag says in our voice what is the matter with a flag.
func wrongFlag(cmd *cobra.Command, err error) error {
	var unknown *pflag.NotExistError
	var value *pflag.InvalidValueError
	var missing *pflag.ValueRequiredError
	switch {
	case errors.As(err, &unknown):
		return unknownFlag(cmd, unknown)
	case errors.As(err, &value):
		return wrongUse(fmt.Sprintf("--%s cannot be %q", value.GetFlag().Name, value.GetValue()), seeHelp(cmd))
	case errors.As(err, &missing):
		return wrongUse(fmt.Sprintf("something is missing after --%s", missing.GetSpecifiedName()), seeHelp(cmd))
	}
	return wrongUse(err.Error(), seeHelp(cmd))
}

// unknownFlag names the nearest flag there is.
func unknownFlag(cmd *cobra.Command, unknown *pflag.NotExistError) error {
	typed := unknown.GetSpecifiedName()
	if whole := unknown.GetSpecifiedShortnames(); whole != "" {
		if flag := plainFlag(cmd, whole); flag != "" {
			return wrongUse(fmt.Sprintf("%q has one dash", "-"+whole), "write two: "+flag)
		}
		return wrongUse(fmt.Sprintf("%q is not a flag of %s", "-"+typed, cmd.Name()), seeHelp(cmd))
	}
	var names []string
	cmd.Flags().VisitAll(func(f *pflag.Flag) { names = append(names, f.Name) })
	hint := "there are: --" + strings.Join(names, ", --")
	if near := diag.Nearest(typed, names); near != "" {
		hint = fmt.Sprintf("did you mean --%s?", near)
	}
	return wrongUse(fmt.Sprintf("%q is not a flag of %s", "--"+typed, cmd.Name()), hint)
}

// plainFlag is the flag that was meant by a word with a word processor's dash,
// one dash or none; empty when none was.
func plainFlag(cmd *cobra.Command, word string) string {
	name, _, _ := strings.Cut(strings.TrimLeft(word, "-‐‑‒–—―−"), "=")
	if name == "" || cmd.Flags().Lookup(name) == nil {
		return ""
	}
	return "--" + name
}

// atMostOneFolder is the rule for commands that take a folder or none.
func atMostOneFolder(cmd *cobra.Command, args []string) error {
	for i, word := range args {
		if flag := plainFlag(cmd, word); flag != "" && (i > 0 || !isFolder(word)) {
			return wrongUse(fmt.Sprintf("%s cannot do anything with %q", cmd.Name(), word), "write two plain dashes before it: "+flag)
		}
	}
	if len(args) > 1 {
		return wrongUse(fmt.Sprintf("%s takes one folder, not %d", cmd.Name(), len(args)), `put quotes around a name with spaces: "my class"`)
	}
	return nil
}

func seeHelp(cmd *cobra.Command) string { return fmt.Sprintf("%s --help says more", cmd.CommandPath()) }

// What a shell proposes when the tab key is pressed.

// folders proposes folders, for commands that take one.
func folders(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
	if len(args) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	return nil, cobra.ShellCompDirectiveFilterDirs
}

// proposes gives a flag its words. A flag that the command does not have is a
// bug.
func proposes(cmd *cobra.Command, flag string, words func() []string) {
	err := cmd.RegisterFlagCompletionFunc(flag, func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
		return words(), cobra.ShellCompDirectiveNoFileComp
	})
	if err != nil {
		panic(err)
	}
}

func targetWords() []string {
	return each(school.Targets(), func(t school.Target) string { return t.ID })
}

// wordsOf are those of a list, and others.
func wordsOf[T fmt.Stringer](list []T, more ...string) func() []string {
	return func() []string { return append(each(list, T.String), more...) }
}

func languageWords() []string { return i18n.Tags(locales.Files) }

// each makes a list of another.
func each[From, To any](list []From, do func(From) To) []To {
	out := make([]To, len(list))
	for i, v := range list {
		out[i] = do(v)
	}
	return out
}
