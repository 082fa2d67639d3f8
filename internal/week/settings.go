package week

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/problem"
	"homebuild/internal/tomlfile"
)

// settings reads the settings of a week; review is what the site says about it.
func (r *reader) settings(name fileName, s *tomlfile.Section, review bool) *Week {
	w := &Week{
		Date:          name.date,
		ShowFrom:      cmp.Or(day(s, "show-from"), FridayBefore(name.date)),
		OddDate:       s.Switch("odd-date"),
		Target:        target(s, r.allowed),
		Focus:         s.OneOf("focus", "a strategy", r.allowed.Strategies),
		Picture:       s.OneOf("picture", "a picture", r.allowed.Pictures),
		Stories:       s.Number("stories", 1, MaxStories, DefaultStories),
		Place:         s.OneOf("place", "a place", r.allowed.Places),
		ExtraSentence: s.Switch("extra-sentence"),
		NumberWords:   s.Switch("number-words"),
		Ladder:        s.Switch("ladder"),
		WarmUp:        s.OneOf("warm-up", "a warm-up", r.allowed.WarmUps),
		Review:        switchOr(s, "review", review),
		Minutes:       s.Number("minutes", 1, MaxMinutes, DefaultMinutes),
		Allow:         allow(s),
		Proposed:      s.List("proposed"),
		file:          name.path,
		settings:      s,
	}
	s.Renamed("scene", "place")
	w.Spec = ownTarget(s.Section("own-target", "a target of your own"), r.allowed.Kinds)
	w.OwnStories = r.ownStories(s, w.Allow)
	return w
}

// switchOr is true or false, and what otherwise holds when it is left out.
func switchOr(s *tomlfile.Section, key string, otherwise bool) bool {
	on := s.Switch(key)
	if s.Value(key) == nil {
		return otherwise
	}
	return on
}

// target reads a target from the list, by its id or by other words that name it, and wants that or one spelled out.
func target(s *tomlfile.Section, allowed Allowed) string {
	targets, named := allowed.Targets, allowed.TargetsNamed
	listed, own := s.Has("target"), s.Has("own-target")
	switch typed := s.Word("target"); {
	case s.Value("target") != nil && s.Value("own-target") != nil:
		s.Add("own-target", "the week has a target and an own-target", "keep one of the two")
	case !listed && !own:
		s.AddCoded(diag.Missing, "", "target", "the week has no target", `write target = "add-within-20", or another; "homebuild targets" lists them`)
	case slices.Contains(targets, typed):
		return typed
	case typed != "" && named != nil && len(named(typed)) == 1:
		return named(typed)[0]
	case typed != "" && named != nil && len(named(typed)) > 1:
		s.AddCoded(diag.Unknown, typed, "target", fmt.Sprintf("%q names %d targets", typed, len(named(typed))), fmt.Sprintf("write one of them, which homebuild targets %s explains: %s", typed, strings.Join(named(typed), ", ")))
	case typed != "":
		s.AddCoded(diag.Unknown, typed, "target", fmt.Sprintf("%q is not a target", typed), targetHint(typed, targets))
	case s.Value("target") != nil && s.Value("target").Kind == tomlfile.Text:
		s.AddCoded(diag.Missing, "", "target", `target cannot be ""`, `"homebuild targets" lists what it can be`)
	}
	return ""
}

// targetHint leads from words that name no target to those that are near them.
func targetHint(typed string, targets []string) string {
	if diag.Nearest(typed, targets) == "" && strings.Contains(typed, " ") {
		return fmt.Sprintf("homebuild targets %s lists those that these words may mean", typed)
	}
	return diag.And(diag.Choice(typed, targets), `"homebuild targets" lists them`)
}

// ownTarget reads a target spelled out.
func ownTarget(s *tomlfile.Section, kinds []string) *activity.Spec {
	o := &activity.Spec{
		Operation: cmp.Or(s.OneOf("operation", "an operation", activity.Operations()), "both"),
		Largest:   s.Number("largest", activity.Smallest, problem.Largest, 20),
		Parts:     s.Number("parts", 2, 4, 2),
		Crossing:  cmp.Or(s.OneOf("crossing", "a word for crossing a ten", activity.Crossings()), "either"),
		Steps:     s.Number("steps", 1, 2, 1),
	}
	for _, kind := range s.List("kinds") {
		if slices.Contains(kinds, kind) {
			o.Kinds = append(o.Kinds, kind)
		} else {
			s.Unknown("kinds", "a kind of story", kind, kinds)
		}
	}
	if !s.Written {
		return nil
	}
	return o
}

// allow reads what a note may show although pages are public: addresses and
// numbers in full, so that one word does not let everything through.
func allow(s *tomlfile.Section) []string {
	var full []string
	for _, item := range s.List("allow") {
		if !wholePrivate(item) {
			s.Add("allow", fmt.Sprintf("allow cannot hold %q", item),
				"write one e-mail address, one number or one https address in full, as it stands in the note")
			continue
		}
		full = append(full, item)
	}
	return full
}
