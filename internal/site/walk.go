package site

import (
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
)

// walk is the worked story with everything its steps show.
func (l *lesson) walk() *page.Worked {
	return l.walked.get(func() *page.Worked {
		e := l.worked
		w := &page.Worked{
			Story: e.Story, Scene: l.scene(), Amounts: amounts(e), Growing: l.growing(e),
			Solved: l.answerOf(e), Solution: l.solution(e),
		}
		if ways := e.Ways(); len(ways) > 1 && e.Problem.Pairs() == nil {
			another := working(ways[1], e.lastStep(), e.Story)
			w.Another = &another
		}
		return w
	})
}

// solution is the best way to the answer and, for a two-step story, that of its
// first step, each under its own equation.
func (l *lesson) solution(e exercise) page.Solution {
	s := page.Solution{Equations: equations(e.Problem), Sense: sense(e)}
	if all, ok := picture.AllPairs(e.Problem); ok { // nothing to calculate: find every pair
		s.Way.Steps = []page.Step{{Say: all.Describe(), Picture: all}}
		return s
	}
	if ways := e.Ways(); len(ways) > 0 {
		s.Way = working(ways[0], e.lastStep(), e.Story)
	}
	if steps, ways := e.Problem.Steps(), e.FirstWays(); len(steps) > 1 && len(ways) > 0 {
		first := working(ways[0], steps[0], e.Story)
		first.Asks, s.Way.Asks = steps[0].Solving(), steps[1].Solving()
		s.First = &first
	}
	s.Sign = l.sign(e.Problem)
	return s
}

// sign is the choice of the operation; nil in a week that only adds or only takes
// away, and where the equation that finds the answer has other gaps.
func (l *lesson) sign(p problem.Problem) *page.Sign {
	q := p.Equation()
	if p.SolvingDiffers() {
		q = p.Solving()
	}
	sides := q.Sides()
	if !l.mixed() || len(sides) != 2 || len(sides[0]) < 2 || sides[0].Asks() {
		return nil
	}
	look := "learn.sign.look"
	switch {
	case len(p.Steps()) > 1:
		look = "learn.sign.look-steps"
	case p.Kind().Situation() == problem.Compare:
		look = "learn.sign.look-compare"
	case p.Kind().Situation() != problem.PutTogether:
		look = "learn.sign.look-change"
	}
	return &page.Sign{Equation: q, Look: phrase.Say(look)}
}

// mixed reports whether some of the week's stories add and others take away.
func (l *lesson) mixed() bool {
	var met [2]bool
	for _, e := range l.exercises() {
		for _, step := range e.Problem.Steps() {
			if op := step.Calculation().Op; op == problem.Plus {
				met[0] = true
			} else {
				met[1] = true
			}
		}
	}
	return met[0] && met[1]
}

// mostDots is the largest amount that is drawn as single dots, and laid out on a table.
const mostDots = 20

// amounts are what the sentences of a story count, each drawn by itself: single
// dots as long as they can be counted, then hundreds, tens and ones.
func amounts(e exercise) []page.Amount {
	out := make([]page.Amount, len(e.Story.Sentences))
	for i, x := range e.Story.Sentences {
		n := 0
		switch x.Role {
		case story.Known:
			for _, q := range e.Problem.Quantities() {
				if q.Role == x.Quantity {
					n = q.Value
					out[i].Outline = !isThere(e.Problem, q.Role)
				}
			}
		case story.Extra:
			n = e.ExtraNumber
		}
		if n > 0 {
			out[i].Picture = amount(n)
		}
	}
	return out
}

// isThere reports whether a quantity of a problem is an amount that can be laid out:
// not one that goes away, nor the difference of two others.
func isThere(p problem.Problem, role problem.Role) bool {
	steps := p.Steps()
	switch role {
	case problem.RoleDifference:
		return false
	case problem.RoleChange:
		return steps[0].Kind().Situation() != problem.TakeFrom
	case problem.RoleLater:
		return steps[1].Kind().Situation() != problem.TakeFrom
	}
	return true
}

// amount is the first part of a picture that gets no other.
func amount(n int) picture.Picture {
	kind := picture.Drawing
	if n > mostDots {
		kind = picture.BaseTen
	}
	p, err := problem.New(problem.TogetherTotal, n, 0)
	if err != nil {
		panic("site: " + err.Error()) // a story's number is in range
	}
	drawn, err := picture.OfProblem(p, kind, picture.FirstPart)
	if err != nil {
		panic("site: " + err.Error()) // the kind was chosen by its size
	}
	return drawn
}

// equations are the story's own and, where it differs, the one that finds the
// answer. A chain shows its whole only; its steps stand where it is worked out,
// since the second tells the first one's answer.
func equations(p problem.Problem) []problem.Equation {
	out := []problem.Equation{p.Equation()}
	if p.SolvingDiffers() {
		out = append(out, p.Solving())
	}
	return out
}

// growing is the picture as the story goes on, under the sentences that made it
// grow.
func (l *lesson) growing(e exercise) []page.Panel {
	var known, question []phrase.Line
	for _, s := range e.Story.Sentences {
		switch s.Role {
		case story.Known:
			known = append(known, s.Line)
		case story.Question:
			question = append(question, s.Line)
		}
	}
	panels := []page.Panel{{Picture: l.pictureOf(e, picture.FirstPart), Caption: known[:1]}}
	if len(known) > 1 {
		panels = append(panels, page.Panel{Picture: l.pictureOf(e, picture.SecondPart), Caption: known[1:]})
	}
	return append(panels, page.Panel{Picture: l.pictureOf(e, picture.Open), Caption: question})
}

// lastStep is the step that finds the answer: the only one of most stories.
func (e exercise) lastStep() problem.Problem {
	steps := e.Problem.Steps()
	return steps[len(steps)-1]
}

// working is a way to the answer of a step of a story. Its pictures, each beside
// the step it shows, tell of the same situation.
func working(w strategy.Way, of problem.Problem, in story.Story) page.Working {
	out := plainWorking(w)
	out.Why = w.About()
	for i, s := range w.Steps {
		out.Steps[i].Picture = s.Picture
		if s.Picture != nil && !picture.Suits(s.Picture, of) {
			out.Steps[i].Picture = named(picture.OrBars(of, picture.BarModel, picture.Solved), in)
		}
	}
	return out
}

// plainWorking is a way in sentences and equations, without pictures.
func plainWorking(w strategy.Way) page.Working {
	out := page.Working{Name: w.Title(), Chain: w.Chain}
	for _, s := range w.Steps {
		out.Steps = append(out.Steps, page.Step{Say: s.Say, Equation: s.Equation})
	}
	return out
}
