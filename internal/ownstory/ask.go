package ownstory

import (
	"fmt"
	"strings"

	"homebuild/internal/problem"
)

const otherNumbers = `; where other numbers count, mark these: [6 kites]`

// ask asks for what an offer leaves open: what happens, where more fit than a
// person looks through; else what is asked.
func (t Text) ask(o Offer) error {
	numbers := t.numbers(o)
	switch {
	case len(t.Numerals) == 0:
		return &Error{Setting: "text", Text: "your own story has no numbers to count with", Hint: "write them in digits, or say what words mean: [a dozen = 12]"}
	case len(o.Choices) == 0:
		return &Error{
			Setting: "text", Text: "no kind of story fits your own story" + numbers,
			Hint: `mark the one to four numbers that count, [6 kites]; "homebuild help own-stories" lists the kinds`,
		}
	case len(o.Choices) > MostShown:
		var out strings.Builder
		for _, h := range o.Happenings() {
			fmt.Fprintf(&out, "\n    %-20s # %s", fmt.Sprintf("happens = %q", h), h.Label())
		}
		return &Error{
			Setting: "text", Text: "your own story waits for you to say what happens" + numbers,
			Hint: "write below its text the one line that is true, and you are shown what it can ask" + otherNumbers + out.String(),
		}
	}
	return &Error{
		Setting: "text", Text: "your own story waits for you to say what it asks" + numbers,
		Hint: "write below its text the one line that is true" + turned(o.Choices) + otherNumbers + "; a story that no line tells can stand in your note" + kindLines(o.Choices),
	}
}

// kindLines are the choices one below the other, as they stand in a week file, each
// with its number and what it means. Where there is room, those follow that come to
// another answer with the numbers turned round.
func kindLines(choices []Choice) string {
	happens := Offer{Choices: choices}.Happenings()
	var settings, meanings []string
	add := func(setting, number string, c Choice) {
		asks := c.Asks()
		if len(happens) > 1 {
			asks = c.Happens().Label() + " " + asks
		}
		settings = append(settings, fmt.Sprintf("kind = %q", setting))
		meanings = append(meanings, fmt.Sprintf("%s%s  %s %s", number, c.Equation(), asks, c.Answer()))
	}
	for _, c := range choices {
		add(c.ID(), fmt.Sprintf("or choice = %d: ", c.Number()), c)
	}
	for _, c := range choices {
		answers := map[int]bool{c.Problem.Answer(): true}
		for _, other := range c.Turned {
			if answer := other.Problem.Answer(); !answers[answer] && len(settings) < MostShown {
				answers[answer] = true
				add(other.Line(), "", other)
			}
		}
	}
	widest := 0
	for _, setting := range settings {
		widest = max(widest, len(setting))
	}
	var out strings.Builder
	for i, setting := range settings {
		fmt.Fprintf(&out, "\n    %-*s # %s", widest, setting, meanings[i])
	}
	return out.String()
}

// turned tells of numbers that the story has the other way round, with the first
// line that has.
func turned(choices []Choice) string {
	for _, c := range choices {
		if len(c.Turned) > 0 {
			return fmt.Sprintf("; where it has its numbers the other way round, with its equation: kind = %q", c.Turned[0].Line())
		}
	}
	return ""
}

// unfit says that the numbers that count cannot tell what was chosen.
func (t Text) unfit(kinds []problem.Kind, o Offer, w Wish) error {
	what, hint := fmt.Sprintf("a story in which %q", w.Happens), "take this line away, and you are shown what the story can tell"
	if len(kinds) == 1 {
		what = "the kind " + kinds[0].String()
		hint = fmt.Sprintf("it needs numbers as in %s: mark those that count, [6 kites], or choose another kind", sample(kinds[0]).Equation())
	}
	return &Error{Setting: w.setting(), Text: "the numbers of the story do not fit " + what + t.numbers(o), Hint: hint}
}

// numbers tells which numbers count, and which are left out.
func (t Text) numbers(o Offer) string {
	out := "; numbers that count: " + t.labels(o.Counted)
	if len(o.LeftOut) > 0 {
		out += "; left out: " + t.labels(o.LeftOut)
	}
	return out
}

func (t Text) labels(places []int) string {
	var out []string
	for _, at := range places {
		out = append(out, t.Label(at))
	}
	if len(out) == 0 {
		return "none"
	}
	return strings.Join(out, ", ")
}

func lowerFirst(s string) string { return strings.ToLower(s[:1]) + s[1:] }
