package activity

import (
	"fmt"
	"maps"
	"regexp"
	"slices"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// Bounds of what a target file may say.
const (
	highestGrade = 3
	longestText  = 200 // characters of a teacher's own sentence
)

var goodID = regexp.MustCompile(`^[a-z][a-z0-9]*(-[a-z0-9]+)*$`)

// target makes a target of what is written, noting whatever is wrong.
func (r *targetReader) target(w written) Target {
	if !goodID.MatchString(w.ID) || w.ID == OwnID {
		r.add("id", fmt.Sprintf("%q cannot be the word for a target", w.ID), "write small letters, digits and hyphens, such as add-within-20")
	}
	if w.Grade < 0 || w.Grade > highestGrade {
		r.add("grade", fmt.Sprintf("the grade is %d", w.Grade), "write 0 for kindergarten, or 1, 2 or 3")
	}
	if w.Within < Smallest || w.Within > problem.Largest {
		r.add("within", fmt.Sprintf("the largest number is %d", w.Within), fmt.Sprintf("write one from %d to %d", Smallest, problem.Largest))
		w.Within = Smallest
	}
	r.bounded("first-least", &w.FirstLeast)
	r.bounded("first-step", &w.FirstStep)
	r.bounded("second-least", &w.SecondLeast)
	r.bounded("second-most", &w.SecondMost)
	r.bounded("second-step", &w.SecondStep)
	r.bounded("part-most", &w.PartMost)
	r.bounded("whole", &w.Whole)
	r.short("can", w.Can)
	r.short("about", w.About)
	crossing, ok := ParseCrossing(w.Crossing)
	if !ok && w.Crossing != "" {
		r.add("crossing", fmt.Sprintf("crossing is %q", w.Crossing), "write always, never or either")
	}
	t := Target{
		ID: w.ID, Can: w.Can, About: w.About, Grade: problem.Grade(w.Grade), Standards: w.Standards,
		Easier: w.Easier, Harder: w.Harder,
		Kinds:      words(r, "kinds", w.Kinds, problem.ParseKind, problem.Kinds()),
		Within:     w.Within,
		Crossing:   crossing,
		Limits:     Limits{w.FirstLeast, w.FirstStep, w.SecondLeast, w.SecondMost, w.SecondStep, w.PartMost, w.Whole},
		Strategies: words(r, "strategies", w.Strategies, strategy.ParseName, strategy.Names()),
		Pictures:   words(r, "pictures", w.Pictures, picture.ParseKind, picture.Kinds()),
	}
	r.sensible(t)
	return t
}

// neighbors notes an easier or a harder target that there is none of.
func (r *targetReader) neighbors(all []written, known map[string]bool) {
	words := slices.Sorted(maps.Keys(known))
	for i, w := range all {
		r.index = i
		for _, n := range [...]struct{ setting, id string }{{"easier", w.Easier}, {"harder", w.Harder}} {
			if n.id != "" && (!known[n.id] || n.id == w.ID) {
				r.add(n.setting, fmt.Sprintf("%q is not another target", n.id), didYouMean(n.id, words))
			}
		}
	}
}

// sensible notes kinds that are too early for the grade, and kinds for which no
// numbers are left.
func (r *targetReader) sensible(t Target) {
	for _, k := range t.Kinds {
		if k.FirstGrade() > t.Grade && !t.partnersOfTen() {
			r.add("kinds", fmt.Sprintf("%q is first met in grade %d, and this target is for grade %d", k, k.FirstGrade(), t.Grade),
				"take the kind out or write the later grade")
		}
		if !t.possible(k) {
			r.add("", fmt.Sprintf("no numbers are left for stories of the kind %q", k), "make the range larger or the limits wider")
		}
	}
}

// partnersOfTen reports whether the whole is always ten. Kindergarten finds the
// missing part of ten, and of no other number (CCSS-M 2010, K.OA.A.4, from
// memory; Progressions for the CCSS-M, K-5 Operations and Algebraic Thinking,
// Table 2).
func (t Target) partnersOfTen() bool { return t.Limits.Whole == 10 }

// short notes a teacher's own sentence that is too long.
func (r *targetReader) short(name, text string) {
	if len([]rune(text)) > longestText {
		r.add(name, "this sentence is too long to read at home", fmt.Sprintf("use at most %d letters", longestText))
	}
}

// bounded notes a limit that no range can have, and lifts it.
func (r *targetReader) bounded(name string, limit *int) {
	if *limit < 0 || *limit > problem.Largest {
		r.add(name, fmt.Sprintf("%s is %d", name, *limit), fmt.Sprintf("write a number from 1 to %d, or leave it out", problem.Largest))
		*limit = 0
	}
}
