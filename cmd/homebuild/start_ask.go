package main

import (
	"slices"

	"github.com/charmbracelet/huh"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/problem"
	"homebuild/internal/week"
)

// askStart asks what no flag has answered.
func (o *startOptions) askStart(ready []string, names map[string]string, targets []activity.Target, english *i18n.Language) error {
	given := *o
	o.yes = true // for proposals
	if err := o.propose(); err != nil {
		return err
	}
	o.name = given.name
	monday := o.monday
	class, others := o.languages[0], slices.Clone(o.languages[1:])
	grade := gradeOf(o.target, targets)
	language := func(tag string) string { return week.LanguageName(tag) + ", " + names[tag] + " (" + tag + ")" }

	var first []huh.Field
	if given.name == "" {
		first = append(first, o.line("School or class", "as families know it", &o.name, checkName))
	}
	if len(given.languages) == 0 {
		first = append(first, choose(o.streams, "Language of the class", "", &class, ready, language))
	}
	if err := o.ask(first); err != nil {
		return err
	}
	var second []huh.Field
	if len(given.languages) == 0 && len(ready) > 1 {
		var options []huh.Option[string]
		for _, tag := range ready {
			if tag != class {
				options = append(options, huh.NewOption(language(tag), tag))
			}
		}
		second = append(second, huh.NewMultiSelect[string]().Title("Other languages at home").
			Description("space marks one, enter goes on").Options(options...).Value(&others))
	}
	if given.monday == "" {
		second = append(second, o.line("First Monday", "year-month-day", &o.monday, checkMonday))
	}
	if given.target == "" {
		second = append(second, choose(o.streams, "Grade", "", &grade, []int{0, 1, 2, 3}, gradeName))
	}
	if err := o.ask(second); err != nil {
		return err
	}
	if len(given.languages) == 0 {
		o.languages = append([]string{class}, others...)
	}
	var last []huh.Field
	if given.target == "" {
		last = append(last, chooseTarget(o.streams, "What is the first week about?", "", &o.target, ofGrade(targets, grade), english))
	}
	if given.address == "" {
		last = append(last, o.line("Where will the pages live?", "a web address; leave it empty if there is none yet", &o.address, checkAddress))
	}
	if o.monday == "" { // an empty answer takes what is proposed
		o.monday = monday
	}
	return o.ask(last)
}

// chooseTarget asks for a target by what a child can say at the end of the week.
func chooseTarget(s *streams, title, about string, id *string, targets []activity.Target, english *i18n.Language) *huh.Select[string] {
	if len(targets) > 0 && !slices.ContainsFunc(targets, func(t activity.Target) bool { return t.ID == *id }) {
		*id = targets[0].ID
	}
	can := map[string]string{}
	for _, t := range targets {
		can[t.ID] = english.Plain(t.CanLine())
	}
	return choose(s, title, about, id, each(targets, func(t activity.Target) string { return t.ID }),
		func(id string) string { return can[id] + "  " + id })
}

func ofGrade(targets []activity.Target, grade int) []activity.Target {
	return slices.DeleteFunc(slices.Clone(targets), func(t activity.Target) bool { return t.Grade != problem.Grade(grade) })
}

func gradeOf(id string, targets []activity.Target) int {
	for _, t := range targets {
		if t.ID == id {
			return int(t.Grade)
		}
	}
	return 1
}
