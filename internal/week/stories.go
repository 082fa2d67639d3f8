package week

import (
	"fmt"
	"html"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/problem"
	"homebuild/internal/tomlfile"
)

// Limits of a story in the teacher's own words: what a child can keep in mind,
// and a phone can show at once.
const (
	maxStory  = 400
	maxAnswer = 120
)

// ownStories reads the stories of a week that the teacher told.
func (r *reader) ownStories(week *tomlfile.Section, allow []string) []OwnStory {
	var out []OwnStory
	stories := week.Sections("own-story", "a story of your own")
	for _, s := range stories {
		out = append(out, r.ownStory(s, allow))
	}
	if len(out) > MaxStories {
		stories[MaxStories].Add("text", fmt.Sprintf("the week has %d stories of your own", len(out)), fmt.Sprintf("keep %d: a week has no more", MaxStories))
	}
	return out
}

func (r *reader) ownStory(s *tomlfile.Section, allow []string) OwnStory {
	story := OwnStory{
		Text:     plainText(s, "text", maxStory, allow),
		Happens:  oneLine(s, "happens"),
		Kind:     oneLine(s, "kind"),
		Equation: oneLine(s, "equation"),
		Choice:   s.Number("choice", 1, len(problem.Kinds()), 0),
		Answer:   plainText(s, "answer", maxAnswer, allow),
	}
	s.Renamed("reading", "kind")
	if !s.Has("text") {
		s.Add("text", "an own story has no text", `write text = "...", the whole story with its question`)
	}
	if in := s.Section("in", "the translations"); in.Written {
		story.In = r.translations(in, allow)
	}
	return story
}

func (r *reader) translations(in *tomlfile.Section, allow []string) map[string]string {
	for _, tag := range r.allowed.Languages {
		if in.Value(tag) == nil {
			in.Text(tag) // a line that cannot be read is explained as a text
		}
	}
	out := map[string]string{}
	for _, v := range in.Values() {
		text := plainText(in, v.Key, maxStory, allow)
		tag, ok := sameWord(v.Key, r.allowed.Languages)
		if !ok {
			in.Add(v.Key, fmt.Sprintf("%q is not a language there is a file for", v.Key), languageHint(v.Key, r.allowed.Languages))
			continue
		}
		if text != "" {
			out[tag] = text
		}
	}
	return out
}

// oneLine is a text without line ends.
func oneLine(s *tomlfile.Section, key string) string {
	return strings.Join(strings.Fields(s.Text(key)), " ")
}

// plainText is a text that a public page may show as it stands: without markup,
// links and things about people.
func plainText(s *tomlfile.Section, key string, longest int, allow []string) string {
	text := oneLine(s, key)
	if n := len([]rune(text)); n > longest {
		s.AddCoded(diag.Long, fmt.Sprint(longest), key, fmt.Sprintf("%s has %d letters", key, n), fmt.Sprintf("keep it to %d: a child reads it", longest))
	}
	if tag := rawHTML().FindString(text); tag != "" {
		s.AddCoded(diag.Markup, strings.TrimSpace(tag), key, fmt.Sprintf("the story holds HTML, %q, and pages show it as plain words", strings.TrimSpace(tag)), "write the story without it")
	}
	if link := bareLink().FindString(html.UnescapeString(text)); link != "" {
		s.AddCoded(diag.Link, link, key, fmt.Sprintf("the story holds a link, %q", link), "links can stand in the note")
	}
	for _, p := range private(text) {
		if !allowed(p.text, allow) {
			s.AddCoded(p.code, p.text, key, fmt.Sprintf("the story shows %s, %q, and pages are public", p.what(), p.text),
				fmt.Sprintf("leave it out, or add allow = [%q] to the week's settings if everyone may see it", p.text))
		}
	}
	return text
}
