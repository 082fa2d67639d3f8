package week

import (
	"fmt"

	"homebuild/internal/activity"
)

// weekKeys are the settings of a week file.
type weekKeys struct {
	Target        any      `toml:"target"`
	Focus         any      `toml:"focus"`
	Picture       any      `toml:"picture"`
	Stories       any      `toml:"stories"`
	Scene         any      `toml:"scene"`
	ExtraSentence any      `toml:"extra-sentence"`
	NumberWords   any      `toml:"number-words"`
	WarmUp        any      `toml:"warm-up"`
	Review        any      `toml:"review"`
	Minutes       any      `toml:"minutes"`
	Allow         any      `toml:"allow"`
	Own           *ownKeys `toml:"own-target"`
	OwnStories    any      `toml:"own-story"`
}

// ownKeys are the settings of a target spelled out.
type ownKeys struct {
	Operation any `toml:"operation"`
	Largest   any `toml:"largest"`
	Kinds     any `toml:"kinds"`
	Parts     any `toml:"parts"`
	Crossing  any `toml:"crossing"`
	Steps     any `toml:"steps"`
}

func weekSettings() []string {
	return []string{"target", "focus", "picture", "stories", "scene", "extra-sentence", "number-words", "warm-up",
		"review", "minutes", "allow", "own-target", "own-target.operation", "own-target.largest", "own-target.kinds",
		"own-target.parts", "own-target.crossing", "own-target.steps", "own-story"}
}

// settings reads the settings of a week; review is what the site says about it.
func (r *reader) settings(name fileName, f front, review bool) *Week {
	t := &table{r: r, file: name.path, first: f.first, known: weekSettings()}
	var k weekKeys
	t.decode(f.settings, &k)
	w := &Week{
		Date:          name.date,
		Target:        t.target(k.Target),
		Own:           t.own(k.Own),
		Focus:         t.oneOf("focus", "a strategy", k.Focus, r.allowed.Strategies),
		Picture:       t.oneOf("picture", "a picture", k.Picture, r.allowed.Pictures),
		Stories:       t.whole("stories", k.Stories),
		Scene:         t.oneOf("scene", "a scene", k.Scene, r.allowed.Settings),
		ExtraSentence: t.yes("extra-sentence", k.ExtraSentence, false),
		NumberWords:   t.yes("number-words", k.NumberWords, false),
		WarmUp:        t.oneOf("warm-up", "a warm-up", k.WarmUp, r.allowed.WarmUps),
		Review:        t.yes("review", k.Review, review),
		Minutes:       t.whole("minutes", k.Minutes),
		Allow:         t.allow(k.Allow),
		Notes:         map[string]string{},
		file:          name.path,
		lines:         t.lines,
	}
	w.OwnStories = t.ownStories(k.OwnStories, w.Allow)
	t.oneTarget(k.Target != nil, k.Own != nil)
	return w
}

// oneTarget wants a target from the list or one spelled out, not both.
func (t *table) oneTarget(listed, own bool) {
	switch {
	case listed && own:
		t.r.add(t.file, t.line("own-target"), "the week has a target and an own-target", "keep one of the two")
	case !listed && !own && !t.broken["target"] && !t.broken["own-target"]:
		t.r.add(t.file, t.first, "the week has no target", `write target = "add-within-20", or another; "homebuild targets" lists them`)
	}
}

func (t *table) target(value any) string {
	typed := t.word("target", value)
	for _, id := range t.r.allowed.Targets {
		if id == typed {
			return typed
		}
	}
	if typed != "" {
		t.r.add(t.file, t.line("target"), fmt.Sprintf("%q is not a target", typed),
			andAlso(choice(typed, t.r.allowed.Targets), `"homebuild targets" lists them`))
	} else if value == "" {
		t.wrong("target", "", `"homebuild targets" lists what it can be`)
	}
	return ""
}

// own reads a target spelled out.
func (t *table) own(k *ownKeys) *activity.Spec {
	if k == nil {
		return nil
	}
	o := &activity.Spec{
		Operation: t.oneOf("own-target.operation", "an operation", k.Operation, activity.Operations()),
		Largest:   t.whole("own-target.largest", k.Largest),
		Parts:     t.whole("own-target.parts", k.Parts),
		Crossing:  t.oneOf("own-target.crossing", "a word for crossing a ten", k.Crossing, activity.Crossings()),
		Steps:     t.whole("own-target.steps", k.Steps),
	}
	if o.Operation == "" {
		o.Operation = "both"
	}
	if o.Crossing == "" {
		o.Crossing = "either"
	}
	for _, id := range t.list("own-target.kinds", k.Kinds) {
		if kind := t.oneOf("own-target.kinds", "a kind of story", id, t.r.allowed.Kinds); kind != "" {
			o.Kinds = append(o.Kinds, kind)
		}
	}
	return o
}

// allow reads what a note may show although pages are public: addresses and
// numbers in full, so that one word does not let everything through.
func (t *table) allow(value any) []string {
	var full []string
	for _, item := range t.list("allow", value) {
		if !wholePrivate(item) {
			t.r.add(t.file, t.line("allow"), fmt.Sprintf("allow cannot hold %q", item),
				"write one e-mail address, one number or one https address in full, as it stands in the note")
			continue
		}
		full = append(full, item)
	}
	return full
}
