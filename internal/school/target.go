package school

import (
	"homebuild/internal/activity"
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

// FindTargets lists the targets that a teacher may mean, the likeliest first: see
// [activity.Find]. The words are those that a child and a parent read in English.
func FindTargets(query string) []Target {
	english := English()
	var out []Target
	for _, t := range activity.Find(query, must(activity.Targets()), func(t activity.Target) string {
		return english.Plain(t.CanLine()) + " " + english.Plain(t.AboutLine())
	}) {
		out = append(out, Target{
			ID: t.ID, Grade: t.Grade, Can: english.Plain(t.CanLine()), Standards: t.Standards, Within: t.Within,
			Kinds:      each(t.Kinds, problem.Kind.String),
			Strategies: each(t.Strategies, strategy.Name.String),
			Pictures:   each(t.Pictures, picture.Kind.String),
		})
	}
	return out
}

// GradeName is what a grade is called.
func GradeName(grade problem.Grade) string {
	return []string{"kindergarten", "grade 1", "grade 2", "grade 3"}[grade]
}

// FirstOf is the target that a grade begins with: the first of the list.
func FirstOf(grade problem.Grade) string {
	for _, t := range must(activity.Targets()) {
		if t.Grade >= grade {
			return t.ID
		}
	}
	return FirstTarget
}
