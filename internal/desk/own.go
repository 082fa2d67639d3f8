package desk

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/ownstory"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
)

// Own says what a story of her own could mean: see [Calls].
func (d *Desk) Own(o OwnStory) (Offer, error) {
	s, err := d.open(o.Date)
	if err != nil {
		return Offer{}, err
	}
	text, marked, err := s.marked(o)
	if err != nil {
		return Offer{}, err
	}
	offer := text.Offer()
	out := Offer{Numbers: o.Numbers}
	if len(out.Numbers) == 0 { // the page sends an empty list where she put none aside
		out.Numbers = numbersOf(text, offer.Counted)
	}
	draw := pictures{prefix: "own-", words: s.class()}
	for _, c := range offer.Choices {
		r := s.reading(c.Problem, &draw, d.spoken())
		r.Line = c.Line()
		out.Readings = append(out.Readings, r)
	}
	own := week.OwnStory{Text: marked, In: s.translations(o.Texts)}
	if len(offer.Choices) > 0 {
		own.Kind, own.Equation = chosen(offer.Choices[0].Line())
	}
	out.Findings = d.wrongOwn(s, own)
	return out, nil
}

// marked is her text as it is read, and with marks for what she put aside.
func (s *sheet) marked(o OwnStory) (ownstory.Text, string, error) {
	school := s.Site.School
	lang := ownstory.NewLanguage(school, s.class().NumberWords())
	plain := strings.Join(strings.Fields(o.Texts[school]), " ")
	text, err := lang.Read(plain)
	if err == nil && slices.ContainsFunc(o.Numbers, func(n OwnNumber) bool { return !n.Counts }) {
		plain = text.Mark(counted(text, o.Numbers))
		text, err = lang.Read(plain)
	}
	if err != nil {
		p := diag.Diagnostic{Text: err.Error()}
		if own, ok := err.(*ownstory.Error); ok {
			p.Hint, p.Code, p.Value = own.Hint, own.Code, own.Value
		}
		return text, plain, refuse(o.Date, p)
	}
	return text, plain, nil
}

// counted are the places of the numbers that she lets count.
func counted(text ownstory.Text, numbers []OwnNumber) []int {
	var out []int
	next := 0
	for i, n := range text.Numerals {
		if next == len(numbers) || numbers[next].Words != text.Plain[n.Start:n.End] || numbers[next].Value != n.Value {
			continue
		}
		if numbers[next].Counts {
			out = append(out, i)
		}
		next++
	}
	return out
}

func numbersOf(text ownstory.Text, counted []int) []OwnNumber {
	var out []OwnNumber
	for i, n := range text.Numerals {
		counts := slices.Contains(counted, i)
		if !counts && n.Word { // "one of them" is no number that she would miss
			continue
		}
		out = append(out, OwnNumber{Words: text.Plain[n.Start:n.End], Value: n.Value, Counts: counts})
	}
	return out
}

// translations are her words in the other languages of the site.
func (s *sheet) translations(texts map[string]string) map[string]string {
	out := map[string]string{}
	for _, tag := range s.Site.Languages {
		if text := strings.Join(strings.Fields(texts[tag]), " "); text != "" && tag != s.Site.School {
			out[tag] = text
		}
	}
	return out
}

// wrongOwn is what a build would say of a story of her own, at its languages.
func (d *Desk) wrongOwn(s *sheet, own week.OwnStory) []Finding {
	text := tomlfile.Append(s.text, "own-story", ownLines(own))
	after := d.read(fileText{week.Path(s.Date), text})
	had := of(s.findings(), s.Date)
	var out []Finding
	for _, f := range of(after.findings(), s.Date) {
		same := func(h Finding) bool { return h.Text == f.Text && h.Quote == f.Quote }
		if f.Mend && !slices.ContainsFunc(had, same) {
			out = append(out, f)
		}
	}
	return out
}

// chosen are the settings that hold the line of a reading: "add-to-change 8 + ? =
// 14".
func chosen(line string) (kind, equation string) {
	kind, equation, _ = strings.Cut(line, " ")
	return kind, equation
}

// ownLines are the lines of an [[own-story]].
func ownLines(own week.OwnStory) []string {
	lines := []string{"text = " + tomlfile.Quote(own.Text)}
	for _, setting := range []struct{ key, value string }{{"happens", own.Happens}, {"kind", own.Kind}, {"equation", own.Equation}} {
		if setting.value != "" {
			lines = append(lines, setting.key+" = "+tomlfile.Quote(setting.value))
		}
	}
	if own.Choice > 0 {
		lines = append(lines, fmt.Sprintf("choice = %d", own.Choice))
	}
	if own.Answer != "" {
		lines = append(lines, "answer = "+tomlfile.Quote(own.Answer))
	}
	if len(own.In) == 0 {
		return lines
	}
	lines = append(lines, "[own-story.in]")
	for _, tag := range slices.Sorted(maps.Keys(own.In)) {
		lines = append(lines, tag+" = "+tomlfile.Quote(own.In[tag]))
	}
	return lines
}

// Use lays her own story into the week: see [Calls].
func (d *Desk) Use(u UseOwn) (Act, error) {
	s, err := d.open(u.Date)
	if err != nil {
		return Act{}, err
	}
	_, marked, err := s.marked(u.OwnStory)
	if err != nil {
		return Act{}, err
	}
	own := week.OwnStory{Text: marked, Answer: strings.TrimSpace(u.Answer), In: s.translations(u.Texts)}
	own.Kind, own.Equation = chosen(u.Line)
	all := slices.Clone(s.OwnStories)
	stories := []week.KeptStory(nil)
	switch {
	case u.Story > 0 && u.Story <= len(all):
		all[u.Story-1] = own
	case u.Story > len(all):
		stories = s.flagged()
		if at := u.Story - len(all); at < len(stories) {
			stories = slices.Delete(stories, at, at+1)
		}
		if len(stories) > 0 && !slices.ContainsFunc(stories, inked) {
			stories = nil
		}
		all = append(all, own)
	default:
		all = append(all, own)
	}
	return d.act(s, s.withOwn(all), stories)
}

// withOwn is the text of the week with these stories of her own.
func (s *sheet) withOwn(all []week.OwnStory) string {
	text := s.text
	for i := len(s.OwnStories) - 1; i >= 0; i-- {
		text = tomlfile.RemoveTable(text, "own-story", i)
	}
	for _, own := range all {
		text = tomlfile.Append(text, "own-story", ownLines(own))
	}
	return text
}

// ownStory does something to a story of her own.
func (d *Desk) ownStory(s *sheet, wish StoryWish) (Act, error) {
	all := slices.Clone(s.OwnStories)
	at, to := wish.Story-1, wish.Story-1
	switch wish.Do {
	case "up":
		to--
	case "down":
		to++
	case "remove":
		return d.act(s, s.withOwn(slices.Delete(all, at, at+1)), nil)
	case "keep":
		return Act{Monday: wish.Date}, nil
	default:
		return Act{}, refuse(wish.Date, diag.Diagnostic{Text: fmt.Sprintf("story %d is your own", wish.Story), Hint: "change its words"})
	}
	if to < 0 || to >= len(all) {
		return Act{Monday: wish.Date}, nil
	}
	all[at], all[to] = all[to], all[at]
	return d.act(s, s.withOwn(all), nil)
}
