package school

import (
	"io/fs"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/site"
	"homebuild/internal/story"
	"homebuild/internal/translate"
	"homebuild/internal/week"
	"homebuild/locales"
)

// Languages are the folders of language files, the school's own last.
func (s *School) Languages() []fs.FS {
	if own, ok := s.folder(LocalesFolder); ok {
		return []fs.FS{locales.Files, own}
	}
	return []fs.FS{locales.Files}
}

// OwnLanguages lists the languages that the school has files of its own for.
func (s *School) OwnLanguages() []string {
	own, ok := s.folder(LocalesFolder)
	if !ok {
		return nil
	}
	return i18n.Tags(own)
}

// catalog reads languages.
func (s *School) catalog(tags ...string) (*i18n.Catalog, diag.Diagnostics) {
	return s.languages.get(strings.Join(tags, " ")+" "+s.sum(LocalesFolder), func() (*i18n.Catalog, diag.Diagnostics) {
		return i18n.Load(tags, s.Languages()...)
	})
}

// English are the words of the program's own language.
func English() *i18n.Language {
	catalog, problems := i18n.Load([]string{i18n.SourceTag}, locales.Files)
	if len(problems) > 0 {
		panic(problems) // it comes with the program
	}
	return catalog.Source()
}

// Language is a language that pages can be made in.
type Language struct{ Tag, Name string } // Name is its own: "español"

// String names the language in English and in itself, with its tag.
func (l Language) String() string {
	return week.LanguageName(l.Tag) + ", " + l.Name + " (" + l.Tag + ")"
}

// Ready lists the languages that come with the program and are whole, by tag.
func Ready() []Language {
	all, problems := translate.StatusOf(locales.Files)
	if len(problems) > 0 {
		panic(problems)
	}
	var out []Language
	for _, l := range all {
		if l.Problems == 0 && l.Missing() == 0 {
			out = append(out, Language{l.Tag, l.Name})
		}
	}
	return out
}

// Sample is the page on which a fluent reader reads all that a language says,
// with what its file holds so far. Problems mean that it cannot be understood
// at all.
func (s *School) Sample(tag string) (site.File, *translate.Draft, diag.Diagnostics) {
	begun, problems := translate.Open(tag, s.Languages()...)
	if len(problems) > 0 {
		return site.File{}, nil, s.Locate(problems)
	}
	begun.Problems, begun.Stale, begun.Advice, begun.Empty = s.Locate(begun.Problems), s.Locate(begun.Stale), s.Locate(begun.Advice), s.Locate(begun.Empty)
	catalog, problems := s.catalog(i18n.SourceTag)
	theme, more := s.look("")
	if problems = append(problems, more...); len(problems) > 0 {
		return site.File{}, nil, s.Locate(problems)
	}
	return site.Sample(site.SampleInput{
		Draft: begun, English: catalog.Source(), Theme: theme, Targets: must(activity.Targets()), Places: must(story.LoadPlaces()),
	}), begun, nil
}

// PagesIn are the families' pages in the class's language and in the given one,
// those of the example where the folder holds language files alone.
func (s *School) PagesIn(tag string) ([]site.File, diag.Diagnostics) {
	weeks := s
	if _, err := fs.Stat(s.files, week.SiteFile); err != nil {
		weeks = Example()
	}
	in, problems := weeks.Load()
	if len(problems) > 0 {
		return nil, problems
	}
	in.Site.Languages = []string{in.Site.School}
	if tag != in.Site.School {
		in.Site.Languages = append(in.Site.Languages, tag)
	}
	if in.Catalog, problems = i18n.Load(in.Site.Languages, s.Languages()...); len(problems) > 0 {
		return nil, s.Locate(problems)
	}
	files, _, problems := site.Assemble(in)
	return files, weeks.Locate(problems)
}
