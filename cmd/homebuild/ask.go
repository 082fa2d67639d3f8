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

// asker asks one question after the other. When nobody answers, it keeps that as its
// error and asks no more; what was proposed then stands.
type asker struct {
	*streams
	err error
}

// ask reads answers until one is taken; take says what is wrong with it.
func (a *asker) ask(question string, take func(answer string) *diag.Diagnostic) {
	for a.err == nil {
		fmt.Fprint(a.streams.err, a.bold(question)+" ")
		answer, err := a.in.ReadString('\n')
		if err != nil {
			a.err = wrongUse("nobody answers; nothing was written", "flags answer beforehand: --help lists them")
			return
		}
		wrong := take(strings.TrimSpace(answer))
		if wrong == nil {
			return
		}
		a.tell(wrong.Text, wrong.Hint)
	}
}

// line asks for a line of text. A value that is there already is proposed, and
// an empty answer takes it.
func (a *asker) line(question string, value *string, check func(string) *diag.Diagnostic) {
	proposed := *value
	if proposed != "" {
		question += " [" + proposed + "]"
	}
	a.ask(question+":", func(answer string) *diag.Diagnostic {
		if answer == "" {
			answer = proposed
		}
		*value = answer
		return check(answer)
	})
}

// choose asks for one of a list and gives its place. The one at the proposed
// place is taken by an empty answer.
func (a *asker) choose(question string, words []string, proposed int) int {
	a.list(question, words)
	chosen := proposed
	a.ask(fmt.Sprintf("1 to %d [%d]:", len(words), proposed+1), func(answer string) (wrong *diag.Diagnostic) {
		if answer != "" {
			chosen, wrong = place(answer, len(words))
		}
		return wrong
	})
	return chosen
}

// chooseSome asks for any of a list, by their numbers.
func (a *asker) chooseSome(question string, words []string) []int {
	a.list(question, words)
	var chosen []int
	a.ask("their numbers, such as 1 3; enter for none:", func(answer string) *diag.Diagnostic {
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
	return slices.Compact(chosen)
}

func (a *asker) list(question string, words []string) {
	if a.err != nil {
		return
	}
	fmt.Fprintln(a.streams.err, a.bold(question))
	for i, word := range words {
		fmt.Fprintf(a.streams.err, "  %2d  %s\n", i+1, word)
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
