package mistake

import (
	"cmp"
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// Question is a story problem as a class meets it.
type Question struct {
	Problem problem.Problem
	Extra   int            // the number that the story tells and the question does not need; 0 for none
	Focus   strategy.Name  // the way that the class practices this week; 0 for none
	Ways    []strategy.Way // that the class knows for the step that finds the answer, the week's first
	Columns bool           // whether the class writes numbers in columns
}

// Mistake is a known way to a wrong number.
type Mistake struct {
	Cause  Cause
	Answer int         // the number it gives, never the right one and never negative
	Only   bool        // no other cause gives this number
	Hint   phrase.Line // what to look at; it never says that something is wrong, and never tells the answer

	origin origin
}

// Of lists every known way to a wrong number that does not depend on a way of
// working; see Question.Mistakes.
func Of(p problem.Problem, extra int) []Mistake {
	return Question{Problem: p, Extra: extra, Columns: true}.Mistakes()
}

// Mistakes lists every known way to a wrong number: first the slips of the week's
// way, then those of counting and of writing numbers, then those of the situation.
// A round number taken in place of one close by comes last: it can happen whatever
// the way. The slips of other ways than the week's are known where nothing else is
// said of the number and their working shows how it came about, beyond 20, where a
// class meets them beside each other. Both addends unknown has none: any two numbers that make the total are right.
func (q Question) Mistakes() []Mistake {
	if q.Problem.Kind() == problem.TogetherBoth {
		return nil
	}
	l := list{reading: newReading(q)}
	first := 0
	if l.leads() {
		first = 1
	}
	l.slips(weeksWay, q.Ways[:first])
	inColumnsFirst := q.Columns && l.practices(strategy.Expanded)
	if inColumnsFirst {
		l.rules(weeksWay, columnRules)
	}
	l.rules(numberWork, workingRules)
	if q.Columns && !inColumnsFirst {
		l.rules(inColumns, columnRules)
	}
	l.rules(situation, storyRules)
	l.rules(nearBy, nearByRules)
	if !l.small() {
		l.slips(otherWays, q.Ways[first:])
	}
	markOnly(l.found)
	return l.found
}

// largest is the largest number on the way to the answer, the extra one included.
func (q Question) largest() int {
	most := q.Extra
	for _, step := range q.Problem.Steps() {
		most = max(most, step.Calculation().Largest())
	}
	return most
}

// origin is where a mistake comes from, the most worth a reply first.
type origin uint8

const (
	weeksWay origin = iota
	situation
	numberWork
	nearBy
	inColumns
	otherWays
)

// list gathers the mistakes of a question, each number once for a cause.
type list struct {
	reading
	found []Mistake
}

func (l *list) slips(from origin, ways []strategy.Way) {
	for _, w := range ways {
		for _, s := range w.Slips {
			if l.isNew(Cause(s.Name), s.Answer) && (from == weeksWay || l.explains(s)) {
				l.add(Mistake{Cause: Cause(s.Name), Answer: s.Answer, Hint: s.Ask, origin: from})
			}
		}
	}
}

// explains reports whether a slip of another way than the week's is the best that can
// be said of its number.
func (l *list) explains(s strategy.Slip) bool {
	known := func(m Mistake) bool { return m.Answer == s.Answer && m.origin != otherWays }
	return s.Working != nil && l.away(s.Answer) == "" && !slices.ContainsFunc(l.found, known)
}

// rule is a cause with the wrong numbers that it gives.
type rule struct {
	cause Cause
	find  func(r reading) []wrong
}

// wrong is a wrong number with the expression that gives it; the expression is
// empty where none was worked.
type wrong struct {
	answer  int
	working problem.Expression
	values  []phrase.Value // of the hint, beside the working
}

func worked(e problem.Expression) wrong { return wrong{answer: e.Value(), working: e} }

func (l *list) rules(from origin, rules []rule) {
	for _, rule := range rules {
		for _, w := range rule.find(l.reading) {
			if l.isNew(rule.cause, w.answer) && (from != nearBy || !l.ofWeeksWay(w.answer)) {
				l.add(Mistake{Cause: rule.cause, Answer: w.answer, Hint: l.hint(rule.cause, w), origin: from})
			}
		}
	}
}

// ofWeeksWay reports whether the week's way has something to say of a number, other
// than that a step is one off.
func (l *list) ofWeeksWay(n int) bool {
	return slices.ContainsFunc(l.found, func(m Mistake) bool {
		return m.Answer == n && m.origin == weeksWay && m.Cause != Cause(strategy.StepOff)
	})
}

// isNew reports whether a cause gives a wrong number, and is not listed with it.
func (l *list) isNew(cause Cause, answer int) bool {
	known := func(m Mistake) bool { return m.Cause == cause && m.Answer == answer }
	return answer >= 0 && answer != l.answer && !slices.ContainsFunc(l.found, known)
}

// add adds a mistake whose hint does not tell the answer.
func (l *list) add(m Mistake) {
	if !l.tells(m.Hint) {
		l.found = append(l.found, m)
	}
}

func markOnly(all []Mistake) {
	for i := range all {
		all[i].Only = !slices.ContainsFunc(all, func(m Mistake) bool {
			return m.Answer == all[i].Answer && m.Cause != all[i].Cause
		})
	}
}

// ToListenFor lists a few mistakes, each of another cause, for a teacher: half of
// them of the week's way where it has so many, the others those most worth a reply.
func (q Question) ToListenFor(most int) []Mistake {
	var out []Mistake
	all := q.Mistakes()
	slices.SortStableFunc(all, func(a, b Mistake) int { return cmp.Compare(a.origin, b.origin) })
	own := 0
	for _, m := range all {
		same := func(n Mistake) bool { return n.Cause == m.Cause }
		if slices.ContainsFunc(out, same) || m.origin == weeksWay && own == most/2 {
			continue
		}
		if m.origin == weeksWay {
			own++
		}
		out = append(out, m)
	}
	return out[:min(most, len(out))]
}

// Likely lists the wrong answers that an estimate should show to be out of reach,
// the likeliest first, each number once: those of the wrong operation, of a number
// left out, and of a ten or a hundred that was forgotten, or not paid back. Slips by
// one can be too near the answer.
func Likely(p problem.Problem, extra int) []int {
	if p.Kind() == problem.TogetherBoth {
		return nil
	}
	r := newReading(Question{Problem: p, Extra: extra})
	var out []int
	for _, find := range []func(reading) []wrong{reversedComparison, addedInstead, subtractedInstead, secondTurned, leftOut, tenLost} {
		for _, w := range find(r) {
			if w.answer >= 0 && w.answer != p.Answer() && !slices.Contains(out, w.answer) {
				out = append(out, w.answer)
			}
		}
	}
	return out
}
