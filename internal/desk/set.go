package desk

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/school"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
)

// literal is a value of a line as TOML.
func literal(key, value string) (string, error) {
	switch key {
	case LineStories, LineMinutes:
		n, err := strconv.Atoi(value)
		return strconv.Itoa(n), err
	case LineExtra, LineReview, LineLadder, LineWords, "odd-date":
		on, err := strconv.ParseBool(value)
		return strconv.FormatBool(on), err
	case LineShowFrom:
		if _, wrong := week.ParseDay(value); wrong != nil {
			return "", diag.Diagnostics{*wrong}
		}
		return value, nil
	}
	return tomlfile.Quote(value), nil
}

// Set writes a value on a line: see [Calls].
func (d *Desk) Set(wish Set) (Act, error) {
	s, err := d.open(wish.Date)
	if err != nil {
		return Act{}, err
	}
	text := s.text
	tag, isNote := strings.CutPrefix(wish.Key, LineNote+".")
	switch {
	case isNote:
		text = s.setNote(tag, wish.Value)
	case wish.Key == "allow":
		text = tomlfile.Set(text, "allow", tomlfile.QuoteList(append(slices.Clone(s.Allow), wish.Value)))
	default:
		text, err = s.setLine(wish.Key, wish.Value)
	}
	if err != nil {
		return Act{}, refuse(wish.Date, diag.Diagnostic{Text: fmt.Sprintf("%q cannot stand on this line: %v", wish.Value, err)})
	}
	if slices.Contains(penciled, wish.Key) {
		if text, err = d.pencil(s, text); err != nil {
			return Act{}, err
		}
	}
	return d.act(s, text, nil)
}

// setNote writes a letter. Without any, families read the greeting again.
func (s *sheet) setNote(tag, value string) string {
	if strings.TrimSpace(value) != "" {
		value = strings.TrimRight(value, "\n \t")
		if !strings.Contains(value, "\n") {
			value += "\n"
		}
		return tomlfile.Set(s.text, LineNote+"."+tag, tomlfile.Quote(value))
	}
	for other := range s.Notes {
		if other != tag {
			return tomlfile.Remove(s.text, LineNote+"."+tag)
		}
	}
	return tomlfile.Remove(s.text, LineNote)
}

// setLine writes a line in ink, or rubs it out.
func (s *sheet) setLine(key, value string) (string, error) {
	text := s.text
	pencil := slices.DeleteFunc(slices.Clone(s.Proposed), func(k string) bool { return k == key })
	switch {
	case value == "" && slices.Contains(penciled, key):
		pencil = append(pencil, key)
	case value == "" || value == school.None:
		text = tomlfile.Remove(text, key)
	case key == LineTarget && s.Spec != nil:
		text = tomlfile.Set(tomlfile.Remove(text, "own-target"), key, tomlfile.Quote(value))
	default:
		written, err := literal(key, value)
		if err != nil {
			return "", err
		}
		text = tomlfile.Set(text, key, written)
	}
	for old, now := range renamed {
		if now == key {
			text = tomlfile.Remove(text, old)
		}
	}
	return markProposed(text, pencil), nil
}

// renamed are lines that files of an older version call otherwise.
var renamed = map[string]string{"scene": LinePlace}

func markProposed(text string, keys []string) string {
	if len(keys) == 0 {
		return tomlfile.Remove(text, "proposed")
	}
	return tomlfile.Set(text, "proposed", tomlfile.QuoteList(keys))
}

// pencil lets the proposed settings of a week follow those in ink.
func (d *Desk) pencil(s *sheet, text string) (string, error) {
	keys := strings.Fields(strings.NewReplacer("proposed", "", "=", "", "[", "", "]", "", `"`, "", ",", " ").Replace(tomlfile.Get(text, "proposed")))
	wish := school.Wishes{Date: s.Date, OddDate: true}
	for key, at := range map[string]*string{LineTarget: &wish.Target, LineWay: &wish.Focus, LinePicture: &wish.Picture} {
		if !slices.Contains(keys, key) {
			if *at = tomlfile.Get(text, key); *at == "" {
				*at = school.None
			}
		}
	}
	if wish.Target == school.None {
		return text, nil // spelled out: it proposes nothing
	}
	p, err := d.proposal(s.sheets, wish)
	if err != nil {
		return "", err
	}
	for key, value := range map[string]string{LineTarget: p.Target.ID, LineWay: p.Focus, LinePicture: p.Picture} {
		switch {
		case !slices.Contains(keys, key):
		case value == "":
			text = tomlfile.Remove(text, key)
		default:
			text = tomlfile.Set(text, key, tomlfile.Quote(value))
		}
	}
	return text, nil
}

// act is what another text of a week's file comes to, and other stories where they
// are given: pencil follows, ink stays, and what moved is told.
func (d *Desk) act(s *sheet, text string, stories []week.KeptStory) (Act, error) {
	weekPath, storiesPath := week.Path(s.Date), week.StoriesPath(s.Date)
	before, kept := s.flagged(), ""
	if len(before) == 0 { // it could not be worked out: what is kept waits
		kept = d.text(storiesPath)
	}
	if stories == nil && s.laid && d.had(s.Week) { // what families have stays
		stories = slices.Clone(before)
		for i := range stories {
			stories[i].Proposed = false
		}
	}
	if stories == nil && slices.ContainsFunc(before, inked) {
		fresh, err := d.opened(s.Date, text, true, []fileText{{weekPath, text}, {storiesPath, ""}})
		if err != nil {
			return Act{}, err
		}
		stories = merge(weeksOwn(fresh.plan.Choices(s.Date)), before, s.SharedEvents())
	}
	if slices.ContainsFunc(stories, inked) {
		kept = s.keptText(stories)
	}
	after, err := d.opened(s.Date, text, true, []fileText{{weekPath, text}, {storiesPath, kept}})
	if err != nil {
		return Act{}, err
	}
	out := Act{Changes: Changes{}, Monday: s.Date, Moved: d.moved(s, after)}
	if text != d.text(weekPath) {
		out.Changes[weekPath] = &text
	}
	switch was := d.text(storiesPath); {
	case was == kept:
	case kept == "":
		out.Changes[storiesPath] = nil
	default:
		out.Changes[storiesPath] = &kept
	}
	return out, nil
}

func inked(s week.KeptStory) bool { return !s.Proposed }

// moved compares a sheet before and after.
func (d *Desk) moved(before, after *sheet) Moved {
	var out Moved
	was := d.lines(before)
	for i, now := range d.lines(after) {
		if now.Value != was[i].Value {
			out.Lines = append(out.Lines, now.Key)
		}
	}
	had, class := before.exercises(), after.class()
	for i, x := range after.exercises() {
		if i >= len(had) || said(class, x.Story) != said(class, had[i].Story) {
			out.Stories = append(out.Stories, i)
		}
	}
	own := len(after.OwnStories)
	for i, k := range after.flagged() {
		if !inked(k) {
			continue
		}
		if i > 0 {
			i += own
		}
		out.Kept = append(out.Kept, i)
	}
	return out
}

// allowed are the words for a language by its tag.
func (s sheets) language(tag string) (Language, bool) {
	lang, ok := (*i18n.Language)(nil), false
	if s.Catalog != nil {
		lang, ok = s.Catalog.Language(tag)
	}
	if !ok {
		return Language{Tag: tag, Name: tag}, tag != ""
	}
	return Language{Tag: tag, Name: lang.Name(), RightToLeft: lang.RightToLeft()}, true
}
