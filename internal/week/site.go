package week

import (
	"cmp"
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/problem"
	"homebuild/internal/textfile"
	"homebuild/internal/tomlfile"
)

// maxName keeps a school's name on one or two lines of a phone.
const maxName = 80

// site reads site.toml.
func (r *reader) site() Site {
	if textfile.IsMissing(r.fsys, SiteFile) {
		r.noSite()
		return Site{}
	}
	text, ok := r.text(SiteFile)
	if !ok {
		return Site{}
	}
	file := tomlfile.Parse(SiteFile, text, 1)
	file.Example = `settings look like name = "Pebble Lane School"`
	s := file.Section()
	site := Site{
		Address: address(s),
		Theme:   s.OneOf("theme", "a theme", r.allowed.Themes),
		Key:     s.Word("key"),
		Index:   s.Switch("index"),
		Grade:   grade(s),
		DaysOff: daysOff(s),
		Review:  switchOr(s, "review", true),
		Words:   classWords(s, slices.Concat(r.allowed.Strategies, r.allowed.Pictures)),
	}
	s.Word("shared") // the school has opened that folder before this is read
	site.Answers = answers(s, site.Address)
	site.Languages = r.languages(s)
	site.School = schoolLanguage(s, site.Languages)
	site.Name = texts(s, "name", site.Languages)
	site.Class = texts(s, "class", site.Languages)
	if v := s.Value("name"); !s.Has("name") || v != nil && v.Kind == tomlfile.Text && site.Name.Plain == "" {
		s.AddCoded(diag.Nameless, "", "name", "the site has no name", `write name = "...", as families know the school or the class`)
	}
	r.problems = append(r.problems, file.Problems()...)
	return site
}

// grade reads the class's grade: 0 or "K" is kindergarten.
func grade(s *tomlfile.Section) *problem.Grade {
	v := s.Value("grade")
	if v != nil && v.Kind == tomlfile.Text && (strings.EqualFold(v.Text, "K") || strings.EqualFold(v.Text, "kindergarten")) {
		s.Word("grade") // so that the setting is known
		return new(problem.Grade)
	}
	of := problem.Grade(s.Number("grade", 0, activity.HighestGrade, 1))
	if v == nil {
		return nil
	}
	return &of
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
func answers(s *tomlfile.Section, address string) string {
	place := s.OneOf("answers", "a place for the answers", Answers())
	if place == AnswersLink && address == "" && !s.Has("address") {
		s.Add("answers", `answers = "link" needs an address: the code on the paper leads there`,
			`write address = "https://..." as well, or answers = "foot"`)
	}
	return cmp.Or(place, AnswersFoot)
}

// languages reads the list of the site's languages.
func (r *reader) languages(s *tomlfile.Section) []string {
	var tags []string
	typed := s.List("languages")
	for _, word := range typed {
		tag, ok := sameWord(word, r.allowed.Languages)
		switch {
		case !ok:
			s.AddCoded(diag.Unknown, word, "languages", fmt.Sprintf("%q is not a language there is a file for", word), languageHint(word, r.allowed.Languages))
		case slices.Contains(tags, tag):
			s.Add("languages", fmt.Sprintf("%q is in the list twice", tag), "keep one of the two")
		default:
			tags = append(tags, tag)
		}
	}
	if !s.Has("languages") || typed != nil && len(typed) == 0 {
		s.Add("languages", "the site has no language", `write languages = ["en", "es"], the class's own first`)
	}
	return tags
}

// schoolLanguage is the class's own: the first, unless the file says another.
func schoolLanguage(s *tomlfile.Section, languages []string) string {
	typed := s.Word("school-language")
	if tag, ok := sameWord(typed, languages); ok {
		return tag
	}
	if len(languages) == 0 {
		return ""
	}
	if typed != "" {
		s.Unknown("school-language", "one of this site's languages", typed, languages)
	}
	return languages[0]
}

// texts reads a text that may differ by language: one, or a table of them.
func texts(s *tomlfile.Section, key string, languages []string) Localized {
	if v := s.Value(key); v == nil || v.Kind != tomlfile.Table {
		plain := s.Word(key)
		public(s, key, plain)
		return Localized{Plain: plain}
	}
	by, text := s.Section(key, key), Localized{By: map[string]string{}}
	for _, v := range by.Values() {
		word := by.Word(v.Key)
		tag, ok := sameWord(v.Key, languages)
		if !ok {
			by.Unknown(v.Key, "one of this site's languages, in "+key, v.Key, languages)
			continue
		}
		text.By[tag] = word
		public(by, v.Key, word)
	}
	return text
}

// classWords reads what the class calls ways and pictures.
func classWords(s *tomlfile.Section, known []string) map[string]string {
	words := s.Section("words", "the class's own words")
	if !words.Written {
		return nil
	}
	out := map[string]string{}
	for _, v := range words.Values() {
		word := strings.Join(strings.Fields(words.Word(v.Key)), " ")
		if !slices.Contains(known, v.Key) {
			words.Unknown(v.Key, "a strategy or a picture", v.Key, known)
			continue
		}
		if public(words, v.Key, word); word != "" {
			out[v.Key] = word
		}
	}
	return out
}

// public refuses in a name what a note may not show either.
func public(s *tomlfile.Section, key, text string) {
	if n := len([]rune(text)); n > maxName {
		s.AddCoded(diag.Long, fmt.Sprint(maxName), key, fmt.Sprintf("%s has %d letters", key, n), fmt.Sprintf("keep it to %d, for small screens", maxName))
	}
	for at, c := range text { // written as \u202e, the file does not show it
		if what := hidden(c, text[:at]); what != "" {
			s.Add(key, fmt.Sprintf("%s holds %s (U+%04X)", key, what, c), "leave it out")
			break
		}
	}
	for _, p := range private(text) {
		s.AddCoded(p.code, p.text, key, fmt.Sprintf("%s holds %s, %q, and pages are public", key, p.what(), p.text), "leave it out")
	}
}
