package main

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/diag"
)

// Questions are asked on a terminal and nowhere else, a line each, which a screen
// reader reads well; each has a flag that answers it beforehand. An answer that
// cannot stand is asked again, with what to write. Nothing is written before the
// last answer, so ctrl-c ends all.

// ask reads answers until one is taken; take says what is wrong with it.
func (s *streams) ask(question string, take func(answer string) *diag.Diagnostic) error {
	for {
		fmt.Fprint(s.err, s.bold(question)+" ")
		answer, err := s.in.ReadString('\n')
		if err != nil {
			return wrongUse("nobody answers; nothing was written", "flags answer beforehand: --help lists them")
		}
		wrong := take(strings.TrimSpace(answer))
		if wrong == nil {
			return nil
		}
		s.tell(wrong.Text, wrong.Hint)
	}
}

// line asks for a line of text. A value that is there already is proposed, and
// an empty answer takes it.
func (s *streams) line(question string, value *string, check func(string) *diag.Diagnostic) error {
	proposed := *value
	if proposed != "" {
		question += " [" + proposed + "]"
	}
	return s.ask(question+":", func(answer string) *diag.Diagnostic {
		if answer == "" {
			answer = proposed
		}
		*value = answer
		return check(answer)
	})
}

// choose asks for one of a list and gives its place. The one at the proposed
// place is taken by an empty answer.
func (s *streams) choose(question string, words []string, proposed int) (int, error) {
	s.list(question, words)
	chosen := proposed
	err := s.ask(fmt.Sprintf("1 to %d [%d]:", len(words), proposed+1), func(answer string) (wrong *diag.Diagnostic) {
		if answer != "" {
			chosen, wrong = place(answer, len(words))
		}
		return wrong
	})
	return chosen, err
}

// chooseSome asks for any of a list, by their numbers.
func (s *streams) chooseSome(question string, words []string) ([]int, error) {
	s.list(question, words)
	var chosen []int
	err := s.ask("their numbers, such as 1 3; enter for none:", func(answer string) *diag.Diagnostic {
		chosen = nil
		for _, typed := range strings.FieldsFunc(answer, func(c rune) bool { return c == ' ' || c == ',' }) {
			i, wrong := place(typed, len(words))
			if wrong != nil {
				return wrong
			}
			chosen = append(chosen, i)
		}
		return nil
	})
	slices.Sort(chosen)
	return slices.Compact(chosen), err
}

func (s *streams) list(question string, words []string) {
	fmt.Fprintln(s.err, s.bold(question))
	for i, word := range words {
		fmt.Fprintf(s.err, "  %2d  %s\n", i+1, word)
	}
}

// place is where the entry of a typed number stands in a list.
func place(typed string, of int) (int, *diag.Diagnostic) {
	n, err := strconv.Atoi(typed)
	if err != nil || n < 1 || n > of {
		return 0, &diag.Diagnostic{Text: fmt.Sprintf("%q is not in the list", typed), Hint: fmt.Sprintf("type a number from 1 to %d", of)}
	}
	return n - 1, nil
}

// inTurn asks one question after the other.
func inTurn(questions []func() error) error {
	for _, ask := range questions {
		if err := ask(); err != nil {
			return err
		}
	}
	return nil
}
