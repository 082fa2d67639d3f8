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
			Story: e.Story, Growing: l.growing(e), Solved: l.pictureOf(e, picture.Solved), Solution: solution(e),
		}
		if ways := e.Ways(); len(ways) > 1 && e.Problem.Pairs() == nil {
			another := working(ways[1])
			w.Another = &another
		}
		return w
	})
}

// solution is the best way to the answer and, for a two-step story, that of its
// first step, each under its own equation.
func solution(e exercise) page.Solution {
	s := page.Solution{Equations: equations(e.Problem), Sense: sense(e)}
	if all, ok := picture.AllPairs(e.Problem); ok { // nothing to calculate: find every pair
		s.Way.Steps = []page.Step{{Say: all.Describe(), Picture: all}}
		return s
	}
	if ways := e.Ways(); len(ways) > 0 {
		s.Way = working(ways[0])
	}
	if steps, ways := e.Problem.Steps(), e.FirstWays(); len(steps) > 1 && len(ways) > 0 {
		first := working(ways[0])
		first.Asks, s.Way.Asks = steps[0].Solving(), steps[1].Solving()
		s.First = &first
	}
	return s
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

// working is a way with its pictures, each beside the step it shows.
func working(w strategy.Way) page.Working {
	out := plainWorking(w)
	out.Why = w.About()
	for i, s := range w.Steps {
		out.Steps[i].Picture = s.Picture
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
