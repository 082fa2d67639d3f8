package main

import (
	"slices"

	"github.com/charmbracelet/huh"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/picture"
	"homebuild/internal/strategy"
)

// askWeek asks for the date and the target, proposing what was chosen.
func (o weekOptions) askWeek(c *chosen, targets []activity.Target, english *i18n.Language) error {
	proposed, date, id := c.target.ID, c.date, c.target.ID
	var fields []huh.Field
	if o.monday == "" {
		fields = append(fields, o.line("Monday of the week", "year-month-day", &date, checkMonday))
	}
	if o.target == "" {
		about := ""
		if c.suggested {
			about = because(c.why, english)
		}
		grade := int(c.target.Grade)
		fields = append(fields, chooseTarget(o.streams, "What is it about?", about, &id, ofGrade(targets, grade), english))
	} else {
		id = o.target
	}
	if err := o.ask(fields); err != nil {
		return err
	}
	if date != "" {
		c.date = date
	}
	if err := checkTarget(id, targets); err != nil {
		return err
	}
	c.target = targets[slices.IndexFunc(targets, func(t activity.Target) bool { return t.ID == id })]
	c.suggested = c.suggested && id == proposed
	return nil
}

// askFit asks for the focus and the picture, proposing what fits best.
func (o weekOptions) askFit(c *chosen) error {
	focus, kind := c.focus, c.picture
	var fields []huh.Field
	if o.focus == "" {
		fields = append(fields, choose(o.streams, "Which way of working do you practise?", "", &focus, append(slices.Clone(c.target.Strategies), 0), wordOr(strategy.Name.Valid, strategy.Name.String)))
	}
	if o.picture == "" {
		fields = append(fields, choose(o.streams, "How does the class draw?", "", &kind, append(slices.Clone(c.target.Pictures), 0), wordOr(picture.Kind.Valid, picture.Kind.String)))
	}
	if err := o.ask(fields); err != nil {
		return err
	}
	c.focusAsked = c.focusAsked || focus != c.focus
	c.pictureAsked = c.pictureAsked || kind != c.picture
	c.focus, c.picture = focus, kind
	return nil
}

// wordOr gives the word of a value, or "none" for the one that is none.
func wordOr[T any](valid func(T) bool, word func(T) string) func(T) string {
	return func(v T) string {
		if !valid(v) {
			return none
		}
		return word(v)
	}
}
