package week

import (
	"cmp"
	"fmt"
	"slices"

	"homebuild/internal/diag"
	"homebuild/internal/tomlfile"
)

// weekSchema are the settings of a week file.
var weekSchema = &tomlfile.Schema{
	Like: `settings look like target = "add-within-20"; the note to families begins after the second "+++"`,
	Keys: []tomlfile.Key{
		{Name: "target", Takes: tomlfile.Word},
		{Name: "focus", Takes: tomlfile.Word},
		{Name: "picture", Takes: tomlfile.Word},
		{Name: "stories", Takes: tomlfile.Number, Low: 1, High: MaxStories, Usual: 4},
		{Name: "scene", Takes: tomlfile.Word},
		{Name: "extra-sentence", Takes: tomlfile.Switch},
		{Name: "number-words", Takes: tomlfile.Switch},
		{Name: "warm-up", Takes: tomlfile.Word},
		{Name: "review", Takes: tomlfile.Switch},
		{Name: "minutes", Takes: tomlfile.Number, Low: 1, High: MaxMinutes, Usual: 10},
		{Name: "allow", Takes: tomlfile.List},
		{Name: "own-target", Takes: tomlfile.Table, Of: &tomlfile.Schema{
			What: "a target of your own",
			Like: "settings look like largest = 20",
			Keys: []tomlfile.Key{
				{Name: "operation", Takes: tomlfile.Word},
				{Name: "largest", Takes: tomlfile.Number, Low: 5, High: 1000, Usual: 20},
				{Name: "kinds", Takes: tomlfile.List},
				{Name: "parts", Takes: tomlfile.Number, Low: 2, High: 3, Usual: 2},
				{Name: "crossing", Takes: tomlfile.Word},
				{Name: "steps", Takes: tomlfile.Number, Low: 1, High: 2, Usual: 1},
			},
		}},
		{Name: "own-story", Takes: tomlfile.Tables, Of: storySchema},
	},
}

// settings reads the settings of a week.
func (r *reader) settings(name fileName, f front) *Week {
	file := tomlfile.Parse(name.path, f.settings, f.first, weekSchema)
	s := file.Section()
	w := &Week{
		Date:          name.date,
		Target:        target(s, r.allowed.Targets),
		Own:           ownTarget(s.Section("own-target"), r.allowed.Kinds),
		Focus:         s.OneOf("focus", "a strategy", r.allowed.Strategies),
		Picture:       s.OneOf("picture", "a picture", r.allowed.Pictures),
		Stories:       s.Number("stories"),
		Scene:         s.OneOf("scene", "a scene", r.allowed.Settings),
		ExtraSentence: s.Switch("extra-sentence"),
		NumberWords:   s.Switch("number-words"),
		WarmUp:        s.OneOf("warm-up", "a warm-up", r.allowed.WarmUps),
		Review:        s.Switch("review"),
		Minutes:       s.Number("minutes"),
		Allow:         allow(s),
		Notes:         map[string]string{},
		file:          name.path,
		settings:      s,
	}
	w.OwnStories = r.ownStories(s, w.Allow)
	r.problems = append(r.problems, file.Problems...)
	return w
}

// target reads a target from the list, and wants that or one spelled out.
func target(s *tomlfile.Section, targets []string) string {
	listed, own := s.Has("target"), s.Has("own-target")
	switch typed := s.Text("target"); {
	case s.Value("target") != nil && s.Value("own-target") != nil:
		s.Add("own-target", "the week has a target and an own-target", "keep one of the two")
	case !listed && !own:
		s.Add("target", "the week has no target", `write target = "add-within-20", or another; "homebuild targets" lists them`)
	case slices.Contains(targets, typed):
		return typed
	case typed != "":
		s.Add("target", fmt.Sprintf("%q is not a target", typed), diag.And(diag.Choice(typed, targets), `"homebuild targets" lists them`))
	case s.Value("target") != nil && s.Value("target").Kind == tomlfile.Text:
		s.Add("target", `target cannot be ""`, `"homebuild targets" lists what it can be`)
	}
	return ""
}

// ownTarget reads a target spelled out.
func ownTarget(s *tomlfile.Section, kinds []string) *Own {
	if s == nil {
		return nil
	}
	o := &Own{
		Operation: cmp.Or(s.OneOf("operation", "an operation", Operations()), "both"),
		Largest:   s.Number("largest"),
		Parts:     s.Number("parts"),
		Crossing:  cmp.Or(s.OneOf("crossing", "a word for crossing a ten", Crossings()), "either"),
		Steps:     s.Number("steps"),
	}
	for _, kind := range s.List("kinds") {
		if slices.Contains(kinds, kind) {
			o.Kinds = append(o.Kinds, kind)
		} else {
			s.Unknown("kinds", "a kind of story", kind, kinds)
		}
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
