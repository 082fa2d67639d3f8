package school

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// Target is something that a week can be about, in words.
type Target struct {
	ID         string        `json:"id"`
	Grade      problem.Grade `json:"grade"` // 0 is kindergarten
	Can        string        `json:"can"`   // what a child can say at the end of the week
	Standards  []string      `json:"standards"`
	Within     int           `json:"within"`
	Kinds      []string      `json:"kinds"`
	Strategies []string      `json:"strategies"`
	Pictures   []string      `json:"pictures"`
}

// Targets lists all that a week can be about, from easy to hard.
func Targets() []Target { return FindTargets("") }

// TargetsOf lists those of a grade.
func TargetsOf(grade problem.Grade) []Target {
	return slices.DeleteFunc(Targets(), func(t Target) bool { return t.Grade != grade })
}

// FindTargets lists the targets that a teacher may mean, the likeliest first: the one
// that she names without doubt, or those of [activity.Find]. The words are those that
// a child and a parent read in English.
func FindTargets(query string) []Target {
	english := English()
	found := named(query, english)
	if len(found) != 1 {
		found = activity.Find(query, must(activity.Targets()), func(t activity.Target) string {
			return english.Plain(t.CanLine()) + " " + english.Plain(t.AboutLine())
		})
	}
	var out []Target
	for _, t := range found {
		out = append(out, Target{
			ID: t.ID, Grade: t.Grade, Can: english.Plain(t.CanLine()), Standards: t.Standards, Within: t.Within,
			Kinds:      each(t.Kinds, problem.Kind.String),
			Strategies: each(t.Strategies, strategy.Name.String),
			Pictures:   each(t.Pictures, picture.Kind.String),
		})
	}
	return out
}

// named are the targets that words name without doubt.
func named(typed string, english *i18n.Language) []activity.Target {
	return activity.Named(typed, must(activity.Targets()), func(t activity.Target) string { return english.Plain(t.CanLine()) })
}

// namedTargets are their ids.
func namedTargets(typed string) []string {
	return each(named(typed, English()), func(t activity.Target) string { return t.ID })
}

// ParseGrade reads a grade as people write it: "2", "grade 2", "K". It is nil for an
// empty word.
func ParseGrade(word string) (*problem.Grade, *diag.Diagnostic) {
	typed := strings.ToLower(strings.TrimSpace(word))
	for _, grade := range Grades() {
		if typed == strconv.Itoa(int(grade)) || typed == GradeName(grade) || grade == 0 && typed == "k" {
			return &grade, nil
		}
	}
	if typed == "" {
		return nil, nil
	}
	return nil, &diag.Diagnostic{Text: fmt.Sprintf("there are no targets for grade %q", word), Hint: "give 1, 2, 3, or K for kindergarten"}
}

// Grades lists the grades that there are targets for.
func Grades() []problem.Grade { return []problem.Grade{0, 1, 2, 3} }

// GradeName is what a grade is called.
func GradeName(grade problem.Grade) string {
	return []string{"kindergarten", "grade 1", "grade 2", "grade 3"}[grade]
}

// EasiestOf is the target that a grade begins with in the list.
func EasiestOf(grade problem.Grade) string {
	if of := TargetsOf(grade); len(of) > 0 {
		return of[0].ID
	}
	return FirstTarget
}
