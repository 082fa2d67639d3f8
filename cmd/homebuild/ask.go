package main

import (
	"errors"
	"fmt"

	"github.com/charmbracelet/huh"

	"homebuild/internal/translate"
	"homebuild/locales"
)

// Questions are asked on a terminal and nowhere else, and each has a flag that
// answers it beforehand. With ACCESSIBLE set, or on a terminal that cannot move
// its cursor, they are plain lines, which a screen reader reads well.

// ask shows questions on one screen; none is fine. Ctrl-c ends it with nothing
// written.
func (s *streams) ask(questions []huh.Field) error {
	if len(questions) == 0 {
		return nil
	}
	theme := huh.ThemeBase()
	if s.colour {
		theme = huh.ThemeBase16()
	}
	err := huh.NewForm(huh.NewGroup(questions...)).WithInput(s.in).WithOutput(s.err).WithAccessible(s.simple).WithTheme(theme).Run()
	if errors.Is(err, huh.ErrUserAborted) {
		s.tell("ended; nothing was written", "")
		return errTold
	}
	return err
}

// line asks for a line of text. A value that is there already is proposed, and
// an empty answer takes it.
func (s *streams) line(title, about string, value *string, check func(string) error) *huh.Input {
	proposed := *value
	if s.simple { // such a terminal shows neither
		if about != "" {
			title += " (" + about + ")"
		}
		if proposed != "" {
			title += " [" + proposed + "]"
		}
		title += ":"
	}
	return huh.NewInput().Title(title).Description(about).Value(value).Validate(func(text string) error {
		if text == "" && proposed != "" {
			return nil
		}
		return onOneLine(check(text))
	})
}

// onOneLine puts the next step beside what is wrong: a form shows one line.
func onOneLine(err error) error {
	var usage *usageError
	if errors.As(err, &usage) {
		return fmt.Errorf("%s: %s", usage.text, usage.hint)
	}
	return err
}

// choose asks for one of a list. The value that is there already is proposed.
func choose[T comparable](s *streams, title, about string, value *T, list []T, word func(T) string) *huh.Select[T] {
	const shown = 12
	options := make([]huh.Option[T], len(list))
	for i, v := range list {
		name := word(v)
		if s.simple && v == *value {
			name += "  (or enter)"
		}
		options[i] = huh.NewOption(name, v)
	}
	if s.simple && about != "" {
		title += " Proposed: " + about
	}
	// The list begins to be seen at the value it has when it gets its options:
	// at the first of them, so that all can be seen.
	top := list[0]
	field := huh.NewSelect[T]().Title(title).Description(about).Value(&top).Options(options...).Value(value)
	if len(list) > shown {
		field.Height(shown)
	}
	return field
}

// readyLanguages are the languages whose files are whole, by tag in order, with
// their own names.
func readyLanguages() (tags []string, names map[string]string, err error) {
	all, problems := translate.StatusOf(locales.Files)
	if len(problems) > 0 {
		return nil, nil, problems
	}
	names = map[string]string{}
	for _, l := range all {
		if l.Problems == 0 && l.Missing() == 0 {
			tags = append(tags, l.Tag)
			names[l.Tag] = l.Name
		}
	}
	return tags, names, nil
}
