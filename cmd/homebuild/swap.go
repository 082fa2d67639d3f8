package main

import (
	"fmt"
	"os"
	"path"
	"path/filepath"
	"strconv"

	"github.com/spf13/cobra"

	"homebuild/internal/activity"
	"homebuild/internal/problem"
	"homebuild/internal/publish"
	"homebuild/internal/school"
)

func newSwapCmd(s *streams) *cobra.Command {
	var wish school.Swap
	var easier, harder bool
	cmd := s.schoolCommand("swap [folder] week story", "give a week another story in the place of one", noExample, func(_ *cobra.Command, from *folder) error {
		switch {
		case easier && harder:
			return wrongUse("a story cannot be easier and harder", "keep one of the two")
		case easier:
			wish.Change = activity.EasierNumbers
		case harder:
			wish.Change = activity.HarderNumbers
		}
		return runSwap(s, from, wish)
	})
	swap := cmd.RunE
	cmd.Args = func(_ *cobra.Command, args []string) error {
		n := len(args)
		if n < 2 || n > 3 || !looksLikeWeek(args[n-2]) {
			return wrongUse("swap needs the week and the number of the story", "homebuild swap 2026-09-14 3; 0 is the worked story")
		}
		story, err := strconv.Atoi(args[n-1])
		if err != nil || story < 0 {
			return wrongUse(fmt.Sprintf("%q is not the number of a story", args[n-1]), "1 is the first to try, and 0 the worked one")
		}
		wish.Date, wish.Story = args[n-2], story
		return nil
	}
	cmd.RunE = func(cmd *cobra.Command, args []string) error { return swap(cmd, args[:len(args)-2]) }
	flags := cmd.Flags()
	flags.StringVar(&wish.Event, "event", "", "tell it as this `tale`: harbour.board")
	flags.StringVar(&wish.Kind, "kind", "", "make it a story of this `kind`: take-from-result")
	flags.IntSliceVar(&wish.Numbers, "numbers", nil, "give it these `numbers`: 8,6")
	flags.BoolVar(&easier, "easier", false, "give it easier numbers")
	flags.BoolVar(&harder, "harder", false, "give it harder numbers")
	flags.BoolVar(&wish.Another, "another", false, "keep the numbers, and tell another tale")
	proposes(cmd, "kind", wordsOf(problem.Kinds()))
	return cmd
}

// runSwap writes the week's stories with another one.
func runSwap(s *streams, from *folder, wish school.Swap) error {
	swapped, problems := from.Swap(wish)
	if len(problems) > 0 {
		return problems
	}
	if err := publish.Put(from.path, swapped.File); err != nil {
		return err
	}
	say := func(label, event string, p problem.Problem) {
		s.say("%s  %-22s %-18s %s", label, event, p.Kind(), p.Equation())
	}
	say("was", swapped.Was.Event, swapped.Was.Problem)
	say("now", swapped.Now.Event, swapped.Now.Problem)
	s.say("kept in %s", path.Join(filepath.ToSlash(from.path), swapped.File.Path))
	if _, err := os.Stat(filepath.Join(from.path, publicFolder, wish.Date+".html")); err == nil {
		s.say("families may have this week on paper, as it was; homebuild build%s changes the pages", argument(from.path))
		return nil
	}
	s.say("next: homebuild desk%s shows it", argument(from.path))
	return nil
}
