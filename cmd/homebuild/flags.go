package main

import (
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"homebuild/internal/diag"
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
