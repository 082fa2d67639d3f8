package week

import (
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strings"
)

// siteKeys are the settings of site.toml.
type siteKeys struct {
	Name           any `toml:"name"`
	Class          any `toml:"class"`
	Address        any `toml:"address"`
	Languages      any `toml:"languages"`
	SchoolLanguage any `toml:"school-language"`
	Theme          any `toml:"theme"`
	Key            any `toml:"key"`
	Answers        any `toml:"answers"`
	Index          any `toml:"index"`
	Review         any `toml:"review"`
}

func siteSettings() []string {
	return []string{"name", "class", "address", "languages", "school-language", "theme", "key", "answers", "index", "review"}
}

// maxName keeps a school's name on one or two lines of a phone.
const maxName = 80

// maxAddress leaves a code that a phone reads from paper.
const maxAddress = 200

// site reads site.toml.
func (r *reader) site() Site {
	if _, err := fs.Lstat(r.fsys, SiteFile); errors.Is(err, fs.ErrNotExist) {
		r.noSite()
		return Site{}
	}
	text, ok := r.text(SiteFile)
	if !ok {
		return Site{}
	}
	t := &table{r: r, file: SiteFile, first: 1, known: siteSettings()}
	var k siteKeys
	t.decode(text, &k)
	site := Site{
		Address: t.webAddress("address", k.Address),
		Theme:   t.oneOf("theme", "a theme", k.Theme, r.allowed.Themes),
		Key:     t.word("key", k.Key),
		Index:   t.yes("index", k.Index, false),
		Review:  t.yes("review", k.Review, true),
	}
	site.Answers = t.answers(k.Answers, site.Address)
	site.Languages = t.languages(k.Languages)
	site.School = t.school(k.SchoolLanguage, site.Languages)
	site.Name = t.says("name", k.Name, site.Languages)
	site.Class = t.says("class", k.Class, site.Languages)
	if blank(k.Name) && !t.broken["name"] {
		r.add(SiteFile, 1, "the site has no name", `write name = "...", as families know the school or the class`)
	}
	return site
}

// noSite says that site.toml is missing, or that it has another name.
func (r *reader) noSite() {
	hint := fmt.Sprintf("write %s with three lines: name = \"...\", languages = [\"en\"], key = \"...\"", SiteFile)
	entries, _ := fs.ReadDir(r.fsys, ".") // what cannot be read holds no hint
	for _, e := range entries {
		if strings.HasPrefix(strings.ToLower(e.Name()), "site.") && !e.IsDir() {
			hint = fmt.Sprintf("there is a file %q: name it %s", e.Name(), SiteFile)
		}
	}
	r.add(SiteFile, 0, "the file is missing", hint)
}

// answers reads where the answers are. A link needs a place that it leads to.
func (t *table) answers(value any, address string) string {
	place := t.oneOf("answers", "a place for the answers", value, Answers())
	if place == AnswersLink && address == "" && !t.broken["address"] {
		t.r.add(t.file, t.line("answers"), `answers = "link" needs an address: the code on the paper leads there`,
			`write address = "https://..." as well, or answers = "foot"`)
	}
	if place == "" {
		return AnswersFoot
	}
	return place
}

// languages reads the list of the site's languages.
func (t *table) languages(value any) []string {
	var tags []string
	for _, typed := range t.list("languages", value) {
		tag, ok := sameWord(typed, t.r.allowed.Languages)
		switch {
		case !ok:
			t.r.unknownLanguage(t.file, t.line("languages"), "a language there is a file for", typed, t.r.allowed.Languages)
		case slices.Contains(tags, tag):
			t.r.add(t.file, t.line("languages"), fmt.Sprintf("%q is in the list twice", tag), "keep one of the two")
		default:
			tags = append(tags, tag)
		}
	}
	if _, isList := value.([]any); len(tags) == 0 && (value == nil || isList) && !t.broken["languages"] {
		t.r.add(t.file, t.line("languages"), "the site has no language", `write languages = ["en", "es"], the class's own first`)
	}
	return tags
}

// school is the class's own language: the first, unless the file says another.
func (t *table) school(value any, languages []string) string {
	typed := t.word("school-language", value)
	if tag, ok := sameWord(typed, languages); ok {
		return tag
	}
	if len(languages) == 0 {
		return ""
	}
	if typed != "" {
		t.r.add(t.file, t.line("school-language"), fmt.Sprintf("%q is not one of this site's languages", typed), choice(typed, languages))
	}
	return languages[0]
}

// says reads a text that may differ by language: a word, or a table of them.
func (t *table) says(key string, value any, languages []string) Text {
	by, isTable := value.(map[string]any)
	if !isTable {
		plain := t.word(key, value)
		t.publicText(key, plain)
		return Text{Plain: plain}
	}
	text := Text{By: map[string]string{}}
	for _, typed := range sortedKeys(by) {
		word, isWord := by[typed].(string)
		tag, ok := sameWord(typed, languages)
		switch {
		case !ok:
			t.r.unknown(t.file, t.line(key), fmt.Sprintf("one of this site's languages, in %s", key), typed, languages)
		case !isWord:
			t.wrong(key+"."+typed, by[typed], "write a word in quotes")
		default:
			text.By[tag] = word
			t.publicText(key, word)
		}
	}
	return text
}

// publicText refuses in a name what a note may not show either.
func (t *table) publicText(key, text string) {
	if n := len([]rune(text)); n > maxName {
		t.r.add(t.file, t.line(key), fmt.Sprintf("%s has %d letters", key, n), fmt.Sprintf("keep it to %d, for small screens", maxName))
	}
	for at, c := range text { // written as \u202e, the file does not show it
		if what := hidden(c, text[:at]); what != "" {
			t.r.add(t.file, t.line(key), fmt.Sprintf("%s holds %s (U+%04X)", key, what, c), "leave it out")
			break
		}
	}
	for _, p := range private(text) {
		t.r.add(t.file, t.line(key), fmt.Sprintf("%s holds %s, %q, and pages are public", key, p.what, p.text), "leave it out")
	}
}

func sortedKeys(m map[string]any) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}

// blank reports whether a setting is left out or says nothing.
func blank(value any) bool {
	word, ok := value.(string)
	return value == nil || ok && strings.TrimSpace(word) == ""
}
