package activity

import (
	_ "embed"
	"fmt"
	"maps"
	"slices"

	"homebuild/internal/diag"
	"homebuild/internal/pattern"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
	"homebuild/internal/tomlfile"
)

//go:embed targets.toml
var targetsFile string

// Targets are the targets that come with the program.
func Targets() ([]Target, error) {
	targets, problems := ParseTargets("targets.toml", targetsFile)
	if len(problems) > 0 {
		return nil, problems
	}
	return targets, nil
}

// HighestGrade is the last one that targets are for.
const HighestGrade = 3

// ParseTargets reads targets of the form of targets.toml. Every problem is
// given at its line, and a target with a problem is left out.
func ParseTargets(path, text string) ([]Target, diag.Diagnostics) {
	file := tomlfile.Parse(path, text, 1)
	file.Example = `settings look like id = "add-within-20"`
	var out []Target
	seen := map[string]bool{}
	written := file.Section().Sections("target", "a target")
	for _, s := range written {
		before := s.Found()
		t := target(s)
		if seen[t.ID] {
			s.Add("id", fmt.Sprintf("%q is used twice", t.ID), "give each target a word of its own")
		}
		seen[t.ID] = true
		if s.Found() == before {
			out = append(out, t)
		}
	}
	for _, s := range written {
		neighbor(s, "easier", seen)
		neighbor(s, "harder", seen)
	}
	problems := file.Problems()
	if len(written) == 0 && len(problems) == 0 {
		problems = diag.Diagnostics{{File: path, Text: "there is no target", Hint: "begin one with [[target]]"}}
	}
	return out, problems
}

var goodID = pattern.Of(`^[a-z][a-z0-9]*(-[a-z0-9]+)*$`)

// target makes a target of what is written, noting whatever is wrong.
func target(s *tomlfile.Section) Target {
	t := Target{
		ID:        s.Word("id"),
		Grade:     problem.Grade(s.Number("grade", 0, HighestGrade, 0)),
		Standards: s.List("standards"),
		Easier:    s.Word("easier"),
		Harder:    s.Word("harder"),
		Kinds:     words(s, "kinds", problem.Kinds()),
		Within:    s.Number("within", Smallest, problem.Largest, Smallest),
		Limits: Limits{
			FirstLeast: limit(s, "first-least"), FirstStep: limit(s, "first-step"),
			SecondLeast: limit(s, "second-least"), SecondMost: limit(s, "second-most"), SecondStep: limit(s, "second-step"),
			PartMost: limit(s, "part-most"), Whole: limit(s, "whole"),
		},
		Strategies: words(s, "strategies", strategy.Names()),
		Pictures:   words(s, "pictures", picture.Kinds()),
	}
	if !goodID().MatchString(t.ID) || t.ID == OwnID {
		s.Add("id", fmt.Sprintf("%q cannot be the word for a target", t.ID), "write small letters, digits and hyphens, such as add-within-20")
	}
	if !s.Has("within") {
		s.Add("within", "the target has no largest number", fmt.Sprintf("write within = 20, or another from %d to %d", Smallest, problem.Largest))
	}
	t.Crossing, _ = ParseCrossing(s.OneOf("crossing", "a word for crossing a ten", crossingIDs[:]))
	sensible(s, t)
	return t
}

// limit reads a number that binds; 0, which binds nothing, when it is left out.
func limit(s *tomlfile.Section, key string) int { return s.Number(key, 1, problem.Largest, 0) }

// sensible notes kinds that are too early for the grade, and kinds for which no
// numbers are left.
func sensible(s *tomlfile.Section, t Target) {
	for _, n := range t.Strategies {
		if n.FirstGrade() > t.Grade {
			s.Add("strategies", fmt.Sprintf("%q is first learned in grade %d, and this target is for grade %d", n, n.FirstGrade(), t.Grade),
				"take the strategy out or write the later grade")
		}
	}
	for _, k := range t.Kinds {
		if k.FirstGrade() > t.Grade && !t.partnersOfTen() {
			s.Add("kinds", fmt.Sprintf("%q is first met in grade %d, and this target is for grade %d", k, k.FirstGrade(), t.Grade),
				"take the kind out or write the later grade")
		}
		if !t.possible(k) {
			s.Add("", fmt.Sprintf("no numbers are left for stories of the kind %q", k), "make the range larger or the limits wider")
		}
	}
}

// partnersOfTen reports whether the whole is always ten. Kindergarten finds the
// missing part of ten, and of no other number (CCSS-M 2010, K.OA.A.4, from
// memory; Progressions for the CCSS-M, K-5 Operations and Algebraic Thinking,
// Table 2).
func (t Target) partnersOfTen() bool { return t.Limits.Whole == 10 }

// neighbor notes an easier or a harder target that there is none of.
func neighbor(s *tomlfile.Section, key string, known map[string]bool) {
	if id := s.Word(key); id != "" && (!known[id] || id == s.Word("id")) {
		s.Unknown(key, "another target", id, slices.Sorted(maps.Keys(known)))
	}
}

// words reads a list of words that name some of all values.
func words[T fmt.Stringer](s *tomlfile.Section, key string, all []T) []T {
	names := make([]string, len(all))
	for i, v := range all {
		names[i] = v.String()
	}
	var out []T
	typed := s.List(key)
	for _, word := range typed {
		if i := slices.Index(names, word); i >= 0 {
			out = append(out, all[i])
		} else {
			s.Unknown(key, "one of the "+key, word, names)
		}
	}
	if len(typed) == 0 && (typed != nil || !s.Has(key)) {
		s.Add(key, key+" is missing", diag.Choice("", names))
	}
	return out
}
