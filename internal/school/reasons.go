package school

import (
	"fmt"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/problem"
)

// Reasons say of a proposal, in English, what stands in the new week and why.
type Reasons struct {
	Target         string // empty where the teacher chose another than the rule
	Focus, Picture string // the word, and how well it suits the week's stories
}

// Reasons says why a proposal is as it is.
func (y *Year) Reasons(p Proposal) Reasons {
	why := Reasons{
		Focus:   suits(p.Focus, p.FocusAsked, "helps with", p.Helps, p.Stories),
		Picture: suits(p.Picture, p.PictureAsked, "can show", p.Shows, p.Stories),
	}
	if p.ByRule {
		why.Target = y.suggested(p.Why)
	}
	return why
}

// suggested says why a target is next.
func (y *Year) suggested(why activity.Suggestion) string {
	grade := GradeName(why.Target.Grade)
	switch {
	case why.Before == 0 && len(why.New) > 0:
		names := each(why.New, func(k problem.Kind) string { return y.Catalog.Source().Plain(activity.KindName(k)) })
		return fmt.Sprintf("the next target of %s that no week was about; its new kinds of stories: %s", grade, strings.Join(names, "; "))
	case why.Before == 0:
		return fmt.Sprintf("the next target of %s that no week was about", grade)
	case why.Facts > 0:
		return fmt.Sprintf("it was there before; it can show %s that no week had", diag.Amount(why.Facts, "addition fact", "addition facts"))
	}
	return fmt.Sprintf("every target of %s had its week; the class met this one least, or longest ago", grade)
}

// suits says how well a choice suits the week's stories.
func suits(word string, asked bool, does string, n, of int) string {
	switch {
	case word == "":
		return None
	case asked:
		return word + ", as you asked"
	case n == of:
		return fmt.Sprintf("%s, which %s all %d stories", word, does, of)
	}
	return fmt.Sprintf("%s, which %s %d of the %d stories, more than others", word, does, n, of)
}
