package desk

import (
	"slices"
	"strings"

	"homebuild/internal/cards"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/school"
	"homebuild/internal/strategy"
)

// Choices are what can be chosen on a line: see [Calls].
func (d *Desk) Choices(l LineOf) ([]Choice, error) {
	s, err := d.open(l.Date)
	if err != nil {
		return nil, err
	}
	switch l.Key {
	case LineTarget:
		return d.targetChoices(s), nil
	case LineWay:
		return d.wayChoices(s), nil
	case LinePicture:
		return d.pictureChoices(s), nil
	case LinePlace:
		return d.placeChoices(s), nil
	case LineWarmUp:
		out := []Choice{}
		for _, w := range s.WarmUps {
			out = append(out, Choice{Value: w.ID, Words: name(d.spoken(), "warm-up", w.ID), Fits: true})
		}
		return append(out, Choice{Value: school.None, Fits: true}), nil
	}
	return nil, nil
}

// targetChoices are the sentences of the week's grade, then all others.
func (d *Desk) targetChoices(s *sheet) []Choice {
	met := s.met()
	var own, others []Choice
	for _, t := range s.Targets {
		said := d.target(t, met)
		c := Choice{Value: t.ID, Words: said.Can, About: said.About, Fits: true, Met: said.Met, Grade: said.Grade}
		if t.Grade == s.grade(s.target) {
			own = append(own, c)
		} else {
			others = append(others, c)
		}
	}
	return append(own, others...)
}

// wayChoices are the ways of the target, each with a sum of the week done by it, and
// no way at all.
func (d *Desk) wayChoices(s *sheet) []Choice {
	words := d.spoken()
	var out []Choice
	for _, n := range strategy.Names() {
		about := d.done(s, n)
		suits := slices.Contains(s.target.Strategies, n)
		if !suits && (n.FirstGrade() > s.target.Grade || about == "") {
			continue
		}
		c := Choice{Value: n.String(), Words: name(words, "strategy", n.String()), About: about, Fits: suits && about != ""}
		if c.About == "" {
			c.About = say(words, "strategy."+n.String()+".about")
		}
		out = append(out, c)
	}
	slices.SortStableFunc(out, func(a, b Choice) int { return before(a.Fits, b.Fits) })
	return append(out, Choice{Value: school.None, Fits: true})
}

func before(a, b bool) int {
	switch {
	case a == b:
		return 0
	case a:
		return -1
	}
	return 1
}

// done is a sum of the week's stories worked out by a way: "8 + 5 = 8 + 2 + 3 =
// 10 + 3 = 13"; empty where none can be.
func (d *Desk) done(s *sheet, by strategy.Name) string {
	class := s.class()
	for _, x := range s.exercises() {
		for _, step := range x.Story.Problem.Steps() {
			if step.Kind() == problem.TogetherBoth {
				continue
			}
			for _, way := range strategy.Ways(step.Calculation(), max(s.target.Grade, by.FirstGrade()), by) {
				if way.Name == by {
					return class.Equation(way.Chain)
				}
			}
		}
	}
	return ""
}

// pictureChoices are the pictures, each drawn with the first story that it shows.
func (d *Desk) pictureChoices(s *sheet) []Choice {
	words := d.spoken()
	draw := pictures{prefix: "choice-", words: s.class()}
	all := s.exercises()
	var out []Choice
	for _, k := range picture.Kinds() {
		c := Choice{Value: k.String(), Words: name(words, "picture", k.String())}
		var not []string
		for i, x := range all {
			p := x.Story.Problem
			if !picture.Fits(k, p) {
				not = append(not, s.class().Number(i))
				continue
			}
			if c.Picture == "" {
				c.Picture = draw.draw(picture.OrBars(p, k, picture.Open))
			}
		}
		c.Fits, c.Why = len(not) == 0, strings.Join(not, ", ")
		if c.Picture != "" || slices.Contains(s.target.Pictures, k) {
			out = append(out, c)
		}
	}
	slices.SortStableFunc(out, func(a, b Choice) int { return before(a.Fits, b.Fits) })
	return out
}

// placeChoices are the places of the town, each as a small scene.
func (d *Desk) placeChoices(s *sheet) []Choice {
	words, told := d.spoken(), s.SharedEvents()
	deck, err := cards.Load()
	if err != nil {
		panic(err) // they come with the program
	}
	var out []Choice
	for _, p := range s.Places {
		c := Choice{Value: p.ID, Words: name(words, "setting", p.ID)}
		for _, e := range told.Events() {
			if e.Place == p.ID {
				c.Fits = c.Fits || !s.named() || slices.ContainsFunc(s.target.Kinds, func(k problem.Kind) bool { return slices.Contains(e.Kinds, k) })
			}
		}
		if c.Picture, err = deck.Draw("setting." + p.ID); err != nil {
			panic(err)
		}
		for _, w := range s.Site.Weeks {
			if w.Date != s.Date && w.Place == p.ID {
				c.Met = w.Date
			}
		}
		out = append(out, c)
	}
	return out
}
