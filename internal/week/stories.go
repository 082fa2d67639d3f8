package week

import (
	"fmt"
	"html"
	"slices"
	"strings"
)

// Limits of a story in the teacher's own words: what a child can keep in mind,
// and a phone can show at once.
const (
	maxStory  = 400
	maxAnswer = 120
)

func storySettings() []string { return []string{"text", "reading", "answer", "in"} }

// ownStories reads the stories of a week that the teacher told.
func (t *table) ownStories(value any, allow []string) []OwnStory {
	var tables []any
	switch v := value.(type) {
	case nil:
		return nil
	case []any:
		tables = v
	case map[string]any: // one story, with single brackets
		tables = []any{v}
	}
	var out []OwnStory
	for i, x := range tables {
		keys, ok := x.(map[string]any)
		if !ok {
			tables = nil
			break
		}
		out = append(out, t.ownStory(i, keys, allow))
	}
	if tables == nil {
		t.r.add(t.file, t.line("own-story"), "own-story is not a story", "write [[own-story]] on a line of its own, and text = \"...\" below")
	}
	if len(out) > MaxStories {
		t.r.add(t.file, t.line(StorySetting(MaxStories, "text")), fmt.Sprintf("the week has %d stories of your own", len(out)), fmt.Sprintf("keep %d: a week has no more", MaxStories))
	}
	return out
}

func (t *table) ownStory(i int, keys map[string]any, allow []string) OwnStory {
	for _, key := range sortedKeys(keys) {
		if !slices.Contains(storySettings(), key) {
			hint := choice(key, storySettings())
			if slices.Contains(t.known, key) {
				hint = fmt.Sprintf("%s is a setting of the week: write it above the first [[own-story]]", key)
			}
			t.r.add(t.file, t.lineOf(i, key), fmt.Sprintf("%q is not a setting of an own story", key), hint)
		}
	}
	s := OwnStory{
		Text:    t.plainText(i, "text", keys["text"], maxStory, allow),
		Reading: t.oneLine(i, "reading", keys["reading"]),
		Answer:  t.plainText(i, "answer", keys["answer"], maxAnswer, allow),
	}
	if keys["text"] == nil && !t.broken["text"] {
		t.r.add(t.file, t.lineOf(i, "text"), "an own story has no text", `write text = "...", the whole story with its question`)
	}
	if keys["in"] != nil {
		s.In = t.translations(i, keys["in"], allow)
	}
	return s
}

func (t *table) translations(i int, value any, allow []string) map[string]string {
	by, ok := value.(map[string]any)
	if !ok {
		t.r.add(t.file, t.lineOf(i, "in"), "in is not a list of translations", `write [own-story.in] on a line of its own, and es = "..." below`)
		return nil
	}
	out := map[string]string{}
	for _, typed := range sortedKeys(by) {
		tag, ok := sameWord(typed, t.r.allowed.Languages)
		if !ok {
			t.r.unknownLanguage(t.file, t.lineOf(i, "in."+typed), "a language there is a file for", typed, t.r.allowed.Languages)
			continue
		}
		if text := t.plainText(i, "in."+typed, by[typed], maxStory, allow); text != "" {
			out[tag] = text
		}
	}
	return out
}

// lineOf is the line of a setting of the i-th story, or where the story begins.
func (t *table) lineOf(i int, key string) int {
	if line, ok := t.lines[StorySetting(i, key)]; ok {
		return line
	}
	return t.line(fmt.Sprintf("own-story[%d]", i))
}

// oneLine is a text without line ends.
func (t *table) oneLine(i int, key string, value any) string {
	text, ok := value.(string)
	if !ok && value != nil {
		t.r.add(t.file, t.lineOf(i, key), fmt.Sprintf("%s cannot be %s", key, shown(value)), fmt.Sprintf("write a text in quotes: %s = \"...\"", key))
	}
	return strings.Join(strings.Fields(text), " ")
}

// plainText is a text that a public page may show as it stands: without markup,
// links and things about people.
func (t *table) plainText(i int, key string, value any, longest int, allow []string) string {
	text, line := t.oneLine(i, key, value), t.lineOf(i, key)
	if n := len([]rune(text)); n > longest {
		t.r.add(t.file, line, fmt.Sprintf("%s has %d letters", key, n), fmt.Sprintf("keep it to %d: a child reads it", longest))
	}
	if tag := rawHTML.FindString(text); tag != "" {
		t.r.add(t.file, line, fmt.Sprintf("the story holds HTML, %q, and pages show it as plain words", strings.TrimSpace(tag)), "write the story without it")
	}
	if link := bareLink.FindString(html.UnescapeString(text)); link != "" {
		t.r.add(t.file, line, fmt.Sprintf("the story holds a link, %q", link), "links can stand in the note")
	}
	for _, p := range private(text) {
		if !allowed(p.text, allow) {
			t.r.add(t.file, line, fmt.Sprintf("the story shows %s, %q, and pages are public", p.what, p.text),
				fmt.Sprintf("leave it out, or add allow = [%q] to the week's settings if everyone may see it", p.text))
		}
	}
	return text
}
