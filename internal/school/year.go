package school

import (
	"fmt"
	"slices"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/problem"
	"homebuild/internal/site"
	"homebuild/internal/week"
)

// Year is a school with its weeks' problems worked out, for looking back and for
// choosing what comes next.
type Year struct {
	site.Input
	Weeks []activity.WeekPlan // oldest first

	school *School
}

// Year reads the school and plans its weeks. A school that has no week yet is no
// problem here.
func (s *School) Year() (*Year, diag.Diagnostics) {
	in, problems := s.read()
	problems = slices.DeleteFunc(problems, week.OnlyNoWeek)
	if len(problems) > 0 {
		return nil, s.Locate(problems)
	}
	return s.YearOf(in)
}

// YearOf plans the weeks of a school that was read.
func (s *School) YearOf(in site.Input) (*Year, diag.Diagnostics) {
	weeks, problems := site.Year(in)
	if len(problems) > 0 {
		return nil, s.Locate(problems)
	}
	return &Year{in, weeks, s}, nil
}

// Grade is the class's: what site.toml says, else that of the newest week.
func (y *Year) Grade() problem.Grade {
	switch n := len(y.Weeks); {
	case y.Site.Grade != nil:
		return *y.Site.Grade
	case n > 0:
		return y.Weeks[n-1].Request.Target.Grade
	}
	return UsualGrade
}

// UsualGrade is the grade of [FirstTarget].
const UsualGrade problem.Grade = 1

// Tellable lists the targets whose stories every language of the site can tell.
func (y *Year) Tellable() []activity.Target {
	events := y.SharedEvents()
	return slices.DeleteFunc(slices.Clone(y.Targets), func(t activity.Target) bool {
		return slices.ContainsFunc(t.Kinds, func(k problem.Kind) bool { return !events.Tells(k) })
	})
}

// TargetsOf lists those of a grade, in words.
func (y *Year) TargetsOf(grade problem.Grade) []Target {
	tellable := y.Tellable()
	return slices.DeleteFunc(TargetsOf(grade), func(t Target) bool {
		return !slices.ContainsFunc(tellable, func(told activity.Target) bool { return told.ID == t.ID })
	})
}

// factsKnown is the grade by whose end the addition facts are known by heart
// (CCSS-M 2010, 2.OA.B.2).
const factsKnown = 2

// Overview is what the class has met in its weeks, and what is missing.
type Overview struct {
	Name    string         `json:"-"`
	Grade   problem.Grade  `json:"grade"` // of the class
	Weeks   []OverviewWeek `json:"weeks"`
	Kinds   []OverviewKind `json:"kinds"` // those that matter to the grade
	Work    []OverviewWork `json:"work"`
	Facts   [][]int        `json:"facts"` // how often a + b was met: Facts[a-1][b-1]; none where no fact was met, and for a grade that knows them
	Missing [][2]int       `json:"facts-not-met"`
	Lacks   []string       `json:"lacks"` // the kinds first, in their order
}

// OverviewWeek is what a week was about.
type OverviewWeek struct {
	Date   string `json:"date"`
	Target string `json:"target"`
	Can    string `json:"-"` // what a child can say; empty for a target of one's own
}

// OverviewKind counts the stories of a kind.
type OverviewKind struct {
	ID     string `json:"kind"`
	Name   string `json:"-"`
	ByWeek []int  `json:"by-week"`
	Total  int    `json:"total"`
}

// OverviewWork counts steps of stories that ask a child for the same work.
type OverviewWork struct {
	Name   string `json:"work"` // "add to 100, regroup"
	ByWeek []int  `json:"by-week"`
}

// workName says what is worked: "subtract to 20, past ten".
func workName(w activity.Work) string {
	name := fmt.Sprintf("%s to %d", map[problem.Op]string{problem.Plus: "add", problem.Minus: "subtract"}[w.Op], w.Within)
	switch {
	case w.Passes && w.Within <= 20:
		name += ", past ten"
	case w.Passes:
		name += ", regroup"
	}
	return name
}

// Overview looks back on the year. There must be a week.
func (y *Year) Overview() Overview {
	english := y.Catalog.Source()
	out := Overview{
		Name: y.Site.Name.In(y.Site.School, y.Site.School), Grade: y.Grade(),
		Missing: [][2]int{}, Lacks: []string{},
	}
	cover := activity.Cover(y.Weeks, out.Grade)
	for _, w := range y.Weeks {
		target := w.Request.Target
		entry := OverviewWeek{Date: w.Request.Week, Target: target.ID}
		if target.ID != activity.OwnID {
			entry.Can = english.Plain(target.CanLine())
		}
		out.Weeks = append(out.Weeks, entry)
	}
	for _, row := range cover.Kinds {
		if row.Total > 0 || row.Kind.FirstGrade() <= out.Grade {
			out.Kinds = append(out.Kinds, OverviewKind{row.Kind.String(), english.Plain(activity.KindName(row.Kind)), row.ByWeek, row.Total})
		}
	}
	for _, row := range cover.Work {
		out.Work = append(out.Work, OverviewWork{workName(row.Work), row.ByWeek})
	}
	if out.Grade <= factsKnown {
		for _, counts := range cover.Facts {
			if len(cover.Missing) < activity.FactsInAll {
				out.Facts = append(out.Facts, counts[:])
			}
		}
		for _, pair := range cover.Missing {
			out.Missing = append(out.Missing, [2]int{pair.First, pair.Second})
		}
	}
	for _, lack := range cover.Lacks {
		out.Lacks = append(out.Lacks, lack.Text)
	}
	return out
}
